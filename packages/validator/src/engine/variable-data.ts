import type { DataArray, Dataset, NcType, Problem } from "@wherry/netcdf";
import { numbersOf } from "./attribute-value.ts";

/** Values that the netCDF library leaves where nothing was written (netCDF User's Guide); not for bytes. */
const UNWRITTEN: Partial<Record<NcType, number>> = {
  short: -32767,
  int: -2147483647,
  float: 9.969209968386869e36,
  double: 9.969209968386869e36,
};

/** Loops over values stand in functions of their own: within an async one they are not compiled, and thirty times slower. */
function blank(values: Float64Array, none: number): void {
  for (let i = 0; i < values.length; i += 1) if (values[i] === none) values[i] = Number.NaN;
}

/** Reads each variable once and keeps it, as numbers with NaN for missing or as texts. */
export class VariableData {
  readonly #dataset: Dataset;
  readonly #numbers = new Map<string, Promise<Float64Array | null>>();
  /** What could not be read. */
  readonly problems: Problem[] = [];

  constructor(dataset: Dataset) {
    this.#dataset = dataset;
  }

  /**
   * Stored values as doubles, row-major, NaN where missing (`_FillValue`, `missing_value`, never written); no
   * scaling. Null for text, an unknown variable, or data that cannot be read.
   */
  numbers(name: string): Promise<Float64Array | null> {
    const known = this.#numbers.get(name);
    if (known !== undefined) return known;
    const reading = this.#readNumbers(name);
    this.#numbers.set(name, reading);
    return reading;
  }

  async #readNumbers(name: string): Promise<Float64Array | null> {
    const variable = this.#dataset.variables.get(name);
    if (variable === undefined || variable.type === "char" || variable.type === "string") return null;
    const stored = await this.#read(name);
    if (stored === null) return null;
    // reading gives arrays of one's own
    const values =
      stored instanceof Float64Array
        ? stored
        : stored instanceof BigInt64Array || stored instanceof BigUint64Array
          ? Float64Array.from(stored, Number)
          : new Float64Array(stored as ArrayLike<number>);
    const fill = numbersOf(variable.attributes.get("_FillValue"));
    const unwritten = fill === undefined ? UNWRITTEN[variable.type] : undefined;
    const missing = new Set([
      ...(fill ?? []),
      ...(numbersOf(variable.attributes.get("missing_value")) ?? []),
      ...(unwritten === undefined ? [] : [unwritten]),
    ]);
    for (const none of missing) blank(values, none);
    return values;
  }

  /** One text per cell of a char or string variable, without the padding at its end; null if not text. */
  async texts(name: string): Promise<string[] | null> {
    const variable = this.#dataset.variables.get(name);
    if (variable === undefined) return null;
    if (variable.type !== "char" && variable.type !== "string") return null;
    const stored = await this.#read(name);
    if (stored === null) return null;
    if (variable.type === "string") return (stored as string[]).map(String);
    const bytes = stored as Uint8Array;
    const length = variable.shape.at(-1) ?? 1;
    const decoder = new TextDecoder();
    const count = length === 0 ? 0 : bytes.length / length;
    return Array.from({ length: count }, (_, cell) => {
      const text = decoder.decode(bytes.subarray(cell * length, (cell + 1) * length));
      const end = text.indexOf("\0");
      return (end < 0 ? text : text.slice(0, end)).trimEnd();
    });
  }

  /** Bytes of a char variable as stored. */
  async bytes(name: string): Promise<Uint8Array | null> {
    if (this.#dataset.variables.get(name)?.type !== "char") return null;
    return (await this.#read(name)) as Uint8Array | null;
  }

  async #read(name: string): Promise<DataArray | null> {
    const result = await this.#dataset.read(name);
    if (result.ok) return result.value;
    const known = this.problems.some(({ where }) => where.variable === name);
    if (!known) this.problems.push(...result.problems);
    return null;
  }
}
