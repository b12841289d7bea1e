import {
  type Column,
  convertUnitsColumn,
  type Evidence,
  Flag,
  type Problem,
  temperatureFrom68Column,
} from "@wherry/core";
import type { Dataset, Variable } from "@wherry/netcdf";
import { textOf, wordsOf } from "./attributes.ts";
import { boundsOf, type Layout } from "./layout.ts";
import { printedAs } from "./precision.ts";
import { type Meaning, meaningOf, nameColumns } from "./quantities.ts";
import { type FlagScheme, flagMeanings, isFlag, schemeOf } from "./source-flags.ts";
import { isNumeric, missingValues, readNumbers, readRaw, readTextCells } from "./stored-numbers.ts";
import { cellsOfCast, levelOf, textAt } from "./take.ts";

/** Columns and texts of a cast, as they are gathered variable by variable. */
export interface CastRows {
  readonly columns: Map<string, Column>;
  readonly texts: Map<string, readonly string[]>;
}

export interface RowPlan {
  readonly numbers: readonly (readonly [Variable, Meaning])[];
  /** Flag variable and its scheme, by the name of the variable that it judges. */
  readonly flags: ReadonlyMap<string, { readonly variable: Variable; readonly scheme: FlagScheme }>;
  readonly texts: readonly Variable[];
  readonly evidence: readonly Evidence[];
  readonly findings: readonly Problem[];
}

/**
 * Which variables become columns, which their flags, and which are kept as text.
 *
 * @param taken variables that have another place in a cast (times of rows …)
 * @param time  epoch seconds of the earliest cast; NaN if not known
 */
export function planRows(
  dataset: Dataset,
  layout: Layout,
  taken: ReadonlySet<string>,
  time: number,
  path: string,
): RowPlan {
  const bounds = boundsOf(dataset);
  const rows = [...dataset.variables.values()].filter(
    (variable) =>
      levelOf(dataset, layout, variable) === "row" &&
      !bounds.has(variable.name) &&
      !layout.counting.has(variable.name) &&
      !taken.has(variable.name),
  );
  const flagVariables = new Map(rows.filter(isFlag).map((variable) => [variable.name, variable]));
  const measured = rows.filter((variable) => isNumeric(variable) && !flagVariables.has(variable.name));
  const flags = new Map<string, { variable: Variable; scheme: FlagScheme }>();
  for (const { name, attributes } of measured) {
    const judges = wordsOf(attributes, "ancillary_variables").flatMap(
      (word) => flagVariables.get(word) ?? [],
    );
    const variable = judges.find(isAggregate) ?? judges[0];
    if (variable) flags.set(name, { variable, scheme: schemeOf(variable) });
  }
  const used = new Set([...flags.values()].map(({ variable }) => variable.name));
  const { meanings, several } = nameColumns(
    measured.map((variable) => [variable, meaningOf(variable, time)] as const),
  );
  const findings: Problem[] = several.map((words) => ({
    code: "cf-dsg/several",
    message: `several variables hold one quantity: ${words}`,
    where: { file: path },
    remedy: "The others are kept under names of their own.",
  }));
  for (const [{ name }, { trouble }] of meanings)
    if (trouble !== null)
      findings.push({
        code: "cf-dsg/quantity",
        message: `${name} is kept as it is: ${trouble}`,
        where: { file: path, variable: name },
        remedy: "Correct the attribute in the file if the variable is to be used.",
      });
  const evidence = meanings.map(
    ([{ name }, { certainty, because, attribute }]): Evidence => ({
      fact: `column:${name}`,
      certainty,
      because,
      where: { file: path, variable: name, ...(attribute ? { attribute } : {}) },
    }),
  );
  for (const [name, { variable, scheme }] of flags)
    evidence.push({
      fact: `flags:${name}`,
      certainty: scheme.name === "unknown" ? "unknown" : "implied",
      because: flagWords(variable, scheme),
      where: { file: path, variable: variable.name, attribute: "flag_meanings" },
    });
  return {
    numbers: meanings,
    flags,
    texts: rows
      .filter(
        ({ name, type }) =>
          (flagVariables.has(name) && !used.has(name)) || type === "char" || type === "string",
      )
      .filter(({ name }) => !used.has(name)),
    evidence,
    findings,
  };
}

const isAggregate = ({ attributes }: Variable) =>
  /^(?:aggregate_)?quality_flag$/.test(textOf(attributes, "standard_name") ?? "");

function flagWords(variable: Variable, scheme: FlagScheme): string {
  const meanings = [...flagMeanings(variable)].map(([code, meaning]) => `${code} ${meaning}`).join(", ");
  const what = meanings === "" ? "gives no meanings" : `says ${meanings}`;
  return `variable ${variable.name} ${what}: ${scheme.name === "unknown" ? "no scheme that is known here" : scheme.name}`;
}

