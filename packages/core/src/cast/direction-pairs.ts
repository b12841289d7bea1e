import type { Cast } from "./cast.ts";
import { meansAlone } from "./layer-means.ts";

/** A layer that both ways met. Differences are down minus up. */
export interface LayerPair {
  /** Centre, dbar. */
  readonly pressure: number;
  /** deg C, and Practical Salinity. */
  readonly dT: number;
  readonly dSP: number;
  /** Conductivity down over up. */
  readonly ratio: number;
  /** Difference in salinity where the upcast has the temperature of the downcast; NaN where it has not once. */
  readonly dSPAtEqualT: number;
  /** Gradient of temperature of the downcast, deg C per layer. */
  readonly gradT: number;
}

/** Layer means of both ways, paired by pressure. */
export function directionPairs(cast: Cast, width: number): readonly LayerPair[] {
  const needed = ["temperature", "salinity", "conductivity"];
  const down = meansAlone(cast, "down", width, needed);
  const up = meansAlone(cast, "up", width, needed);
  const [Td, Sd, Cd] = down.means;
  const [Tu, Su, Cu] = up.means;
  if (!Td || !Sd || !Cd || !Tu || !Su || !Cu) return [];
  const row = new Map<number, number>();
  for (const [k, centre] of up.centres.entries()) row.set(Math.round(centre / width), k);
  const pairs: LayerPair[] = [];
  for (const [k, pressure] of down.centres.entries()) {
    const j = row.get(Math.round(pressure / width));
    if (j === undefined || Number.isNaN(Sd[k]! + Su[j]! + Td[k]! + Tu[j]!)) continue;
    pairs.push({
      pressure,
      dT: Td[k]! - Tu[j]!,
      dSP: Sd[k]! - Su[j]!,
      ratio: Cd[k]! / Cu[j]!,
      dSPAtEqualT: Sd[k]! - salinityAt(Td[k]!, Tu, Su),
      gradT: ((Td[k + 1] ?? Td[k]!) - (Td[k - 1] ?? Td[k]!)) / 2,
    });
  }
  return pairs;
}

/** Salinity of a profile at the one place where it has a temperature; NaN if there is none or several. */
function salinityAt(t: number, T: Float64Array, S: Float64Array): number {
  let found = Number.NaN;
  for (let k = 1; k < T.length; k++) {
    const a = T[k - 1]!;
    const b = T[k]!;
    if (!((a <= t && t < b) || (b <= t && t < a))) continue;
    if (!Number.isNaN(found)) return Number.NaN;
    found = S[k - 1]! + ((t - a) / (b - a)) * (S[k]! - S[k - 1]!);
  }
  return found;
}
