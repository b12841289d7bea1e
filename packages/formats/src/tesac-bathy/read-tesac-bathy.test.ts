import { readFileSync } from "node:fs";
import { testData } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { attempt, noAnswers, readOk } from "../../test/asking-nobody.ts";
import { mutationsOf, truncationsOf } from "../../test/damage.ts";
import { readTesacBathy, recogniseTesacBathy } from "./read-tesac-bathy.ts";

// Own invented reports; truths are written by hand from WMO Manual on Codes (No. 306), volume I.1, FM 63-XI and FM 64-XI.
const WHOLE = readFileSync(testData("samples", "openformats", "tesac_ok.txt"), "utf8");
const { truth } = (
  JSON.parse(readFileSync(testData("samples", "openformats", "truth.json"), "utf8")) as {
    files: Record<string, { truth: TesacTruth }>;
  }
).files["tesac_ok.txt"]!;
interface TesacTruth {
  year_candidates: number[];
  month: number;
  day: number;
  hour_utc: number;
  minute_utc: number;
  latitude: number;
  longitude: number;
  depth_m: number[];
  temperature: number[];
  salinity: number[];
}
const bytesOf = (text: string) => new TextEncoder().encode(text);
const read = (text: string, answers: Readonly<Record<string, string>> = {}) =>
  readOk(readTesacBathy, bytesOf(text), "b.txt", answers);
const values = (text: string, column: string, cast = 0) => [
  ...(read(text).casts[cast]?.columns.get(column)?.values ?? []),
];
const changed = (from: string, to: string, whole = WHOLE) => {
  const text = whole.replace(from, to);
  expect(text).not.toBe(whole);
  return text;
};

describe("the sample report", () => {
  test("is decoded as its truth says", () => {
    const [cast, second] = read(WHOLE).casts;
    expect(second).toBeUndefined();
    expect(cast?.start).toMatchObject({ latitude: truth.latitude, longitude: truth.longitude });
    expect(values(WHOLE, "depth")).toEqual(truth.depth_m);
    expect(values(WHOLE, "temperature")).toEqual(truth.temperature);
    expect(values(WHOLE, "salinity")).toEqual(truth.salinity);
    expect(cast?.notes).toEqual(
      expect.arrayContaining([
        "bottom depth = 24 m",
        "the deepest level lies at the bottom",
        "call sign ZZ9Z",
        "salinity: sensor in the water, worse than 0.02 (k2 = 2)",
        "resolution: position 0.001 degree, depth 1 m, temperature 0.01 degree Celsius, salinity 0.01",
      ]),
    );
    expect(cast?.columns.get("temperature")?.source).toMatchObject({ decimals: 2, significantDigits: 4 });
    expect([...(cast?.lines ?? [])]).toEqual([1, 2, 2, 2, 2, 3, 3]);
  });

  test("its decade is asked and its time stays unknown", () => {
    const asking = noAnswers();
    const result = attempt(readTesacBathy, bytesOf(WHOLE), "b.txt", asking);
    expect(result.ok && result.value.casts[0]?.time).toBeNaN();
    expect(asking.asked).toMatchObject([
      { topic: "decade", holds: ["b"], candidates: truth.year_candidates.map(String) },
    ]);
  });

  test.each([
    ["2023", 2023],
    ["2020", 2023],
    ["2020s", 2023],
    ["1993", 1993],
    ["1990", 1993],
  ])("%s settles it", (answer, year) => {
    const cast = read(WHOLE, { decade: answer }).casts[0];
    expect(cast?.time).toBe(
      Date.UTC(year, truth.month - 1, truth.day, truth.hour_utc, truth.minute_utc) / 1000,
    );
    expect(cast?.timeRole).toBe("start");
  });

  test.each(["2024", "23", "1890", "soon"])("%s does not", (answer) =>
    expect(read(WHOLE, { decade: answer }).casts[0]?.time).toBeNaN(),
  );

  test("a salinity older than the practical scale is asked about", () => {
    const asking = noAnswers({ decade: "1973" });
    attempt(readTesacBathy, bytesOf(WHOLE), "b.txt", asking);
    expect(asking.asked).toMatchObject([{ topic: "salinityScale", holds: ["b"] }]);
  });

  test("29 February belongs to leap years alone", () => {
    const text = changed("14063", "29023");
    expect(read(text, { decade: "2020" }).casts[0]?.time).toBeNaN();
    const leap = changed("14063", "29024");
    expect(read(leap, { decade: "2020" }).casts[0]?.time).toBe(Date.UTC(2024, 1, 29, 7, 12) / 1000);
  });
});

