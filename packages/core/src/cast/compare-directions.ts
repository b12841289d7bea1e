import type { Cast, StepRecord } from "./cast.ts";
import { skipped, withStep } from "./change.ts";
import { directionPairs, type LayerPair } from "./direction-pairs.ts";
import { median, robustSd } from "./robust.ts";

const step = "comparison of downcast and upcast";

export interface ComparisonParameters {
  /** dbar. */
  readonly width: number;
  /** Layers … rows in the medians in which a bubble or fouling is looked for. */
  readonly runRows: number;
  /** Conductivity down over up is below one by more than this above the depth where a bubble left … */
  readonly bubbleRatio: number;
  /** … and within this of one below. */
  readonly agreement: number;
}

export const comparisonDefaults: ComparisonParameters = {
  width: 1,
  runRows: 10,
  bubbleRatio: 0.005,
  agreement: 0.002,
};

/** What the difference between both ways looks like. */
export type DirectionSign =
  | "agree"
  | "bubble in the cell"
  | "something in the cell"
  | "sensor response"
  | "water moved"
  | "differ";

const advice: Readonly<Record<DirectionSign, string>> = {
  agree: "both ways agree",
  "bubble in the cell":
    "the downcast is fresher down to a depth where it jumps into agreement, as with a bubble in the cell: look at it, the upcast may be the better profile",
  "something in the cell":
    "from a depth on conductivity of one way is lower by a constant part, as with weed or sediment in the cell: look at it",
  "sensor response":
    "the difference follows the gradient, as with sensors of unequal response: give their response times",
  "water moved": "temperature and salinity differ together and agree at equal temperature: water moved",
  differ: "both ways differ in a manner that no single cause explains: look at it",
};

/**
 * Compares layer means of both ways at equal pressure and says what their difference looks like. It tells a person
 * and flags nothing. Differences are down minus up.
 *
 * @source house; the sign of a bubble is common practice, fouling lowers conductivity (GOSUD)
 */
export function compareDirections(cast: Cast, parameters: ComparisonParameters): Cast {
  if (cast.kind === "fixed-depth" || cast.state.processing === "averaged") return cast;
  const pairs = directionPairs(cast, parameters.width);
  if (pairs.length < 6) return withStep(cast, skipped(step, "fewer than six layers were met on both ways"));
  const thirds = [0, 1, 2].map((third) =>
    pairs.slice(Math.floor((third * pairs.length) / 3), Math.floor(((third + 1) * pairs.length) / 3)),
  );
  const numbers: Record<string, number> = {};
  const names = ["upper", "middle", "lower"] as const;
  for (const [i, third] of thirds.entries())
    for (const quantity of ["dT", "dSP"] as const) {
      const d = Float64Array.from(third, (pair) => pair[quantity]);
      numbers[`${quantity}.${names[i]}.median`] = rounded(median(d));
      numbers[`${quantity}.${names[i]}.robustSd`] = rounded(robustSd(d));
    }
  const { sign, at } = judged(cast, pairs, parameters);
  const record: StepRecord = {
    step,
    parameters: {
      width: parameters.width,
      sign,
      ...(at === null ? {} : { at: rounded(at) }),
      ...numbers,
    },
    counts: { layers: pairs.length },
    words: `downcast and upcast compared: ${advice[sign]}${at === null ? "" : ` (${at.toFixed(1)} dbar)`}`,
  };
  return withStep(cast, record);
}

const rounded = (x: number): number => (Number.isNaN(x) ? 0 : Math.round(x * 1e4) / 1e4);

interface Judgement {
  readonly sign: DirectionSign;
  /** dbar, where the sign has a depth. */
  readonly at: number | null;
}

