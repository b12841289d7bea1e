import type { Cast, StepRecord } from "./cast.ts";
import { skipped, withStep } from "./change.ts";
import { directionPairs, type LayerPair } from "./direction-pairs.ts";
import { median, robustSd } from "./robust.ts";

const step = "comparison of downcast and upcast";

export interface ComparisonParameters {
  /** Thickness of the layers compared, dbar. */
  readonly width: number;
  /** Rows in the medians in which a bubble or fouling is looked for; at least three layers. */
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
  const ratios = middles(Float64Array.from(pairs, ({ ratio }) => ratio));
  const large = (ratio: number) => Math.abs(ratio - 1) > bubbleRatio;
  const near = (ratio: number) => Math.abs(ratio - 1) <= agreement;
  const down = cast.segments.find(({ kind }) => kind === "down");
  const rowsPerLayer = down === undefined ? 1 : (down.lastRow - down.firstRow + 1) / pairs.length;
  // at least three layers, so that one sharp layer decides nothing
  const reach = Math.max(3, Math.min(Math.floor(pairs.length / 3), Math.round(runRows / rowsPerLayer)));
  const top = median(ratios.subarray(0, reach));
  const end = median(ratios.subarray(ratios.length - reach));
  const at = stepOf(ratios, top, end);
  const from = at === null ? null : pairs[at]!.pressure - width / 2;
  if (at !== null && top < 1 - bubbleRatio && near(end) && cellAlone(pairs, 0, at))
    return { sign: "bubble in the cell", at: from };
  if (at !== null && near(top) && large(end) && cellAlone(pairs, at, pairs.length))
    return { sign: "something in the cell", at: from };
  if (at === null && large(top) && large(end) && cellAlone(pairs, 0, pairs.length))
    return { sign: "something in the cell", at: pairs[0]!.pressure - width / 2 };
  const typical = (values: (pair: LayerPair) => number) =>
    median(Float64Array.from(pairs, (pair) => Math.abs(values(pair))));
  const quiet = typical(({ dSP }) => dSP) <= 0.01 && typical(({ dT }) => dT) <= 0.01;
  if (quiet && Math.max(...pairs.map(({ dSP }) => Math.abs(dSP))) <= 0.05) return { sign: "agree", at: null };
  const follows =
    correlation(
      pairs,
      ({ dT }) => dT,
      ({ gradT }) => gradT,
    ) < -0.6;
  if (follows && conductivityAgrees(pairs)) return { sign: "sensor response", at: null };
  if (movedWater(pairs)) return { sign: "water moved", at: null };
  if (
    follows ||
    Math.abs(
      correlation(
        pairs,
        ({ dSP }) => dSP,
        ({ gradT }) => gradT,
      ),
    ) > 0.6
  )
    return { sign: "sensor response", at: null };
  return { sign: quiet ? "agree" : "differ", at: null };
}

/** Running median of three: a layer that is half the one and half the other counts with its neighbours. */
function middles(ratios: Float64Array): Float64Array {
  const out = ratios.slice();
  for (let k = 1; k + 1 < ratios.length; k++) out[k] = median(ratios.subarray(k - 1, k + 2));
  if (out.length > 2) {
    out[0] = out[1]!;
    out[out.length - 1] = out[out.length - 2]!;
  }
  return out;
}

/** Index of the layer from which the ratios have the level of the end, if one step parts them; else null. */
function stepOf(ratios: Float64Array, top: number, end: number): number | null {
  if (Math.abs(end - top) < 0.003) return null;
  const middle = (top + end) / 2;
  const changed = (ratio: number) => (end > top ? ratio > middle : ratio < middle);
  let changes = 0;
  let at = 0;
  for (let k = 1; k < ratios.length; k++)
    if (changed(ratios[k]!) !== changed(ratios[k - 1]!)) {
      changes++;
      at = k;
    }
  return changes === 1 ? at : null;
}

/** Largest typical difference in temperature, deg C, beside which conductivity is wrong by itself. */
const SAME_TEMPERATURE = 0.05;

/**
 * Whether conductivity alone is off, by a nearly constant part, between two layers: temperature agrees there, and four
 * layers in five lie near the median. In a salt wedge the ratios of a few layers go up and down.
 */
function cellAlone(pairs: readonly LayerPair[], from: number, to: number): boolean {
  const part = pairs.slice(from, to);
  const level = median(Float64Array.from(part, ({ ratio }) => ratio));
  const alike = part.filter(({ ratio }) => Math.abs(ratio - level) <= Math.abs(level - 1) / 3).length;
  const dT = median(Float64Array.from(part, (pair) => Math.abs(pair.dT)));
  return part.length >= 3 && dT <= SAME_TEMPERATURE && alike >= 0.8 * part.length;
}

/** Conductivities differ by less than a change of water of that temperature would make them differ. */
function conductivityAgrees(pairs: readonly LayerPair[]): boolean {
  const sum = (values: (pair: LayerPair) => number) =>
    pairs.reduce((total, pair) => total + Math.abs(values(pair)), 0);
  return sum(({ ratio }) => ratio - 1) < 0.01 * sum(({ dT }) => dT);
}

/** Both differ at equal pressure, and salinity agrees much better at equal temperature. */
function movedWater(pairs: readonly LayerPair[]): boolean {
  const sameT = pairs.filter(({ dSPAtEqualT }) => !Number.isNaN(dSPAtEqualT));
  if (sameT.length < pairs.length / 2) return false;
  const size = (values: (pair: LayerPair) => number) =>
    median(Float64Array.from(sameT, (pair) => Math.abs(values(pair))));
  return size(({ dSP }) => dSP) > 0.02 && size(({ dSPAtEqualT }) => dSPAtEqualT) < size(({ dSP }) => dSP) / 3;
}

/** Correlation of two numbers of the layers about zero. */
function correlation(
  pairs: readonly LayerPair[],
  first: (pair: LayerPair) => number,
  second: (pair: LayerPair) => number,
): number {
  let xy = 0;
  let xx = 0;
  let yy = 0;
  for (const pair of pairs) {
    const [x, y] = [first(pair), second(pair)];
    if (Number.isNaN(x + y)) continue;
    xy += x * y;
    xx += x * x;
    yy += y * y;
  }
  return xx > 0 && yy > 0 ? xy / Math.sqrt(xx * yy) : 0;
}
