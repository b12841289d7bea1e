import { axisTitle, quantityName } from "@wherry/charts";
import {
  absoluteSalinity,
  type Cast,
  type Column,
  conservativeTemperature,
  deepestOf,
  Flag,
  type LayerMeans,
  type Position,
  referenceSalinity,
  type StepRecord,
} from "@wherry/core";

/** Layer means of a cast, arrays of one length. */
export interface SummaryLevels {
  readonly place: Float64Array;
  readonly values: ReadonlyMap<string, Float64Array>;
  readonly count: Int32Array;
  /** g kg-1 and degree Celsius; NaN where an input is missing. */
  readonly SA: Float64Array;
  readonly CT: Float64Array;
  readonly coordinate: "depth" | "pressure";
  readonly width: number;
}

export interface QuantitySummary {
  /** With unit. */
  readonly title: string;
  readonly name: string;
  readonly measured: boolean;
  readonly rows: number;
  readonly questionable: number;
  readonly bad: number;
  readonly missing: number;
  /** Over rows in water flagged neither questionable nor bad; NaN if there are none. */
  readonly least: number;
  readonly most: number;
  /** Values that each test judged questionable and bad. */
  readonly tests: ReadonlyMap<string, readonly [questionable: number, bad: number]>;
}

/** What a report keeps of a cast once it is drawn. */
export interface CastSummary {
  readonly id: string;
  readonly kind: Cast["kind"];
  readonly file: string;
  readonly time: number;
  readonly timeRole: Cast["timeRole"];
  readonly start: Position | null;
  readonly end: Position | null;
  readonly rows: number;
  /** Largest sea pressure, dbar; NaN if not known. */
  readonly deepest: number;
  readonly quantities: ReadonlyMap<string, QuantitySummary>;
  readonly levels: SummaryLevels | null;
  readonly steps: readonly StepRecord[];
}

export function summarise(cast: Cast, layers: LayerMeans | undefined): CastSummary {
  const { id, kind, time, timeRole, start, end, rows } = cast;
  return {
    ...{ id, kind, time, timeRole, start, end, rows },
    file: cast.source.path,
    deepest: deepestOf(cast)?.pressure ?? Number.NaN,
    quantities: new Map([...cast.columns.values()].map((column) => [column.name, quantityOf(cast, column)])),
    levels: layers && layers.centres.length > 0 ? levelsOf(cast, layers) : null,
    steps: [...cast.steps, ...(layers ? [layers.step] : [])],
  };
}

function quantityOf(cast: Cast, column: Column): QuantitySummary {
  const inAir = new Uint8Array(cast.rows);
  for (const { kind, firstRow, lastRow } of cast.segments)
    if (kind === "air") inAir.fill(1, firstRow, lastRow + 1);
  let [questionable, bad, missing] = [0, 0, 0];
  let [least, most] = [Infinity, -Infinity];
  for (let row = 0; row < cast.rows; row++) {
    const value = column.values[row]!;
    const flag = column.flags[row];
    if (Number.isNaN(value)) missing++;
    else if (flag === Flag.questionable) questionable++;
    else if (flag === Flag.bad) bad++;
    else if (inAir[row] === 0) [least, most] = [Math.min(least, value), Math.max(most, value)];
  }
  const tests = new Map(
    [...column.tests].flatMap(([test, flags]): [string, [number, number]][] => {
      let [doubted, refused] = [0, 0];
      for (const flag of flags)
        if (flag === Flag.questionable) doubted++;
        else if (flag === Flag.bad) refused++;
      return doubted + refused > 0 ? [[test, [doubted, refused]]] : [];
    }),
  );
  return {
    title: axisTitle(column),
    name: quantityName(column),
    measured: column.source !== null,
    ...{ rows: cast.rows, questionable, bad, missing, tests },
    least: least <= most ? least : Number.NaN,
    most: least <= most ? most : Number.NaN,
  };
}

function levelsOf(cast: Cast, layers: LayerMeans): SummaryLevels {
  const mean = (name: string) => layers.columns.get(name)?.mean;
  const [SP, t, p] = [mean("salinity"), mean("temperature"), mean("pressure")];
  const fix = cast.start ?? cast.end;
  const none = Number.NaN;
  const SA = layers.centres.map((_, k) => {
    const [sp, pressure] = [SP?.[k] ?? none, p?.[k] ?? none];
    return fix ? absoluteSalinity(sp, pressure, fix.longitude, fix.latitude) : referenceSalinity(sp);
  });
  return {
    place: layers.centres,
    values: new Map([...layers.columns].map(([name, column]) => [name, column.mean])),
    count: layers.columns.get("temperature")?.count ?? new Int32Array(layers.centres.length),
    SA,
    CT: SA.map((sa, k) => conservativeTemperature(sa, t?.[k] ?? none, p?.[k] ?? none)),
    coordinate: layers.coordinate,
    width: layers.width,
  };
}
