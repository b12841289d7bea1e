import type { Problem } from "../problem.ts";
import { type Air, type AirParameters, airDefaults, findAir } from "./air.ts";
import type { Cast, StepRecord } from "./cast.ts";
import { skipped, valuesOf, withColumns, withStep } from "./change.ts";
import { quantile } from "./robust.ts";
import { rowTimes } from "./row-times.ts";

const step = "atmospheric offset";

export interface AtmosphericOffsetParameters {
  /** What the pressure of the source counts from, where a person or the source has said it; else null. */
  readonly reference: "sea" | "absolute" | null;
  /** An offset chosen by name instead of the cast's own reading in air, dbar, and where it comes from. */
  readonly given: { readonly value: number; readonly from: string } | null;
  /** Readings in air up to this are zero errors, dbar. */
  readonly largestZeroError: number;
  /** Readings in air in this range are evidence of an absolute sensor, dbar. */
  readonly absoluteRange: readonly [number, number];
  /** Change of the reading in air from start to end that is worth a warning, dbar. */
  readonly largestDrift: number;
  /** Subtracted from absolute pressure where the cast has no rows in air, dbar. */
  readonly standardAtmosphere: number;
  readonly air: AirParameters;
}

export const atmosphericOffsetDefaults: AtmosphericOffsetParameters = {
  reference: null,
  given: null,
  largestZeroError: 1,
  absoluteRange: [7, 10.5],
  largestDrift: 0.2,
  standardAtmosphere: 10.1325,
  air: airDefaults,
};

/** What a cast's reading in air says about its pressure. */
export interface AtmosphericReading {
  readonly air: Air;
  /**
   * "zero error": subtract the reading; "absolute": the reading looks like the weight of the air;
   * "implausible": neither; "unknown": no rows in air.
   */
  readonly kind: "zero error" | "absolute" | "implausible" | "unknown";
  /** Reading in air at the start, else at the end, dbar; NaN if unknown. */
  readonly reading: number;
  /** Reading at the end minus reading at the start, dbar; NaN unless both are known. */
  readonly drift: number;
}

/**
 * What the pressure of a cast counts from: by choice, by a fact "pressureKind" that the source states or a person
 * has answered, or by a column that says absolute and never reads less than an absolute sensor can; else null.
 */
function referenceOf(
  cast: Cast,
  { reference, absoluteRange }: AtmosphericOffsetParameters,
): "sea" | "absolute" | null {
  const column = cast.columns.get("pressure");
  if (reference !== null || column === undefined) return reference;
  const named = column.standardName === "sea_water_pressure";
  const settled = cast.evidence.some(
    ({ fact, certainty }) =>
      fact.split(":")[0] === "pressureKind" && (certainty === "stated" || certainty === "answered"),
  );
  if (settled) return named ? "absolute" : "sea";
  const least = named ? quantile(column.values, 0.01) : Number.NaN;
  return least >= absoluteRange[0] && !cast.state.pressureZeroed ? "absolute" : null;
}

/** Reads the pressure in air from the cast itself. The cast is not changed. */
export function atmosphericReading(
  cast: Cast,
  parameters: AtmosphericOffsetParameters = atmosphericOffsetDefaults,
): AtmosphericReading {
  const pressure = valuesOf(cast, "pressure");
  const times = rowTimes(cast.elapsed);
  const air: Air =
    pressure === null || times === null
      ? { start: null, end: null }
      : findAir(times, pressure, valuesOf(cast, "conductivity"), parameters.air);
  const reading = (air.start ?? air.end)?.pressure ?? Number.NaN;
  const drift = air.start !== null && air.end !== null ? air.end.pressure - air.start.pressure : Number.NaN;
  const [low, high] = parameters.absoluteRange;
  const kind = Number.isNaN(reading)
    ? "unknown"
    : Math.abs(reading) <= parameters.largestZeroError
      ? "zero error"
      : reading >= low && reading <= high
        ? "absolute"
        : "implausible";
  return { air, kind, reading, drift };
}

/**
 * For readers, before a cast is processed: the question that a cast's pressure leaves open, to be asked as
 * "pressureKind" with the candidates "absolute" and "sea". Reasons: a reading in air that is the weight of the
 * air, one that is neither that nor a zero error, a record that never comes near the surface. Null where nothing
 * must be asked: an absolute sensor cannot read below `absoluteRange`, so one shallow row settles it.
 */
