import { requireRows } from "./column.ts";
import {
  lowSalinityRatio,
  lowSalinitySlope,
  lowSalinityTerm,
  pressureDenominator,
  pressureDenominatorSlope,
  pressureNumerator,
  STANDARD_CONDUCTIVITY,
  scaleSalinity,
  scaleSlope,
  temperatureRatio,
  temperatureTerm,
} from "./practical-salinity-scale.ts";
import { temperatureTo68 } from "./temperature-scale.ts";
import type { ValidityRange } from "./validity-range.ts";

export const conductivityFromSalinityRange: ValidityRange = { SP: [0, 42], t: [-2, 35], p: [0, 10_000] };

/**
 * Conductivity from Practical Salinity: the inverse of `practicalSalinity`.
 *
 * @param SP Practical Salinity, unit 1, 0 to 42
 * @param t  temperature, degree Celsius, ITS-90, -2 to 35
 * @param p  sea pressure, dbar, 0 at the surface, 0 to 10 000
 * @returns  conductivity in place, mS cm-1; 0 for SP = 0 (just above it the low-salinity form starts at about
 *           0.001); computed beyond the range; NaN if SP is negative or an input is NaN
 * @source   Fofonoff and Millard (1983), UNESCO Technical Papers in Marine Science 44, equation (6), page 9, for
 *           the pressure term; Newton's method for Rt. Check value: SP 40, t68 = 40, p = 10 000 gives
 *           R = 1.888091
 */
export function conductivityFromSalinity(SP: number, t: number, p: number): number {
  const t68 = temperatureTo68(t);
  if (SP === 0 && !Number.isNaN(t68 + p)) return 0;
  if (!(SP >= 0)) return Number.NaN;
  const x = rootOfRt(SP, temperatureTerm(t68));
  const q = x * x * temperatureRatio(t68);
  const a = pressureDenominatorSlope(t68);
  const d = pressureDenominator(t68);
  const b = d - a * q;
  const R = (Math.sqrt(b * b + 4 * a * q * (d + pressureNumerator(p))) - b) / (2 * a);
  return R * STANDARD_CONDUCTIVITY;
}

function rootOfRt(SP: number, f: number): number {
  const low = SP < 2;
  const ratio = low ? lowSalinityRatio(f) : 1;
  // above the root, where the curve bends upwards and every step stays above it
  let x = Math.sqrt(SP / 24) + 0.02;
  for (let step = 0; step < 30; step++) {
    const value = low ? ratio * (scaleSalinity(x, f) - lowSalinityTerm(x, f)) : scaleSalinity(x, f);
    const slope = low ? ratio * (scaleSlope(x, f) - lowSalinitySlope(x, f)) : scaleSlope(x, f);
    const change = (value - SP) / slope;
    x -= change;
    if (!(Math.abs(change) > 1e-15)) break;
  }
  return x;
}

/** Column twin of {@link conductivityFromSalinity}: fills `out`. */
export function conductivityFromSalinityColumn(
  SP: Float64Array,
  t: Float64Array,
  p: Float64Array,
  out: Float64Array,
): void {
  requireRows(out, SP, t, p);
  for (let i = 0; i < out.length; i++) out[i] = conductivityFromSalinity(SP[i]!, t[i]!, p[i]!);
}
