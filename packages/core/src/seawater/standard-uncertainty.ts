import { requireRows } from "./column.ts";
import { conservativeTemperature } from "./conservative-temperature.ts";
import { density } from "./density.ts";
import { practicalSalinity, practicalSalinityRange } from "./practical-salinity.ts";
import { referenceSalinity } from "./reference-salinity.ts";
import { soundSpeed } from "./sound-speed.ts";
import type { ValidityRange } from "./validity-range.ts";

/** Standard uncertainties (one standard deviation) of the sensors, independent of each other. */
export interface SensorUncertainty {
  /** Conductivity, mS cm-1. */
  readonly C: number;
  /** Temperature, degree Celsius. */
  readonly t: number;
  /** Sea pressure, dbar. */
  readonly p: number;
}

/** Where the equations that are propagated hold. */
export const standardUncertaintyRange: ValidityRange = practicalSalinityRange;

type Quantity = (C: number, t: number, p: number) => number;

/**
 * GUM, first order, with each contribution found from the quantity itself one standard uncertainty to either side.
 * Conductivity is not taken below 0: there the step is shorter and what it does is scaled.
 */
function propagated(quantity: Quantity, C: number, t: number, p: number, u: SensorUncertainty): number {
  if (Number.isNaN(C + t + p)) return Number.NaN;
  const lowest = Math.min(C, Math.max(C - u.C, 0));
  const span = C + u.C - lowest;
  const byC = u.C === 0 ? 0 : (u.C * (quantity(C + u.C, t, p) - quantity(lowest, t, p))) / span;
  const byT = u.t === 0 ? 0 : (quantity(C, t + u.t, p) - quantity(C, t - u.t, p)) / 2;
  const byP = u.p === 0 ? 0 : (quantity(C, t, p + u.p) - quantity(C, t, p - u.p)) / 2;
  return Math.hypot(byC, byT, byP);
}

/** Fills `out` row by row; the sensors' uncertainties hold for all rows. */
type UncertaintyColumn = (
  C: Float64Array,
  t: Float64Array,
  p: Float64Array,
  u: SensorUncertainty,
  out: Float64Array,
) => void;

const columnTwin =
  (quantity: Quantity): UncertaintyColumn =>
  (C, t, p, u, out) => {
    requireRows(out, C, t, p);
    for (let i = 0; i < out.length; i++) out[i] = propagated(quantity, C[i]!, t[i]!, p[i]!, u);
  };

// the share of the anomaly ratio in Absolute Salinity, 0.2 %, does not matter to an uncertainty
const densityOf: Quantity = (C, t, p) => {
  const SR = referenceSalinity(practicalSalinity(C, t, p));
  return density(SR, conservativeTemperature(SR, t, p), p);
};

const soundSpeedOf: Quantity = (C, t, p) => {
  const SR = referenceSalinity(practicalSalinity(C, t, p));
  return soundSpeed(SR, conservativeTemperature(SR, t, p), p);
};

/**
 * Standard uncertainty of Practical Salinity that comes from the sensors.
 *
 * What the equation itself leaves open and what river salts do (`densityCompositionTerm`) is not in it.
 *
 * @param C conductivity in place, mS cm-1
 * @param t temperature, degree Celsius, ITS-90
 * @param p sea pressure, dbar
 * @param u the sensors' standard uncertainties; half of a stated 95 % limit is a usual choice
 * @returns standard uncertainty, unit 1; NaN if the salinity is NaN or an uncertainty is
 * @source  JCGM 100:2008 (GUM), section 5.1.2 with the contributions of the note to 5.1.3; compared in the tests
 *          with derivatives and random draws of the TEOS-10 library
 */
export function practicalSalinityUncertainty(C: number, t: number, p: number, u: SensorUncertainty): number {
  return propagated(practicalSalinity, C, t, p, u);
}

/** Column twin of {@link practicalSalinityUncertainty}. */
export const practicalSalinityUncertaintyColumn = columnTwin(practicalSalinity);

/**
 * Standard uncertainty of density (TEOS-10) that comes from the sensors; salinity's share is in it, with its
 * correlation. Parameters as {@link practicalSalinityUncertainty}. No position is needed: Reference Salinity stands
 * in for Absolute Salinity.
 *
 * @returns standard uncertainty, kg m-3; NaN as there. In water thinned by rivers `densityCompositionTerm` comes on
 *          top, to one side
 * @source  as {@link practicalSalinityUncertainty}
 */
export function densityUncertainty(C: number, t: number, p: number, u: SensorUncertainty): number {
  return propagated(densityOf, C, t, p, u);
}

/** Column twin of {@link densityUncertainty}. */
export const densityUncertaintyColumn = columnTwin(densityOf);

/**
 * Standard uncertainty of sound speed (TEOS-10) that comes from the sensors. Parameters as
 * {@link practicalSalinityUncertainty}; no position is needed.
 *
 * @returns standard uncertainty, m s-1; NaN as there. Not for navigation or diving decisions
 * @source  as {@link practicalSalinityUncertainty}
 */
export function soundSpeedUncertainty(C: number, t: number, p: number, u: SensorUncertainty): number {
  return propagated(soundSpeedOf, C, t, p, u);
}

/** Column twin of {@link soundSpeedUncertainty}. */
export const soundSpeedUncertaintyColumn = columnTwin(soundSpeedOf);
