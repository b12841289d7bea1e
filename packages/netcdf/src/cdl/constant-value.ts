import type { Attribute, NcType } from "../dataset.ts";
import { decodeText } from "../text.ts";
import { bytesPerValue, type NumericType, numbersAs } from "../types.ts";
import type { Constant } from "./constant.ts";

/** What is wrong with a constant, and where it stands. */
export interface Complaint {
  readonly at: number;
  readonly message: string;
}

export const isComplaint = (value: unknown): value is Complaint =>
  typeof value === "object" && value !== null && "message" in value && "at" in value;

/** A constant as a number of the type; nothing is rounded or cut but a float. */
export function numberOf(constant: Constant, type: NumericType): number | bigint | Complaint {
  const { at } = constant;
  if (constant.kind === "character") {
    const byte = constant.bytes[0] ?? 0;
    return bytesPerValue(type) === 1
      ? type === "byte" && byte > 127
        ? byte - 256
        : byte
      : notOf("a character", type, at);
  }
  if (constant.kind !== "number") return notOf(nameOf(constant), type, at);
  const quick = quickly(constant.value, constant.type, type);
  if (quick !== null) return quick;
  try {
    const value =
      constant.type === "byte" && type === "ubyte" ? Number(constant.value) & 255 : constant.value;
    return numbersAs(type, [value])[0] as number | bigint;
  } catch {
    return notOf(constant.text, type, at);
  }
}

/** The conversions that nearly all values need, without the cost of the general one. */
function quickly(value: number | bigint, from: NcType, to: NumericType): number | bigint | null {
  if (from === to) return value;
  if (typeof value === "bigint") return null;
  if (to === "double") return value;
  if (to === "float" && Number.isFinite(Math.fround(value))) return Math.fround(value);
  if (to === "float" || !Number.isInteger(value) || value < 0 || value > 127) return null;
  return to === "int64" || to === "uint64" ? BigInt(value) : value;
}

export const notOf = (what: string, type: NcType, at: number): Complaint => ({
  at,
  message: `${what} is not a value of type ${type}`,
});

const names = {
  text: "a text",
  character: "a character",
  nil: "NIL",
  fill: "_",
  list: "a list in braces",
} as const;

export const nameOf = (constant: Constant): string =>
  constant.kind === "number" ? constant.text : names[constant.kind];

const RANKS: readonly (readonly NcType[])[] = [
  ["byte", "ubyte"],
  ["short", "ushort"],
  ["int", "uint"],
  ["int64", "uint64"],
  ["float"],
  ["double"],
];
const rankOf = (type: NcType): number => RANKS.findIndex((types) => types.includes(type));

/** The type that a list of constants has by itself: text is char, numbers have the widest of their types. */
function typeOfList(items: readonly Constant[]): NcType | Complaint {
  let type: NcType | null = null;
  for (const item of items) {
    if (item.kind === "list" || item.kind === "fill" || item.kind === "nil")
      return { at: item.at, message: `an attribute without a type can't hold ${nameOf(item)}` };
    const own = item.kind === "number" ? item.type : item.kind === "text" ? "char" : "byte";
    if (type !== null && (type === "char") !== (own === "char"))
      return { at: item.at, message: "an attribute holds either text or numbers, not both" };
    if (type === null || rankOf(own) >= rankOf(type)) type = own;
  }
  return type ?? "char";
}

/**
 * The attribute that a list of constants makes. Texts of a char attribute are joined; a string attribute keeps
 * them apart. An empty list is an attribute of length 0.
 */
export function attributeOf(
  name: string,
  given: NcType | null,
  items: readonly Constant[],
): Attribute | Complaint {
  const type = given ?? typeOfList(items);
  if (isComplaint(type)) return type;
  if (type === "char") return charAttribute(name, items);
  if (type === "string") {
    const texts: string[] = [];
    for (const item of items) {
      if (item.kind === "nil") texts.push("");
      else if (item.kind === "text" || item.kind === "character") texts.push(decodeText(item.bytes).text);
      else return notOf(nameOf(item), type, item.at);
    }
    return { name, type, value: texts };
  }
  const values: (number | bigint)[] = [];
  for (const item of items) {
    const value = numberOf(item, type);
    if (isComplaint(value)) return value;
    values.push(value);
  }
  return { name, type, value: numbersAs(type, values) };
}

function charAttribute(name: string, items: readonly Constant[]): Attribute | Complaint {
  const parts: number[] = [];
  for (const item of items) {
    if (item.kind !== "text" && item.kind !== "character") return notOf(nameOf(item), "char", item.at);
    for (const byte of item.bytes) parts.push(byte);
  }
  const bytes = Uint8Array.from(parts);
  const { text, utf8 } = decodeText(bytes);
  return { name, type: "char", value: text, ...(utf8 ? {} : { bytes }) };
}
