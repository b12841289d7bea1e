import { readFileSync } from "node:fs";
import { testData, testWithShared } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
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