export function pressureQuestion(
  cast: Cast,
  parameters: AtmosphericOffsetParameters = atmosphericOffsetDefaults,
): Problem | null {
  const pressure = valuesOf(cast, "pressure");
  if (pressure === null || parameters.given !== null || referenceOf(cast, parameters) !== null) return null;
  if (cast.state.pressureZeroed || cast.state.processing === "averaged") return null;
  const { kind, reading } = atmosphericReading(cast, parameters);
  const where = { file: cast.source.path, line: cast.lines[0] ?? 1, variable: "pressure" };
  if (kind === "unknown") {
    const least = quantile(pressure, 0.01);
    return least >= parameters.absoluteRange[0]
      ? {
          code: "cast/pressure-reference",
          message: `the record has no rows in air and pressure never reads below ${least.toFixed(2)} dbar: sea pressure or absolute pressure?`,
          where,
          remedy: 'Answer "absolute" or "sea".',
        }
      : null;
  }
  if (kind === "zero error") return null;
  const absolute = kind === "absolute";
  return {
    code: absolute ? "cast/absolute-pressure" : "cast/pressure-in-air",
    message: absolute
      ? `pressure reads ${reading.toFixed(2)} dbar in air, about the weight of the air: is it absolute pressure?`
      : `pressure reads ${reading.toFixed(2)} dbar in air, too much for a zero error and not the weight of the air`,
    where,
    remedy: absolute
      ? 'Answer "absolute" or "sea"; the reading in air is then subtracted.'
      : 'Say what the pressure counts from, "absolute" or "sea", or give the offset to subtract.',
  };
}

/**
 * Subtracts the reading in air from pressure, so that it is sea pressure, zero at the surface. Subtracts nothing
 * where that would be a guess: no rows in air, an open question, data that came zeroed.
 *
 * @source house; zero errors are generally below 1 dbar (archived dataset descriptions)
 */
export function subtractAtmosphere(cast: Cast, parameters: AtmosphericOffsetParameters): Cast {
  const pressure = cast.columns.get("pressure");
  if (pressure === undefined) return withStep(cast, skipped(step, "the cast has no pressure"));
  if (!Number.isNaN(cast.pressureOffset))
    return withStep(cast, skipped(step, "the offset has been subtracted before"));
  const { given } = parameters;
  const reference = referenceOf(cast, parameters);
  const absolute = reference === "absolute";
  const reading = atmosphericReading(cast, parameters);
  if (given === null && !absolute && cast.state.pressureZeroed)
    return withStep(
      { ...asSeaPressure(cast, 0), pressureOffset: 0 },
      skipped(step, "the source gives sea pressure, zero at the surface"),
    );
  if (given === null && !absolute && cast.state.processing === "averaged")
    return withStep(asSeaPressure(cast, 0), skipped(step, "levels already averaged hold no reading in air"));

  const [offset, method] =
    given !== null
      ? ([given.value, `given: ${given.from}`] as const)
      : reading.kind === "zero error" || (reference !== null && reading.kind !== "unknown")
        ? ([reading.reading, reading.air.start !== null ? "air at the start" : "air at the end"] as const)
        : absolute
          ? ([parameters.standardAtmosphere, "standard atmosphere"] as const)
          : ([
              Number.NaN,
              pressureQuestion(cast, parameters) === null ? "not determined" : "open question",
            ] as const);
  const record: StepRecord = {
    step,
    parameters: {
      method,
      offset: Number.isNaN(offset) ? null : offset,
      reference,
      drift: Number.isNaN(reading.drift) ? null : reading.drift,
      largestZeroError: parameters.largestZeroError,
      absoluteRange: parameters.absoluteRange,
      largestDrift: parameters.largestDrift,
    },
    counts: { airRowsAtStart: rowsOf(reading.air.start), airRowsAtEnd: rowsOf(reading.air.end) },
    words: wordsFor(offset, method, reading, parameters),
  };
  if (Number.isNaN(offset))
    return withStep(method === "open question" ? cast : asSeaPressure(cast, 0), record);
  return withStep({ ...asSeaPressure(cast, offset), pressureOffset: offset }, record);
}

const rowsOf = (run: Air["start"]): number => (run === null ? 0 : run.lastRow - run.firstRow + 1);

function wordsFor(
  offset: number,
  method: string,
  { drift, reading }: AtmosphericReading,
  { largestDrift }: AtmosphericOffsetParameters,
): string {
  if (method === "not determined")
    return "atmospheric offset not determined (no rows in air), none subtracted";
  if (method === "open question")
    return Number.isNaN(reading)
      ? "sea pressure or absolute pressure is an open question, nothing subtracted"
      : `pressure reads ${reading.toFixed(2)} dbar in air, which needs an answer; nothing subtracted`;
  const drifted =
    Math.abs(drift) > largestDrift
      ? `; the reading in air changed by ${drift.toFixed(2)} dbar, check it`
      : "";
  const weather = method === "standard atmosphere" ? ", the day's weather not removed" : "";
  return `atmospheric offset ${offset.toFixed(3)} dbar subtracted (${method}${weather})${drifted}`;
}

function asSeaPressure(cast: Cast, offset: number): Cast {
  const column = cast.columns.get("pressure")!;
  const values = offset === 0 ? column.values : column.values.slice();
  if (offset !== 0) for (let k = 0; k < values.length; k++) values[k]! -= offset;
  return withColumns(cast, {
    ...column,
    standardName: "sea_water_pressure_due_to_sea_water",
    longName: "sea pressure, zero at the water surface",
    values,
  });
}
