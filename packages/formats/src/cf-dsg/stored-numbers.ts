import { fail, type Result, succeed } from "@wherry/core";
import { type DataArray, type Dataset, fillValue, type Variable } from "@wherry/netcdf";
import { numbersOf, textOf } from "./attributes.ts";

/** Values that are read at once. */
const BLOCK = 1 << 18;

export const isNumeric = ({ type }: Variable): boolean => type !== "char" && type !== "string";

export const cellsOf = ({ shape }: Variable): number => shape.reduce((cells, length) => cells * length, 1);

/** Calls `take` with a whole variable, block by block in the order of the file. */
async function eachBlock(
  dataset: Dataset,
  variable: Variable,
  take: (block: DataArray, at: number) => void,
): Promise<Result<null>> {
  const { name, shape } = variable;
  const [outer, ...inner] = shape;
  if (cellsOf(variable) === 0) return succeed(null);
  if (outer === undefined) {
    const read = await dataset.read(name);
    if (!read.ok) return read;
    take(read.value, 0);
    return succeed(null);
  }
  const cells = inner.reduce((product, length) => product * length, 1);
  const step = Math.max(1, Math.floor(BLOCK / cells));
  for (let from = 0; from < outer; from += step) {
    const many = Math.min(step, outer - from);
    const read = await dataset.read(name, {
      start: [from, ...inner.map(() => 0)],
      count: [many, ...inner],
    });
    if (!read.ok) return read;
    take(read.value, from * cells);
  }
  return succeed(null);
}

/** Numbers of a variable as stored, as doubles in row-major order. */
export async function readRaw(dataset: Dataset, variable: Variable): Promise<Result<Float64Array>> {
  const values = new Float64Array(cellsOf(variable));
  const bits = textOf(variable.attributes, "_Unsigned") === "true" ? WIDTH[variable.type] : undefined;
  const read = await eachBlock(dataset, variable, (block, at) => {
    for (let i = 0; i < block.length; i++) {
      const value = Number(block[i]!);
      values[at + i] = bits !== undefined && value < 0 ? value + 2 ** bits : value;
    }
  });
  return read.ok ? succeed(values) : read;
}

/** Signed types that `_Unsigned = "true"` (NetCDF Users Guide, attribute conventions) turns. */
const WIDTH: Partial<Record<Variable["type"], number>> = { byte: 8, short: 16, int: 32 };

/** Bytes of a char variable, or texts of a string variable. */
export async function readTextCells(
  dataset: Dataset,
  variable: Variable,
): Promise<Result<Uint8Array | readonly string[]>> {
  const bytes = new Uint8Array(variable.type === "char" ? cellsOf(variable) : 0);
  const texts: string[] = [];
  const read = await eachBlock(dataset, variable, (block, at) => {
    if (block instanceof Uint8Array) bytes.set(block, at);
    else for (const text of block) texts.push(String(text));
  });
  if (!read.ok) return read;
  return succeed(variable.type === "char" ? bytes : texts);
}

export interface StoredNumbers {
  /** Unpacked; missing is NaN. */
  readonly values: Float64Array;
  /** Values outside valid_min, valid_max or valid_range, which CF counts as missing; the first one's place. */
  readonly outside: { readonly count: number; readonly first: number };
}

/** Raw values that mean missing. */
export function missingValues(variable: Variable): readonly number[] {
  const { attributes, type } = variable;
  const fill = numbersOf(attributes, "_FillValue");
  const others = numbersOf(attributes, "missing_value");
  // one byte has no value to spare: its default fill counts only when it is named
  const oneByte = type === "byte" || type === "ubyte";
  const defaults =
    fill.length > 0 || oneByte
      ? []
      : Array.from<unknown, number>(fillValue(type, new Map()), (value) => Number(value));
  return [...fill, ...others, ...defaults].map(asStored(variable));
}

const asStored =
  ({ type }: Variable) =>
  (value: number) =>
    type === "float" ? Math.fround(value) : value;

/**
 * Numbers of a variable with what means missing as NaN, then unpacked.
 *
 * @source CF Conventions 1.13, sections 2.5.1 and 8.1: missing values and the valid range are meant for the packed
 *         data; what lies outside the range is missing
 */
export async function readNumbers(dataset: Dataset, variable: Variable): Promise<Result<StoredNumbers>> {
  const { attributes, name } = variable;
  if (!isNumeric(variable))
    return fail({
      code: "cf-dsg/no-numbers",
      message: `${name} holds text, numbers were expected`,
      where: { variable: name },
    });
  const raw = await readRaw(dataset, variable);
  if (!raw.ok) return raw;
  const values = raw.value;
  const missing = new Set(missingValues(variable));
  const [low, high] = validRange(variable);
  const [scale = 1] = numbersOf(attributes, "scale_factor");
  const [offset = 0] = numbersOf(attributes, "add_offset");
  const packed = scale !== 1 || offset !== 0;
  let count = 0;
  let first = -1;
  for (let i = 0; i < values.length; i++) {
    const value = values[i]!;
    if (Number.isNaN(value)) continue;
    if (missing.has(value)) values[i] = Number.NaN;
    else if (value < low || value > high || !Number.isFinite(value)) {
      values[i] = Number.NaN;
      if (count === 0) first = i;
      count++;
    } else if (packed) values[i] = value * scale + offset;
  }
  return succeed({ values, outside: { count, first } });
}

function validRange(variable: Variable): readonly [number, number] {
  const { attributes } = variable;
  const stored = asStored(variable);
  const range = numbersOf(attributes, "valid_range");
  const [low] = range.length === 2 ? range : numbersOf(attributes, "valid_min");
  const high = range.length === 2 ? range[1] : numbersOf(attributes, "valid_max")[0];
  return [stored(low ?? Number.NEGATIVE_INFINITY), stored(high ?? Number.POSITIVE_INFINITY)];
}
