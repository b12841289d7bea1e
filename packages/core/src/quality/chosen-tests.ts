import type { Column } from "../cast/cast.ts";
import { attenuatedSignal } from "./attenuated-signal.ts";
import { type ClimatologyLayer, climatology } from "./climatology.ts";
import { digitRollover } from "./digit-rollover.ts";
import { endSpike } from "./end-spike.ts";
import type { Worst } from "./flags-of-test.ts";
import { gradientVertical } from "./gradient-vertical.ts";
import { type JudgedRun, judgeRuns } from "./judged-rows.ts";
import { multivariate } from "./multivariate.ts";
import type { JudgedQuantity } from "./presets.ts";
import { spike } from "./spike.ts";

type ByQuantity<T> = Partial<Readonly<Record<JudgedQuantity, T>>>;

/** Published tests that no preset runs: each runs for the quantities for which a user gives its limits. */
export interface ChosenTests {
  readonly climatology: ByQuantity<readonly ClimatologyLayer[]>;
  readonly spike: ByQuantity<{ readonly questionableAbove: number; readonly badAbove?: number }>;
  /** Limits above 500 dbar and below. */
  readonly gradientVertical: ByQuantity<{ readonly shallowLimit: number; readonly deepLimit: number }>;
  readonly endSpike: ByQuantity<{ readonly limit: number }>;
  readonly digitRollover: ByQuantity<{ readonly limit: number }>;
  readonly attenuatedSignal: ByQuantity<{ readonly badBelow: number; readonly questionableBelow: number }>;
  /** Temperature judged by conductivity and the other way round, and so on: `other` should step with it. */
  readonly multivariate: ByQuantity<{
    readonly other: JudgedQuantity;
    readonly deviations: number;
    readonly otherDeviations: number;
    readonly windowRows: number;
  }>;
}

export const noChosenTests: ChosenTests = {
  climatology: {},
  spike: {},
  gradientVertical: {},
  endSpike: {},
  digitRollover: {},
  attenuatedSignal: {},
  multivariate: {},
};

/**
 * Runs the chosen tests of one column inside each judged direction.
 *
 * @param pressure dbar, spikes left out; undefined where the cast has none
 * @param worst    3 where a preset lets these tests at most doubt a value
 * @returns results by test name
 */
export function judgeChosen(
  name: JudgedQuantity,
  column: Column,
  columns: ReadonlyMap<string, Column>,
  pressure: Float64Array | undefined,
  runs: readonly JudgedRun[],
  chosen: ChosenTests,
  worst: Worst,
): ReadonlyMap<string, Uint8Array> {
  const { values } = column;
  const results = new Map<string, Uint8Array>();
  const alone = (test: (x: Float64Array) => Uint8Array) =>
    judgeRuns(values.length, runs, values, [values], (x) => test(x!));
  const beside = (other: Float64Array, test: (x: Float64Array, y: Float64Array) => Uint8Array) =>
    judgeRuns(values.length, runs, values, [values, other], (x, y) => test(x!, y!));

  const layers = chosen.climatology[name];
  if (layers !== undefined && pressure !== undefined)
    results.set(
      "climatology",
      beside(pressure, (x, p) => climatology(x, p, layers)),
    );
  const limits = chosen.spike[name];
  if (limits !== undefined)
    results.set(
      "spike",
      alone((x) => spike(x, { ...limits, badAbove: limits.badAbove ?? null })),
    );
  const gradient = chosen.gradientVertical[name];
  if (gradient !== undefined && pressure !== undefined)
    results.set(
      "gradient_vertical",
      beside(pressure, (x, p) => gradientVertical(x, p, { ...gradient, worst })),
    );
  const ends = chosen.endSpike[name];
  if (ends !== undefined)
    results.set(
      "end_spike",
      alone((x) => endSpike(x, ends.limit, worst)),
    );
  const rollover = chosen.digitRollover[name];
  if (rollover !== undefined)
    results.set(
      "digit_rollover",
      alone((x) => digitRollover(x, rollover.limit, worst)),
    );
  const attenuated = chosen.attenuatedSignal[name];
  if (attenuated !== undefined)
    results.set(
      "attenuated_signal",
      alone((x) => attenuatedSignal(x, { ...attenuated, worst })),
    );
  const multi = chosen.multivariate[name];
  const other = multi === undefined ? undefined : columns.get(multi.other)?.values;
  if (multi !== undefined && other !== undefined)
    results.set(
      "multivariate",
      beside(other, (x, y) => multivariate(x, y, multi)),
    );
  return results;
}

/** Every limit of the chosen tests that judged a cast, for its record. */
export function chosenRecord(
  chosen: ChosenTests,
  columns: ReadonlyMap<string, Column>,
): Record<string, string | number> {
  const used: Record<string, string | number> = {};
  for (const [test, byQuantity] of Object.entries(chosen))
    for (const [name, limits] of Object.entries(byQuantity as ByQuantity<object>)) {
      if (!columns.has(name)) continue;
      const key = `${test.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`)}.${name}`;
      if (Array.isArray(limits)) used[`${key}.layers`] = JSON.stringify(limits);
      else
        for (const [limit, value] of Object.entries(limits as Record<string, string | number>))
          used[`${key}.${limit}`] = value;
      used[`${key}.status`] = "user";
    }
  return used;
}
