import { type Problem, parseTimeUnits, type Result, timeToEpoch } from "@wherry/core";
import type { Dataset, Variable } from "@wherry/netcdf";
import { textOf } from "../cf-dsg/attributes.ts";
import { isNumeric, missingValues, readRaw, readTextCells } from "../cf-dsg/stored-numbers.ts";

/** Reads the arrays of an Argo file, and remembers what can't be read. */
export class ArgoValues {
  readonly findings: Problem[] = [];
  readonly dataset: Dataset;
  readonly path: string;
  readonly profiles: number;
  readonly levels: number;

  constructor(dataset: Dataset, path: string) {
    this.dataset = dataset;
    this.path = path;
    this.profiles = dataset.dimensions.get("N_PROF")?.length ?? 0;
    this.levels = dataset.dimensions.get("N_LEVELS")?.length ?? 0;
  }

  find(code: string, message: string, remedy: string, variable?: string, index?: number): void {
    const where = {
      file: this.path,
      ...(variable === undefined ? {} : { variable }),
      ...(index === undefined ? {} : { index }),
    };
    this.findings.push({ code: `argo-profile/${code}`, message, where, remedy });
  }

  /** The value of a read that succeeded; null after a finding. */
  #got<T>(read: Result<T>, name: string): T | null {
    if (read.ok) return read.value;
    for (const problem of read.problems)
      this.findings.push({ ...problem, where: { variable: name, ...problem.where, file: this.path } });
    return null;
  }

  /** A variable of these dimensions after N_PROF; null where there is none. A dimension may be a pattern. */
  variable(name: string, ...dimensions: readonly (string | RegExp)[]): Variable | null {
    const variable = this.dataset.variables.get(name);
    if (!variable) return null;
    const wanted = ["N_PROF", ...dimensions];
    const fits =
      variable.dimensions.length === wanted.length &&
      wanted.every((form, i) =>
        typeof form === "string" ? variable.dimensions[i] === form : form.test(variable.dimensions[i]!),
      );
    if (fits) return variable;
    this.find(
      "dimensions",
      `${name} has the dimensions ${variable.dimensions.join(", ") || "of a single value"} and is not read`,
      "The Argo manual gives it N_PROF first.",
      name,
    );
    return null;
  }

  /** One text for each profile; null where the variable is absent or can't be read. */
  async texts(name: string): Promise<readonly string[] | null> {
    const variable = this.variable(name, /^STRING\d+$|^DATE_TIME$/);
    if (!variable) return null;
    const bytes = this.#got(await readTextCells(this.dataset, variable), name);
    return bytes && cut(bytes, variable.shape[1] ?? 0, this.profiles);
  }

  /** Lists of texts, one list for each profile. */
  async textLists(name: string): Promise<readonly (readonly string[])[] | null> {
    const variable = this.variable(name, "N_PARAM", /^STRING\d+$/);
    if (!variable) return null;
    const bytes = this.#got(await readTextCells(this.dataset, variable), name);
    const [, count = 0, length = 0] = variable.shape;
    const all = bytes && cut(bytes, length, this.profiles * count);
    return all && Array.from({ length: this.profiles }, (_, i) => all.slice(i * count, (i + 1) * count));
  }

  /** Letters, one for each profile and further cell; a blank where the variable is absent. */
  async letters(name: string, ...dimensions: readonly string[]): Promise<(cell: number) => string> {
    const variable = this.variable(name, ...dimensions);
    if (!variable || isNumeric(variable)) return () => " ";
    const bytes = this.#got(await readTextCells(this.dataset, variable), name);
    if (!bytes) return () => " ";
    return (cell) =>
      bytes instanceof Uint8Array ? String.fromCharCode(bytes[cell] ?? 32) : (bytes[cell] ?? " ");
  }

  /** Numbers as stored, missing as NaN: nothing else is masked, for what is out of range is flagged and not lost. */
  async numbers(variable: Variable | null): Promise<Float64Array | null> {
    if (!variable || !isNumeric(variable)) return null;
    const values = this.#got(await readRaw(this.dataset, variable), variable.name);
    const missing = new Set(missingValues(variable));
    return values?.map((value) => (missing.has(value) ? Number.NaN : value)) ?? null;
  }

  /** Epoch seconds, one for each profile. */
  async moments(name: string): Promise<Float64Array | null> {
    const variable = this.variable(name);
    const numbers = await this.numbers(variable);
    if (!variable || !numbers) return null;
    const units = parseTimeUnits(textOf(variable.attributes, "units") ?? "", "standard");
    if (units.ok) return numbers.map((value) => timeToEpoch(value, units.value));
    this.find(
      "time",
      `times of ${name} can't be read: ${units.problems[0].message}`,
      "Correct its units.",
      name,
    );
    return null;
  }
}

const utf8 = new TextDecoder("utf-8");

function cut(data: Uint8Array | readonly string[], length: number, count: number): readonly string[] {
  if (!(data instanceof Uint8Array)) return data;
  return Array.from({ length: count }, (_, i) =>
    utf8
      .decode(data.subarray(i * length, (i + 1) * length))
      .replace(/\0.*$/s, "")
      .trim(),
  );
}
