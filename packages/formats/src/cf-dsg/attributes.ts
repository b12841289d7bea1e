import type { Attribute } from "@wherry/netcdf";

type Attributes = ReadonlyMap<string, Attribute>;

/** A text attribute (char, or one string); null if there is none or it is empty. */
export function textOf(attributes: Attributes, name: string): string | null {
  const value = attributes.get(name)?.value;
  const text = typeof value === "string" ? value : value?.length === 1 ? value[0] : undefined;
  return typeof text === "string" && text.trim() !== "" ? text.trim() : null;
}

/** The numbers of an attribute; none if there is no such attribute or it is text. */
export function numbersOf(attributes: Attributes, name: string): readonly number[] {
  const value = attributes.get(name)?.value;
  if (value === undefined || typeof value === "string") return [];
  const numbers: number[] = [];
  for (const each of value) if (typeof each !== "string") numbers.push(Number(each));
  return numbers;
}

/** Words of a list attribute such as `coordinates` or `ancillary_variables`. */
export const wordsOf = (attributes: Attributes, name: string): readonly string[] =>
  textOf(attributes, name)?.split(/\s+/) ?? [];

/** An attribute as a person would write it. */
export function attributeWords({ value }: Attribute): string {
  return typeof value === "string" ? value : Array.from<unknown, string>(value, String).join(", ");
}
