import type { Cast, Column, StepRecord } from "../cast/cast.ts";
import { withColumns, withStep, withTest } from "../cast/change.ts";
import { printedResolution } from "../cast/printed-resolution.ts";
import { quantile } from "../cast/robust.ts";
import { rowTimes } from "../cast/row-times.ts";
import { pressureSpikes } from "../cast/spikes.ts";
import { aggregate, worsen } from "./aggregate.ts";
import { type ChosenTests, judgeChosen } from "./chosen-tests.ts";
import { densityInversion } from "./density-inversion.ts";
import { densityInversionLayers } from "./density-inversion-layers.ts";
import { Flag } from "./flag.ts";
import { caughtAny, countCaught } from "./flags-of-test.ts";
import { flatLine } from "./flat-line.ts";
import { freezingPoint } from "./freezing-point.ts";
import { gap } from "./gap.ts";
import { grossRange } from "./gross-range.ts";
import { inheritedFlags, layerTests } from "./inherited-flags.ts";
import { type JudgedRun, judgedMask, judgedRuns, judgeRuns } from "./judged-rows.ts";
import { MANUAL, type ManualFlag, manualFlagsOf, manualStep, overrule } from "./manual-flags.ts";
import { judgeByPlace, type PlaceTests } from "./place-tests.ts";
import { thresholdsUsed } from "./preset-record.ts";
import type { DepthLimits, JudgedQuantity, Preset } from "./presets.ts";
import { pressureIncreasing } from "./pressure-increasing.ts";
import { rateOfChange } from "./rate-of-change.ts";
import { ratedPressureTest } from "./rated-pressure.ts";
import { sourceFlagTest } from "./source-flags.ts";
import { spikeVertical } from "./spike-vertical.ts";
import { stuck } from "./stuck.ts";
import { stuckValue } from "./stuck-value.ts";

export interface JudgeParameters {
  readonly preset: Preset;
  /** Ranges of the sensors by their data sheet, instead of the preset's; house units. */
  readonly sensorRanges: Partial<Readonly<Record<JudgedQuantity, readonly [number, number]>>>;
  /** dbar; null if not known: the test is not run. */
  readonly ratedPressure: number | null;
  /** Thickness of the layers of the density inversion test, dbar. */
  readonly layerWidth: number;
  /** dbar by which a row may lie above the deepest row so far and still count in that test. */
  readonly reversalTolerance: number;
  /** Tests that no preset runs, with the limits that a user gives. */
  readonly chosen: ChosenTests;
  /** Flags that persons set; they win over the tests, and computed columns take them over. */
  readonly manual?: readonly ManualFlag[];
  readonly place: PlaceTests;
}

const quantities = ["pressure", "temperature", "conductivity", "salinity"] as const;

/**
 * Runs the quality tests of a preset and sets the aggregate flag of every column.
 *
 * Tests that processing steps have run already (spike_return, pressure_increasing, unsettled) are taken as they
 * are. Columns that no test and no input judges are 2, and 9 where missing. What persons judged is set after the tests
 * and recorded as steps of its own.
 */
