import type { Dataset, Variable } from "@wherry/netcdf";
import { type CastPlace, type Layout, placeOfRow, rowCount } from "./layout.ts";

/** Whether the last dimension of a variable counts the letters of its texts. */
function hasLetters({ type, dimensions }: Variable, { along, features }: Layout): boolean {
  const last = dimensions.at(-1);
  return type === "char" && last !== undefined && last !== along && !features.has(last);
}

/** Dimensions of a variable without that of letters. */
const valueDimensions = (variable: Variable, layout: Layout): readonly string[] =>
  hasLetters(variable, layout) ? variable.dimensions.slice(0, -1) : variable.dimensions;

/** Whether a variable has a value for each row ("row"), one for the cast ("cast"), or something else (null). */
export function levelOf(dataset: Dataset, layout: Layout, variable: Variable): "row" | "cast" | null {
  const dimensions = valueDimensions(variable, layout);
  const known = dimensions.every(
    (name) =>
      name === layout.along || layout.features.has(name) || dataset.dimensions.get(name)?.length === 1,
  );
  if (!known || new Set(dimensions).size < dimensions.length) return null;
  return dimensions.includes(layout.along) ? "row" : "cast";
}

/** Places in a row-major array: of the first row, and from one row's place along the dimension to the next. */
interface Stride {
  readonly base: number;
  readonly step: number;
}

function strideOf(
  dimensions: readonly string[],
  shape: readonly number[],
  layout: Layout,
  place: CastPlace,
): Stride {
  let base = 0;
  let step = 0;
  let size = 1;
  for (let axis = dimensions.length - 1; axis >= 0; axis--) {
    const name = dimensions[axis]!;
    if (name === layout.along) step = size;
    else base += (place.fixed.get(name) ?? 0) * size;
    size *= shape[axis]!;
  }
  return { base, step };
}

/** Index in the variable's array for each row of a cast. */
export function cellsOfCast(variable: Variable, layout: Layout, place: CastPlace): Uint32Array {
  const dimensions = valueDimensions(variable, layout);
  const { base, step } = strideOf(dimensions, variable.shape.slice(0, dimensions.length), layout, place);
  const cells = new Uint32Array(rowCount(place.rows));
  for (let row = 0; row < cells.length; row++) cells[row] = base + step * placeOfRow(place.rows, row);
  return cells;
}

/** Index in the array of a variable that has one value for the cast. */
export function cellOfCast(variable: Variable, layout: Layout, place: CastPlace): number {
  const dimensions = valueDimensions(variable, layout);
  return strideOf(dimensions, variable.shape.slice(0, dimensions.length), layout, place).base;
}

/** Text at one place of what `readTextCells` gave: NULs and blanks at its end are padding. */
export function textAt(
  data: Uint8Array | readonly string[],
  cell: number,
  variable: Variable,
  layout: Layout,
): string {
  if (!(data instanceof Uint8Array)) return (data[cell] ?? "").trimEnd();
  const length = hasLetters(variable, layout) ? (variable.shape.at(-1) ?? 1) : 1;
  const bytes = data.subarray(cell * length, (cell + 1) * length);
  const end = bytes.indexOf(0);
  return decode(end < 0 ? bytes : bytes.subarray(0, end)).trimEnd();
}

const utf8 = new TextDecoder("utf-8", { fatal: true });
const oldLatin = new TextDecoder("windows-1252");

function decode(bytes: Uint8Array): string {
  try {
    return utf8.decode(bytes);
  } catch {
    return oldLatin.decode(bytes);
  }
}
