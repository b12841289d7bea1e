import { describe, expect, test } from "vitest";
import type { ByteSource } from "../src/understand/encoding.ts";
import { understandFile } from "../src/understand/understand-file.ts";
import { asked, attempt, plainExport, understood } from "./understand-samples.ts";

const codes = (content: Uint8Array | string, name = "cast.csv") => {
  const result = attempt(content, name);
  return result.ok ? "read" : result.problems.map(({ code }) => code);
};

describe("what holds no cast is a problem with a plain sentence", () => {
  const bytes = (...values: number[]) => Uint8Array.from(values);
  const ascii = (text: string) => new TextEncoder().encode(text);
  test.each<[string, Uint8Array | string, string]>([
    ["an empty file", "", "understand/empty"],
    ["only blank lines", "\n \r\n\t\n\n", "understand/empty"],
    ["a byte-order mark alone", bytes(0xef, 0xbb, 0xbf), "understand/empty"],
    ["NUL bytes alone", new Uint8Array(4096), "understand/binary"],
    ["binary data", Uint8Array.from({ length: 5000 }, (_, i) => (i * 7919) % 256), "understand/binary"],
    [
      "a header and no rows",
      "start: 2023-06-02T08:30:00Z\ndepth [m],temperature [degC]\n",
      "understand/no-numbers",
    ],
    ["words", "This is a letter.\nIt has no numbers, and no table.\n", "understand/no-numbers"],
    ["a line of 10 MB", "7".repeat(10_000_000), "understand/no-numbers"],
    ["a line of 10 MB of cells", "1,2,".repeat(2_500_000), "understand/no-numbers"],
    ["a line of 10 MB of blanks", `a${" ".repeat(10_000_000)}b`, "understand/no-numbers"],
    ["thousands of tables of one row", "cast 1\n1,2,3\n".repeat(20_000), "understand/too-many-tables"],
    ["netCDF", ascii("CDF\x01\0\0\0\0\0\0\0\0"), "understand/not-a-text-export"],
    ["HDF5", bytes(0x89, 0x48, 0x44, 0x46, 0x0d, 0x0a, 0x1a, 0x0a, 0), "understand/not-a-text-export"],
    ["zip", bytes(0x50, 0x4b, 3, 4, 20, 0), "zip/directory"],
    ["BUFR", ascii("BUFR\0\0\x34\x03"), "understand/not-a-text-export"],
    ["a bottle file", ascii("BOTTLE,20231102EFLINVXYZ\n"), "understand/not-a-text-export"],
  ])("%s", (_, content, code) => expect(codes(content)).toEqual([code]));

  test("the message names the file, the remedy says what to do", () => {
    const result = attempt("", "pier/cast 7.csv");
    expect(result).toMatchObject({ ok: false, problems: [{ where: { file: "pier/cast 7.csv" } }] });
    expect(!result.ok && result.problems[0].message).toContain("pier/cast 7.csv");
    expect(!result.ok && result.problems[0].remedy).toBeTruthy();
  });
});

describe("damage is told and whole rows are kept", () => {
  const findings = (content: string) => {
    const file = understood(content, "cast.csv");
    return {
      rows: file.casts[0]?.rows,
      lines: [...(file.casts[0]?.lines ?? [])],
      codes: file.findings.map(({ code }) => code),
      messages: file.findings.map(({ message }) => message).join(),
    };
  };
  const rows = [
    "0,0.10,16.755,20.39",
    "1,0.51,16.615,20.84",
    "2,1.02,16.444,21.49",
    "3,1.51,16.168,22.41",
    "4,2.02,15.776,23.67",
  ];

  test("rows too short are kept out, with their lines", () => {
    const damaged = [...rows.slice(0, 2), "2,1.02", ...rows.slice(2), "5,2.4,1"].join("\n");
    const { rows: kept, lines, codes: found, messages } = findings(plainExport({ rows: damaged }));
    expect(kept).toBe(5);
    expect(lines).toEqual([5, 6, 8, 9, 10]);
    expect(found).toEqual(["understand/row-width"]);
    expect(messages).toContain("7, 11");
  });

  test("a row too long is kept out", () => {
    const { rows: kept, codes: found } = findings(
      plainExport({ rows: [...rows, "5,2.5,15.1,24.0,9,9"].join("\n") }),
    );
    expect([kept, found]).toEqual([5, ["understand/row-width"]]);
  });

  test.each([
    ["between cells", "5,2.41"],
    ["behind a delimiter", "5,2.41,"],
    ["inside the last number", "5,2.41,15.283,24."],
    ["after one decimal of the last number", "5,2.41,15.283,24.9"],
  ])("cut in mid-line %s", (_, tail) => {
    const { rows: kept, codes: found } = findings(
      plainExport({ rows: [...rows, tail].join("\n") }).trimEnd(),
    );
    expect([kept, found]).toEqual([5, ["understand/cut-off"]]);
  });

  test("a last line without line end that is whole is kept", () => {
    const { rows: kept, codes: found } = findings(plainExport().trimEnd());
    expect([kept, found]).toEqual([5, []]);
  });

  test.each([
    ["Ctrl-Z", "\x1a", []],
    ["NUL bytes", "\0".repeat(300), ["understand/trailing-bytes"]],
  ])("%s at the end", (_, tail, want) => {
    const { rows: kept, codes: found } = findings(plainExport() + tail);
    expect([kept, found]).toEqual([5, want]);
  });

  test("NUL bytes inside a row", () => {
    const { rows: kept, codes: found } = findings(
      plainExport({ rows: [...rows.slice(0, 3), "3,1.\0\0,16.1,22.4", ...rows.slice(3)].join("\n") }),
    );
    expect([kept, found]).toEqual([5, ["understand/row-width"]]);
  });

  test("a cell that is no number becomes missing and is told", () => {
    const file = understood(
      plainExport({ rows: [...rows, ...rows, ...rows].join("\n").replace("16.444", "16.4x4") }),
      "cast.csv",
    );
    expect(file.findings).toMatchObject([{ code: "understand/not-a-number", where: { line: 7, column: 3 } }]);
    expect(file.casts[0]?.columns.get("temperature")?.values[2]).toBeNaN();
    expect(file.casts[0]?.columns.get("temperature")?.flags[2]).toBe(9);
  });

  test("an unbalanced quote does not swallow the rows below it", () => {
    const { rows: kept, codes: found } = findings(
      plainExport({ rows: [...rows.slice(0, 2), '2,"1.02,16.444,21.49', ...rows.slice(3)].join("\n") }),
    );
    expect(kept).toBeGreaterThanOrEqual(4);
    expect(found.length).toBe(1);
  });
});

