import { convertUnitsColumn, type Unit } from "@wherry/core";
import type { DatasetView } from "../engine/dataset-view.ts";
import { unitOf } from "../engine/unit-kinds.ts";
import type { VariableView } from "../engine/variable-view.ts";
import { withoutDoubted } from "./flagged.ts";

/** What is known of a quantity: its names in the standard name table, the unit of the equations. */
export const KINDS = {
  conductivity: { names: ["sea_water_electrical_conductivity"], unit: "mS cm-1" },
  temperature: { names: ["sea_water_temperature"], unit: "degree_C" },
  pressure: { names: ["sea_water_pressure_due_to_sea_water", "sea_water_pressure"], unit: "dbar" },
  salinity: { names: ["sea_water_practical_salinity", "sea_water_salinity"], unit: "1" },
  density: { names: ["sea_water_density"], unit: "kg m-3" },
  soundSpeed: { names: ["speed_of_sound_in_sea_water"], unit: "m s-1" },
  depth: { names: ["depth"], unit: "m" },
  latitude: { names: ["latitude"], unit: "degree" },
  longitude: { names: ["longitude"], unit: "degree" },
} as const;

export type Kind = keyof typeof KINDS;

export interface Quantity {
  readonly kind: Kind;
  readonly variable: VariableView;
  /** In the unit of the kind; NaN where missing or doubted by a flag. Row-major on the variable's dimensions. */
  readonly values: Float64Array;
  /** Half of the smallest step between stored values, in the unit of the kind. */
  readonly halfStep: number;
}

const STATISTIC =
  /\b(?:standard_deviation|variance|range|sum_of_squares|root_mean_square|minimum|maximum|mid_range|sum|mode)\b/;

/** A value of the quantity itself, not its spread, its count, or a difference. */
const isItself = (variable: VariableView): boolean =>
  (variable.role === "data" || variable.isSpaceTime) &&
  !variable.isText &&
  variable.words("standard_name").length === 1 &&
  !STATISTIC.test(variable.text("cell_methods") ?? "") &&
  !/difference/.test(variable.text("units_metadata") ?? "");

export const variablesOf = (dataset: DatasetView, kind: Kind): VariableView[] =>
  dataset.all.filter(
    (variable) =>
      isItself(variable) && (KINDS[kind].names as readonly string[]).includes(variable.standardName ?? ""),
  );

/**
 * Step between the values that a file can hold: of packed data the scale, else the last decimal place that any of
 * them uses, else that of the type. A handful of values tells little: there a step beyond a thousandth is not believed.
 */
export function storedStep(values: Float64Array, single: boolean): number {
  const precision = single ? 6e-8 : 1e-15;
  const every = Math.max(1, Math.floor(values.length / 2000));
  const few = new Set(values.subarray(0, 1000)).size < 8;
  for (let places = 0; places <= 7; places += 1) {
    const scale = 10 ** places;
    let fits = true;
    for (let i = 0; i < values.length && fits; i += every) {
      const scaled = values[i]! * scale;
      fits =
        Number.isNaN(scaled) ||
        Math.abs(scaled - Math.round(scaled)) <= Math.max(1e-7, Math.abs(scaled) * precision);
    }
    if (fits) return few ? Math.min(1 / scale, 1e-3) : 1 / scale;
  }
  return 1e-8;
}

/** Salinities are numbers on a scale, whatever unit is written beside them; grams by mass are another quantity. */
const isPracticalSalinity = (variable: VariableView): boolean =>
  variable.standardName === "sea_water_practical_salinity" ||
  !/g\s*\/?\s*kg|kg/.test(variable.text("units") ?? "");

/** Standard atmosphere, dbar. */
const ATMOSPHERE = 10.1325;

function converted(values: Float64Array, from: Unit, to: string, less: number): Float64Array {
  const out = new Float64Array(values.length);
  convertUnitsColumn(values, from, to, out);
  if (less !== 0) for (let i = 0; i < out.length; i += 1) out[i] = out[i]! - less;
  return out;
}

async function read(dataset: DatasetView, kind: Kind, variable: VariableView): Promise<Quantity | null> {
  const stored = await dataset.data.numbers(variable.name);
  if (stored === null) return null;
  const scale = variable.numbers("scale_factor")?.[0];
  const offset = variable.numbers("add_offset")?.[0] ?? 0;
  const unpacked =
    scale === undefined && offset === 0 ? stored : stored.map((v) => v * (scale ?? 1) + offset);
  const step = scale ?? storedStep(unpacked, variable.type === "float");
  const values = await withoutDoubted(dataset, variable, unpacked);
  if (kind === "latitude" || kind === "longitude") return { kind, variable, values, halfStep: step / 2 };
  if (kind === "salinity")
    return isPracticalSalinity(variable) ? { kind, variable, values, halfStep: step / 2 } : null;
  const units = variable.text("units");
  const unit = unitOf(units);
  if (unit === null || units === undefined) return null;
  const house = KINDS[kind].unit;
  const ends = new Float64Array(2);
  convertUnitsColumn(Float64Array.of(0, step), unit, house, ends);
  if (Number.isNaN(ends[1]!)) return null;
  const halfStep = Math.abs(ends[1]! - ends[0]!) / 2;
  const above = variable.standardName === "sea_water_pressure" ? ATMOSPHERE : 0;
  const same = ends[0] === 0 && ends[1] === step && above === 0;
  return { kind, variable, values: same ? values : converted(values, unit, house, above), halfStep };
}

const kept = new WeakMap<DatasetView, Map<string, Promise<Quantity | null>>>();

/** A variable's values in the unit of the equations, read once; null if its unit says something else. */
export function quantity(dataset: DatasetView, kind: Kind, variable: VariableView): Promise<Quantity | null> {
  let known = kept.get(dataset);
  if (known === undefined) {
    known = new Map();
    kept.set(dataset, known);
  }
  let reading = known.get(variable.name);
  if (reading === undefined) {
    reading = read(dataset, kind, variable);
    known.set(variable.name, reading);
  }
  return reading;
}

/** The one variable of a quantity; null if there is none, or several so that nobody can tell which one is meant. */
export async function only(dataset: DatasetView, kind: Kind): Promise<Quantity | null> {
  const [variable, ...others] = variablesOf(dataset, kind);
  return variable === undefined || others.length > 0 ? null : quantity(dataset, kind, variable);
}
