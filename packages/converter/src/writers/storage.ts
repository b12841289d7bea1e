import { type Attribute, type MemoryVariable, numberAttribute, textAttribute } from "@wherry/netcdf";

export type Real = "float" | "double";

/** Values as they are stored. */
export interface Stored {
  readonly type: Real;
  readonly data: Float32Array | Float64Array;
  /** Stands for missing; never equal to a value. */
  readonly fill: number;
  readonly missing: number;
  /** Smallest and largest stored value that is not missing; null if there is none. */
  readonly range: readonly [number, number] | null;
}

/**
 * Share of a printed step that one rounding may take. There are up to four on the way back to the printed number:
 * of the value and of an offset subtracted from it, in the file and once more in the shortest text of the CSV.
 */
const ALLOWED_SHARE = 0.12;

/**
 * Whether single precision keeps every value at its printed precision, in the file and as text.
 *
 * @param values NaN where missing
 * @param step   printed step in the unit of the values, one for all or one per value; NaN (computed values)
 *               asks for nothing more than single precision has
 */
export function fitsFloat(values: Float64Array, step: number | Float64Array): boolean {
  for (let k = 0; k < values.length; k++) {
    const value = Math.abs(values[k]!);
    if (value <= Number.MAX_VALUE && value > LARGEST_FLOAT) return false;
    const allowed = ALLOWED_SHARE * (typeof step === "number" ? step : step[k]!);
    // the spacing of single-precision numbers near a value is at most 2^-23 of it, the error half of that
    if (value * 2 ** -24 > allowed && halfSpacing(value) > allowed) return false;
  }
  return true;
}

const LARGEST_FLOAT = (2 - 2 ** -23) * 2 ** 127;

/** Half the distance of neighbouring single-precision numbers near a value above 0. */
const halfSpacing = (value: number): number => 2 ** (Math.max(Math.floor(Math.log2(value)), -126) - 24);

/** Fill values tried in turn, so that none is ever equal to a value that was measured. */
const FILLS = [-9999, -99999, 9.969209968386869e36] as const;

/** Values in their stored type, with the fill value where they are NaN. */
export function store(values: ArrayLike<number>, type: Real): Stored {
  const data = type === "float" ? new Float32Array(values.length) : new Float64Array(values.length);
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  let missing = 0;
  const met = new Set<number>();
  for (let k = 0; k < data.length; k++) {
    const value = values[k]!;
    data[k] = value;
    const stored = data[k]!;
    if (Number.isNaN(stored)) {
      missing++;
      continue;
    }
    if (stored < low) low = stored;
    if (stored > high) high = stored;
    if (stored === FILLS[0] || stored === FILLS[1]) met.add(stored);
  }
  const fill = FILLS.find((candidate) => !met.has(candidate)) ?? FILLS[2];
  if (missing > 0) for (let k = 0; k < data.length; k++) if (Number.isNaN(data[k]!)) data[k] = fill;
  return { type, data, fill, missing, range: low <= high ? [low, high] : null };
}

export const fillAttribute = ({ type, fill }: Pick<Stored, "type" | "fill">): Attribute =>
  numberAttribute("_FillValue", type, fill);

/** `actual_range`, equal to the stored extremes; none if everything is missing. */
export const rangeAttribute = ({ type, range }: Stored): Attribute | null =>
  range === null ? null : numberAttribute("actual_range", type, [...range]);

/** Attributes from pairs; a null or empty text leaves the attribute out. Texts are in normal form C, as CF asks. */
export function attributes(
  ...items: readonly (Attribute | readonly [name: string, text: string | null | undefined] | null)[]
): Attribute[] {
  const list: Attribute[] = [];
  for (const item of items) {
    if (item === null) continue;
    if (!isPair(item)) list.push(item);
    else if (item[1]) list.push(textAttribute(item[0], item[1].normalize("NFC")));
  }
  return list;
}

const isPair = (
  item: Attribute | readonly [string, string | null | undefined],
): item is readonly [string, string | null | undefined] => Array.isArray(item);

/** Fill values of whole numbers. */
export const BYTE_FILL = -127;
export const INT_FILL = -1;

const encoder = new TextEncoder();

/** Texts in normal form C as fixed-length UTF-8, padded with NUL, the length being that of the longest (at least 1). */
export function charData(texts: readonly string[]): { data: Uint8Array; length: number } {
  const encoded = texts.map((text) => encoder.encode(text.normalize("NFC")));
  const length = Math.max(1, ...encoded.map((bytes) => bytes.length));
  const data = new Uint8Array(texts.length * length);
  for (const [index, bytes] of encoded.entries()) data.set(bytes, index * length);
  return { data, length };
}

/** Variable of a whole number per element; NaN becomes the type's fill value. */
export function wholeNumbers(
  name: string,
  type: "byte" | "int",
  dimensions: readonly string[],
  values: ArrayLike<number>,
  words: {
    readonly longName: string;
    readonly standardName?: string;
    readonly content: string;
    readonly more?: readonly Attribute[];
  },
): MemoryVariable {
  const fill = type === "byte" ? BYTE_FILL : INT_FILL;
  const data = type === "byte" ? new Int8Array(values.length) : new Int32Array(values.length);
  for (let k = 0; k < data.length; k++) data[k] = Number.isNaN(values[k]!) ? fill : values[k]!;
  return {
    name,
    type,
    dimensions,
    data,
    attributes: attributes(
      ["long_name", words.longName],
      ["standard_name", words.standardName],
      ["units", "1"],
      numberAttribute("_FillValue", type, fill),
      ["coverage_content_type", words.content],
      ...(words.more ?? []),
    ),
  };
}
