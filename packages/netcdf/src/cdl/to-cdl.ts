import type { Dataset, Dimension, Variable } from "../dataset.ts";
import { fillValue } from "../fill-value.ts";
import { sizeOf } from "../slab.ts";
import { spellAttribute, spellName } from "./spell.ts";
import { spellData } from "./spell-data.ts";

export interface CdlOptions {
  /** The name that the text gives the dataset; "dataset" unless stated. */
  readonly name?: string;
  /** Whether values are written, not the header alone; true unless stated. */
  readonly data?: boolean;
}

/**
 * Writes a dataset as CDL that the netCDF library's generator reads back with the same values: floating-point
 * numbers by the fewest digits that keep them, `_` for the fill value, groups as groups.
 *
 * What CDL has no words for is lost: the length of an unlimited dimension that no written variable uses, groups
 * without contents, the payload of NaN. Only `parseCdl` reads attributes of length 0 (the generator refuses
 * numeric ones and makes text of one NUL), names that begin with a special character, and in a classic file
 * dimensions of length 0 that are not unlimited. What could not be read stands as a comment.
 */
export async function toCdl(dataset: Dataset, options: CdlOptions = {}): Promise<string> {
  const lines = [`netcdf ${spellName(options.name ?? "dataset")} {`];
  for (const { message } of dataset.problems) lines.push(comment(message));
  await writeGroup(lines, dataset, "", options.data ?? true);
  lines.push("}");
  return `${lines.join("\n")}\n`;
}

const comment = (text: string): string => `// ${text.replaceAll(/\s+/g, " ")}`;

/** Names directly in a group (its path ends with a slash; the root's is empty), without the path. */
const directlyIn = (names: Iterable<string>, path: string): string[] =>
  [...names].filter((name) => name.startsWith(path) && !name.slice(path.length).includes("/"));

async function writeGroup(lines: string[], dataset: Dataset, path: string, data: boolean): Promise<void> {
  const dimensions = directlyIn(dataset.dimensions.keys(), path);
  if (dimensions.length > 0) lines.push("dimensions:");
  for (const name of dimensions) lines.push(dimensionLine(dataset.dimensions.get(name)!, path));
  const variables = directlyIn(dataset.variables.keys(), path).map((name) => dataset.variables.get(name)!);
  if (variables.length > 0) lines.push("variables:");
  for (const variable of variables) writeVariable(lines, dataset, variable, path);
  const attributes = directlyIn(dataset.attributes.keys(), path);
  if (attributes.length > 0) lines.push("", `// ${path === "" ? "global" : "group"} attributes:`);
  for (const name of attributes)
    lines.push(`\t\t${spellAttribute(dataset.attributes.get(name)!, "", name.slice(path.length), null)}`);
  if (data) await writeValues(lines, dataset, variables, path);
  for (const group of groupsIn(dataset, path)) {
    lines.push("", `group: ${spellName(group)} {`);
    await writeGroup(lines, dataset, `${path}${group}/`, data);
    lines.push(`} // group ${group.replaceAll(/\s/g, " ")}`);
  }
}

function dimensionLine({ name, length, unlimited }: Dimension, path: string): string {
  const value = unlimited ? `UNLIMITED ; // (${length} currently)` : `${length} ;`;
  return `\t${spellName(name.slice(path.length))} = ${value}`;
}

function writeVariable(lines: string[], dataset: Dataset, variable: Variable, path: string): void {
  const name = spellName(variable.name.slice(path.length));
  const dimensions = variable.dimensions.map((dimension) => dimensionReference(dataset, dimension, path));
  lines.push(`\t${variable.type} ${name}${dimensions.length > 0 ? `(${dimensions.join(", ")})` : ""} ;`);
  // "data:" would open the section of that name
  const owner = /^(types|dimensions|variables|data|group)$/.test(name) ? `${name} ` : name;
  for (const attribute of variable.attributes.values())
    lines.push(`\t\t${spellAttribute(attribute, owner, attribute.name, variable.type)}`);
}

/** A dimension by its bare name if the group sees it by that, else by its path. */
function dimensionReference(dataset: Dataset, dimension: string, path: string): string {
  const bare = dimension.slice(dimension.lastIndexOf("/") + 1);
  for (let around = path; ; around = around.slice(0, around.lastIndexOf("/", around.length - 2) + 1)) {
    const seen = around + bare;
    if (seen === dimension) return spellName(bare);
    if (around === "" || dataset.dimensions.has(seen)) break;
  }
  return `/${dimension.split("/").map(spellName).join("/")}`;
}

async function writeValues(
  lines: string[],
  dataset: Dataset,
  variables: readonly Variable[],
  path: string,
): Promise<void> {
  const written = variables.filter(({ shape }) => sizeOf(shape) > 0);
  if (written.length > 0) lines.push("data:");
  for (const { name, type, dimensions, attributes } of written) {
    const values = await dataset.read(name);
    lines.push("");
    if (!values.ok) {
      lines.push(...values.problems.map(({ message }) => comment(`${name}: ${message}`)));
      continue;
    }
    const axes = dimensions.map((dimension) => dataset.dimensions.get(dimension)!);
    const lead = ` ${spellName(name.slice(path.length))} = `;
    lines.push(spellData(lead, type, axes, values.value, fillValue(type, attributes)));
  }
}

/** Names of the groups directly in a group that hold something, in the order they are met. */
function groupsIn(dataset: Dataset, path: string): ReadonlySet<string> {
  const groups = new Set<string>();
  for (const names of [dataset.dimensions, dataset.variables, dataset.attributes])
    for (const name of names.keys()) {
      const inside = name.startsWith(path) ? name.slice(path.length) : "";
      if (inside.includes("/")) groups.add(inside.slice(0, inside.indexOf("/")));
    }
  return groups;
}
