import { formatIsoTime } from "../time/iso-time.ts";
import type { Cast, StepRecord } from "./cast.ts";
import { skipped, withColumns, withStep } from "./change.ts";
import { keepReceived } from "./received.ts";

const step = "calibration corrections";

/** A dated correction: true value = slope times reading plus offset, house units. */
export interface Correction {
  /** Epoch seconds. */
  readonly date: number;
  readonly slope: number;
  readonly offset: number;
  /** Made after cleaning or repair: it begins a new stretch and says nothing about earlier data. */
  readonly afterCleaning: boolean;
}

export interface CalibrationParameters {
  readonly temperature: readonly Correction[];
  readonly conductivity: readonly Correction[];
  readonly pressure: readonly Correction[];
  /** Added to a salinity that came without conductivity, by name. */
  readonly salinityOffset: { readonly value: number; readonly from: string } | null;
}

/** Correction in force at a time, and how it was found. */
export interface CorrectionInForce {
  readonly slope: number;
  readonly offset: number;
  readonly how: "between two" | "one only" | "nearest";
  /** Between two: what changed from the earlier to the later one, and the date of each, epoch seconds. */
  readonly change?: {
    readonly slope: number;
    readonly offset: number;
    readonly from: number;
    readonly to: number;
  };
}

/**
 * The correction of a sensor at a time: linear in time between two calibrations of a stretch, constant with one, the
 * nearer one outside.
 *
 * @param time epoch seconds; NaN only gives a correction where there is one entry
 * @returns null where nothing is in force
 * @source drift linear in time: practice of thermosalinographs (GOSUD) for fouling; otherwise common practice
 */
export function correctionAt(entries: readonly Correction[], time: number): CorrectionInForce | null {
  const ordered = [...entries].sort((a, b) => a.date - b.date);
  const [only] = ordered;
  if (only === undefined) return null;
  const constant = (entry: Correction, how: CorrectionInForce["how"]) => ({
    slope: entry.slope,
    offset: entry.offset,
    how,
  });
  if (ordered.length === 1) return only.afterCleaning && time < only.date ? null : constant(only, "one only");
  if (Number.isNaN(time)) return null;
  const before = ordered.findLast(({ date }) => date <= time);
  const after = ordered.find(({ date }) => date > time);
  if (before !== undefined && after !== undefined && !after.afterCleaning) {
    const part = (time - before.date) / (after.date - before.date);
    const [slope, offset] = [after.slope - before.slope, after.offset - before.offset];
    return {
      slope: before.slope + part * slope,
      offset: before.offset + part * offset,
      how: "between two",
      change: { slope, offset, from: before.date, to: after.date },
    };
  }
  if (before !== undefined) return constant(before, "nearest");
  return after === undefined || after.afterCleaning ? null : constant(after, "nearest");
}

/**
 * Corrects temperature, conductivity and pressure by their dated calibrations; the columns as read are kept under
 * `<name>_received`. Salinity is never corrected where there is a conductivity: it is computed from corrected values.
 */
export function correctSensors(cast: Cast, parameters: CalibrationParameters): Cast {
  const { salinityOffset } = parameters;
  const numbers: Record<string, number | string> = {};
  const told: string[] = [];
  const doubts: string[] = [];
  let result = cast;
  if (cast.steps.some((each) => each.step === step && each.parameters.skipped !== true))
    return withStep(cast, skipped(step, "the sensors have been corrected before"));
  for (const name of ["temperature", "conductivity", "pressure"] as const) {
    if (parameters[name].length === 0 || !cast.columns.has(name)) continue;
    const found = correctionAt(parameters[name], cast.time);
    if (found === null) {
      doubts.push(`none of ${name} is in force`);
      continue;
    }
    const { slope, offset, how, change } = found;
    if (how === "nearest") doubts.push(`${name} by the nearest calibration, not one before and one after`);
    numbers[`${name}.slope`] = slope;
    numbers[`${name}.offset`] = offset;
    numbers[`${name}.by`] = how;
    if (change !== undefined) {
      numbers[`${name}.slopeChange`] = change.slope;
      numbers[`${name}.offsetChange`] = change.offset;
      numbers[`${name}.calibratedFrom`] = formatIsoTime(change.from);
      numbers[`${name}.calibratedTo`] = formatIsoTime(change.to);
    }
    told.push(`${name} times ${slope} plus ${offset}`);
    result = keepReceived(result, name);
    const column = result.columns.get(name)!;
    result = withColumns(result, { ...column, values: column.values.map((x) => slope * x + offset) });
  }
  if (salinityOffset !== null) {
    const column = cast.columns.get("salinity");
    if (column === undefined || cast.columns.has("conductivity"))
      doubts.push("no salinity offset: salinity is computed from conductivity, which is what to correct");
    else {
      numbers["salinity.offset"] = salinityOffset.value;
      numbers["salinity.from"] = salinityOffset.from;
      told.push(`salinity plus ${salinityOffset.value} (${salinityOffset.from})`);
      result = keepReceived(result, "salinity");
      result = withColumns(result, { ...column, values: column.values.map((x) => x + salinityOffset.value) });
    }
  }
  if (told.length === 0 && doubts.length === 0) return cast;
  const record: StepRecord = {
    step,
    parameters: { ...(told.length === 0 ? { skipped: true } : {}), ...numbers },
    counts: {},
    words:
      told.length === 0
        ? `${step} skipped: ${doubts.join("; ")}`
        : `calibration corrections made: ${[...told, ...doubts].join("; ")}`,
  };
  return withStep(result, record);
}

/** What the drift between two calibrations leaves open. */
export interface DriftUncertainty {
  /** Standard uncertainty, in the unit of the column, one per row. */
  readonly values: Float64Array;
  /** Moments of the two calibrations, ISO 8601. */
  readonly from: string;
  readonly to: string;
}

/**
 * Standard uncertainty of a sensor that drifted between two calibrations, as the step of calibration corrections
 * recorded them: half of what the reading would have changed by from one to the other, as the half-width of a
 * rectangular distribution. That the drift went linearly in time is an assumption; it may have come all at once.
 *
 * @param values corrected values of the sensor, in the unit of its column; NaN where missing
 * @returns null unless the sensor was corrected between two calibrations
 * @source JCGM 100:2008 (GUM), section 4.3.7: the half-width over the root of three; that half of the drift is the
 *         half-width: house
 */
export function driftUncertainty(
  cast: Cast,
  name: "temperature" | "conductivity" | "pressure",
  values: Float64Array,
): DriftUncertainty | null {
  const made = cast.steps.find((each) => each.step === step && each.parameters.skipped !== true)?.parameters;
  const number = (key: string) => made?.[`${name}.${key}`];
  const [slope, offset] = [number("slope"), number("offset")];
  const [slopeChange, offsetChange] = [number("slopeChange"), number("offsetChange")];
  if (typeof slope !== "number" || typeof offset !== "number") return null;
  if (typeof slopeChange !== "number" || typeof offsetChange !== "number") return null;
  const drift = values.map((x) => Math.abs((slopeChange * (x - offset)) / slope + offsetChange));
  return {
    values: drift.map((change) => change / 2 / Math.sqrt(3)),
    from: String(number("calibratedFrom")),
    to: String(number("calibratedTo")),
  };
}
