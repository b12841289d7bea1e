import {
  type Cast,
  COMPOSITION_SALINITY,
  densityUncertainty,
  depthUncertainty,
  practicalSalinityColumn,
  practicalSalinityUncertainty,
  soundSpeedUncertainty,
} from "@wherry/core";

/** Values of a column on the rows of a product, house units, NaN where missing; null if a cast has no such column. */
export type RowsOf = (cast: number, column: string) => Float64Array | null;

/** Standard uncertainties of the sensors on the rows of a product, house units; null where the sheet says nothing. */
export interface SensorRows {
  readonly C: Float64Array | null;
  readonly t: Float64Array | null;
  readonly p: Float64Array | null;
}

const PROPAGATED = {
  salinity: practicalSalinityUncertainty,
  density: densityUncertainty,
  sound_speed: soundSpeedUncertainty,
} as const;

/**
 * Standard uncertainty of a computed quantity, row by row, from those of the sensors.
 *
 * @param name    column of the cast
 * @param rowsOf  the inputs
 * @returns house units; null if the quantity is not computed here from measured conductivity, temperature and
 *          pressure, or if a sensor that counts has no figure
 */
export function derivedUncertainty(
  name: string,
  cast: Cast,
  rowsOf: (column: string) => Float64Array | null,
  sensors: SensorRows,
): Float64Array | null {
  if (cast.columns.get(name)?.method == null) return null;
  const p = measured(cast, "pressure", rowsOf);
  const { C: uC, t: ut, p: up } = sensors;
  if (p === null || up === null) return null;
  if (name === "depth") {
    // where the place is not known, gravity of 45 degrees is as good for an uncertainty
    const latitude = cast.start?.latitude ?? cast.end?.latitude ?? Number.NaN;
    return p.map((each, k) => depthUncertainty(each, Number.isNaN(latitude) ? 45 : latitude, up[k]!));
  }
  if (!(name === "salinity" || name === "density" || name === "sound_speed")) return null;
  const C = measured(cast, "conductivity", rowsOf);
  const t = measured(cast, "temperature", rowsOf);
  if (C === null || t === null || uC === null || ut === null) return null;
  // density and sound speed by a salinity that came from somewhere else do not depend on the conductivity
  if (cast.columns.get("salinity")?.method == null) return null;
  const propagated = PROPAGATED[name];
  return p.map((each, k) => propagated(C[k]!, t[k]!, each, { C: uC[k]!, t: ut[k]!, p: up[k]! }));
}

function measured(
  cast: Cast,
  name: string,
  rowsOf: (column: string) => Float64Array | null,
): Float64Array | null {
  return cast.columns.get(name)?.source == null ? null : rowsOf(name);
}

/** Whether any row is so fresh that river salts may be most of the salt. */
export function isRiverThinned(rowsOf: (column: string) => Float64Array | null): boolean {
  const [C, t, p] = ["conductivity", "temperature", "pressure"].map(rowsOf);
  if (C == null || t == null || p == null) return false;
  const SP = new Float64Array(C.length);
  practicalSalinityColumn(C, t, p, SP);
  return SP.some((value) => value < COMPOSITION_SALINITY);
}