function judged(
  cast: Cast,
  pairs: readonly LayerPair[],
  { runRows, bubbleRatio, agreement, width }: ComparisonParameters,
): Judgement {
  const typical = (values: (pair: LayerPair) => number) =>
    median(Float64Array.from(pairs, (pair) => Math.abs(values(pair))));
  const ratios = Float64Array.from(pairs, ({ ratio }) => ratio);
  const large = (ratio: number) => Math.abs(ratio - 1) > bubbleRatio;
  const near = (ratio: number) => Math.abs(ratio - 1) <= agreement;
  const rowsPerLayer = Math.max(
    1,
    (cast.segments.find(({ kind }) => kind === "down")?.lastRow ?? 0) / Math.max(1, pairs.length),
  );
  // medians over runs of rows: at least three layers, so that one sharp layer decides nothing
  const reach = Math.max(3, Math.min(Math.floor(pairs.length / 3), Math.round(runRows / rowsPerLayer)));
  const top = median(ratios.subarray(0, reach));
  const end = median(ratios.subarray(ratios.length - reach));
  const steps = stepOf(ratios, reach);
  if (steps !== null && top < 1 - bubbleRatio && near(end) && constantAbove(ratios, steps, bubbleRatio))
    return { sign: "bubble in the cell", at: pairs[steps]!.pressure - width / 2 };
  if (steps !== null && near(top) && large(end))
    return { sign: "something in the cell", at: pairs[steps]!.pressure - width / 2 };
  if (steps === null && large(top) && large(end) && Math.abs(top - end) <= 2 * agreement)
    return { sign: "something in the cell", at: pairs[0]!.pressure };
  const quiet = typical(({ dSP }) => dSP) <= 0.01 && typical(({ dT }) => dT) <= 0.01;
  const worst = Math.max(...pairs.map(({ dSP }) => Math.abs(dSP)));
  if (quiet && worst <= 0.05) return { sign: "agree", at: null };
  if (movedWater(pairs)) return { sign: "water moved", at: null };
  if (Math.abs(correlation(pairs)) > 0.6) return { sign: "sensor response", at: null };
  return quiet ? { sign: "agree", at: null } : { sign: "differ", at: null };
}

/** Index of the layer from which the ratios have the level of the end, if one step parts them; else null. */
function stepOf(ratios: Float64Array, reach: number): number | null {
  const top = median(ratios.subarray(0, reach));
  const end = median(ratios.subarray(ratios.length - reach));
  if (Math.abs(end - top) < 0.003) return null;
  const middle = (top + end) / 2;
  const below = (ratio: number) => (end > top ? ratio > middle : ratio < middle);
  let changes = 0;
  let at = 0;
  for (let k = 1; k < ratios.length; k++)
    if (below(ratios[k]!) !== below(ratios[k - 1]!)) {
      changes++;
      at = k;
    }
  return changes === 1 ? at : null;
}

/** Whether the part above the step has the level of a bubble and not the slope of a gradient. */
function constantAbove(ratios: Float64Array, at: number, bubbleRatio: number): boolean {
  const above = ratios.subarray(0, at);
  return robustSd(above) < Math.max(bubbleRatio, (1 - median(above)) / 2);
}

/** Both differ at equal pressure, and salinity agrees much better at equal temperature. */
function movedWater(pairs: readonly LayerPair[]): boolean {
  const sameT = pairs.filter(({ dSPAtEqualT }) => !Number.isNaN(dSPAtEqualT));
  if (sameT.length < pairs.length / 2) return false;
  const size = (values: (pair: LayerPair) => number) =>
    median(Float64Array.from(sameT, (pair) => Math.abs(values(pair))));
  return size(({ dSP }) => dSP) > 0.02 && size(({ dSPAtEqualT }) => dSPAtEqualT) < size(({ dSP }) => dSP) / 3;
}

/** Correlation of the difference in salinity with the gradient of temperature. */
function correlation(pairs: readonly LayerPair[]): number {
  let xy = 0;
  let xx = 0;
  let yy = 0;
  for (const { dSP, gradT } of pairs) {
    if (Number.isNaN(dSP) || Number.isNaN(gradT)) continue;
    xy += dSP * gradT;
    xx += gradT * gradT;
    yy += dSP * dSP;
  }
  return xx > 0 && yy > 0 ? xy / Math.sqrt(xx * yy) : 0;
}
