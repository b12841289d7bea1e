import { type Column, convertUnitsColumn, type Evidence, Flag } from "@wherry/core";
import type { Variable } from "@wherry/netcdf";
import { textOf } from "../cf-dsg/attributes.ts";
import { printedAs } from "../cf-dsg/precision.ts";
import { type Meaning, meaningOf, nameColumns } from "../cf-dsg/quantities.ts";
import type { ArgoValues } from "./argo-values.ts";

/** Name of the flag scheme: reference table 2 of the Argo user's manual. */
export const ARGO = "Argo";

/** What one profile measured, by its STATION_PARAMETERS. */
export interface ProfilePlan {
  readonly index: number;
  /** Epoch seconds; NaN if not known. */
  readonly time: number;
  readonly parameters: readonly string[];
  /** R, A or D for a parameter. */
  readonly modeOf: (parameter: number) => string;
}

interface Chosen {
  readonly parameter: string;
  readonly variable: Variable;
  readonly numbers: Float64Array;
  readonly codes: (cell: number) => string;
  readonly because: string;
}

const MODES: Readonly<Record<string, string>> = {
  R: "real time, raw values",
  A: "adjusted in real time",
  D: "delayed mode, adjusted",
};

/** Arrays that several profiles share are read once. */
export class ArgoArrays {
  readonly #from: ArgoValues;
  readonly #numbers = new Map<string, Float64Array | null>();
  readonly #codes = new Map<string, (cell: number) => string>();

  constructor(from: ArgoValues) {
    this.#from = from;
  }

