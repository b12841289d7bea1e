import { readFileSync } from "node:fs";
import { testData } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import type { Segment, SegmentKind } from "../src/cast/cast.ts";
import { aggregate } from "../src/quality/aggregate.ts";
import { attenuatedSignal } from "../src/quality/attenuated-signal.ts";
import { type ClimatologyLayer, climatology } from "../src/quality/climatology.ts";
import { densityInversion } from "../src/quality/density-inversion.ts";
import { densityInversionLayers } from "../src/quality/density-inversion-layers.ts";
import { digitRollover } from "../src/quality/digit-rollover.ts";
import { endSpike } from "../src/quality/end-spike.ts";
import { flatLine } from "../src/quality/flat-line.ts";
import { freezingPoint } from "../src/quality/freezing-point.ts";
import { gap } from "../src/quality/gap.ts";
import { gradientVertical } from "../src/quality/gradient-vertical.ts";
import { grossRange } from "../src/quality/gross-range.ts";
import { judgedMask, judgedRuns, judgeRuns } from "../src/quality/judged-rows.ts";
import { location } from "../src/quality/location.ts";
import { pressureIncreasing } from "../src/quality/pressure-increasing.ts";
import { rateOfChange } from "../src/quality/rate-of-change.ts";
import { ratedPressureTest } from "../src/quality/rated-pressure.ts";
import { satellites } from "../src/quality/satellites.ts";
import { spike } from "../src/quality/spike.ts";
import { spikeReturn } from "../src/quality/spike-return.ts";
import { spikeVertical } from "../src/quality/spike-vertical.ts";
import { stuck } from "../src/quality/stuck.ts";
import { stuckValue } from "../src/quality/stuck-value.ts";

// Worked cases of our own (test-data/reference/qc-cases.json); the expected flags stand in the file.

/** Union of what the configurations of the tests hold; each test has its own part. */
interface Config {
  readonly sensorRange: [number, number];
  readonly expectedRange?: [number, number];
  readonly floor: number;
  readonly gradientFactor: number;
  readonly spacingFloor: number;
  readonly windowRows: number;
  readonly longest: number;
  readonly badAbove?: number;
  readonly along?: "pressure" | "time";
  readonly shallowLimit: number;
  readonly deepLimit: number;
  readonly layers: ClimatologyLayer[];
  readonly questionableAbove: number;
  readonly limit: number;
  readonly badBelow: number;
  readonly questionableBelow: number;
  readonly largestStep?: number;
  readonly deviations: number;
  readonly badAfter?: number;
  readonly questionableAfter: number;
  readonly tolerance?: number;
  readonly resolution: { temperature: number; conductivity: number };
  readonly fewestRows: number;
  readonly leastTravel: number;
  readonly ratedPressure: number;
  readonly layerWidth: number;
  readonly reversalTolerance: number;
  readonly longestGap: number;
  readonly fewest: number;
  readonly largestSpeed: number;
  readonly adviceDistanceKm: number;
  readonly ignoreBelowKm: number;
  readonly scope?: string[];
  readonly worst?: 3 | 4;
}
interface CaseTest {
  readonly test: string;
  readonly id: string;
  readonly variable?: string;
  readonly config: Config;
}
interface Case {
  readonly id: string;
  readonly name: string;
  readonly data: Record<string, (number | string | null)[]>;
  readonly tests: CaseTest[];
  readonly expected: Record<string, number[]>;
  readonly expected_advice?: Record<string, number[]>;
  readonly aggregates?: { variable: string; tests: string[]; required: string[]; expected: number[] }[];
}

const { cases } = JSON.parse(readFileSync(testData("reference", "qc-cases.json"), "utf8")) as {
  cases: Case[];
};

const implemented = [
  "attenuated_signal",
  "climatology",
  "density_inversion",
  "density_inversion_layers",
  "digit_rollover",
  "end_spike",
  "flat_line",
  "freezing_point",
  "gap",
  "gradient_vertical",
  "gross_range",
  "location",
  "pressure_increasing",
  "rate_of_change",
  "rated_pressure",
  "satellites",
  "spike",
  "spike_return",
  "spike_vertical",
  "stuck",
  "stuck_value",
];
const numbers = (data: Case["data"], name: string): Float64Array =>
  Float64Array.from(data[name] ?? [], (value) => (value === null ? Number.NaN : (value as number)));

