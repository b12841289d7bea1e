import { potentialDensity } from "./density-inversion.ts";
import { Flag } from "./flag.ts";
import type { Worst } from "./flags-of-test.ts";

export interface DensityInversionLayersLimits {
  /** dbar */
  readonly layerWidth: number;
  /** kg m-3 */
  readonly tolerance: number;
  /** dbar that a row may lie above the deepest row so far and still take part. */
  readonly reversalTolerance: number;
  readonly worst?: Worst;
}

/**
 * Density inversion between layer means, so that the noise of single rows and the wake of a lifted package are
 * not taken for inversions.
 *
 * @param temperature deg C ITS-90; salinity practical; pressure dbar; one per row of a segment, surface first
 * @returns 1; 4 (or `worst`) on all rows of both layers; 2 for rows that take no part
 * @source house; tolerance of the published test (QARTOD test 13)
 */
export function densityInversionLayers(
  temperature: Float64Array,
  salinity: Float64Array,
  pressure: Float64Array,
  { layerWidth, tolerance, reversalTolerance, worst = 4 }: DensityInversionLayersLimits,
): Uint8Array {
  const rows = pressure.length;
  const flags = new Uint8Array(rows).fill(Flag.notEvaluated);
  const layerOf = new Int32Array(rows);
  let deepest = Number.NEGATIVE_INFINITY;
  let layers = 0;
  for (let k = 0; k < rows; k++) {
    const p = pressure[k]!;
    const reversed = p < deepest - reversalTolerance;
    if (p > deepest) deepest = p;
    if (reversed || Number.isNaN(temperature[k]! + salinity[k]! + p)) continue;
    const layer = Math.floor(p / layerWidth + 0.5);
    if (layer < 1 || layer > 1e6) continue;
    layerOf[k] = layer;
    layers = Math.max(layers, layer);
  }
  const sumT = new Float64Array(layers + 1);
  const sumS = new Float64Array(layers + 1);
  const sumP = new Float64Array(layers + 1);
  const count = new Float64Array(layers + 1);
  for (let k = 0; k < rows; k++) {
    const layer = layerOf[k]!;
    if (layer === 0) continue;
    sumT[layer]! += temperature[k]!;
    sumS[layer]! += salinity[k]!;
    sumP[layer]! += pressure[k]!;
    count[layer]! += 1;
  }
  const result = new Uint8Array(layers + 1).fill(Flag.good);
  let filled = 0;
  let upper = -1;
  let upperDensity = Number.NaN;
  for (let layer = 1; layer <= layers; layer++) {
    const n = count[layer]!;
    if (n === 0) continue;
    filled++;
    const density = potentialDensity(sumT[layer]! / n, sumS[layer]! / n, sumP[layer]! / n);
    if (upper > 0 && upperDensity - density > tolerance) result[upper] = result[layer] = worst;
    upper = layer;
    upperDensity = density;
  }
  if (filled < 2) return flags;
  for (let k = 0; k < rows; k++) if (layerOf[k]! > 0) flags[k] = result[layerOf[k]!]!;
  return flags;
}
