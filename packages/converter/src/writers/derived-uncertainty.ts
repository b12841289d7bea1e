import {
  type Cast,
  COMPOSITION_SALINITY,
  densityUncertaintyColumn,
  depthUncertainty,
  practicalSalinityColumn,
  practicalSalinityUncertaintyColumn,
  type SensorUncertainty,
  soundSpeedUncertaintyColumn,
} from "@wherry/core";

/** Values of a column on the rows of a product, house units, NaN where missing; null if a cast has no such column. */
export type RowsOf = (cast: number, column: string) => Float64Array | null;

const PROPAGATED = {
  salinity: practicalSalinityUncertaintyColumn,
  density: densityUncertaintyColumn,
  sound_speed: soundSpeedUncertaintyColumn,
} as const;

/**
 * Standard uncertainty of a computed quantity, row by row, from those of the sensors.
 *
 * @param name    column of the cast
 * @param rowsOf  the inputs
 * @param sensors by the sheet, house units; NaN where it says nothing
 * @returns house units; null if the quantity is not computed here from measured conductivity, temperature and
 *          pressure, or if a sensor that counts has no figure
 */
export function derivedUncertainty(
  name: string,
  cast: Cast,
  rowsOf: (column: string) => Float64Array | null,
  sensors: SensorUncertainty,
): Float64Array | null {
  if (cast.columns.get(name)?.method == null) return null;
  const p = measured(cast, "pressure", rowsOf);
  if (p === null || Number.isNaN(sensors.p)) return null;
  if (name === "depth") {
    // where the place is not known, gravity of 45 degrees is as good for an uncertainty
    const latitude = cast.start?.latitude ?? cast.end?.latitude ?? Number.NaN;
    return p.map((each) => depthUncertainty(each, Number.isNaN(latitude) ? 45 : latitude, sensors.p));
  }
  if (!(name === "salinity" || name === "density" || name === "sound_speed")) return null;
  const C = measured(cast, "conductivity", rowsOf);
  const t = measured(cast, "temperature", rowsOf);
  if (C === null || t === null || Number.isNaN(sensors.C + sensors.t)) return null;
  // density and sound speed by a salinity that came from somewhere else do not depend on the conductivity
  if (cast.columns.get("salinity")?.method == null) return null;
  const out = new Float64Array(p.length);
  PROPAGATED[name](C, t, p, sensors, out);
  return out;
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
