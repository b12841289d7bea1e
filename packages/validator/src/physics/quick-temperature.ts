import { conservativeTemperature } from "@wherry/core";

/** Largest error of the quick values, kelvin; a test holds them to half of it at random places. */
export const QUICK_ERROR = 1e-3;

/** Steps of the grid in Absolute Salinity (g kg-1), temperature (deg C) and sea pressure (dbar). */
const STEPS = [1, 0.5, 100] as const;
/** Steps in a unit of each: to multiply is faster than to divide. */
const PER_STEP = [1, 2, 0.01] as const;
/** Where quick values are as good as said; elsewhere the equation itself is taken. */
const LEAST = [0.5, -3, -50] as const;
const MOST = [45, 45, 12_000] as const;

interface Span {
  /** Number of the first node, counted from 0 in steps. */
  readonly first: number;
  readonly nodes: number;
}

/** Rows of a large column that are looked at to lay the grid; a row beside it is computed by the equation. */
const LOOKED_AT = 50_000;

/** Nodes along an axis about the values that lie within the limits. */
function spanOf(values: Float64Array, axis: 0 | 1 | 2): Span {
  const [least, most, step] = [LEAST[axis], MOST[axis], STEPS[axis]];
  let min: number = most;
  let max: number = least;
  const every = Math.max(1, Math.floor(values.length / LOOKED_AT));
  for (let i = 0; i < values.length; i += every) {
    const value = values[i]!;
    if (value < min && value >= least) min = value;
    if (value > max && value <= most) max = value;
  }
  const beside = every > 1 ? 1 : 0;
  const first = Math.floor(min / step) - beside;
  return { first, nodes: max < min ? 0 : Math.floor(max / step) - first + 2 + beside };
}

function gridOf(s: Span, t: Span, p: Span): Float64Array {
  const grid = new Float64Array(s.nodes * t.nodes * p.nodes);
  let at = 0;
  for (let i = 0; i < s.nodes; i += 1)
    for (let j = 0; j < t.nodes; j += 1)
      for (let k = 0; k < p.nodes; k += 1, at += 1)
        grid[at] = conservativeTemperature(
          (s.first + i) * STEPS[0],
          (t.first + j) * STEPS[1],
          (p.first + k) * STEPS[2],
        );
  return grid;
}

/**
 * Conservative Temperature to within QUICK_ERROR, several times faster than by its equation: interpolated between the
 * values at the nodes of a grid. Good enough to see that values agree within a wider tolerance, not to judge them.
 *
 * @param water  what the grid is made for: Practical Salinity, temperature (deg C, ITS-90) and sea pressure (dbar)
 * @returns      a column twin: fills `out` from Absolute Salinity, temperature and pressure; NaN where one is NaN
 */
export function quickTemperature(water: Columns): QuickColumn {
  const known = kept.get(water.SP);
  if (known !== undefined && known.t === water.t && known.p === water.p) return known.column;
  const { t, p } = water;
  const column = newQuickTemperature(water);
  kept.set(water.SP, { t, p, column });
  return column;
}

interface Columns {
  readonly SP: Float64Array;
  readonly t: Float64Array;
  readonly p: Float64Array;
}

type QuickColumn = (SA: Float64Array, t: Float64Array, p: Float64Array, out: Float64Array) => void;

/** One grid serves all rules that look at the same water. */
const kept = new WeakMap<Float64Array, { t: Float64Array; p: Float64Array; column: QuickColumn }>();

function newQuickTemperature(water: Columns): QuickColumn {
  let made: { s: Span; t: Span; p: Span; grid: Float64Array | null } | undefined;
  const make = () => {
    // Absolute Salinity is at most a little more than the number of Practical Salinity
    const { first, nodes } = spanOf(water.SP, 0);
    const s = { first, nodes: nodes + 1 };
    const [t, p] = [spanOf(water.t, 1), spanOf(water.p, 2)];
    // a grid that costs more than the rows themselves is not made
    const worthwhile = s.nodes * t.nodes * p.nodes * 4 < water.SP.length;
    return { s, t, p, grid: worthwhile ? gridOf(s, t, p) : null };
  };
  return (SA, t, p, out) => {
    made ??= make();
    if (made.grid === null) {
      for (let i = 0; i < out.length; i += 1) out[i] = conservativeTemperature(SA[i]!, t[i]!, p[i]!);
    } else interpolate(made.grid, [made.s, made.t, made.p], SA, t, p, out);
  };
}

function interpolate(
  grid: Float64Array,
  [s, w, d]: readonly [Span, Span, Span],
  SA: Float64Array,
  t: Float64Array,
  p: Float64Array,
  out: Float64Array,
): void {
  const rowStep = d.nodes;
  const planeStep = w.nodes * d.nodes;
  for (let row = 0; row < out.length; row += 1) {
    const x = SA[row]! * PER_STEP[0] - s.first;
    const y = t[row]! * PER_STEP[1] - w.first;
    const z = p[row]! * PER_STEP[2] - d.first;
    if (!(x >= 0 && x < s.nodes - 1 && y >= 0 && y < w.nodes - 1 && z >= 0 && z < d.nodes - 1)) {
      out[row] = conservativeTemperature(SA[row]!, t[row]!, p[row]!);
      continue;
    }
    const i = x | 0;
    const j = y | 0;
    const k = z | 0;
    const fy = y - j;
    const fz = z - k;
    const at = i * planeStep + j * rowStep + k;
    const a = grid[at]! + fz * (grid[at + 1]! - grid[at]!);
    const b = grid[at + rowStep]! + fz * (grid[at + rowStep + 1]! - grid[at + rowStep]!);
    const next = at + planeStep;
    const c = grid[next]! + fz * (grid[next + 1]! - grid[next]!);
    const e = grid[next + rowStep]! + fz * (grid[next + rowStep + 1]! - grid[next + rowStep]!);
    const near = a + fy * (b - a);
    const far = c + fy * (e - c);
    out[row] = near + (x - i) * (far - near);
  }
}
