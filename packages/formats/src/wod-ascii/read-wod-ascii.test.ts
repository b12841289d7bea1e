import { readFileSync } from "node:fs";
import { testData, testWithShared } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { attempt, noAnswers, readOk } from "../../test/asking-nobody.ts";
import { readWodAscii, recogniseWodAscii } from "./read-wod-ascii.ts";

// Own invented casts; the truth was written with them from the published field tables.
const sample = (name: string) => testData("samples", "openformats", name);
interface WodTruth {
  cast: number;
  date: string;
  time_hours_utc: number | null;
  latitude: number;
  longitude: number;
  n_levels: number;
  variables: string[];
  first: number[];
  last: number[];
  missing: { var: number; level: number }[];
  flagged: { var: number; level: number; flag: number }[];
  bottom_depth_m: number;
}
const truth = (
  JSON.parse(readFileSync(sample("truth.json"), "utf8")) as {
    files: Record<string, { truth: WodTruth[] }>;
  }
).files["wod_two_casts.dat"]!.truth;
const WHOLE = readFileSync(sample("wod_two_casts.dat"), "latin1");
const bytesOf = (text: string) => Uint8Array.from(text, (sign) => sign.charCodeAt(0));
const read = (text: string) => readOk(readWodAscii, bytesOf(text), "x.dat");
const headers: Readonly<Record<number, string>> = { 1: "temperature", 2: "salinity", 25: "pressure" };

describe("two casts, one without a time", () => {
  const file = read(WHOLE);

  test("nothing is found wrong", () => expect(file.findings).toEqual([]));

  test.each(truth.map((want, i) => [want, i] as const))("cast $0.cast", (want, i) => {
    const cast = file.casts[i]!;
    expect(cast.id).toBe(String(want.cast));
    expect(cast.start).toMatchObject({ latitude: want.latitude, longitude: want.longitude });
    const midnight = Date.parse(`${want.date}T00:00:00Z`) / 1000;
    expect(cast.time).toBe(want.time_hours_utc === null ? Number.NaN : midnight + want.time_hours_utc * 3600);
    expect(cast.timeRole).toBe("unknown");
    expect(cast.rows).toBe(want.n_levels);
    const names = ["depth", "temperature", "salinity", "pressure"];
    expect([...cast.columns.keys()]).toEqual(names);
    expect(names.map((name) => cast.columns.get(name)?.values[0])).toEqual(want.first);
    expect(names.map((name) => cast.columns.get(name)?.values.at(-1))).toEqual(want.last);
    for (const [name, { values }] of cast.columns) {
      const code = Object.entries(headers).find(([, known]) => known === name)?.[0];
      const levels = want.missing.filter((each) => String(each.var) === code).map(({ level }) => level);
      expect(
        [...values.keys()].filter((row) => Number.isNaN(values[row])),
        name,
      ).toEqual(levels);
    }
    for (const [name, { sourceFlags }] of cast.columns) {
      const code = Object.entries(headers).find(([, known]) => known === name)?.[0];
      const flagged = want.flagged.filter((each) => String(each.var) === code);
      expect(
        sourceFlags?.values.flatMap((flag, level) => (flag === "0" || flag === "" ? [] : [{ level, flag }])),
        name,
      ).toEqual(flagged.map(({ level, flag }) => ({ level, flag: String(flag) })));
    }
    expect(cast.columns.get("temperature")?.sourceFlags?.scheme).toBe("WOD");
    expect(cast.notes).toContain(`bottom depth = ${want.bottom_depth_m} m`);
    expect(cast.notes).toContain("probe type = 4 (CTD)");
  });

  test("asks once what the times stand for, and for the missing time", () => {
    const asking = noAnswers();
    attempt(readWodAscii, bytesOf(WHOLE), "x.dat", asking);
    expect(asking.asked.map(({ topic, holds }) => [topic, holds])).toEqual([
      ["time", ["9000501"]],
      ["timeRole", ["9000500"]],
    ]);
  });

  test("every fact has its line and column", () => {
    const said = (fact: string) => file.casts[1]!.evidence.find((each) => each.fact === fact);
    // second profile: "C372579000501992772023 615-664512100564-432002180", from line 9
    expect(said("latitude")).toMatchObject({ certainty: "stated", where: { line: 9, column: 28 } });
    expect(said("time")).toMatchObject({ certainty: "unknown" });
    expect(said("column:1 temperature")).toMatchObject({ because: expect.stringContaining("Celsius") });
    expect([...file.casts[1]!.lines].slice(0, 2)).toEqual([10, 10]);
  });
});

const changed = (from: string, to: string) => {
  const text = WHOLE.replace(from, to);
  expect(text).not.toBe(WHOLE);
  return text;
};
const strip = (text: string) => text.replace(/ +$/gm, "");