/** Reads every planned variable once and cuts it into the casts. */
export async function readRows(
  dataset: Dataset,
  layout: Layout,
  plan: RowPlan,
  path: string,
): Promise<{ readonly casts: readonly CastRows[]; readonly findings: readonly Problem[] }> {
  const casts = layout.places.map((): CastRows => ({ columns: new Map(), texts: new Map() }));
  const findings: Problem[] = [];
  const lost = (problems: readonly Problem[], { name }: Variable) => {
    for (const problem of problems)
      findings.push({ ...problem, where: { variable: name, ...problem.where, file: path } });
  };
  for (const [index, [variable, meaning]] of plan.numbers.entries()) {
    const read = await readNumbers(dataset, variable);
    if (!read.ok) {
      lost(read.problems, variable);
      continue;
    }
    const { values, outside } = read.value;
    if (outside.count > 0)
      findings.push({
        code: "cf-dsg/outside-valid-range",
        message: `${outside.count} ${outside.count === 1 ? "value" : "values"} of ${variable.name} outside the valid range that it states; CF counts them as missing`,
        where: { file: path, variable: variable.name, index: outside.first },
        remedy: "If they are measurements, correct valid_min, valid_max or valid_range.",
      });
    const judge = plan.flags.get(variable.name);
    const codes = judge ? await readCodes(dataset, layout, judge.variable) : null;
    if (codes && !codes.ok) lost(codes.problems, judge!.variable);
    for (const [cast, place] of layout.places.entries()) {
      const cells = cellsOfCast(variable, layout, place);
      const source = Float64Array.from(cells, (cell) => values[cell]!);
      const flagCells = codes?.ok ? cellsOfCast(judge!.variable, layout, place) : null;
      const flags = codes?.ok && flagCells ? Array.from(flagCells, codes.value) : null;
      casts[cast]!.columns.set(meaning.name, columnOf(variable, meaning, index, source, flags, judge));
    }
  }
  for (const variable of plan.texts) {
    const codes = await readCodes(dataset, layout, variable);
    if (!codes.ok) lost(codes.problems, variable);
    else
      for (const [cast, place] of layout.places.entries())
        casts[cast]!.texts.set(variable.name, Array.from(cellsOfCast(variable, layout, place), codes.value));
  }
  return { casts, findings };
}

type Codes =
  | { readonly ok: true; readonly value: (cell: number) => string }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Values of a variable as text, as they stand; empty where missing. */
async function readCodes(dataset: Dataset, layout: Layout, variable: Variable): Promise<Codes> {
  if (isNumeric(variable)) {
    const read = await readRaw(dataset, variable);
    if (!read.ok) return read;
    const missing = new Set(missingValues(variable));
    return {
      ok: true,
      value: (cell) => {
        const code = read.value[cell]!;
        return missing.has(code) || Number.isNaN(code) ? "" : String(code);
      },
    };
  }
  const read = await readTextCells(dataset, variable);
  if (!read.ok) return read;
  return { ok: true, value: (cell) => textAt(read.value, cell, variable, layout) };
}

function columnOf(
  variable: Variable,
  meaning: Meaning,
  index: number,
  source: Float64Array,
  codes: readonly string[] | null,
  judge: { readonly variable: Variable; readonly scheme: FlagScheme } | undefined,
): Column {
  let values = source;
  if (meaning.convertFrom !== null && meaning.units !== null) {
    values = new Float64Array(source.length);
    convertUnitsColumn(source, meaning.convertFrom, meaning.units, values);
    if (meaning.units === "mS cm-1" && meaning.convertFrom === "S m-1") makeInvertible(values, source);
  }
  if (meaning.fromIpts68) {
    const t90 = new Float64Array(values.length);
    temperatureFrom68Column(values, t90);
    values = t90;
  }
  const present = source.filter((value) => !Number.isNaN(value));
  const single = variable.type === "float" && !variable.attributes.has("scale_factor");
  return {
    name: meaning.name,
    standardName: meaning.standardName,
    longName: meaning.longName,
    units: meaning.units,
    values,
    flags: Uint8Array.from(values, (value, row) => {
      if (Number.isNaN(value)) return Flag.missing;
      return codes && judge ? judge.scheme.iode(codes[row]!) : Flag.notEvaluated;
    }),
    source: {
      header: variable.name,
      units: textOf(variable.attributes, "units"),
      index,
      ...printedAs(source, single),
      first: present[0] ?? Number.NaN,
      last: present.at(-1) ?? Number.NaN,
      ...(single ? { single } : {}),
    },
    sourceFlags:
      codes && judge ? { scheme: judge.scheme.name, header: judge.variable.name, values: codes } : null,
    tests: new Map(),
    method: null,
  };
}

/** Moves values by one last bit where a tenth of them, which products store, would not be the source's number. */
function makeInvertible(values: Float64Array, source: Float64Array): void {
  for (let row = 0; row < values.length; row++) {
    const value = values[row]!;
    const near = [value, value * (1 + 2 ** -52), value * (1 - 2 ** -53)];
    values[row] = near.find((each) => each / 10 === source[row]) ?? value;
  }
}
