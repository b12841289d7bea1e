import { convertUnits, type Evidence, type Problem, parseTimeUnits, timeToEpoch } from "@wherry/core";
import type { Dataset, Variable } from "@wherry/netcdf";
import { textOf } from "./attributes.ts";
import { rolesOf } from "./feature-type.ts";
import { boundsOf, type CastPlace, type Layout } from "./layout.ts";
import { isNumeric, readNumbers, readTextCells } from "./stored-numbers.ts";
import { cellOfCast, levelOf, textAt } from "./take.ts";

/** Reads facts that stand once for a cast, and remembers why they are believed. */
export class CastValues {
  readonly evidence: Evidence[] = [];
  readonly findings: Problem[] = [];
  readonly dataset: Dataset;
  readonly layout: Layout;
  readonly path: string;
  readonly #bounds: ReadonlySet<string>;

  constructor(dataset: Dataset, layout: Layout, path: string) {
    this.dataset = dataset;
    this.layout = layout;
    this.path = path;
    this.#bounds = boundsOf(dataset);
  }

  say(
    fact: string,
    certainty: Evidence["certainty"],
    because: string,
    variable?: Variable,
    attribute?: string,
  ) {
    const where = {
      file: this.path,
      ...(variable ? { variable: variable.name } : {}),
      ...(attribute ? { attribute } : {}),
    };
    this.evidence.push({ fact, certainty, because, where });
  }

  find(code: string, message: string, remedy: string, variable?: Variable, index?: number) {
    const where = {
      file: this.path,
      ...(variable ? { variable: variable.name } : {}),
      ...(index === undefined ? {} : { index }),
    };
    this.findings.push({ code: `cf-dsg/${code}`, message, where, remedy });
  }

  /** Variables that have one value for a cast, or one for each row. */
  at(level: "cast" | "row"): readonly Variable[] {
    const { dataset, layout } = this;
    return [...dataset.variables.values()].filter(
      (variable) =>
        !this.#bounds.has(variable.name) &&
        !layout.counting.has(variable.name) &&
        levelOf(dataset, layout, variable) === level,
    );
  }

  /** One number for each cast, in a unit if one is given; all NaN if it can't be read or converted. */
  async numbers(variable: Variable, units: string | null): Promise<Float64Array> {
    const read = await readNumbers(this.dataset, variable);
    const { places } = this.layout;
    if (!read.ok) {
      this.#lost(read.problems);
      return new Float64Array(places.length).fill(Number.NaN);
    }
    const { values, outside } = read.value;
    if (outside.count > 0)
      this.find(
        "outside-valid-range",
        `${outside.count} values of ${variable.name} outside the valid range that it states; CF counts them as missing`,
        "If they are right, correct valid_min, valid_max or valid_range.",
        variable,
        outside.first,
      );
    const stated = textOf(variable.attributes, "units");
    return Float64Array.from(places, (place) => {
      const value = values[cellOfCast(variable, this.layout, place)] ?? Number.NaN;
      return units === null || stated === null ? value : convertUnits(value, stated, units);
    });
  }

  /** Numbers as moments: epoch seconds, one for each cell of the variable; null if its units are no time. */
  async moments(variable: Variable): Promise<Float64Array | null> {
    const units = textOf(variable.attributes, "units") ?? "";
    const parsed = parseTimeUnits(units, textOf(variable.attributes, "calendar") ?? "standard");
    if (!parsed.ok) {
      const [problem] = parsed.problems;
      this.find(
        "time",
        `times of ${variable.name} can't be read: ${problem.message}`,
        problem.remedy ?? "Correct its units and calendar.",
        variable,
      );
      return null;
    }
    const read = await readNumbers(this.dataset, variable);
    if (!read.ok) {
      this.#lost(read.problems);
      return null;
    }
    return read.value.values.map((value) => timeToEpoch(value, parsed.value));
  }

  /** Numbers of all cells of a variable in a unit; null if they can't be read. */
  async cells(variable: Variable, units: string): Promise<Float64Array | null> {
    const read = await readNumbers(this.dataset, variable);
    if (!read.ok) {
      this.#lost(read.problems);
      return null;
    }
    const stated = textOf(variable.attributes, "units") ?? units;
    return read.value.values.map((value) => convertUnits(value, stated, units));
  }

  #lost(problems: readonly Problem[]) {
    this.findings.push(
      ...problems.map((problem) => ({ ...problem, where: { ...problem.where, file: this.path } })),
    );
  }

  ofCast<T>(variable: Variable, cells: ArrayLike<T>): readonly (T | undefined)[] {
    return this.layout.places.map((place: CastPlace) => cells[cellOfCast(variable, this.layout, place)]);
  }

  /** Ids that the file gives its casts; null where it gives none. */
  async ids(
    role: "profile_id" | "timeseries_id" | "trajectory_id",
  ): Promise<readonly (string | null)[] | null> {
    const variable = rolesOf(this.dataset).get(role);
    if (!variable) return null;
    const own = await this.texts(variable);
    if (!own) return null;
    this.say(
      role === "profile_id" ? "id" : role === "timeseries_id" ? "station" : "trajectory",
      "stated",
      `variable ${variable.name} has the cf_role ${role}`,
      variable,
      "cf_role",
    );
    return own;
  }

  /** Text, or a number as text, of each cast; null if the variable does not have one for each. */
  async texts(variable: Variable): Promise<readonly (string | null)[] | null> {
    if (levelOf(this.dataset, this.layout, variable) !== "cast") return null;
    const filled = (text: string) => (text.trim() === "" ? null : text.trim());
    if (isNumeric(variable)) {
      const read = await readNumbers(this.dataset, variable);
      if (!read.ok) return null;
      return this.ofCast(variable, read.value.values).map((value) =>
        value === undefined || Number.isNaN(value) ? null : String(value),
      );
    }
    const read = await readTextCells(this.dataset, variable);
    if (!read.ok) return null;
    return this.layout.places.map((place) =>
      filled(textAt(read.value, cellOfCast(variable, this.layout, place), variable, this.layout)),
    );
  }
}
