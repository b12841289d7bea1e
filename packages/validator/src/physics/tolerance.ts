import type { DatasetView } from "../engine/dataset-view.ts";
import type { VariableView } from "../engine/variable-view.ts";
import type { Kind, Quantity } from "./quantity.ts";
import { quantity } from "./quantity.ts";

/**
 * How much a computed quantity changes with an input, per unit of each: upper bounds over the ocean, by difference
 * quotients of the equations at SP 0 to 42, -2 to 35 deg C, 0 to 10 000 dbar, rounded up.
 */
const SLOPES: Partial<Record<Kind, Partial<Record<Kind, number>>>> = {
  salinity: { conductivity: 1.6, temperature: 1.6, pressure: 1e-3 },
  density: { salinity: 0.85, temperature: 0.45, pressure: 5.3e-3 },
  soundSpeed: { salinity: 1.6, temperature: 5.6, pressure: 0.02 },
  depth: { pressure: 1.03 },
};

/** How far a computed quantity may be off where an input is off by this much. */
export const errorFrom = (target: Kind, input: Kind, error: number): number =>
  error * (SLOPES[target]?.[input] ?? Number.POSITIVE_INFINITY);

/** What storage alone may make of a computed value: half a step of its own and of each input. */
export function storageTolerance(target: Quantity, inputs: readonly Quantity[]): number {
  const slopes = SLOPES[target.kind] ?? {};
  return inputs.reduce(
    (sum, { kind, halfStep }) => sum + halfStep * (slopes[kind] ?? 0),
    target.halfStep * 1.01,
  );
}

const isMean = (variable: VariableView): boolean =>
  /\b(?:mean|median)\b/.test(variable.text("cell_methods") ?? "");

/** The variable that holds the spread of another one in its layers. */
const spreadOf = (dataset: DatasetView, variable: VariableView): VariableView | undefined =>
  dataset.all.find(
    (other) =>
      other !== variable &&
      other.standardName === variable.standardName &&
      other.dimensions.join() === variable.dimensions.join() &&
      /\bstandard_deviation\b/.test(other.text("cell_methods") ?? "") &&
      (dataset.listed(variable, "ancillary_variables").includes(other) ||
        other.name.startsWith(variable.name)),
  );

/** Largest difference from the rows before and after. */
function neighbourSpread(values: Float64Array): Float64Array {
  return values.map((value, i) => {
    const before = Math.abs(value - (values[i - 1] ?? Number.NaN));
    const after = Math.abs(value - (values[i + 1] ?? Number.NaN));
    return Math.max(Number.isNaN(before) ? 0 : before, Number.isNaN(after) ? 0 : after);
  });
}

/**
 * What averaging may make of a computed value: an equation of means is not the mean of the equation, and each input
 * may be the mean of other rows. Null for single values.
 */
export async function layerTolerance(dataset: DatasetView, target: Quantity): Promise<Float64Array | null> {
  const { variable, kind, values } = target;
  if (!isMean(variable)) return null;
  const spread = spreadOf(dataset, variable);
  const stated = spread === undefined ? null : await quantity(dataset, kind, spread);
  const around = neighbourSpread(values);
  if (stated === null) return around;
  return around.map((near, i) =>
    Number.isNaN(stated.values[i]!) ? near : Math.min(near, stated.values[i]!),
  );
}
