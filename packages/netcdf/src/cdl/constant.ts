import type { NcType } from "../dataset.ts";
import type { Token } from "./token.ts";

/** One item of a list of values. */
export type Constant =
  | {
      readonly kind: "number";
      readonly at: number;
      readonly type: NcType;
      readonly value: number | bigint;
      readonly text: string;
    }
  | { readonly kind: "text" | "character"; readonly at: number; readonly bytes: Uint8Array }
  | { readonly kind: "fill" | "nil"; readonly at: number }
  | { readonly kind: "list"; readonly at: number; readonly items: readonly Constant[] };

const SPECIAL = /^([+-]?)(nan|inf|infinity)(f?)$/i;
const WHOLE = /^([+-]?)(0[xX][0-9a-fA-F]+|\d+)([uU]?(?:[bBsSlL]|ll|LL|[iI])?|(?:[bBsSlL]|ll|LL)[uU])$/;
const REAL = /^[+-]?(?:\d+\.\d*|\.\d+|\d+)(?:[eE][+-]?\d+)?([fFdDlL]?)$/;

const WHOLE_TYPES: Readonly<Record<string, readonly [NcType, bigint, bigint]>> = {
  // 255b is -1: the signed byte is written either way
  b: ["byte", -128n, 255n],
  s: ["short", -(2n ** 15n), 2n ** 15n - 1n],
  l: ["int", -(2n ** 31n), 2n ** 31n - 1n],
  ll: ["int64", -(2n ** 63n), 2n ** 63n - 1n],
  ub: ["ubyte", 0n, 255n],
  us: ["ushort", 0n, 2n ** 16n - 1n],
  u: ["uint", 0n, 2n ** 32n - 1n],
  ul: ["uint", 0n, 2n ** 32n - 1n],
  ull: ["uint64", 0n, 2n ** 64n - 1n],
};

/** The constant that a token is, or in words what is wrong with it; null for a token that is no constant. */
export function constantOf(token: Token): Constant | string | null {
  if (token.kind === "text" || token.kind === "character")
    return { kind: token.kind, at: token.at, bytes: token.bytes };
  if (token.kind === "name") {
    if (!token.plain) return null;
    if (token.text === "_") return { kind: "fill", at: token.at };
    if (token.text === "NIL") return { kind: "nil", at: token.at };
    return SPECIAL.test(token.text) ? number(token.at, token.text) : null;
  }
  return token.kind === "number" ? number(token.at, token.text) : null;
}

function number(at: number, text: string): Constant | string {
  const special = SPECIAL.exec(text);
  if (special) {
    const size = special[2]?.toLowerCase() === "nan" ? Number.NaN : Number.POSITIVE_INFINITY;
    const type = special[3] ? "float" : "double";
    return { kind: "number", at, type, value: special[1] === "-" ? -size : size, text };
  }
  const whole = WHOLE.exec(text);
  if (whole) return wholeNumber(at, text, whole[1] ?? "", whole[2] ?? "", (whole[3] ?? "").toLowerCase());
  const real = REAL.exec(text);
  const suffix = real?.[1]?.toLowerCase() ?? "";
  // as in C a suffix alone doesn't make a whole number a floating-point one
  if (!real || (suffix !== "" && !/[.eE]/.test(text)))
    return /^[+-]?\d+[fFdD]$/.test(text)
      ? `${text} lacks a decimal point: write ${text.slice(0, -1)}.${text.slice(-1)}`
      : `${text} is not a number that CDL knows`;
  const value = Number(suffix === "" ? text : text.slice(0, -1));
  const single = suffix === "f";
  if (!Number.isFinite(single ? Math.fround(value) : value))
    return `${text} is too large for a ${single ? "float" : "double"}`;
  return {
    kind: "number",
    at,
    type: single ? "float" : "double",
    value: single ? Math.fround(value) : value,
    text,
  };
}

/** Whole numbers are octal after a leading 0 and hexadecimal after 0x. */
function wholeNumber(
  at: number,
  text: string,
  sign: string,
  digits: string,
  suffix: string,
): Constant | string {
  const octal = /^0\d/.test(digits);
  if (octal && /[89]/.test(digits))
    return `${text} starts with 0 and so is octal, which has no digits 8 and 9; leave the leading 0 out`;
  const size = BigInt(octal ? `0o${digits.slice(1)}` : digits);
  const value = sign === "-" ? -size : size;
  const key = [...suffix.replace("i", "")].sort((a, b) => Number(b === "u") - Number(a === "u")).join("");
  const named = WHOLE_TYPES[key === "" ? unmarked(value) : key];
  if (!named) return `${text} is not a number that CDL knows`;
  const [type, least, most] = named;
  if (value < least || value > most) return `${text} does not fit into type ${type} (${least} to ${most})`;
  const kept = type === "byte" && value > 127n ? value - 256n : value;
  return {
    kind: "number",
    at,
    type,
    value: type === "int64" || type === "uint64" ? kept : Number(kept),
    text,
  };
}

/** Without a suffix the value decides: int if it fits, then uint, then the 64-bit types. */
function unmarked(value: bigint): string {
  if (value >= -(2n ** 31n) && value < 2n ** 31n) return "l";
  if (value < 0n) return "ll";
  return value < 2n ** 32n ? "u" : "ull";
}