describe("answers", () => {
  const problems = (about: string, value: string | number, where = "cast.csv") => {
    const result = attempt(plainExport({ start: "start: 2023-06-02 08:30:00" }), "cast.csv", [
      { about, where, value },
    ]);
    return result.ok ? result.value.findings : result.problems;
  };

  test("an unknown topic offers the nearest known", () =>
    expect(problems("timezone", "UTC")).toMatchObject([
      { code: "answers/about", remedy: expect.stringContaining("timeZone") },
    ]));

  test("a wrong form is told with the right one", () =>
    expect(problems("timeZone", "summer time")).toMatchObject([
      { code: "answers/form", message: expect.stringContaining("summer time") },
    ]));

  test("a cast that the file does not hold", () =>
    expect(problems("position", "51, -4", "cast.csv#07")).toMatchObject([
      { code: "answers/cast", remedy: expect.stringContaining("cast") },
    ]));

  test("an answer that nothing asks for is told", () =>
    expect(problems("conductivityKind", "in situ").map(({ code }) => code)).toContain("answers/not-needed"));

  test("a position that the file itself gives is not replaced, and that is told", () => {
    const file = understood(plainExport(), "cast.csv", [
      { about: "position", where: "cast.csv", value: "10, 20" },
    ]);
    expect(file.casts[0]?.start).toMatchObject({ latitude: 51.201, longitude: -4.302 });
    expect(file.findings.map(({ code }) => code)).toEqual(["answers/not-needed"]);
  });

  test("an answer for another file is passed over", () =>
    expect(problems("timeZone", "UTC", "other.csv")).toEqual([]));

  test.each(["cast.csv", "*", "cast.csv#cast"])("where: %s", (where) => {
    const file = understood(plainExport({ start: "start: 2023-06-02 08:30:00" }), "cast.csv", [
      { about: "timeZone", where, value: "+02:00" },
    ]);
    expect(asked(file)).toEqual(where.includes("#") ? ["timeZone"] : []);
  });

  test("what the file states wins over an answer for all files", () => {
    const file = understood(plainExport(), "cast.csv", [{ about: "timeZone", where: "*", value: "+02:00" }]);
    expect(file.casts[0]?.time).toBe(Date.UTC(2023, 5, 2, 8, 30) / 1000);
  });

  test("the line to copy answers the question it stands with", () => {
    const open = understood(plainExport({ start: "start: 2023-06-02 08:30:00" }), "cast.csv");
    const line = open.questions[0]?.answerWith ?? "";
    const [, about = "", where = "", value = ""] =
      /^\{ about: (\w+), where: "([^"]+)", value: "([^"]+)" \}$/.exec(line) ?? [];
    expect(
      asked(
        understood(plainExport({ start: "start: 2023-06-02 08:30:00" }), "cast.csv", [
          { about, where, value },
        ]),
      ),
    ).toEqual([]);
  });
});

test("a file of four gigabytes or more is refused before it is read", () => {
  const source: ByteSource = { size: 2 ** 32, held: null, read: (_, out) => void out.fill(0x78) };
  const result = understandFile(source, "cast.csv", { sha256: "0".repeat(64), answers: [] });
  expect(result.ok ? [] : result.problems.map(({ code }) => code)).toEqual(["understand/too-large"]);
});
