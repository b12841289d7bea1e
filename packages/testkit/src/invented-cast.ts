import { castOf, type KitCast } from "./casts.ts";

/** How an invented cast is lowered. Times in s, pressures in dbar, speeds in dbar/s. */
export interface Lowering {
  readonly rate: number;
  /** Time in air at the start; 0: the record begins in water. */
  readonly air: number;
  readonly soak: number;
  readonly soakPressure: number;
  /** Where the package waits between soak and downcast. */
  readonly waitPressure: number;
  readonly wait: number;
  readonly deepest: number;
  readonly speed: number;
  readonly bottom: number;
  readonly upSpeed: number;
  /** Swell: amplitude and period. Felt in water, less with nothing. */
  readonly swell: number;
  readonly period: number;
  readonly noise: number;
  readonly offset: number;
  /** Smallest printed step of pressure. */
  readonly printed: number;
  readonly seed: number;
}

export interface InventedCast {
  readonly cast: KitCast;
  /** Row at which the package leaves the surface for good, and that at which it stops at the bottom. */
  readonly downFrom: number;
  readonly bottomFrom: number;
  readonly upFrom: number;
  readonly wet: readonly [number, number];
  /** Without offset and noise, dbar. */
  readonly truePressure: Float64Array;
}

const ordinary: Lowering = {
  rate: 4,
  air: 8,
  soak: 40,
  soakPressure: 1.2,
  waitPressure: 0.4,
  wait: 4,
  deepest: 20,
  speed: 0.6,
  bottom: 8,
  upSpeed: 0.5,
  swell: 0,
  period: 5,
  noise: 0.008,
  offset: 0.05,
  printed: 0.001,
  seed: 1,
};

/** Uniform numbers from 0 to 1, the same for the same seed (Park and Miller's minimal standard generator). */
export function seeded(seed: number): () => number {
  let state = (Math.abs(Math.trunc(seed)) % 2147483646) + 1;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/** An invented cast through two-layer brackish water, with everything known about it. */
export function inventCast(choice: Partial<Lowering> = {}): InventedCast {
  const how = { ...ordinary, ...choice };
  const random = seeded(how.seed);
  const gauss = () => Math.sqrt(-2 * Math.log(random() + 1e-12)) * Math.cos(2 * Math.PI * random());
  // corners of the planned pressure: time, pressure; negative is in air
  const corners: [number, number][] = [];
  let now = 0;
  let at = how.air > 0 ? -0.5 : how.soakPressure;
  corners.push([0, at]);
  const go = (to: number, speed: number) => {
    now += Math.abs(to - at) / speed;
    at = to;
    corners.push([now, at]);
  };
  const stay = (time: number) => {
    now += time;
    corners.push([now, at]);
  };
  stay(how.air);
  if (how.soak > 0) {
    go(how.soakPressure, 0.3);
    stay(how.soak);
    go(how.waitPressure, 0.3);
    stay(how.wait);
  }
  const down = now;
  go(how.deepest, how.speed);
  const bottom = now;
  stay(how.bottom);
  const up = now;
  if (how.upSpeed > 0) {
    go(-0.5, how.upSpeed);
    if (how.air > 0) stay(how.air);
  }
  const rows = Math.floor(now * how.rate) + 1;
  const elapsed = Float64Array.from({ length: rows }, (_, k) => k / how.rate);
  const pressure = new Float64Array(rows);
  const temperature = new Float64Array(rows);
  const conductivity = new Float64Array(rows);
  const truePressure = new Float64Array(rows);
  let corner = 0;
  let firstWet = -1;
  let lastWet = -1;
  for (let k = 0; k < rows; k++) {
    const t = elapsed[k]!;
    while (corner + 2 < corners.length && t > corners[corner + 1]![0]) corner++;
    const [t0, p0] = corners[corner]!;
    const [t1, p1] = corners[corner + 1]!;
    const planned = t1 > t0 ? p0 + ((t - t0) / (t1 - t0)) * (p1 - p0) : p1;
    const p = planned > 0.3 ? planned + how.swell * Math.sin((2 * Math.PI * t) / how.period) : planned;
    truePressure[k] = Math.max(0, p);
    const wet = p > 0.05;
    if (wet && firstWet < 0) firstWet = k;
    if (wet) lastWet = k;
    const mixed = 1 / (1 + Math.exp(-(p - how.deepest / 2) * 2));
    temperature[k] = wet ? 16 - 4 * mixed + 0.0015 * gauss() : 18 + 0.0015 * gauss();
    conductivity[k] = wet ? 12 + 20 * mixed + 0.002 * gauss() : 0.002;
    const read = truePressure[k]! + how.offset + how.noise * gauss();
    pressure[k] = Math.round(read / how.printed) * how.printed;
  }
  const row = (time: number) => Math.min(rows - 1, Math.round(time * how.rate));
  return {
    cast: castOf({ pressure, temperature, conductivity }, elapsed, { id: `invented-${how.seed}` }),
    downFrom: row(down),
    bottomFrom: row(bottom),
    upFrom: row(up),
    wet: [firstWet, lastWet],
    truePressure,
  };
}