describe("quadrants and resolution", () => {
  test.each([
    ["151203 004310", 51.203, 4.31],
    ["351203 004310", -51.203, 4.31],
    ["551203 004310", -51.203, -4.31],
    ["75120/ 00431/", 51.2, -4.31],
    ["7512// 0043//", 51.2, -4.3],
  ])("%s", (groups, latitude, longitude) =>
    expect(read(changed("751203 004310", groups)).casts[0]?.start).toMatchObject({ latitude, longitude }),
  );

  test("a coarse fix is kept as such", () =>
    expect(read(changed("751203 004310", "7512// 0043//")).casts[0]?.notes.join()).toContain(
      "position 0.1 degree",
    ));
});

describe("levels are read by their leading figure", () => {
  test("a group that is left out, and slashes, are missing", () => {
    const text = changed("31528 41933 20005", "41933 20005", changed("41514", "4////"));
    expect(values(text, "temperature").slice(0, 3)).toEqual([16.63, Number.NaN, 12.73]);
    expect(values(text, "salinity").slice(0, 3)).toEqual([Number.NaN, 19.33, 27.21]);
  });

  test("below zero 5000 is added", () =>
    expect(values(changed("31663", "35123"), "temperature")[0]).toBe(-1.23));

  test("wind and air temperature are kept as they stand", () =>
    expect(read(changed(" 88872", " 10512 40163 88872")).casts[0]?.notes).toEqual(
      expect.arrayContaining(["weather group 10512", "weather group 40163"]),
    ));

  test("currents are kept as they stand, and the report ends with a buoy", () => {
    const { notes } = read(
      changed("00000 55555", "00000 66099 20001 09012 55555", changed("ZZ9Z", "99999 41234")),
    ).casts[0]!;
    expect(notes).toEqual(
      expect.arrayContaining(["groups of currents: 66099 20001 09012", "buoy 41234", "bottom depth = 24 m"]),
    );
  });
});

const BATHY = `JJVV 03078 2359/ 333450 151000 88888 46099 00215 25198 50/// 99901 00123 50098 99902
20046 25504 00000 55555 10225 ZZ8Y=
`;

describe("BATHY", () => {
  test("hundreds by 999zz, tenths of a degree, 500 added below zero", () => {
    expect(values(BATHY, "depth")).toEqual([0, 25, 50, 100, 150, 220, 225]);
    expect(values(BATHY, "temperature")).toEqual([21.5, 19.8, Number.NaN, 12.3, 9.8, 4.6, -0.4]);
    const file = read(BATHY, { decade: "1998" });
    expect(file.format).toBe("WMO FM 63 BATHY");
    expect(file.casts[0]).toMatchObject({ time: Date.UTC(1998, 6, 3, 23, 59) / 1000, rows: 7 });
    expect(file.casts[0]?.start).toMatchObject({ latitude: -33.45, longitude: 151 });
    expect(file.casts[0]?.columns.has("salinity")).toBe(false);
    expect(file.casts[0]?.notes).toEqual(
      expect.arrayContaining([
        "bottom depth = 225 m",
        "the deepest level lies at the bottom",
        "call sign ZZ8Y",
      ]),
    );
  });

  test("0.0 degrees at the surface is a level", () =>
    expect(values(changed("00215 25198", "00000 25198", BATHY), "temperature")[0]).toBe(0));
});

describe("several reports in one file", () => {
  const both = `SOVX10 XXXX 140800\n${WHOLE}${BATHY}NNNN\n`;

  test("each is a cast, headings are kept", () => {
    const file = read(both);
    expect(file.casts.map(({ id, rows }) => [id, rows])).toEqual([
      ["b-1", 7],
      ["b-2", 7],
    ]);
    expect(file.findings).toEqual([]);
    expect(file.casts[0]?.notes[0]).toBe("heading: SOVX10 XXXX 140800");
  });

  test("different last figures: the decade is asked once, or answered for one cast", () => {
    const asking = noAnswers({ "decade#b-2": "1998" });
    const result = attempt(readTesacBathy, bytesOf(both), "b.txt", asking);
    expect(asking.asked).toMatchObject([
      { topic: "decade", holds: ["b-1"], candidates: ["1970", "1980", "1990", "2000", "2010", "2020"] },
    ]);
    expect(result.ok && result.value.casts[1]?.time).toBe(Date.UTC(1998, 6, 3, 23, 59) / 1000);
  });

  test("one that is broken is refused with its place, the other read", () => {
    const file = read(changed("0712/", "0772/", both));
    expect(file.casts.map(({ id }) => id)).toEqual(["b"]);
    expect(file.findings).toMatchObject([{ code: "tesac-bathy/report", where: { line: 2, column: 12 } }]);
  });
});