export function judgeCast(cast: Cast, parameters: JudgeParameters): Cast {
  const { preset } = parameters;
  const runs = judgedRuns(cast.segments);
  const mask = judgedMask(cast.rows, runs);
  const judging = new Judging(cast, runs, mask);
  const tested = new Map<string, Column>();
  for (const name of quantities) {
    const column = cast.columns.get(name);
    if (column !== undefined) tested.set(name, judging.only(column));
  }
  const set = (name: string, test: string, result: Uint8Array | null) => {
    const column = tested.get(name);
    if (column !== undefined && result !== null) tested.set(name, withTest(column, test, result));
  };

  for (const name of quantities) {
    const column = tested.get(name);
    if (column === undefined) continue;
    const range = preset.ranges[name];
    const sensorRange = parameters.sensorRanges[name] ?? range.sensor.value;
    const expectedRange = range.expected?.value ?? null;
    set(name, "gross_range", grossRange(column.values, { sensorRange, expectedRange }, mask));
    const vertical = preset.spikeVertical[name];
    if (vertical !== undefined && cast.kind === "profile")
      set(name, "spike_vertical", judging.spikeVertical(column, vertical));
  }
  const pressure = tested.get("pressure");
  if (pressure !== undefined) {
    if (parameters.ratedPressure !== null)
      set("pressure", "rated_pressure", ratedPressureTest(pressure.values, parameters.ratedPressure));
    if (preset.pressureIncreasing === "published" && cast.kind === "profile")
      set("pressure", "pressure_increasing", judging.publishedOrder(pressure));
  }
  const depth = cast.columns.get("depth");
  if (depth !== undefined && depth.source !== null && pressure !== undefined) {
    // a depth that was measured is judged by the pressure computed from it; presets have no limits for depth
    const judgedBy = [...tested.get("pressure")!.tests].filter(([test]) => !layerTests.includes(test));
    tested.set("depth", { ...depth, tests: new Map(judgedBy) });
  }
  const stood = judging.stuck(preset, tested);
  if (preset.stuck.form === "profile" && cast.kind === "profile") {
    for (const name of ["temperature", "conductivity", "salinity"])
      set(name, "stuck_value", judging.stuckValue(tested.get(name)));
  } else {
    set("temperature", "stuck", stood);
    set("conductivity", "stuck", stood);
  }
  const worst = preset.name === "ocean" ? 4 : 3;
  for (const name of quantities) {
    const column = tested.get(name);
    if (column === undefined) continue;
    const { pressure: coordinate } = judging;
    for (const [test, result] of [
      ...judgeChosen(name, column, tested, coordinate, runs, parameters.chosen, worst),
      ...judgeByPlace(cast, name, column, coordinate, runs, parameters.place),
    ])
      set(name, test, result);
  }
  set("temperature", "freezing_point", judging.freezing(tested, preset.freezingTolerance.value));
  if (cast.kind === "fixed-depth")
    for (const name of ["temperature", "conductivity", "salinity"] as const) {
      const column = tested.get(name);
      if (column === undefined) continue;
      set(name, "flat_line", judging.flatLine(column, preset));
      set(name, "rate_of_change", judging.rateOfChange(column, preset, name));
    }
  const inverted = judging.inversion(parameters, tested);
  if (inverted !== null) {
    const name = preset.densityInversion.form === "levels" ? "density_inversion" : "density_inversion_layers";
    set("salinity", name, inverted);
    if (preset.densityInversion.form === "levels") set("temperature", name, inverted);
  }

  for (const [name, column] of cast.columns) {
    const received = sourceFlagTest(column);
    if (received !== null) tested.set(name, withTest(tested.get(name) ?? column, "source_flags", received));
  }

  const { manual = [] } = parameters;
  const flagged = flagAll(cast, tested, preset, inverted, manual);
  const judged = withStep(withColumns(cast, ...flagged.values()), recordFor(cast, flagged, parameters));
  return manual.reduce((result, one) => withStep(result, manualStep(result, one)), judged);
}

/** Tests that every quantity of its kind needs for a 1. */
function requiredFor(cast: Cast, name: string, column: Column, preset: Preset): readonly string[] {
  const inputs = column.method === null ? [] : ["inputs"];
  if (name === "depth" && column.method === null) return ["gross_range"];
  if (!(name in preset.required)) return inputs;
  const own = preset.required[name as JudgedQuantity];
  if (cast.kind === "profile" || name === "pressure") return [...own, ...inputs];
  const flat = column.method === null && preset.flatLineAfter !== null ? ["flat_line"] : [];
  const spike = preset.spikeReturn[name as JudgedQuantity] === undefined ? [] : ["spike_return"];
  return ["gross_range", ...spike, ...flat, "rate_of_change", ...inputs];
}

/** Aggregate flags of all columns, those of inputs before those of what was computed from them. */
function flagAll(
  cast: Cast,
  tested: ReadonlyMap<string, Column>,
  preset: Preset,
  inverted: Uint8Array | null,
  manual: readonly ManualFlag[],
): Map<string, Column> {
  const done = new Map<string, Column>();
  const passedOn = new Map<string, Uint8Array>();
  const flag = (name: string) => {
    let column = tested.get(name) ?? cast.columns.get(name);
    if (column === undefined || done.has(name)) return;
    if (column.method !== null) {
      const { from } = column.method;
      // a column that names itself among its inputs must not go round in circles
      done.set(name, column);
      for (const input of from) flag(input);
      const inputs = from.flatMap((input) => passedOn.get(input) ?? []);
      column = withTest(column, "inputs", inheritedFlags(column.values, inputs));
      if (from.includes("salinity") && inverted !== null && preset.densityInversion.form === "layers")
        column = withTest(column, "density_inversion_layers", inverted);
    }
    // no preset requires a layer test for a 1: they come on top, and are not passed on
    const layer = layerTests.flatMap((test) => column?.tests.get(test) ?? []);
    const condemning = [...column.tests].filter(([test]) => !layerTests.includes(test));
    const { values } = column;
    const passed = aggregate(values, new Map(condemning), requiredFor(cast, name, column, preset));
    const flags = layer.length === 0 ? passed : passed.slice();
    for (const result of layer) worsen(flags, result);
    const own = manualFlagsOf(cast, name, manual);
    passedOn.set(name, overrule(passed, values, own));
    done.set(name, {
      ...(own === null ? column : withTest(column, MANUAL, own)),
      flags: overrule(flags, values, own),
    });
  };
  for (const name of cast.columns.keys()) flag(name);
  return done;
}

