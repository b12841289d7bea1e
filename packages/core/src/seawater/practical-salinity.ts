import { requireRows } from "./column.ts";
import { columnKernel } from "./column-kernel.ts";
import {
  lowSalinityRatio,
  lowSalinityTerm,
  pressureDenominator,
  pressureDenominatorSlope,
  pressureNumerator,
  STANDARD_CONDUCTIVITY,
  scaleSalinity,
  temperatureRatio,
  temperatureTerm,
} from "./practical-salinity-scale.ts";
import { simdTwins } from "./simd-twins.generated.ts";
import { temperatureTo68 } from "./temperature-scale.ts";
import type { ValidityRange } from "./validity-range.ts";

export const practicalSalinityRange: ValidityRange = { SP: [0, 42], t: [-2, 35], p: [0, 10_000] };

const kernel = columnKernel(simdTwins.onTheScale, { least: 2, otherwise: atLowSalinity });

/**
 * Practical Salinity (PSS-78) from conductivity; below SP 2 the form of Hill et al. (1986) as TEOS-10 has it.
 *
 * @param C conductivity in place, mS cm-1 (not referred to 25 degrees), 0 or more
 * @param t temperature, degree Celsius, ITS-90, -2 to 35
 * @param p sea pressure, dbar, 0 at the surface, 0 to 10 000
 * @returns Practical Salinity, unit 1; 0 for C = 0; NaN if the conductivity ratio Rt is negative or an input is
 *          NaN. Valid for 0 to 42 and computed beyond. Between C = 0 and about 0.0015 mS cm-1 (air, distilled
 *          water) the low-salinity form dips below 0 by up to 3e-4: there 0 is returned. In water thinned by
 *          rivers, below about SP 2, the number is a convention, not a measured content of salt.
 * @source  Fofonoff and Millard (1983), UNESCO Technical Papers in Marine Science 44, equations (1) to (5);
 *          Hill, Dauphinee and Woods (1986), IEEE J. Oceanic Eng. 11, 109-112. Check value: R = 1.2,
 *          t68 = 20, p = 2000 gives 37.245628
 */
export function practicalSalinity(C: number, t: number, p: number): number {
  const SP = onTheScale(C, t, p);
  return SP >= 2 ? SP : atLowSalinity(C, t, p);
}

/** The scale without the form for low salinity; its vector twin is made from this text. */
function onTheScale(C: number, t: number, p: number): number {
  const t68 = temperatureTo68(t);
  return scaleSalinity(Math.sqrt(conductivityRatio(C, t68, p)), temperatureTerm(t68));
}

/** Rt: the ratio of conductivities at this temperature and no pressure. */
function conductivityRatio(C: number, t68: number, p: number): number {
  const R = C * (1 / STANDARD_CONDUCTIVITY);
  // Rp = (D + N) / D, in a form with one division less
  const D = pressureDenominator(t68) + pressureDenominatorSlope(t68) * R;
  return (R * D) / ((D + pressureNumerator(p)) * temperatureRatio(t68));
}

function atLowSalinity(C: number, t: number, p: number): number {
  const t68 = temperatureTo68(t);
  const Rt = conductivityRatio(C, t68, p);
  if (Rt === 0) return 0;
  const x = Math.sqrt(Rt);
  const f = temperatureTerm(t68);
  const low = lowSalinityRatio(f) * (scaleSalinity(x, f) - lowSalinityTerm(x, f));
  return Math.max(low, 0);
}

/** Column twin of {@link practicalSalinity}: fills `out`. */
export function practicalSalinityColumn(
  C: Float64Array,
  t: Float64Array,
  p: Float64Array,
  out: Float64Array,
): void {
  requireRows(out, C, t, p);
  if (kernel(C, t, p, out)) return;
  for (let i = 0; i < out.length; i++) out[i] = practicalSalinity(C[i]!, t[i]!, p[i]!);
}
