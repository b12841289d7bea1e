import { readFileSync } from "node:fs";
import { testData } from "@wherry/testkit";
import { strToU8, type Zippable, zipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { attempt, noAnswers, readOk } from "../../test/asking-nobody.ts";
import { mutationsOf, truncationsOf } from "../../test/damage.ts";
import { readWhpExchangeZip, recogniseZip } from "./read-whp-exchange-zip.ts";

// Archives packed by Python's zipfile (tools/make_whp_zip.py), with invented casts.
const archive = (name: string) => readFileSync(testData("whp-zip", name));
const WHOLE = archive("two_casts_ct1.zip");
const CAST = readFileSync(testData("samples", "openformats", "whp_ok_00003_00001_ct1.csv"), "utf8");
const codes = (bytes: Uint8Array) => {
  const result = attempt(readWhpExchangeZip, bytes, "x_ct1.zip");
  return result.ok ? result.value.findings.map(({ code }) => code) : result.problems.map(({ code }) => code);
};
const packed = (members: Zippable) => zipSync(members);
const salinities = (bytes: Uint8Array) =>
  readOk(readWhpExchangeZip, bytes, "x_ct1.zip").casts.map(({ columns }) => [
    ...columns.get("salinity")!.values,
  ]);

describe("an archive of two casts and a note", () => {
  test("each is a cast; the note is skipped with a warning", () => {
    const result = attempt(readWhpExchangeZip, WHOLE, "x_ct1.zip");
    if (!result.ok) throw new Error(JSON.stringify(result.problems));
    expect(result.warnings).toMatchObject([
      { code: "whp-exchange/other-member", where: { file: "x_ct1.zip/README.txt" } },
    ]);
    const { casts, findings } = result.value;
    expect(findings).toEqual([]);
    expect(casts.map(({ id, time }) => [id, time])).toEqual([
      ["99ZZ_00003_00001_ct1", Date.UTC(2023, 5, 14, 7, 12) / 1000],
      ["99ZZ_00004_00001_ct1", Date.UTC(2023, 5, 14, 8, 45) / 1000],
    ]);
    // from the text of the sample: last row
    expect(casts.map(({ columns }) => columns.get("salinity")?.values.at(-1))).toEqual([32.5351, 32.5351]);
    expect(casts[0]?.source.path).toBe("x_ct1.zip");
    expect(casts[0]?.evidence[0]?.where.file).toBe("x_ct1.zip/99ZZ_00003_00001_ct1.csv");
  });

  test("what the times stand for is asked once", () => {
    const asking = noAnswers();
    attempt(readWhpExchangeZip, WHOLE, "x_ct1.zip", asking);
    expect(asking.asked).toMatchObject([
      { topic: "timeRole", holds: ["99ZZ_00003_00001_ct1", "99ZZ_00004_00001_ct1"] },
    ]);
    const one = noAnswers({ "timeRole#99ZZ_00004_00001_ct1": "end" });
    const result = attempt(readWhpExchangeZip, WHOLE, "x_ct1.zip", one);
    expect(result.ok && result.value.casts.map(({ timeRole }) => timeRole)).toEqual(["unknown", "end"]);
  });

  test("stored members are read alike", () =>
    expect(salinities(archive("stored_ct1.zip"))).toEqual(salinities(WHOLE)));
});

describe("an archive that is not flat is refused", () => {
  test("a folder", () => expect(codes(archive("in_folder_ct1.zip"))).toEqual(["zip/path"]));

  test.each(["../a_ct1.csv", "/a_ct1.csv", "b\\a_ct1.csv", "C:a_ct1.csv", "folder/"])("%s", (name) =>
    expect(codes(packed({ "b_ct1.csv": strToU8(CAST), [name]: strToU8(CAST) }))).toEqual(["zip/path"]),
  );
});

describe("bombs and lies", () => {
  /** The archive with a number of its directory replaced, at a place counted from the entry's signature. */
  const lie = (place: number, value: number, bytes: Uint8Array = archive("two_casts_ct1.zip")) => {
    const copy = Uint8Array.from(bytes);
    const view = new DataView(copy.buffer);
    for (let at = 0; at + 4 <= copy.length; at++)
      if (view.getUint32(at, true) === 0x02014b50) {
        view.setUint32(at + place, value, true);
        break;
      }
    return copy;
  };

  test("a member of 100 MB is refused before it is unpacked", () => {
    const bomb = packed({ "a_ct1.csv": new Uint8Array(100_000_000) });
    expect(bomb.length).toBeLessThan(200_000);
    expect(codes(bomb)).toEqual(["zip/too-large"]);
  });

  test("ten members of 60 MB are refused together", () => {
    const names = Array.from({ length: 10 }, (_, i) => `${i}_ct1.csv`);
    const bytes = packed(Object.fromEntries(names.map((name) => [name, strToU8(CAST)])));
    expect(codes(bytes)).toEqual([]);
    const view = new DataView(bytes.buffer);
    for (let at = 0; at + 4 <= bytes.length; at++)
      if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, 60_000_000, true);
    expect(codes(bytes)).toEqual(["zip/too-large"]);
  });

  test("a smaller size than the member has", () => expect(codes(lie(24, 100))).toEqual(["zip/damaged"]));
  test("a larger size than the member has", () => expect(codes(lie(24, 9000))).toEqual(["zip/damaged"]));
  test("another checksum", () => expect(codes(lie(16, 1))).toEqual(["zip/damaged"]));
  test("a place beyond the end", () => expect(codes(lie(42, 0x7fffffff))).toEqual(["zip/directory"]));
  test("a packed size beyond the end", () => expect(codes(lie(20, 0x7fffffff))).toEqual(["zip/directory"]));
  test("one damaged member does not hold back the other", () =>
    expect(readOk(readWhpExchangeZip, lie(16, 1), "x_ct1.zip").casts.map(({ id }) => id)).toEqual([
      "99ZZ_00004_00001_ct1",
    ]));
  test("encryption", () => expect(codes(lie(8, 1))).toEqual(["zip/directory"]));
  test("another method", () => expect(codes(lie(10, 12))).toEqual(["zip/directory"]));
});