function recordFor(
  cast: Cast,
  columns: ReadonlyMap<string, Column>,
  parameters: JudgeParameters,
): StepRecord {
  const counts: Record<string, number> = {};
  for (const [name, column] of columns)
    for (const [test, result] of column.tests) {
      if (test === "inputs" || test === MANUAL) continue;
      const caught = countCaught(result);
      if (caught > 0) counts[`${name}.${test}`] = caught;
    }
  const times = rowTimes(cast.elapsed);
  const longest = parameters.preset.longestGap.value;
  if (times !== null && cast.elapsed !== null) {
    counts.timeGaps = countCaught(gap(cast.elapsed, longest * times.interval, 3));
  }
  return {
    step: "quality tests",
    parameters: thresholdsUsed(cast, parameters),
    counts,
    words: `quality tests of the preset ${parameters.preset.name} run, IODE primary flags set${sourceWords(columns)}`,
  };
}

/** What was done with the flags of the source. */
function sourceWords(columns: ReadonlyMap<string, Column>): string {
  const schemes = new Set<string>();
  for (const { tests, sourceFlags } of columns.values())
    if (tests.has("source_flags") && sourceFlags !== null) schemes.add(sourceFlags.scheme);
  return schemes.size === 0
    ? ""
    : `; what the source flagged (${[...schemes].join(", ")}) is at least that bad`;
}

/** The tests of one cast, each restricted to the judged directions. */
class Judging {
  readonly #cast: Cast;
  readonly #runs: readonly JudgedRun[];
  readonly #mask: Uint8Array;
  /** Pressure with spikes left out, as a coordinate; undefined where the cast has none. */
  readonly pressure: Float64Array | undefined;

  constructor(cast: Cast, runs: readonly JudgedRun[], mask: Uint8Array) {
    this.#cast = cast;
    this.#runs = runs;
    this.#mask = mask;
    const pressure = cast.columns.get("pressure")?.values;
    const spikes = pressureSpikes(cast);
    this.pressure = pressure === undefined ? undefined : without(pressure, spikes);
  }

  /** The column with the tests of earlier steps, 2 (9 where missing) outside the judged rows. */
  only(column: Column): Column {
    const tests = new Map<string, Uint8Array>();
    for (const [name, result] of column.tests) {
      const kept = result.slice();
      for (let k = 0; k < kept.length; k++)
        if (this.#mask[k] === 0 && kept[k] !== Flag.missing) kept[k] = Flag.notEvaluated;
      tests.set(name, kept);
    }
    return { ...column, tests };
  }

  #judge(
    own: Float64Array | null,
    inputs: readonly (Float64Array | undefined)[],
    test: (...columns: Float64Array[]) => Uint8Array,
  ): Uint8Array | null {
    const known = inputs.filter((values) => values !== undefined);
    return known.length === inputs.length ? judgeRuns(this.#cast.rows, this.#runs, own, known, test) : null;
  }

  spikeVertical(column: Column, { shallow, deep }: DepthLimits) {
    const p = this.#cast.columns.get("pressure")?.values;
    return this.#judge(column.values, [column.values, p], (x, q) =>
      spikeVertical(x!, q!, { shallowLimit: shallow.value, deepLimit: deep.value }),
    );
  }

