import { readFileSync } from "node:fs";
import type { Instrument, SurveySheet } from "@wherry/contracts";
import { testData } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { readSheet } from "../sheet/read-sheet.ts";
import { defaultSettings } from "./settings.ts";
import { settingsFromSheet, sheetOfCast } from "./settings-from-sheet.ts";

const sheet = (processing: SurveySheet["processing"]): SurveySheet => ({
  version: 1,
  survey: { id: "s" },
  ...(processing === undefined ? {} : { processing }),
});
const instrument = (sensors: Instrument["sensors"], other: Partial<Instrument> = {}): Instrument => ({
  name: "probe",
  ...(sensors === undefined ? {} : { sensors }),
  ...other,
});
const plain = sheet(undefined);

describe("settings that a sheet asks for", () => {
  test("a sheet without choices leaves every default", () =>
    expect(settingsFromSheet(plain, null)).toEqual(defaultSettings));

  test("response times match the sensors and tell when they have settled", () => {
    const settings = settingsFromSheet(
      plain,
      instrument({
        temperature: { units: "degree_C", response_time: 0.4, delay: 0.1 },
        conductivity: {
          units: "mS cm-1",
          response_time: 0.05,
          cell_inertia: { size: 0.03, relaxation_time: 8 },
        },
      }),
    );
    expect(settings.response.temperature).toEqual({ time: 0.4, delay: 0.1 });
    expect(settings.response.conductivity).toEqual({ time: 0.05, delay: null });
    expect(settings.segmentation.responseTime).toBe(0.4);
    expect(settings.cell).toEqual({ size: 0.03, relaxationTime: 8 });
  });

  // By hand: 0.1 S m-1 is 1 mS cm-1. A Fahrenheit thermometer that reads 1 % high and 0.9 degF more: a reading of
  // 50 degF (10 degC) is truly 50 * 0.99 - 0.9 = 48.6 degF = 9.2222 degC.
  test("calibrations come in the unit of the sensor", () => {
    const settings = settingsFromSheet(
      plain,
      instrument({
        conductivity: { units: "S m-1", calibrations: [{ date: "2025-01-01", slope: 1.001, offset: 0.1 }] },
        temperature: { units: "degF", calibrations: [{ date: "2025-01-01", slope: 0.99, offset: -0.9 }] },
        pressure: { units: "dbar", calibrations: [{ date: "2025-01-01" }] },
      }),
    );
    const [C] = settings.calibration.conductivity;
    expect(C?.slope).toBe(1.001);
    expect(C?.offset).toBeCloseTo(1, 12);
    const [T] = settings.calibration.temperature;
    expect(T!.slope! * 10 + T!.offset!).toBeCloseTo(((50 * 0.99 - 0.9 - 32) * 5) / 9, 9);
    expect(settings.calibration.pressure).toEqual([]);
  });

  test("clock, smoothing, salinity offset and the borrowed offset", () => {
    const clock = [{ instrument: "2025-05-01T00:00:30Z", true: "2025-05-01T00:00:00Z" }];
    const settings = settingsFromSheet(
      sheet({ smoothing: 1.5, salinity_offset: { value: 0.034, from: "report" }, delay_from_data: true }),
      instrument(undefined, { clock: clock as Instrument["clock"] & object }),
      { value: 0.12, from: "median of 3 casts" },
    );
    expect(settings.clock.pairs).toEqual(clock);
    expect(settings.smoothing.window).toBe(1.5);
    expect(settings.calibration.salinityOffset?.value).toBe(0.034);
    expect(settings.response.delayFromData).toBe(true);
    expect(settings.atmosphericOffset.given).toEqual({ value: 0.12, from: "median of 3 casts" });
  });

  test("a recipe in the sheet gives any other parameter; what stands beside it goes before it", () => {
    const settings = settingsFromSheet(
      sheet({
        preset: "shelf",
        recipe: {
          preset: "fresh",
          quality: { tests: { endSpike: { temperature: { limit: 3 } } }, densityInversion: 0.05 },
          layers: { width: 2 },
        },
      }),
      null,
    );
    expect(settings.preset).toBe("shelf");
    expect(settings.quality.tests.endSpike.temperature).toEqual({ limit: 3 });
    expect(settings.quality.densityInversion).toBe(0.05);
    expect(settings.layers.width).toBe(2);
  });
});

test("the example of the reference page says what it means to", () => {
  const text = readFileSync(testData("sheets", "own-numbers.yaml"), "utf8");
  const read = readSheet(text, "own-numbers.yaml");
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join("; "));
  expect(read.warnings).toEqual([]);
  const settings = settingsFromSheet(read.value, read.value.instruments![0]!);
  expect(settings.preset).toBe("shelf");
  expect(settings.clock.pairs).toHaveLength(2);
  expect(settings.calibration.conductivity.map(({ slope }) => slope)).toEqual([1, 1.0012]);
  expect(settings.calibration.salinityOffset).toEqual({
    value: 0.034,
    from: "check samples of the cruise report",
  });
  expect(settings.response).toMatchObject({ delayFromData: true, temperature: { time: 0.35 } });
  expect(settings.cell).toEqual({ size: 0.03, relaxationTime: 8 });
  expect(settings.bursts.mean).toBe(true);
  expect(settings.quality).toMatchObject({
    ratedPressure: 100,
    sensorRanges: { temperature: [-2, 35] },
    expectedRanges: { salinity: [0, 36] },
    spikeReturn: { temperature: { floor: 0.1, badAbove: 8 } },
    regionalRange: true,
    surfaceLayer: 0.5,
    testFlags: true,
  });
  expect(settings.quality.tests.climatology.temperature).toHaveLength(2);
  expect(settings.quality.tests.digitRollover).toEqual({ conductivity: { limit: 20 } });
});

test("a cast's own choices go before those of the survey, for that cast alone", () => {
  const survey: SurveySheet = {
    ...sheet({ preset: "shelf", smoothing: 2 }),
    casts: [
      { id: "A", file: "a.csv", processing: { preset: "fresh" } },
      { id: "B", file: "b.csv" },
    ],
  };
  const of = (id: string) => settingsFromSheet(sheetOfCast(survey, id), null);
  expect([of("A").preset, of("A").smoothing.window]).toEqual(["fresh", 2]);
  expect([of("B").preset, of("B").smoothing.window]).toEqual(["shelf", 2]);
});
