import { caughtAny } from "../quality/flags-of-test.ts";
import { depthFromPressureColumn } from "../seawater/depth.ts";
import { depthFromDensityColumn } from "../seawater/depth-from-density.ts";
import { bridge } from "./bridge.ts";
import type { Cast } from "./cast.ts";
import { valuesOf } from "./change.ts";
import { computedColumn, latitudeOf, putComputed } from "./computed-column.ts";
import { rowTimes } from "./row-times.ts";

/** How depth comes from pressure. "automatic": measured density where the mean salinity is below 30. */
export type DepthMethod = "automatic" | "measured density" | "standard ocean";

/** Practical Salinity below which the standard ocean is the wrong ocean. House. */
export const brackishBelow = 30;

/**
 * Adds depth, m, positive down. Where pressure is missing it is interpolated in time, so that every row keeps its
 * place. Not for navigation or diving: local authority and licensed practice decide.
 */
export function addDepth(cast: Cast, method: DepthMethod): Cast {
  const pressure = cast.columns.get("pressure");
  if (pressure === undefined || pressure.method !== null) return cast;
  const latitude = latitudeOf(cast);
  const judged = judgedRows(cast);
  const p = pressure.values;
  const salinity = valuesOf(cast, "salinity");
  const density = valuesOf(cast, "density");
  const mean = salinity === null ? Number.NaN : meanOver(salinity, judged);
  const brackish = method === "automatic" ? mean < brackishBelow : method === "measured density";
  const values = new Float64Array(cast.rows);
  let equation: string;
  let references = "TEOS-10: IOC Manuals and Guides 56 (2010)";
  const why = method === "automatic" && !Number.isNaN(mean) ? `mean salinity ${mean.toFixed(2)}` : "";
  const brackets = (reason: string) => (reason === "" ? "" : ` (${reason})`);
  if (brackish && density !== null && judged.includes(1)) {
    const measured = density.slice();
    for (let k = 0; k < measured.length; k++) if (judged[k] === 0) measured[k] = Number.NaN;
    if (cast.kind === "fixed-depth") measured.fill(meanOver(density, judged));
    depthFromDensityColumn(p, measured, latitude.value, values);
    equation =
      cast.kind === "fixed-depth"
        ? `mean density measured at the sensor${brackets(why)}, gravity by latitude${latitude.words}`
        : `integral of the density measured in the ${directionOf(cast)}${brackets(why)}, gravity by latitude${latitude.words}`;
    references = "hydrostatic equation; TEOS-10: IOC Manuals and Guides 56 (2010)";
  }
  if (!brackish || density === null || !judged.includes(1) || values.every(Number.isNaN)) {
    depthFromPressureColumn(p, latitude.value, values);
    equation = `standard ocean (salinity 35, 0 degrees)${brackets(why)}, gravity by latitude${latitude.words}`;
  }
  const seconds = rowTimes(cast.elapsed)?.seconds ?? Float64Array.from({ length: cast.rows }, (_, k) => k);
  const placed = bridge(values, seconds, new Uint8Array(cast.rows));
  return putComputed(
    cast,
    computedColumn({
      name: "depth",
      standardName: "depth",
      longName: "depth below the water surface",
      units: "m",
      values: placed,
      method: { from: ["pressure"], equation: equation!, references },
    }),
  );
}

/** 1 for rows whose density and salinity describe the water column: the downcast, else upcast, else the stay. */
function judgedRows(cast: Cast): Uint8Array {
  const rows = new Uint8Array(cast.rows);
  const kind = columnKind(cast);
  for (const segment of cast.segments)
    if (segment.kind === kind) rows.fill(1, segment.firstRow, segment.lastRow + 1);
  // rows before the sensors had settled stay in: a density that lags is nearer than that of deeper water
  for (const name of ["pressure", "temperature", "conductivity"]) {
    const result = cast.columns.get(name)?.tests.get("spike_return");
    if (result === undefined || !caughtAny(result)) continue;
    for (let k = 0; k < rows.length; k++) if (result[k] === 3 || result[k] === 4) rows[k] = 0;
  }
  return rows;
}

const columnKind = (cast: Cast) =>
  (["stay", "down", "up"] as const).find((kind) => cast.segments.some((each) => each.kind === kind));

const directionOf = (cast: Cast): string => (columnKind(cast) === "up" ? "upcast" : "downcast");

function meanOver(values: Float64Array, rows: Uint8Array): number {
  let sum = 0;
  let count = 0;
  for (let k = 0; k < values.length; k++) {
    if (rows[k] === 0 || Number.isNaN(values[k]!)) continue;
    sum += values[k]!;
    count++;
  }
  return sum / count;
}
