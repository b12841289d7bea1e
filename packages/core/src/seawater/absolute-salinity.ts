import {
  anomalyRatio,
  fillAnomalyProfile,
  hasAnomalyRatio,
  newAnomalyProfile,
  ratioInProfile,
} from "./anomaly-ratio.ts";
import { requireRows } from "./column.ts";
import { SALINITY_UNIT, STANDARD_OCEAN_SALINITY } from "./reference-salinity.ts";
import type { ValidityRange } from "./validity-range.ts";

export const absoluteSalinityRange: ValidityRange = {
  SP: [2, 42],
  p: [0, 6_131],
  lon: [-180, 360],
  lat: [-86, 90],
};
export const salinityFromAbsoluteRange: ValidityRange = {
  SA: [2, 42],
  p: [0, 6_131],
  lon: [-180, 360],
  lat: [-86, 90],
};

/** What fresh water of the Baltic's rivers adds at SP 0, g kg-1 (Feistel et al. 2010). */
const BALTIC_RIVERS = 0.087;
const BALTIC_UNIT = (STANDARD_OCEAN_SALINITY - BALTIC_RIVERS) / 35;

/** The place of the column twins. */
const place = newAnomalyProfile();

/**
 * Absolute Salinity from Practical Salinity.
 *
 * @param SP  Practical Salinity, unit 1, 2 to 42
 * @param p   sea pressure, dbar
 * @param lon longitude, degrees east, any turn
 * @param lat latitude, degrees north, -86 to 90
 * @returns   Absolute Salinity, g kg-1: in the Baltic by its own line, elsewhere Reference Salinity times
 *            (1 + anomaly ratio), which is Reference Salinity where the atlas has no sea; computed beyond the
 *            range; NaN if an input is NaN or the latitude is outside the atlas. `absoluteSalinityRule` tells
 *            which.
 * @source    IOC, SCOR and IAPSO (2010), TEOS-10 manual, section 2.5 and appendix A.5; McDougall et al. (2012),
 *            Ocean Science 8, 1123-1134; Baltic: Feistel et al. (2010), Ocean Science 6, 3-24. Check value of the
 *            TEOS-10 toolbox: SP 34.306287392599714 at 0 dbar, 142 E, 11 N gives 34.468236430
 */
export function absoluteSalinity(SP: number, p: number, lon: number, lat: number): number {
  if (inBaltic(lon, lat)) return Number.isNaN(p) ? Number.NaN : BALTIC_UNIT * SP + BALTIC_RIVERS;
  return SALINITY_UNIT * SP * (1 + anomalyRatio(p, lon, lat));
}

/**
 * Practical Salinity from Absolute Salinity: the inverse of `absoluteSalinity`.
 *
 * @param SA  Absolute Salinity, g kg-1, 2 to 42
 * @param p   sea pressure, dbar
 * @param lon longitude, degrees east, any turn
 * @param lat latitude, degrees north, -86 to 90
 * @returns   Practical Salinity, unit 1; computed beyond the range; NaN if an input is NaN or the latitude is
 *            outside the atlas
 * @source    as `absoluteSalinity`
 */
export function salinityFromAbsolute(SA: number, p: number, lon: number, lat: number): number {
  if (inBaltic(lon, lat)) return Number.isNaN(p) ? Number.NaN : (SA - BALTIC_RIVERS) / BALTIC_UNIT;
  return SA / SALINITY_UNIT / (1 + anomalyRatio(p, lon, lat));
}

/** How `absoluteSalinity` comes about at a place: "reference" where it is Reference Salinity. */
export function absoluteSalinityRule(lon: number, lat: number): "atlas" | "baltic" | "reference" {
  if (inBaltic(lon, lat)) return "baltic";
  return hasAnomalyRatio(lon, lat) ? "atlas" : "reference";
}

/** The polygon in which the TEOS-10 toolbox takes the Baltic's own rule. */
function inBaltic(lon: number, lat: number): boolean {
  const turned = ((lon % 360) + 360) % 360;
  if (!(turned > 7 && turned < 45 && lat > 50 && lat < 69)) return false;
  const west = lat < 59 ? 12.6 - ((lat - 50) / 9) * 5.6 : 7 + ((lat - 59) / 10) * 19;
  const eastern = 45 - ((lat - 50) / 19) * 19;
  return west <= turned && turned <= eastern;
}

function highest(p: Float64Array): number {
  let most = 0;
  for (let i = 0; i < p.length; i++) if (p[i]! > most && p[i]! < Number.POSITIVE_INFINITY) most = p[i]!;
  return most;
}

/** Column twin of {@link absoluteSalinity} at one place: fills `out`. */
export function absoluteSalinityColumn(
  SP: Float64Array,
  p: Float64Array,
  lon: number,
  lat: number,
  out: Float64Array,
): void {
  requireRows(out, SP, p);
  if (inBaltic(lon, lat)) {
    for (let i = 0; i < out.length; i++) out[i] = absoluteSalinity(SP[i]!, p[i]!, lon, lat);
    return;
  }
  fillAnomalyProfile(lon, lat, highest(p), place);
  for (let i = 0; i < out.length; i++) out[i] = SALINITY_UNIT * SP[i]! * (1 + ratioInProfile(place, p[i]!));
}

/** Column twin of {@link salinityFromAbsolute} at one place: fills `out`. */
export function salinityFromAbsoluteColumn(
  SA: Float64Array,
  p: Float64Array,
  lon: number,
  lat: number,
  out: Float64Array,
): void {
  requireRows(out, SA, p);
  if (inBaltic(lon, lat)) {
    for (let i = 0; i < out.length; i++) out[i] = salinityFromAbsolute(SA[i]!, p[i]!, lon, lat);
    return;
  }
  fillAnomalyProfile(lon, lat, highest(p), place);
  for (let i = 0; i < out.length; i++) out[i] = SA[i]! / SALINITY_UNIT / (1 + ratioInProfile(place, p[i]!));
}
