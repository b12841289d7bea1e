import type { Attribute } from "@wherry/netcdf";
import { lengthOf, wordsOf } from "../../engine/attribute-value.ts";

/** Number of flags in flag_values or flag_masks. A char attribute holds one flag a character, or a word each. */
export function flagCount(attribute: Attribute): number {
  const { value } = attribute;
  if (typeof value !== "string") return lengthOf(attribute);
  return /\s/.test(value.trim()) ? wordsOf(value).length : value.length;
}

/** The flags one by one, as they can be compared. */
export function flagItems(attribute: Attribute): (string | number)[] {
  const { value } = attribute;
  if (typeof value === "string") return /\s/.test(value.trim()) ? wordsOf(value) : [...value];
  return Array.from(value as ArrayLike<string | number | bigint>, (item) =>
    typeof item === "bigint" ? Number(item) : item,
  );
}
