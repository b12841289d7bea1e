import { findSwell, meanOver, startInSwell } from "./swell.ts";

/** Parameters of the search for the parts of a cast. All house values, tried on simulated casts. */
export interface SegmentationParameters {
  /** Limit of the shallow part: this part of the largest pressure … */
  readonly shallowPart: number;
  /** … but at least this (or half of the largest pressure) and at most that, dbar. */
  readonly shallowLimits: readonly [number, number];
  /** The band above the largest pressure in which the bottom stop lies, dbar. */
  readonly bottomBand: number;
  /** The downcast starts where the gain over this time (or half of the way down, if that is less) … */
  readonly startSeconds: number;
  /** … exceeds this part of what the mean lowering speed would give. */
  readonly startPart: number;
  /** Waves whose speed exceeds this part of the mean lowering speed are averaged out to find the start. */
  readonly swellPart: number;
  /** Part of the mean lowering speed below which the package has all but stopped at the bottom. */
  readonly stopPart: number;
  /** A stay this long, s, and slower than `soakPart` of the mean speed, below the shallow limit, is a deep soak. */
  readonly deepSoakSeconds: number;
  readonly soakPart: number;
  /** Time in water before the downcast that makes a soak: seconds, and multiples of the slowest response. */
  readonly soakSeconds: number;
  readonly soakResponses: number;
  /** Response times after which a sensor dropped through the surface has settled. */
  readonly settleResponses: number;
  /** Response time of the slowest sensor, s. */
  readonly responseTime: number;
  /** Largest pressure below which a record is no cast, dbar. */
  readonly leastPressure: number;
}

export const segmentationDefaults: SegmentationParameters = {
  shallowPart: 0.1,
  shallowLimits: [1.5, 4],
  bottomBand: 0.4,
  startSeconds: 3,
  startPart: 0.35,
  swellPart: 0.5,
  stopPart: 0.2,
  deepSoakSeconds: 20,
  soakPart: 0.1,
  soakSeconds: 10,
  soakResponses: 10,
  settleResponses: 5,
  responseTime: 1,
  leastPressure: 0.5,
};

/** Rows at which the parts of a cast meet. Each part may be empty (its last row before its first). */
export interface Descent {
  readonly downFrom: number;
  /** First row of the bottom stop, or of the upcast if there is no stop. */
  readonly bottomFrom: number;
  readonly upFrom: number;
  readonly deepestRow: number;
  /** Largest smoothed pressure, dbar. */
  readonly largest: number;
  /** Mean lowering speed, dbar/s; NaN without a downcast. */
  readonly speed: number;
  readonly deepSoak: boolean;
}

/**
 * Finds downcast, bottom stop and upcast between two rows in water.
 *
 * @param s       smoothed sea pressure, dbar; w its rate of change; seconds increasing
 * @param wetFrom first row in water; wetTo last row in water
 * @returns null where pressure hardly changes
 * @source house
 */