describe("lenient as the format allows", () => {
  const values = (text: string) =>
    read(text).casts.map(({ id, columns }) => [
      id,
      [...columns.values()].map((column) => [...column.values]),
    ]);

  test("CRLF line ends, and blanks lost at the end of lines", () => {
    expect(values(WHOLE.replaceAll("\n", "\r\n"))).toEqual(values(WHOLE));
    expect(read(WHOLE.replaceAll("\n", "\r\n")).lineEnding).toBe("CRLF");
    expect(values(strip(WHOLE))).toEqual(values(WHOLE));
  });

  test("no line end after the last line", () => expect(values(WHOLE.trimEnd())).toEqual(values(WHOLE)));

  test("day 0 is not known: the time is asked", () => {
    const cast = read(changed("2023 614", "2023 6 0")).casts[0];
    expect([cast?.time, cast?.evidence.find(({ fact }) => fact === "time")?.certainty]).toEqual([
      Number.NaN,
      "unknown",
    ]);
  });

  test.each(["A", "B"])("version %s", (version) =>
    expect(values(changed("C36297", `${version}36297`))).toEqual(values(WHOLE)),
  );

  test("version digit of the oldest release, as the version alone", () =>
    expect(values(changed("C36297", "136297"))).toEqual(values(WHOLE)));

  test("units that the release decides are unknown, and an answer gives them", () => {
    // code 3 (oxygen) in place of code 2 (salinity)
    const text = WHOLE.replaceAll("12002250", "13002250").replaceAll("12002250", "13002250");
    const oxygen = read(text).casts[0]?.columns.get("oxygen");
    expect([oxygen?.units, oxygen?.standardName]).toEqual([null, null]);
    const asking = noAnswers({ "units:3 oxygen": "umol kg-1" });
    const answered = attempt(readWodAscii, bytesOf(text), "x.dat", asking);
    expect(answered.ok && answered.value.casts[0]?.columns.get("oxygen")?.units).toBe("umol kg-1");
  });
});

describe("strict: what breaks the format refuses the profile and says where", () => {
  test.each<[string, string, string, RegExp, number]>([
    ["stated size", "C36297", "C36307", /states 630 characters, the sections hold 629/, 1],
    ["a width that is no digit", "C362979000500", "C36297900x500", /cast number/, 1],
    ["a value that does not begin with a digit", "55316637", "x5316637", /begin with a digit/, 2],
    ["no day of the calendar", "2023 614", "2023 631", /no day of the calendar/, 1],
    ["month 13", "2023 614", "20231314", /no day of the calendar/, 1],
    ["longitude beyond 180", "564-43000", "562-43000", /longitude is -430/, 1],
    ["latitude beyond 90", "664512000", "662512000", /latitude is 5120/, 1],
    ["hour beyond 24", "332725", "331725", /time of day is 72.5/, 1],
    ["depth that does not increase", "3322000055316155", "3321000055316155", /depth 1 m follows on 1 m/, 2],
    ["text after the last value", "33115100           ", "33115100       7   ", /blank/, 8],
    ["profile type", "564-430002150 3", "564-430002157 3", /profile type should be 0 or 1/, 1],
  ])("%s", (_, from, to, message, line) => {
    const text = WHOLE.replace(from, to);
    if (text === WHOLE) return expect.fail(`${from} is not in the sample`);
    const file = read(text);
    expect(file.casts.map(({ id }) => id)).toEqual(["9000501"]);
    expect(file.findings).toHaveLength(1);
    expect(file.findings[0]).toMatchObject({ code: "wod-ascii/profile" });
    expect(file.findings[0]?.message).toMatch(message);
    expect(file.findings[0]?.where.line).toBe(line);
  });

  test("a line that is too long", () => {
    const file = read(WHOLE.replace("\n", "12\n"));
    expect(file.casts.map(({ id }) => id)).toEqual(["9000501"]);
    expect(file.findings[0]).toMatchObject({ code: "wod-ascii/line-length", where: { line: 1 } });
  });

  test("a lost line refuses its profile and not the next", () => {
    const lines = WHOLE.split("\n");
    const file = read(lines.filter((_, i) => i !== 3).join("\n"));
    expect(file.casts.map(({ id }) => id)).toEqual(["9000501"]);
    expect(file.findings.map(({ code }) => code)).toEqual(["wod-ascii/profile"]);
  });

  test("nothing but a broken profile is a failure", () => {
    const first = WHOLE.split("\n").slice(0, 8).join("\n").replace("C36297", "C36307");
    const result = attempt(readWodAscii, bytesOf(first), "x.dat");
    expect(result.ok).toBe(false);
  });
});

describe("scales of old data are asked", () => {
  const old = changed("2023 614", "1975 614");

  test("temperature before 1990 and salinity before 1978", () => {
    const asking = noAnswers();
    attempt(readWodAscii, bytesOf(old), "x.dat", asking);
    expect(asking.asked.map(({ topic, holds }) => `${topic} ${holds}`)).toEqual(
      expect.arrayContaining(["temperatureScale 9000500", "salinityScale 9000500"]),
    );
  });

  test("answers settle them", () => {
    const answers = { temperatureScale: "IPTS-68", salinityScale: "unknown" };
    const columns = readOk(readWodAscii, bytesOf(old), "x.dat", answers).casts[0]?.columns;
    // t90 = t68 / 1.00024 (TEOS-10)
    expect(columns?.get("temperature")?.values[0]).toBeCloseTo(16.637 / 1.00024, 12);
    expect(columns?.get("salinity")).toBeUndefined();
    expect(columns?.get("salinity_as_stored")).toMatchObject({ standardName: null, units: null });
  });
});