  publishedOrder(pressure: Column) {
    const result = this.#judge(pressure.values, [this.pressure], (p) =>
      pressureIncreasing(p!, { tolerance: null }),
    );
    // a spike was left out of the order, its own value is not missing
    return result?.map((flag, k) => (flag === 9 && !Number.isNaN(pressure.values[k]!) ? 2 : flag)) ?? null;
  }

  stuckValue(column: Column | undefined) {
    return column === undefined ? null : this.#judge(column.values, [column.values], (x) => stuckValue(x!));
  }

  stuck({ stuck: rule }: Preset, tested: ReadonlyMap<string, Column>): Uint8Array | null {
    const [T, C] = [tested.get("temperature"), tested.get("conductivity")];
    const p = this.pressure;
    if (rule.form !== "travel" || T === undefined || C === undefined || p === undefined) return null;
    if (this.#cast.kind === "fixed-depth") return null;
    const resolution = { temperature: printedResolution(T), conductivity: printedResolution(C) };
    if (Number.isNaN(resolution.temperature) || Number.isNaN(resolution.conductivity)) return null;
    const travel = travelOf(p);
    const fine =
      rule.finePrint !== null &&
      resolution.temperature <= rule.finePrint.temperature.value &&
      resolution.conductivity <= rule.finePrint.conductivityPart.value * Math.abs(quantile(C.values, 0.5));
    return this.#judge(null, [T.values, C.values, p], (t, c, q) =>
      stuck(t!, c!, q!, {
        resolution,
        fewestRows: rule.fewestRows.value,
        leastTravel: Math.max(rule.leastTravel.value, rule.leastPart.value * travel),
        worst: fine ? 4 : 3,
      }),
    );
  }

  freezing(tested: ReadonlyMap<string, Column>, tolerance: number): Uint8Array | null {
    const [t, s, p] = ["temperature", "salinity", "pressure"].map((name) => tested.get(name)?.values);
    return this.#judge(t ?? null, [t, s, p], (x, y, z) => freezingPoint(x!, y!, z!, tolerance));
  }

  flatLine(column: Column, { flatLineAfter }: Preset): Uint8Array | null {
    const resolution = printedResolution(column);
    if (flatLineAfter === null || Number.isNaN(resolution)) return null;
    return this.#judge(column.values, [column.values], (x) =>
      flatLine(x!, {
        badAfter: null,
        questionableAfter: flatLineAfter.value,
        tolerance: resolution / 2,
      }),
    );
  }

  rateOfChange(column: Column, preset: Preset, name: JudgedQuantity): Uint8Array | null {
    const interval = rowTimes(this.#cast.elapsed)?.interval;
    if (interval === undefined) return null;
    return this.#judge(column.values, [column.values], (x) =>
      rateOfChange(x!, {
        deviations: preset.rateDeviations.value,
        windowRows: Math.max(3, Math.round((preset.rateWindow.value * 3600) / interval)),
        // in still water three standard deviations are within the noise
        floor: preset.spikeReturn[name]?.floor.value ?? 0,
      }),
    );
  }

  inversion(
    { preset, layerWidth, reversalTolerance }: JudgeParameters,
    tested: ReadonlyMap<string, Column>,
  ): Uint8Array | null {
    const [t, s] = ["temperature", "salinity"].map((name) => tested.get(name)?.values);
    const p = this.pressure;
    if (this.#cast.kind === "fixed-depth" || t === undefined || s === undefined || p === undefined)
      return null;
    const tolerance = preset.densityInversion.tolerance.value;
    if (preset.densityInversion.form === "levels")
      return this.#judge(null, [t, s, p], (x, y, z) => densityInversion(x!, y!, z!, tolerance));
    const down = this.#runs.filter(({ kind }) => kind === "down");
    const used = without(s, poorRows(tested));
    return judgeRuns(this.#cast.rows, down, null, [t, used, p], (x, y, z) =>
      densityInversionLayers(x!, y!, z!, { layerWidth, tolerance, reversalTolerance, worst: 3 }),
    );
  }
}

/** Values with the marked rows missing; the values themselves where none is marked. */
function without(values: Float64Array, marked: Uint8Array): Float64Array {
  if (!marked.includes(1)) return values;
  const kept = values.slice();
  for (let k = 0; k < kept.length; k++) if (marked[k] === 1) kept[k] = Number.NaN;
  return kept;
}

/** Largest less smallest pressure; NaN if none is known. */
function travelOf(pressure: Float64Array): number {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < pressure.length; k++) {
    if (pressure[k]! < low) low = pressure[k]!;
    if (pressure[k]! > high) high = pressure[k]!;
  }
  return high < low ? Number.NaN : high - low;
}

/** Rows that a spike, a reversal or unsettled sensors already mark: they would make inversions of their own. */
function poorRows(tested: ReadonlyMap<string, Column>): Uint8Array {
  const poor = new Uint8Array(tested.values().next().value?.values.length ?? 0);
  for (const column of tested.values())
    for (const [name, result] of column.tests) {
      if (name === "rated_pressure" || name === "gross_range" || !caughtAny(result)) continue;
      for (let k = 0; k < poor.length; k++) if (result[k] === 3 || result[k] === 4) poor[k] = 1;
    }
  return poor;
}
