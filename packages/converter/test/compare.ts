import type { Attribute, Dataset } from "@wherry/netcdf";

/** Attributes and variables of a product as lines of text, in order, numbers with their type. */
export function structure(dataset: Dataset): { variables: string[]; attributes: Map<string, string> } {
  const attributes = new Map<string, string>();
  const variables: string[] = [];
  for (const { name, type, dimensions, attributes: own } of dataset.variables.values()) {
    variables.push(`${type} ${name}(${dimensions.join(", ")})`);
    for (const attribute of own.values()) attributes.set(`${name}:${attribute.name}`, spelled(attribute));
  }
  for (const attribute of dataset.attributes.values())
    attributes.set(`:${attribute.name}`, spelled(attribute));
  return { variables, attributes };
}

const spelled = ({ type, value }: Attribute): string =>
  typeof value === "string" ? value : `${type} ${Array.from(value as ArrayLike<number>).join(", ")}`;

/** Lines of `found` and `wanted` that differ: `- ` is in the reference only, `+ ` in ours only. */
export function differences(
  found: ReadonlyMap<string, string>,
  wanted: ReadonlyMap<string, string>,
): string[] {
  const lines: string[] = [];
  for (const [name, text] of wanted) {
    const own = found.get(name);
    if (own === undefined) lines.push(`- ${name}`);
    else if (own !== text) lines.push(`~ ${name}`);
  }
  for (const name of found.keys()) if (!wanted.has(name)) lines.push(`+ ${name}`);
  return lines.sort();
}
