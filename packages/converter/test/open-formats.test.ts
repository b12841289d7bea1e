import { readFileSync } from "node:fs";
import { testData, testWithShared } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { mutationsOf, truncationsOf } from "../../formats/test/damage.ts";
import { judgeOpenFormat, openTruth } from "./judge-open-formats.ts";
import { asked, attempt, understoodPath } from "./understand-samples.ts";

interface WhpTruth {
  verdict: string;
  truth: {
    time_utc: string;
    latitude: number;
    longitude: number;
    n_levels: number;
    first_pressure_dbar: number;
    last_pressure_dbar: number;
    first_temperature: number;
    last_salinity: number;
    missing_temperature_rows: number[];
  };
}
const truth = JSON.parse(readFileSync(testData("samples", "openformats", "truth.json"), "utf8")) as {
  files: Record<string, WhpTruth>;
};
const path = (name: string) => testData("samples", "openformats", name);

describe.each(["whp_ok_00003_00001_ct1.csv", "whp_number_headers_short_ct1.csv", "whp_crlf_ct1.csv"])(
  "%s",
  (name) => {
    const want = truth.files[name]!;
    const file = understoodPath(path(name));
    const [cast] = file.casts;

    test("is decoded as its truth says", () => {
      expect(file.format).toBe("WHP-Exchange CTD");
      expect(cast?.time).toBe(Date.parse(want.truth.time_utc) / 1000);
      expect(cast?.start).toMatchObject({ latitude: want.truth.latitude, longitude: want.truth.longitude });
      expect(cast?.rows).toBe(want.truth.n_levels);
      const pressure = cast?.columns.get("pressure")?.values;
      expect([pressure?.[0], pressure?.at(-1)]).toEqual([
        want.truth.first_pressure_dbar,
        want.truth.last_pressure_dbar,
      ]);
      expect(cast?.columns.get("temperature")?.values[0]).toBe(want.truth.first_temperature);
      expect(cast?.columns.get("salinity")?.values.at(-1)).toBe(want.truth.last_salinity);
      const missing = [...(cast?.columns.get("temperature")?.values ?? [])].flatMap((value, row) =>
        Number.isNaN(value) ? [row] : [],
      );
      expect(missing).toEqual(want.truth.missing_temperature_rows);
    });

    test("the role of its time is unknown and asked, and an answer settles it", () => {
      expect([cast?.timeRole, asked(file)]).toEqual(["unknown", ["timeRole"]]);
      const answered = understoodPath(path(name), [{ about: "timeRole", where: name, value: "bottom" }]);
      expect([answered.casts[0]?.timeRole, asked(answered)]).toEqual(["bottom", []]);
    });

    test("its verdict is followed", () => {
      const result = attempt(readFileSync(path(name)), name);
      const warnings = result.ok ? result.warnings.map(({ code }) => code) : null;
      const expected: Record<string, string[]> = {
        accept: [],
        "reject or repair with warning": ["whp-exchange/number-headers-short"],
        "accept with warning (strict: line end rule broken)": ["whp-exchange/line-end"],
      };
      expect(warnings).toEqual(expected[want.verdict]);
    });
  },
);

describe("every fact of the truth file is right or asked", () => {
  test.each(Object.entries(openTruth))("%s", (name, want) => {
    const judged = judgeOpenFormat(understoodPath(path(name)), want);
    expect(judged.length).toBeGreaterThan(7);
    expect(judged.filter(({ verdict }) => verdict !== "right" && verdict !== "asked")).toEqual([]);
  });

  test("and the judge sees a wrong one", () => {
    const want = openTruth["tesac_ok.txt"]!;
    const judged = judgeOpenFormat(understoodPath(path("tesac_ok.txt")), {
      ...want,
      truth: { ...want.truth, latitude: -51.203 } as typeof want.truth,
    });
    expect(judged.filter(({ verdict }) => verdict === "wrong").map(({ fact }) => fact)).toEqual(["latitude"]);
  });
});

test.each(["wod_two_casts.dat", "tesac_ok.txt", "whp_ok_00003_00001_ct1.csv"])(
  "%s: damage never makes a table of it without a question",
  (name) => {
    const bytes = readFileSync(path(name));
    const damaged = [...truncationsOf(bytes), ...[...mutationsOf(bytes, 500)].map((each) => each.bytes)];
    const silent = damaged.filter((each) => {
      const result = attempt(each, name);
      return result.ok && result.value.format === "delimited text" && result.value.questions.length === 0;
    });
    expect(silent).toEqual([]);
  },
);

describe("answers settle what other open formats leave open", () => {
  test("two casts of the World Ocean Database", () => {
    const name = "wod_two_casts.dat";
    const file = understoodPath(path(name));
    expect(file.format).toBe("World Ocean Database native ASCII");
    expect(file.questions.map(({ about, casts }) => [about, casts])).toEqual([
      ["time", ["9000501"]],
      ["timeRole", ["9000500"]],
    ]);
    const answered = understoodPath(path(name), [
      { about: "time", where: `${name}#9000501`, value: "2023-06-15T06:00:00Z" },
      { about: "timeRole", where: name, value: "bottom" },
    ]);
    expect(asked(answered)).toEqual([]);
    expect(answered.casts.map(({ time, timeRole }) => [time, timeRole])).toEqual([
      [Date.UTC(2023, 5, 14, 7, 15) / 1000, "bottom"],
      [Date.UTC(2023, 5, 15, 6) / 1000, "start"],
    ]);
  });

  test("a TESAC report: its decade", () => {
    const name = "tesac_ok.txt";
    const file = understoodPath(path(name));
    expect(file.questions).toMatchObject([
      {
        about: "decade",
        casts: ["tesac_ok"],
        candidates: ["1973", "1983", "1993", "2003", "2013", "2023"],
        answerWith: '{ about: decade, where: "tesac_ok.txt", value: "1973" }',
      },
    ]);
    const answered = understoodPath(path(name), [{ about: "decade", where: name, value: 2023 }]);
    expect(asked(answered)).toEqual([]);
    expect(answered.casts[0]?.time).toBe(Date.UTC(2023, 5, 14, 7, 12) / 1000);
    const wrong = attempt(readFileSync(path(name)), name, [{ about: "decade", where: name, value: 2024 }]);
    expect(!wrong.ok && wrong.problems[0].code).toBe("answers/form");
  });
});

testWithShared(
  ["samples", "real", "whp", "318M20130321_00001_00002_ct1.csv"],
  "the worked example of the format description",
  (file) => {
    // values read by eye from the file
    const read = understoodPath(file);
    const [cast] = read.casts;
    expect(read.findings).toEqual([]);
    expect(cast).toMatchObject({
      rows: 8,
      time: Date.UTC(2013, 2, 22, 22, 5) / 1000,
      timeRole: "unknown",
      start: { latitude: 32.5068, longitude: 133.0297 },
    });
    expect(cast?.columns.get("temperature")?.values[0]).toBe(19.184);
    expect(cast?.columns.get("oxygen")).toMatchObject({
      units: "umol kg-1",
      standardName: "moles_of_oxygen_per_unit_mass_in_sea_water",
    });
    expect(asked(read)).toEqual(["timeRole"]);
  },
);
