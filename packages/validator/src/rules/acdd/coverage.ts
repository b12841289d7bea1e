import { parseNumber } from "@wherry/core";
import { numbersOf, textOf } from "../../engine/attribute-value.ts";
import type { Axis } from "../../engine/axis.ts";
import type { DatasetView } from "../../engine/dataset-view.ts";
import { spanOf } from "../../engine/span.ts";
import type { VariableView } from "../../engine/variable-view.ts";
import { validRange } from "../cf/valid-range.ts";

/** Smallest and largest value of some coordinates. */
export interface Extent {
  readonly min: number;
  readonly max: number;
  /** Half the step of the coarsest type that the values are stored in, at their size. */
  readonly step: number;
}

const FLOAT_STEP = 2 ** -24;

/** Limits of the values that are neither missing nor outside the valid range; infinity and its opposite if none. */
export async function validSpan(dataset: DatasetView, variable: VariableView): Promise<[number, number]> {
  const values = (await dataset.data.numbers(variable.name)) ?? new Float64Array();
  const { min: least, max: most } = validRange(variable) ?? {
    min: Number.NEGATIVE_INFINITY,
    max: Number.POSITIVE_INFINITY,
  };
  return spanWithin(values, least, most);
}

function spanWithin(values: Float64Array, least: number, most: number): [number, number] {
  let [min, max] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < values.length; i += 1) {
    const value = values[i]!;
    if (!Number.isFinite(value) || value < least || value > most) continue;
    if (value < min) min = value;
    if (value > max) max = value;
  }
  return [min, max];
}

/** The values that are neither missing nor outside the valid range, one after the other. */
export async function validValues(dataset: DatasetView, variable: VariableView): Promise<Float64Array> {
  const values = (await dataset.data.numbers(variable.name)) ?? new Float64Array();
  const range = validRange(variable);
  return values.filter(
    (value) => Number.isFinite(value) && (range === null || (value >= range.min && value <= range.max)),
  );
}

/** Coordinates of a kind that can be compared with an attribute: numbers as they are, not packed. */
export const coordinatesOfKind = (dataset: DatasetView, axis: Axis): VariableView[] =>
  dataset.coordinates.filter(
    (variable) => variable.axis === axis && !variable.has("scale_factor") && !variable.has("add_offset"),
  );

/** Limits of several coordinates together, each first turned into the wanted unit; null if there are no values. */
export async function extentOf(
  dataset: DatasetView,
  variables: readonly VariableView[],
  convert: (value: number, variable: VariableView) => number = (value) => value,
): Promise<Extent | null> {
  let [min, max, step] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 0];
  for (const variable of variables) {
    const span = await validSpan(dataset, variable);
    if (span[0] > span[1]) continue;
    // units convert by a line, so the limits of the converted are the converted limits
    const [low, high] = spanOf(span.map((value) => convert(value, variable)));
    min = Math.min(min, low);
    max = Math.max(max, high);
    if (variable.type === "float") step = FLOAT_STEP;
  }
  return min > max ? null : { min, max, step: step * Math.max(Math.abs(min), Math.abs(max)) };
}

/** A number from a numeric attribute, or from text that is one; null otherwise. */
export function statedNumber(dataset: DatasetView, name: string): number | null {
  const attribute = dataset.attributes.get(name);
  const [first, ...others] = numbersOf(attribute) ?? [];
  if (first !== undefined) return others.length === 0 ? first : null;
  const value = parseNumber(textOf(attribute)?.trim() ?? "");
  return Number.isNaN(value) ? null : value;
}

/** What an attribute may differ from the data: a millionth of a unit, or the step of the types. */
export function toleranceOf(dataset: DatasetView, name: string, extent: Extent): number {
  const float = dataset.attributes.get(name)?.type === "float";
  const size = Math.max(Math.abs(extent.min), Math.abs(extent.max));
  return Math.max(1e-6, 2 * extent.step, float ? 2 * FLOAT_STEP * size : 0);
}