describe("what the pressure counts from", () => {
  // the first pressure of the second cast, 1.0 dbar at 1 m, with the air above: 11.1 dbar
  const absolute = changed("5315141002211000", "53151410033111100").replace("C372579", "C372679");

  test("sea pressure agrees with the depth beside it", () => {
    const said = read(WHOLE).casts[1]?.evidence.filter(({ fact }) => fact === "column:25 pressure");
    expect(said?.map(({ certainty }) => certainty)).toEqual(["stated", "implied"]);
  });

  test("anything else is asked", () => {
    // one digit more moves the rest: a profile with its own lines
    const [first, second] = [
      absolute.slice(0, absolute.indexOf("C3726")),
      absolute.slice(absolute.indexOf("C3726")),
    ];
    const stream = second.replaceAll("\n", "").trimEnd();
    const lines = stream.match(/.{1,80}/g)!.join("\n");
    const asking = noAnswers();
    const result = attempt(readWodAscii, bytesOf(`${first}${lines}\n`), "x.dat", asking);
    expect(result.ok && result.value.findings).toEqual([]);
    expect(asking.asked.find(({ topic }) => topic === "pressureKind")?.holds).toEqual(["9000501"]);
    const answered = readOk(readWodAscii, bytesOf(`${first}${lines}\n`), "x.dat", {
      pressureKind: "absolute",
    });
    expect(answered.casts[1]?.columns.get("pressure")?.standardName).toBe("sea_water_pressure");
    expect(answered.casts[1]?.state.pressureZeroed).toBe(false);
  });
});

test("is recognised by its first characters, and other texts are not", () => {
  expect(recogniseWodAscii(bytesOf(WHOLE))?.because).toContain("version C");
  // damaged within the first header: the reader tells it, and nobody reads the digits as a table
  expect(recogniseWodAscii(bytesOf(WHOLE.replace("C362979", "C36x979")))).not.toBeNull();
  for (const text of ["CTD,20231102\n", "time,depth\n1,2\n", "C12", "123 456 789\n1 2 3\n", ""])
    expect(recogniseWodAscii(bytesOf(text)), text).toBeNull();
});

interface RealTruth {
  version: string;
  bytes_in_profile: number;
  unique_cast: number;
  country: string;
  cruise: number;
  date: [number, number, number];
  time_hours: number | null;
  latitude: number;
  longitude: number;
  n_levels: number;
  variable_codes: number[];
  secondary: [number, number][];
  first_level: (number | null)[];
  last_level: (number | null)[];
}
const ownNames: Readonly<Record<number, string>> = {
  1: "temperature",
  2: "salinity",
  3: "oxygen",
  4: "phosphate",
  6: "silicate",
  8: "nitrate",
  9: "ph",
  17: "alkalinity",
  21: "variable_21",
  25: "pressure",
};

// Real profiles, decoded by an independent reader from the published field tables (real/wod/truth.json).
testWithShared(["samples", "real", "wod"], "real profiles of the database", (folder) => {
  const { files } = JSON.parse(readFileSync(`${folder}/truth.json`, "utf8")) as {
    files: Record<string, RealTruth[]>;
  };
  for (const [name, wanted] of Object.entries(files)) {
    const bytes = readFileSync(`${folder}/${name}`);
    expect(recogniseWodAscii(bytes), name).not.toBeNull();
    const file = readOk(readWodAscii, bytes, name);
    expect(file.findings, name).toEqual([]);
    expect(file.casts.map(({ id }) => id)).toEqual(wanted.map((want) => String(want.unique_cast)));
    for (const [i, want] of wanted.entries()) {
      const cast = file.casts[i]!;
      expect(cast.start).toMatchObject({ latitude: want.latitude, longitude: want.longitude });
      const [year, month, day] = want.date;
      const seconds =
        want.time_hours === null
          ? Number.NaN
          : Date.UTC(year, month - 1, day) / 1000 + want.time_hours * 3600;
      if (Number.isNaN(seconds)) expect(cast.time).toBeNaN();
      else expect(cast.time).toBeCloseTo(seconds, 3);
      expect(cast.rows).toBe(want.n_levels);
      const columns = ["depth", ...want.variable_codes.map((code) => ownNames[code]!)];
      const level = (row: number) => columns.map((column) => cast.columns.get(column)?.values.at(row));
      const orNaN = (values: (number | null)[]) => values.map((value) => value ?? Number.NaN);
      expect(level(0)).toEqual(orNaN(want.first_level));
      expect(level(-1)).toEqual(orNaN(want.last_level));
      expect(cast.notes).toEqual(
        expect.arrayContaining([`country ${want.country}`, `cruise ${want.cruise}`]),
      );
      const bottom = want.secondary.find(([code]) => code === 10)?.[1];
      if (bottom !== undefined) expect(cast.notes).toContain(`bottom depth = ${bottom} m`);
    }
  }
});