describe("what breaks the code form is told", () => {
  test.each<[string, string, string, RegExp]>([
    ["no day", "14063", "32063", /no day of the calendar/],
    ["no month", "14063", "14133", /no day of the calendar/],
    ["no hour", "0712/", "2512/", /no time of day/],
    ["no solidus after the time", "0712/", "07123", /hour and minute/],
    ["quadrant", "751203", "651203", /quadrant and latitude/],
    ["latitude beyond 90", "751203", "791203", /latitude is 91.203/],
    ["longitude beyond 180", "004310", "184310", /longitude is 184.31/],
    ["longitude in five figures", "004310", "00431", /longitude of six figures/],
    ["no 888k1k2", "88872 ", "", /888k1k2/],
    ["k1", "88872", "88892", /888k1k2/],
    ["k2 denies the salinity", "88872", "88870", /there is no salinity/],
    ["depth falls", "20003", "20001", /depth 1 m follows on 1 m/],
    ["a depth of slashes", "20003", "2////", /depth is missing/],
    ["two temperatures at a depth", "31528", "31528 31529", /stands twice/],
    ["temperature before the first depth", "20001 31663", "31663 20001", /before the first depth/],
    ["too cold for the sea", "31663", "39663", /no temperature of sea water/],
    ["a group of a wrong length", "41514", "4151", /no place in the code form/],
    ["a group of another kind", "41514", "71514", /no place in the code form/],
    ["letters in a group", "41514", "415A4", /no place in the code form/],
  ])("%s", (_, from, to, message) => {
    const result = attempt(readTesacBathy, bytesOf(changed(from, to)), "b.txt");
    expect(!result.ok && result.problems).toMatchObject([{ code: "tesac-bathy/report" }]);
    expect(!result.ok && result.problems[0].message).toMatch(message);
  });

  test("a report without its end is kept and told", () =>
    expect(read(WHOLE.replace("=", "")).findings).toMatchObject([{ code: "tesac-bathy/not-ended" }]));
});

test("is recognised by its first word, and other texts are not", () => {
  expect(recogniseTesacBathy(bytesOf(WHOLE))?.format).toBe("WMO FM 64 TESAC");
  expect(recogniseTesacBathy(bytesOf(`SOVX10 XXXX 140800\r\r\n${BATHY}`))?.format).toBe("WMO FM 63 BATHY");
  for (const text of ["KKYY is a word\n", "KKYY,1,2\n", "time depth\n1 2\n", ""])
    expect(recogniseTesacBathy(bytesOf(text)), text).toBeNull();
});

describe.each([
  ["TESAC", WHOLE],
  ["BATHY", BATHY],
])("damage to a %s report", (_, whole) => {
  const bytes = bytesOf(whole);
  const columnsOf = (file: ReturnType<typeof read>) =>
    file.casts.map(({ columns }) =>
      [...columns].map(([name, column]) => [name, [...column.values]] as const),
    );
  const good = columnsOf(read(whole))[0]!;

  test("cut at every byte: what is read stood there, and the missing end is told", () => {
    let some = 0;
    for (const cut of truncationsOf(bytes)) {
      const result = attempt(readTesacBathy, cut, "b.txt");
      if (!result.ok || !new TextDecoder().decode(cut).trim()) continue;
      const ended = new TextDecoder().decode(cut).includes("=");
      expect(result.value.findings.map(({ code }) => code)).toEqual(ended ? [] : ["tesac-bathy/not-ended"]);
      some++;
      for (const [name, found] of columnsOf(result.value)[0]!) {
        const want = good.find(([known]) => known === name)![1].slice(0, found.length);
        // the last level may lack what stood behind the cut
        expect(found.slice(0, -1)).toEqual(want.slice(0, -1));
        expect(Number.isNaN(found.at(-1)) || found.at(-1) === want.at(-1)).toBe(true);
      }
    }
    expect(some).toBeGreaterThan(20);
  });

  test("500 seeded mutations: no throw, and depths rise", () => {
    let refused = 0;
    for (const { bytes: damaged } of mutationsOf(bytes, 500)) {
      const result = attempt(readTesacBathy, damaged, "b.txt");
      if (!result.ok) refused++;
      else
        for (const cast of result.value.casts) {
          const depth = [...cast.columns.get("depth")!.values];
          expect(depth).toEqual([...new Set(depth)].sort((a, b) => a - b));
        }
    }
    expect(refused).toBeGreaterThan(100);
  });
});