export function findDescent(
  s: Float64Array,
  w: Float64Array,
  seconds: Float64Array,
  wetFrom: number,
  wetTo: number,
  noise: number,
  parameters: SegmentationParameters,
): Descent | null {
  let deepestRow = wetFrom;
  let least = Number.POSITIVE_INFINITY;
  for (let k = wetFrom; k <= wetTo; k++) {
    if (s[k]! > s[deepestRow]!) deepestRow = k;
    least = Math.min(least, s[k]!);
  }
  const largest = s[deepestRow]!;
  if (!(largest >= parameters.leastPressure) || !(largest - least > Math.max(0.3, 6 * noise))) return null;

  const band = largest - parameters.bottomBand;
  const [atLeast, atMost] = parameters.shallowLimits;
  let limit = Math.min(atMost, Math.max(parameters.shallowPart * largest, Math.min(atLeast, largest / 2)));
  const lastShallow = (): number => {
    for (let k = deepestRow; k >= wetFrom; k--) if (s[k]! <= limit) return k;
    return -1;
  };
  const speedFrom = (row: number): number => {
    let arrival = row;
    while (arrival < deepestRow && s[arrival]! < band) arrival++;
    return arrival > row ? (s[arrival]! - s[row]!) / (seconds[arrival]! - seconds[row]!) : Number.NaN;
  };
  let shallow = lastShallow();
  let from = shallow >= 0 ? shallow : wetFrom;
  let speed = speedFrom(from);
  const soak = deepSoak(s, w, seconds, from, deepestRow, speed, parameters);
  if (soak !== null) {
    limit = soak + 0.5;
    shallow = lastShallow();
    from = shallow;
    speed = speedFrom(from);
  }

  // back from the last shallow row to where the package was not yet on its way
  let downFrom = Number.isNaN(speed) ? deepestRow : from;
  if (!Number.isNaN(speed)) {
    // in a few metres of water the way down is over before the full time has passed
    const wayDown = (band - s[from]!) / speed;
    const window = Math.min(parameters.startSeconds, wayDown / 2);
    const fewest = parameters.startPart * window * speed;
    let ahead = downFrom;
    while (ahead < wetTo && seconds[ahead]! < seconds[downFrom]! + window) ahead++;
    for (let k = downFrom; k >= wetFrom; k--) {
      while (ahead > k + 1 && seconds[ahead - 1]! >= seconds[k]! + window) ahead--;
      if (s[ahead]! - s[k]! < fewest) {
        downFrom = k + 1;
        break;
      }
      downFrom = k;
    }
  }
  if (!Number.isNaN(speed)) {
    const start = startInSwell(s, w, seconds, wetFrom, downFrom, deepestRow, speed, parameters);
    if (start !== null) downFrom = Math.min(downFrom, start);
  }
  downFrom = Math.min(downFrom, deepestRow);

  // the rows about the deepest from which the package did not rise far
  const far = largest - Math.max(2, 0.2 * largest);
  let first = deepestRow;
  let last = deepestRow;
  for (let k = deepestRow; k >= downFrom && s[k]! > far; k--) if (s[k]! >= band) first = k;
  for (let k = deepestRow; k <= wetTo && s[k]! > far; k++) if (s[k]! >= band) last = k;
  const going = parameters.stopPart * (Number.isNaN(speed) ? upSpeed(s, seconds, deepestRow, wetTo) : speed);
  while (first <= last && w[first]! > going) first++;
  while (last >= first && w[last]! < -going) last--;
  return {
    downFrom: Number.isNaN(speed) ? first : Math.min(downFrom, first),
    bottomFrom: first,
    upFrom: Math.max(last + 1, first),
    deepestRow,
    largest,
    speed,
    deepSoak: soak !== null,
  };
}

/**
 * Level of a deep soak, dbar; null if there is none. Waves move the package during a stay: where they are met and the
 * upper half of the way took far longer than the lower half, the stay is looked for in their mean, and its level is that
 * of their crests.
 */
function deepSoak(
  s: Float64Array,
  w: Float64Array,
  seconds: Float64Array,
  from: number,
  deepestRow: number,
  speed: number,
  parameters: SegmentationParameters,
): number | null {
  if (Number.isNaN(speed)) return null;
  const row = deepSoakRow(s, seconds, from, deepestRow, speed, parameters);
  if (row >= 0) return s[row]!;
  let half = deepestRow;
  while (half > from && s[half]! > s[deepestRow]! / 2) half--;
  const [upper, lower] = [seconds[half]! - seconds[from]!, seconds[deepestRow]! - seconds[half]!];
  if (upper < lower + parameters.deepSoakSeconds / 2) return null;
  const swell = findSwell(w, seconds, from, deepestRow);
  if (swell === null) return null;
  const mean = meanOver(s, seconds, from, deepestRow, swell.period);
  const stay = deepSoakRow(mean, seconds, from, deepestRow, speed, parameters);
  return stay < 0 ? null : mean[stay]! + (swell.speed * swell.period) / (2 * Math.PI);
}

/** Last row of the last long stay between `from` and half of the largest pressure; -1 if there is none. */
function deepSoakRow(
  s: Float64Array,
  seconds: Float64Array,
  from: number,
  deepestRow: number,
  speed: number,
  { startSeconds, deepSoakSeconds, soakPart }: SegmentationParameters,
): number {
  const half = s[deepestRow]! / 2;
  let found = -1;
  let begin = -1;
  let ahead = from;
  for (let k = from; k < deepestRow; k++) {
    while (ahead < deepestRow && seconds[ahead]! < seconds[k]! + startSeconds) ahead++;
    const moved = Math.abs(s[ahead]! - s[k]!) / (seconds[ahead]! - seconds[k]!);
    if (s[k]! < half && moved < soakPart * speed) {
      if (begin < 0) begin = k;
      if (seconds[k]! - seconds[begin]! >= deepSoakSeconds) found = k;
    } else begin = -1;
  }
  return found;
}

function upSpeed(s: Float64Array, seconds: Float64Array, from: number, to: number): number {
  return to > from ? Math.max(0, (s[from]! - s[to]!) / (seconds[to]! - seconds[from]!)) : 0;
}
