import type { Dataset, Variable } from "@wherry/netcdf";
import { isTextType, textOf, wordsOf } from "./attribute-value.ts";

/** What a variable is for. Each has one role: the first that fits, in this order. */
export type Role =
  | "bounds" // named by bounds or climatology
  | "count" // has sample_dimension
  | "index" // has instance_dimension
  | "container" // named by grid_mapping, platform, instrument …: no data of its own
  | "coordinate" // one-dimensional, numeric, named as its dimension
  | "label" // text, named by coordinates or with cf_role
  | "auxiliary" // numeric, named by coordinates
  | "flag" // has flag_values or flag_masks
  | "data";

/** Group of a name as netCDF-4 groups are written: "group/name" is in "group/". */
const groupOf = (name: string): string => name.slice(0, name.lastIndexOf("/") + 1);

/** The variable that a name means when it stands in an attribute of `from`: own group first, then upwards. */
export function resolveName(dataset: Dataset, name: string, from: string): string | null {
  if (name.startsWith("/")) return dataset.variables.has(name.slice(1)) ? name.slice(1) : null;
  for (let group = groupOf(from); ; group = groupOf(group.slice(0, -1))) {
    if (dataset.variables.has(group + name)) return group + name;
    if (group === "") return null;
  }
}

/** Attributes whose words are variable names, with the role that being named gives. */
const NAMING: readonly (readonly [string, Role])[] = [
  ["bounds", "bounds"],
  ["climatology", "bounds"],
  ["grid_mapping", "container"],
  ["platform", "container"],
  ["instrument", "container"],
  ["geometry", "container"],
  ["node_count", "container"],
  ["part_node_count", "container"],
  ["interior_ring", "container"],
  ["quantization", "container"],
  ["coordinates", "auxiliary"],
];

/** A name as it may stand in a grid_mapping of the long form: "crs: lat lon". */
const bareName = (word: string): string => (word.endsWith(":") ? word.slice(0, -1) : word);

/** Containers hold no data: one value or none. A bigger variable that is named so keeps its own role. */
const isSmall = (variable: Variable): boolean => variable.shape.every((length) => length <= 1);

export const isCoordinateVariable = (variable: Variable): boolean =>
  variable.dimensions.length === 1 &&
  !isTextType(variable.type) &&
  (variable.dimensions[0] === variable.name ||
    variable.dimensions[0] === variable.name.slice(groupOf(variable.name).length));

export function rolesOf(dataset: Dataset): ReadonlyMap<string, Role> {
  const named = new Map<string, Set<Role>>();
  for (const variable of dataset.variables.values()) {
    for (const [attribute, role] of NAMING) {
      for (const word of wordsOf(textOf(variable.attributes.get(attribute)))) {
        const target = resolveName(dataset, bareName(word), variable.name);
        if (target !== null && target !== variable.name)
          named.set(target, (named.get(target) ?? new Set()).add(role));
      }
    }
  }
  const roles = new Map<string, Role>();
  for (const variable of dataset.variables.values()) {
    roles.set(variable.name, roleOf(variable, named.get(variable.name) ?? new Set()));
  }
  return roles;
}

function roleOf(variable: Variable, named: ReadonlySet<Role>): Role {
  const has = (attribute: string) => variable.attributes.has(attribute);
  if (named.has("bounds")) return "bounds";
  if (has("sample_dimension")) return "count";
  if (has("instance_dimension")) return "index";
  if (has("grid_mapping_name") || (named.has("container") && isSmall(variable))) return "container";
  if (isCoordinateVariable(variable)) return "coordinate";
  if (isTextType(variable.type) && (named.has("auxiliary") || has("cf_role"))) return "label";
  if (named.has("auxiliary")) return "auxiliary";
  if (has("cf_role")) return "label";
  if (has("flag_values") || has("flag_masks")) return "flag";
  return "data";
}
