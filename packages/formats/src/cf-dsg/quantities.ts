import { convertUnits, parseUnits, sameDimension, standardName, suggestUnits } from "@wherry/core";
import type { Variable } from "@wherry/netcdf";
import { textOf, wordsOf } from "./attributes.ts";

/** What a variable measures, and how its numbers become those of a cast's column. */
export interface Meaning {
  /** Name of the column, before names that meet are told apart. */
  readonly name: string;
  readonly standardName: string | null;
  readonly longName: string;
  /** Unit of the column. */
  readonly units: string | null;
  /** Unit to convert from; null if the numbers stay as they are. */
  readonly convertFrom: string | null;
  readonly fromIpts68: boolean;
  readonly certainty: "stated" | "assumed" | "unknown";
  readonly because: string;
  readonly attribute: string | null;
  /** Whether it is one of the quantities that casts know by name. */
  readonly house: boolean;
  /** What keeps it from being one, in words; null if nothing does. */
  readonly trouble: string | null;
}

/** Quantities that casts know by name, in house units, by standard name (CF Standard Name Table 83). */
const HOUSE: ReadonlyMap<
  string,
  { readonly name: string; readonly units: string; readonly longName: string }
> = new Map([
  ["depth", { name: "depth", units: "m", longName: "depth" }],
  ["sea_water_pressure_due_to_sea_water", { name: "pressure", units: "dbar", longName: "sea pressure" }],
  ["sea_water_pressure", { name: "pressure", units: "dbar", longName: "absolute pressure" }],
  ["sea_water_temperature", { name: "temperature", units: "degree_C", longName: "temperature of sea water" }],
  [
    "sea_water_electrical_conductivity",
    { name: "conductivity", units: "mS cm-1", longName: "electrical conductivity" },
  ],
  ["sea_water_practical_salinity", { name: "salinity", units: "1", longName: "Practical Salinity" }],
  ["sea_water_density", { name: "density", units: "kg m-3", longName: "in-situ density" }],
  ["speed_of_sound_in_sea_water", { name: "sound_speed", units: "m s-1", longName: "speed of sound" }],
]);

const HOUSE_NAMES = new Set([...HOUSE.values()].map(({ name }) => name));

/** Epoch seconds of 1978, when the Practical Salinity Scale was made. */
const PSS_78 = Date.UTC(1978, 0, 1) / 1000;

/** Methods of cells that make another quantity of a quantity. */
const SPREAD = /\b(?:standard_deviation|variance|range|sum_of_squares|root_mean_square)\b/;

/** @param time epoch seconds of the earliest cast; NaN if not known */
export function meaningOf(variable: Variable, time: number): Meaning {
  const { name, attributes } = variable;
  const stated = textOf(attributes, "standard_name");
  const units = textOf(attributes, "units");
  const longName = textOf(attributes, "long_name") ?? name.replaceAll("_", " ");
  const says = [
    stated === null ? "there is no standard_name" : `standard_name says ${stated}`,
    units === null ? "there are no units" : `units says ${units}`,
  ].join(", ");
  const readable = units !== null && parseUnits(units).ok;
  const plain = (trouble: string | null, known: string | null): Meaning => ({
    name: plainName(name, known),
    standardName: known,
    longName,
    units: readable ? units : null,
    convertFrom: null,
    fromIpts68: false,
    certainty: stated === null ? "unknown" : "stated",
    because: `variable ${name}: ${says}`,
    attribute: stated === null ? null : "standard_name",
    house: false,
    trouble,
  });
  if (stated === null) return plain(null, null);
  const [base = "", modifier] = stated.split(/\s+/);
  const current = standardName(base)?.aliasOf ?? base;
  const methods = textOf(attributes, "cell_methods") ?? "";
  // a spread or a standard error has the name of its quantity, and is not that quantity
  if (modifier !== undefined || SPREAD.test(methods)) return plain(null, null);
  const salinity = current === "sea_water_salinity" ? practicalOf(units, time) : null;
  const house = HOUSE.get(salinity ? "sea_water_practical_salinity" : current);
  if (!house) {
    const known = standardName(current);
    const canonical = known?.canonicalUnits ?? null;
    if (readable && canonical !== null && !sameDimension(units, canonical))
      return plain(`units says "${units}", which is no unit of ${current} (canonical: ${canonical})`, null);
    if (known !== null) return plain(null, current);
    return plain(`standard_name says "${stated}", which the CF table of standard names does not have`, null);
  }
  if (current === "depth" && textOf(attributes, "positive")?.toLowerCase() === "up")
    return plain(`depth counts downwards, positive says ${textOf(attributes, "positive")}`, null);
  const from = house.name === "salinity" && isPracticalUnit(units) ? "1" : units;
  if (from === null || !sameDimension(from, house.units)) {
    const better = units === null ? null : suggestUnits(units);
    return plain(
      units === null
        ? "there are no units"
        : `units says "${units}", which is no unit of ${house.longName}${better ? `; ${better.units} may be meant` : ""}`,
      null,
    );
  }
  const scale = house.name === "temperature" ? temperatureScale(variable, time) : null;
  return {
    name: house.name,
    standardName: salinity ? "sea_water_practical_salinity" : current,
    longName: textOf(attributes, "long_name") ?? house.longName,
    units: house.units,
    convertFrom:
      convertUnits(1, from, house.units) === 1 && convertUnits(0, from, house.units) === 0 ? null : from,
    fromIpts68: scale?.ipts68 ?? false,
    certainty: salinity ? "assumed" : "stated",
    because: [`variable ${name}: ${says}`, salinity, scale?.words].filter((words) => words).join("; "),
    attribute: "standard_name",
    house: true,
    trouble: null,
  };
}