test("a member that breaks the format is told, the other read", () => {
  const bytes = packed({
    "a_ct1.csv": strToU8(CAST.replace("LATITUDE = 51.2034", "LATITUDE = 91.2")),
    "b_ct1.csv": strToU8(CAST),
  });
  const file = readOk(readWhpExchangeZip, bytes, "x_ct1.zip");
  expect(file.casts.map(({ id }) => id)).toEqual(["b_ct1"]);
  expect(file.findings).toMatchObject([
    { code: "whp-exchange/position", where: { file: "x_ct1.zip/a_ct1.csv" } },
  ]);
});

test("no casts in it, or nothing", () => {
  expect(codes(archive("no_casts.zip"))).toEqual(["understand/not-a-text-export"]);
  expect(codes(packed({}))).toEqual(["understand/not-a-text-export"]);
});

test("a spreadsheet is told how to become text", () => {
  const book = packed({
    "[Content_Types].xml": strToU8("<Types/>"),
    "xl/workbook.xml": strToU8("<workbook/>"),
  });
  const result = attempt(readWhpExchangeZip, book, "casts.xlsx");
  expect(!result.ok && result.problems).toMatchObject([
    { code: "understand/not-a-text-export", remedy: expect.stringContaining("save the table as CSV") },
  ]);
});

test("is recognised by its signature", () => {
  expect(recogniseZip(WHOLE)).not.toBeNull();
  expect(recogniseZip(strToU8("PK is a word"))).toBeNull();
});

describe("damage", () => {
  const good = salinities(WHOLE);

  test("cut at every byte: the directory is at the end, so nothing is read", () => {
    for (const cut of truncationsOf(WHOLE)) expect(codes(cut)).toEqual(["zip/directory"]);
  });

  test("500 seeded mutations: what is read has the true values, by its checksum", () => {
    let read = 0;
    for (const { bytes } of mutationsOf(WHOLE, 500)) {
      const result = attempt(readWhpExchangeZip, bytes, "x_ct1.zip");
      if (!result.ok) continue;
      for (const cast of result.value.casts) {
        read++;
        expect([...cast.columns.get("salinity")!.values]).toEqual(good[0]);
      }
    }
    expect(read).toBeGreaterThan(50);
  });
});