function run(data: Case["data"], { test: name, variable, config }: CaseTest): number[] {
  const column = (of: string) => numbers(data, of);
  const rows = Object.values(data)[0]!.length;
  const labels = (data.segments ?? Array<string>(rows).fill("down")) as SegmentKind[];
  const segments: Segment[] = labels.map((kind, k) => ({ kind, firstRow: k, lastRow: k }));
  const { scope, worst = 4 } = config;
  const tolerance = config.tolerance ?? Number.NaN;
  const runs = judgedRuns(segments).filter(({ kind }) => scope === undefined || scope.includes(kind));
  const own = variable === undefined ? null : column(variable);
  const p = column("pressure");
  const ofOwn = (judge: (x: Float64Array) => Uint8Array) => judgeRuns(rows, runs, own, [own!], judge);
  const layered = ["temperature", "practical_salinity", "pressure"].map(column);
  const judge = (): Uint8Array => {
    switch (name) {
      case "gross_range":
        return grossRange(
          own!,
          { sensorRange: config.sensorRange, expectedRange: config.expectedRange ?? null, worst },
          data.segments === undefined ? undefined : judgedMask(rows, judgedRuns(segments)),
        );
      case "spike_return": {
        const along = config.along === "time" ? column("time") : p;
        const limits = { ...config, badAbove: config.badAbove ?? null };
        return judgeRuns(rows, runs, own, [own!, along], (x, q) => spikeReturn(x!, q!, limits));
      }
      case "climatology":
        return judgeRuns(rows, runs, own, [own!, p], (x, q) => climatology(x!, q!, config.layers));
      case "spike":
        return ofOwn((x) => spike(x, { ...config, badAbove: config.badAbove ?? null }));
      case "gradient_vertical":
        return judgeRuns(rows, runs, own, [own!, p], (x, q) => gradientVertical(x!, q!, config));
      case "end_spike":
        return ofOwn((x) => endSpike(x, config.limit, worst));
      case "digit_rollover":
        return ofOwn((x) => digitRollover(x, config.limit, worst));
      case "attenuated_signal":
        return ofOwn((x) => attenuatedSignal(x, config));
      case "spike_vertical":
        return judgeRuns(rows, runs, own, [own!, p], (x, q) => spikeVertical(x!, q!, config));
      case "rate_of_change":
        return ofOwn((x) =>
          rateOfChange(x, config.largestStep === undefined ? config : { largestStep: config.largestStep }),
        );
      case "flat_line":
        return ofOwn((x) => flatLine(x, { ...config, tolerance, badAfter: config.badAfter ?? null }));
      case "stuck_value":
        return ofOwn((x) => stuckValue(x, worst));
      case "stuck":
        return judgeRuns(
          rows,
          runs,
          null,
          ["temperature", "conductivity", "pressure"].map(column),
          (t, c, q) => stuck(t!, c!, q!, config),
        );
      case "pressure_increasing":
        return judgeRuns(rows, runs, p, [p], (q) =>
          pressureIncreasing(q!, { tolerance: config.tolerance ?? null, worst }),
        );
      case "rated_pressure":
        return ratedPressureTest(p, config.ratedPressure);
      case "density_inversion":
        return judgeRuns(rows, runs, null, layered, (t, s, q) =>
          densityInversion(t!, s!, q!, tolerance, worst),
        );
      case "density_inversion_layers":
        return judgeRuns(rows, runs, null, layered, (t, s, q) =>
          densityInversionLayers(t!, s!, q!, { ...config, tolerance, worst }),
        );
      case "freezing_point":
        return judgeRuns(rows, runs, layered[0]!, layered, (t, s, q) => freezingPoint(t!, s!, q!, tolerance));
      case "gap":
        return gap(column("time"), config.longestGap, worst);
      case "satellites":
        return Uint8Array.from(data.satellites!, (n) => satellites(n as number | null, config.fewest));
      case "location":
        return location(column("time"), column("latitude"), column("longitude"), config).flags;
      default:
        throw new RangeError(`no test ${name}`);
    }
  };
  return [...judge()];
}

describe("worked cases", () => {
  test("the cases name tests that stand here, and no other", () => {
    const named = [...new Set(cases.flatMap(({ tests }) => tests.map((each) => each.test)))].sort();
    expect(named).toEqual(implemented);
  });

  for (const { id, name, data, tests, expected, aggregates, expected_advice } of cases) {
    for (const each of tests)
      test(`${id} ${name}: ${each.id}`, () => expect(run(data, each)).toEqual(expected[each.id]));

    for (const { variable, tests: of, required, expected: flags } of aggregates ?? [])
      test(`${id} ${name}: aggregate of ${variable}`, () => {
        const results = of.map((test): [string, Uint8Array] => [
          test,
          Uint8Array.from(run(data, tests.find((each) => each.id === test)!)),
        ]);
        expect([...aggregate(numbers(data, variable), new Map(results), required)]).toEqual(flags);
      });

    for (const [test_, rows] of Object.entries(expected_advice ?? {}))
      test(`${id} ${name}: advice of ${test_}`, () => {
        const { config } = tests.find((each) => each.id === test_)!;
        const found = location(
          numbers(data, "time"),
          numbers(data, "latitude"),
          numbers(data, "longitude"),
          config,
        );
        expect(found.advice).toEqual(rows);
      });
  }
});