const isPracticalUnit = (units: string | null) =>
  units === null || /^(?:1|p\.?s\.?[us]\.?(?:[- ]?78)?)$/i.test(units);

/** Why a salinity whose kind is not named is taken for Practical Salinity; null if it is not. */
const practicalOf = (units: string | null, time: number): string | null =>
  isPracticalUnit(units) && time >= PSS_78
    ? `taken for Practical Salinity: ${units === null ? "no unit" : `unit ${units}`}, data after 1978`
    : null;

/** How evidence ends where a temperature's scale can't be told. */
export const UNKNOWN_SCALE = "the temperature scale is not known";

const ITS_90 = Date.UTC(1990, 0, 1) / 1000;

function temperatureScale(
  variable: Variable,
  time: number,
): { readonly ipts68: boolean; readonly words: string } {
  for (const name of ["reference_scale", "long_name", "comment", "source", "units_metadata", "references"]) {
    const text = textOf(variable.attributes, name) ?? "";
    const [its, ipts] = [/\bITS-?90\b/.test(text), /\bIPTS-?68\b/.test(text)];
    if (its !== ipts) return { ipts68: ipts, words: `scale ${its ? "ITS-90" : "IPTS-68"} by its ${name}` };
  }
  return {
    ipts68: false,
    words: time >= ITS_90 ? "scale ITS-90 assumed, data after 1990" : UNKNOWN_SCALE,
  };
}

/** Name for a column that casts don't know by name: never one of those that they do. */
function plainName(variable: string, standard: string | null): string {
  const name =
    variable
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, "_")
      .replace(/^_+|_+$/g, "") || "column";
  if (!HOUSE_NAMES.has(name)) return name;
  return standard !== null && !HOUSE_NAMES.has(standard) ? standard : `other_${name}`;
}

/**
 * Tells apart variables that would be columns of one name. Of several variables for one quantity the cast takes the one
 * that others name among their coordinates, else the first; the rest keep names of their own.
 *
 * @returns names by variable, and in words which quantities had several
 */
export function nameColumns(meanings: readonly (readonly [Variable, Meaning])[]): {
  readonly meanings: readonly (readonly [Variable, Meaning])[];
  readonly several: readonly string[];
} {
  const coordinates = new Set(meanings.flatMap(([variable]) => wordsOf(variable.attributes, "coordinates")));
  const several: string[] = [];
  const taken = new Map<string, string>();
  for (const name of HOUSE_NAMES) {
    const rivals = meanings
      .filter(([, meaning]) => meaning.house && meaning.name === name)
      .map(([v]) => v.name);
    const chosen = rivals.find((each) => coordinates.has(each)) ?? rivals[0];
    if (chosen === undefined) continue;
    taken.set(name, chosen);
    if (rivals.length > 1)
      several.push(
        `${name} is taken from ${chosen}, not from ${rivals.filter((each) => each !== chosen).join(", ")}`,
      );
  }
  const named = meanings.map(([variable, meaning]) => {
    if (meaning.house && taken.get(meaning.name) === variable.name) return [variable, meaning] as const;
    const wanted = meaning.house ? plainName(variable.name, null) : meaning.name;
    let name = wanted;
    for (let n = 2; taken.has(name); n++) name = `${wanted}_${n}`;
    taken.set(name, variable.name);
    return [variable, { ...meaning, name }] as const;
  });
  return { meanings: named, several };
}
