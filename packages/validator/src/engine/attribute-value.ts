import type { Attribute, NcType } from "@wherry/netcdf";
import type { Plain } from "./finding.ts";

export const isTextType = (type: NcType): boolean => type === "char" || type === "string";

/** The text of an attribute: a char attribute, or a string attribute of length one; else undefined. */
export function textOf(attribute: Attribute | undefined): string | undefined {
  if (attribute === undefined) return undefined;
  if (typeof attribute.value === "string") return attribute.value;
  if (attribute.type !== "string" || attribute.value.length !== 1) return undefined;
  const [only] = attribute.value;
  return typeof only === "string" ? only : undefined;
}

/** The numbers of an attribute; undefined for text. 64-bit integers lose digits beyond 2^53. */
export function numbersOf(attribute: Attribute | undefined): number[] | undefined {
  if (attribute === undefined || isTextType(attribute.type)) return undefined;
  return typeof attribute.value === "string" ? undefined : Array.from(attribute.value, Number);
}

/** Number of values; of a text: 1. */
export const lengthOf = (attribute: Attribute): number =>
  typeof attribute.value === "string" ? 1 : attribute.value.length;

/** The value as plain data, for a message: one value alone, more as a list, a long list cut. */
export function plainOf(attribute: Attribute | undefined): Plain {
  if (attribute === undefined) return null;
  const { value } = attribute;
  if (typeof value === "string") return value;
  const items = Array.from(value as ArrayLike<unknown>, (item) =>
    typeof item === "bigint" ? Number(item) : (item as string | number),
  );
  const [only] = items;
  if (items.length === 1 && only !== undefined) return only;
  return items.length > 12 ? [...items.slice(0, 12), "…"] : items;
}

/** Words between blanks. */
export const wordsOf = (text: string | undefined): string[] =>
  text === undefined ? [] : text.split(/\s+/).filter((word) => word !== "");
