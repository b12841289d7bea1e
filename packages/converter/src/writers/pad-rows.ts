import { type Attribute, type DataArray, type MemoryVariable, numberAttribute } from "@wherry/netcdf";

/** Tried in turn for numbers that had no fill value, so that none is equal to a value. */
const FILLS = [-9999, -99999, 9.969209968386869e36] as const;
/** Attributes behind which a fill value would stand oddly. */
const AFTER_FILL = new Set([
  "actual_range",
  "ancillary_variables",
  "bounds",
  "comment",
  "coverage_content_type",
  "coordinates",
]);

/**
 * Rows of several casts, one behind the other, spread over an array with one line for each cast; what is left of a
 * line is the fill value, or NUL in texts. Without a fill value the variable gets one.
 *
 * @param counts rows of each cast
 * @param length rows of a line
 * @param inner  values of a row: above 1 for texts
 */
export function padded(
  variable: MemoryVariable,
  counts: readonly number[],
  length: number,
  inner: number,
): MemoryVariable {
  const data = variable.data as Exclude<DataArray, string[]>;
  const isText = variable.type === "char";
  const needsPadding = counts.some((count) => count < length);
  const known = variable.attributes?.find(({ name }) => name === "_FillValue");
  const fill = isText ? 0 : known ? Number((known.value as Float32Array)[0]) : unusedFill(data);
  const spread = new (data.constructor as new (size: number) => Float32Array)(counts.length * length * inner);
  if (fill !== 0) spread.fill(fill);
  let from = 0;
  for (const [cast, count] of counts.entries()) {
    const rows = data.subarray(from, from + count * inner) as Float32Array;
    spread.set(rows, cast * length * inner);
    from += count * inner;
  }
  const type = variable.type as "float";
  const added = needsPadding && !isText && !known ? numberAttribute("_FillValue", type, fill) : null;
  return {
    ...variable,
    data: spread,
    ...(added ? { attributes: withFill(variable.attributes ?? [], added) } : {}),
  };
}

function unusedFill(data: Exclude<DataArray, string[]>): number {
  const values = data as Float32Array;
  return FILLS.find((candidate) => !values.includes(candidate)) ?? FILLS[2];
}

function withFill(list: readonly Attribute[], fill: Attribute): Attribute[] {
  const at = list.findIndex(({ name }) => AFTER_FILL.has(name));
  return at < 0 ? [...list, fill] : [...list.slice(0, at), fill, ...list.slice(at)];
}