  async numbers(
    name: string,
  ): Promise<{ readonly variable: Variable; readonly numbers: Float64Array } | null> {
    const variable = this.#from.dataset.variables.get(name);
    if (!variable) return null;
    if (!this.#numbers.has(name))
      this.#numbers.set(name, await this.#from.numbers(this.#from.variable(name, "N_LEVELS")));
    const numbers = this.#numbers.get(name);
    return numbers ? { variable, numbers } : null;
  }

  async codes(name: string): Promise<(cell: number) => string> {
    const known = this.#codes.get(name);
    if (known) return known;
    const read = await this.#from.letters(name, "N_LEVELS");
    this.#codes.set(name, read);
    return read;
  }
}

/**
 * The columns of one profile: for delayed and real-time adjusted data the adjusted values, else the raw ones.
 *
 * @source Argo user's manual (doi 10.13155/29825): DATA_MODE and the use of <PARAM>_ADJUSTED
 */
export async function columnsOf(
  plan: ProfilePlan,
  arrays: ArgoArrays,
  from: ArgoValues,
): Promise<{
  readonly rows: number;
  readonly columns: ReadonlyMap<string, Column>;
  readonly evidence: readonly Evidence[];
}> {
  const chosen: Chosen[] = [];
  for (const [k, parameter] of plan.parameters.entries()) {
    if (parameter === "") continue;
    const found = await choose(plan, k, parameter, arrays, from);
    if (found) chosen.push(found);
  }
  const base = plan.index * from.levels;
  const cells = (numbers: Float64Array) => numbers.subarray(base, base + from.levels);
  let rows = from.levels;
  while (rows > 0 && chosen.every(({ numbers }) => Number.isNaN(cells(numbers)[rows - 1]!))) rows--;
  const evidence: Evidence[] = [];
  const { meanings } = nameColumns(
    chosen.map(
      ({ variable }) => [variable, withSeaPressure(meaningOf(variable, plan.time), variable)] as const,
    ),
  );
  const columns = new Map<string, Column>();
  for (const [k, { parameter, variable, numbers, codes, because }] of chosen.entries()) {
    const meaning = meanings[k]![1];
    const source = cells(numbers).slice(0, rows);
    const flags = Array.from(source, (_, row) => codes(base + row).trim());
    checkFlags(parameter, source, flags, from);
    columns.set(meaning.name, columnOf(variable, meaning, k, source, flags));
    const where = { file: from.path, variable: variable.name };
    evidence.push(
      { fact: `column:${variable.name}`, certainty: meaning.certainty, because: meaning.because, where },
      {
        fact: `column:${variable.name}`,
        certainty: "stated",
        because,
        where: { ...where, variable: "DATA_MODE" },
      },
    );
    const error = await arrays.numbers(`${parameter}_ADJUSTED_ERROR`);
    const errors = error && cells(error.numbers).slice(0, rows);
    if (
      !error ||
      !errors ||
      !/_ADJUSTED$/.test(variable.name) ||
      errors.every((value) => Number.isNaN(value))
    )
      continue;
    const name = `${meaning.name}_source_uncertainty`;
    const plain = {
      ...meaningOf(error.variable, plan.time),
      name,
      longName: `error of ${meaning.longName}, as the source gives it`,
    };
    columns.set(name, columnOf(error.variable, plain, k + 100, errors, null));
  }
  return { rows, columns, evidence };
}

async function choose(
  plan: ProfilePlan,
  k: number,
  parameter: string,
  arrays: ArgoArrays,
  from: ArgoValues,
): Promise<Chosen | null> {
  const mode = plan.modeOf(k);
  const raw = await arrays.numbers(parameter);
  const adjusted = await arrays.numbers(`${parameter}_ADJUSTED`);
  const wanted = mode === "A" || mode === "D" ? (adjusted ?? raw) : raw;
  if (!wanted) {
    from.find(
      "parameter",
      `profile ${plan.index + 1} names the parameter ${parameter}, and there is no array of it on N_PROF and N_LEVELS`,
      "Compare STATION_PARAMETERS with the variables.",
      "STATION_PARAMETERS",
      plan.index,
    );
    return null;
  }
  const { variable, numbers } = wanted;
  const words = `DATA_MODE is ${mode}, ${MODES[mode] ?? "not a mode of the manual"}`;
  const because =
    wanted === adjusted
      ? `${words}: the values are those of ${variable.name}`
      : mode === "R" || !MODES[mode]
        ? `${words}: the values are those of ${variable.name}, which nobody adjusted`
        : `${words}, but ${parameter} has no adjusted values: the values are those received`;
  if (wanted === adjusted && raw) {
    const range = [plan.index * from.levels, (plan.index + 1) * from.levels] as const;
    const lost = (values: Float64Array) => values.subarray(...range).every((value) => Number.isNaN(value));
    if (lost(numbers) && !lost(raw.numbers))
      from.find(
        "all-rejected",
        `profile ${plan.index + 1} is ${MODES[mode]}, and all adjusted values of ${parameter} are missing although there are raw ones`,
        "Adjusted values are missing where the data centre took them out; the raw ones stand in the original.",
        variable.name,
        plan.index,
      );
  }
  return { parameter, variable, numbers, codes: await arrays.codes(`${variable.name}_QC`), because };
}

/** Pressure that the long name says to be 0 at sea level is sea pressure, whatever the standard name. */
function withSeaPressure(meaning: Meaning, variable: Variable): Meaning {
  const says = textOf(variable.attributes, "long_name") ?? "";
  if (meaning.standardName !== "sea_water_pressure" || !/equals 0 at sea.level/i.test(says)) return meaning;
  return {
    ...meaning,
    standardName: "sea_water_pressure_due_to_sea_water",
    longName: "sea pressure",
    because: `${meaning.because}; but long_name says "${says}", so it is sea pressure`,
  };
}

/** A flag that contradicts its value is told; missing values may be 4, for the adjustment takes bad ones out. */
function checkFlags(
  parameter: string,
  values: Float64Array,
  flags: readonly string[],
  from: ArgoValues,
): void {
  const odd = [...values.keys()].filter((row) =>
    Number.isNaN(values[row]!) ? /^[1235678]$/.test(flags[row]!) : flags[row] === "9",
  );
  const strange = flags.findIndex((flag) => flag !== "" && !/^\d$/.test(flag));
  if (odd.length > 0)
    from.find(
      "flag-and-value",
      `${odd.length} flags of ${parameter} call a value missing that is there, or the reverse`,
      "Values that are there and were called missing count as not evaluated.",
      parameter,
      odd[0]!,
    );
  if (strange >= 0)
    from.find(
      "flag",
      `the flag "${flags[strange]}" of ${parameter} is not a digit`,
      "Flags are those of reference table 2 of the Argo manual.",
      parameter,
      strange,
    );
}

function columnOf(
  variable: Variable,
  { name, standardName, longName, units, convertFrom }: Meaning,
  index: number,
  source: Float64Array,
  codes: readonly string[] | null,
): Column {
  let values = source;
  if (convertFrom !== null && units !== null) {
    values = new Float64Array(source.length);
    convertUnitsColumn(source, convertFrom, units, values);
  }
  const present = source.filter((value) => !Number.isNaN(value));
  return {
    name,
    standardName,
    longName,
    units,
    values,
    flags: Uint8Array.from(values, (value) => (Number.isNaN(value) ? Flag.missing : Flag.notEvaluated)),
    source: {
      header: variable.name,
      units: textOf(variable.attributes, "units"),
      index,
      ...printedAs(source, variable.type === "float"),
      first: present[0] ?? Number.NaN,
      last: present.at(-1) ?? Number.NaN,
    },
    sourceFlags: codes && { scheme: ARGO, header: `${variable.name}_QC`, values: codes },
    tests: new Map(),
    method: null,
  };
}
