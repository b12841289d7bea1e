import type { Attribute, DataArray, NcType } from "../dataset.ts";
import { encodeText } from "../text.ts";
import { reservedWords } from "./words.ts";

/** A name as CDL writes it: what would mean something else stands behind a backslash. */
export function spellName(name: string): string {
  if (reservedWords.has(name)) return `\\${name}`;
  return name.replaceAll(/[^A-Za-z0-9_.@+\-\u0080-\u{10ffff}]/gu, "\\$&").replace(/^[0-9.@+-]/, "\\$&");
}

/** Text between quotation marks; control characters and, in bytes that are no UTF-8, all above 127 as octal. */
export function spellText(text: string): string {
  return `"${text.replaceAll(/["\\\p{Cc}]/gu, escapeCharacter)}"`;
}

/** Bytes of char data as text: as UTF-8 where they are. */
export function spellBytes(bytes: Uint8Array): string {
  try {
    return spellText(strictUtf8.decode(bytes));
  } catch {
    return `"${Array.from(bytes, (byte) => (byte > 127 ? octal(byte) : spellText(String.fromCharCode(byte)).slice(1, -1))).join("")}"`;
  }
}

const strictUtf8 = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });
const escapes: Readonly<Record<string, string>> = {
  "\n": "\\n",
  "\t": "\\t",
  "\r": "\\r",
  '"': '\\"',
  "\\": "\\\\",
};
const octal = (byte: number): string => `\\${byte.toString(8).padStart(3, "0")}`;
const escapeCharacter = (character: string): string =>
  escapes[character] ?? Array.from(encodeText(character), octal).join("");

/** Decimal digits that read back as the same single-precision number, as few as there are from six up. */
function shortestFloat(value: number): string {
  for (let digits = 6; digits < 9; digits++) {
    const rounded = Number(value.toPrecision(digits));
    if (Math.fround(rounded) === value) return String(rounded);
  }
  return String(Number(value.toPrecision(9)));
}

/** A floating-point number that reads back as the same number; it always has a point or an exponent. */
function spellReal(value: number, single: boolean): string {
  if (Number.isNaN(value)) return "NaN";
  if (!Number.isFinite(value)) return value < 0 ? "-Infinity" : "Infinity";
  const digits = Object.is(value, -0) ? "-0" : single ? shortestFloat(value) : String(value);
  return /[.e]/.test(digits) ? digits : `${digits}.`;
}

const suffixes: Readonly<Partial<Record<NcType, string>>> = {
  byte: "b",
  short: "s",
  float: "f",
  ubyte: "UB",
  ushort: "US",
  uint: "U",
  int64: "LL",
  uint64: "ULL",
};

/** A number with the suffix that tells its type. */
export function spellNumber(value: number | bigint, type: NcType): string {
  if (type === "float" || type === "double")
    return spellReal(Number(value), type === "float") + (suffixes[type] ?? "");
  return `${value}${suffixes[type] ?? ""}`;
}

/** A number among the values of a variable, whose type is known: a suffix only where the size asks for it. */
export function spellValue(value: number | bigint, type: NcType): string {
  if (type === "float" || type === "double") return spellReal(Number(value), type === "float");
  const wide = typeof value === "bigint" && (value > 2147483647n || value < -2147483648n);
  return wide || (type === "uint" && value > 2147483647) ? spellNumber(value, type) : String(value);
}

/** The statement of an attribute; `owner` is the spelt name of its variable, or empty. */
export function spellAttribute(
  attribute: Attribute,
  owner: string,
  name: string,
  variableType: NcType | null,
): string {
  const { type, value } = attribute;
  const values = spellAttributeValues(attribute);
  const length = type === "char" ? 1 : value.length;
  const fill = attribute.name === "_FillValue" && variableType !== null && variableType !== type;
  // without its type an empty list is char, text is char, and a fill value has the type of the variable
  const typed = length === 0 || type === "string" || fill;
  return `${typed ? `${type} ` : ""}${owner}:${spellName(name)} = ${values};`;
}

function spellAttributeValues({ type, value, bytes }: Attribute): string {
  if (bytes) return `${spellBytes(bytes)} `;
  if (typeof value === "string")
    // one line of the text a line, as the generator joins them again
    return `${value
      .split(/(?<=\n)(?=[\s\S])/)
      .map(spellText)
      .join(",\n\t\t\t")} `;
  const items = type === "string" ? (value as string[]).map(spellText) : spellNumbers(value, type);
  return items.length === 0 ? "" : `${items.join(", ")} `;
}

const spellNumbers = (values: DataArray, type: NcType): string[] =>
  Array.from(values as ArrayLike<number | bigint>, (value) => spellNumber(value, type));
