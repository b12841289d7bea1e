import { type Problem, parseNumber, printedPrecision } from "@wherry/core";

/** The table of a WHP-Exchange CTD file. */
export interface WhpTable {
  readonly parameters: readonly WhpParameter[];
  /** From 1. */
  readonly lines: Uint32Array;
}

export interface WhpParameter {
  readonly name: string;
  /** Empty if the unit line has none. */
  readonly units: string;
  readonly index: number;
  /** Missing is NaN. */
  readonly values: Float64Array;
  readonly decimals: number;
  readonly significantDigits: number;
  readonly first: number;
  readonly last: number;
  /** Codes of the column <name>_FLAG_W; null if there is none. */
  readonly flags: readonly string[] | null;
}

const NUMBER = /^-?\d*\.?\d*$/;
const MISSING = -999;

/**
 * Reads parameter names, units and data rows up to END_DATA. Rows of a wrong width are kept out and told; anything
 * else that breaks the format is a problem.
 *
 * @source WHP-Exchange Format 1.2.1 (2024), CTD Specific
 */
export function readTable(
  lines: readonly string[],
  nameLine: number,
  file: string,
  problems: Problem[],
  findings: Problem[],
): WhpTable | null {
  const at = (line: number) => ({ file, line: line + 1 });
  const names = (lines[nameLine] ?? "").split(",").map((name) => name.trim());
  const units = (lines[nameLine + 1] ?? "").split(",").map((unit) => unit.trim());
  if (names.length < 2 || names.some((name) => !/^[\x21-\x2b\x2d-\x7e]+$/.test(name))) {
    problems.push({
      code: "whp-exchange/names",
      message: `line ${nameLine + 1} should name the parameters, separated by commas: "${(lines[nameLine] ?? "").slice(0, 60)}"`,
      where: at(nameLine),
      remedy: "Names are printable ASCII without blanks, and none is empty.",
    });
    return null;
  }
  for (const [i, name] of names.entries())
    if (names.indexOf(name) !== i)
      problems.push({
        code: "whp-exchange/name-twice",
        message: `the parameter ${name} stands twice`,
        where: at(nameLine),
        remedy: "Each parameter stands once.",
      });
  if (units.length !== names.length) {
    problems.push({
      code: "whp-exchange/unit-width",
      message: `${units.length} units for ${names.length} parameters`,
      where: at(nameLine + 1),
      remedy: "The unit line has as many fields as the line of names; fields may be empty.",
    });
    return null;
  }
  const end = lines.findIndex((line, i) => i > nameLine + 1 && line.trimEnd() === "END_DATA");
  const last = end < 0 ? lines.length : end;
  if (end < 0)
    findings.push({
      code: "whp-exchange/end-data",
      message: "the line END_DATA is missing: the file may have been cut off",
      where: { file, line: lines.length },
      remedy: "Get the file again; all whole rows are kept.",
    });
  const rows: (readonly string[])[] = [];
  const rowLines: number[] = [];
  const short: number[] = [];
  for (let i = nameLine + 2; i < last; i++) {
    const line = lines[i]!;
    if (line.trim() === "" && i === last - 1) continue;
    const cells = line.split(",").map((cell) => cell.trim());
    // without END_DATA the last line may be cut in the middle of a number
    if (cells.length !== names.length || (end < 0 && i === last - 1)) short.push(i + 1);
    else {
      rows.push(cells);
      rowLines.push(i + 1);
    }
  }
  if (short.length > 0)
    findings.push({
      code: "whp-exchange/row-width",
      message: `${short.length} of ${short.length + rows.length} rows are not whole and kept out: line ${short.slice(0, 10).join(", ")}`,
      where: { file, line: short[0] ?? 1 },
      remedy: `A row has ${names.length} values.`,
    });
  if (rows.length === 0) {
    problems.push({
      code: "whp-exchange/no-rows",
      message: "there is no whole row of data",
      where: at(nameLine + 1),
      remedy: "Get the file again.",
    });
    return null;
  }
  const parameters: WhpParameter[] = [];
  for (const [index, name] of names.entries()) {
    if (name.endsWith("_FLAG_W")) {
      if (!names.includes(name.slice(0, -7)))
        findings.push({
          code: "whp-exchange/lone-flag",
          message: `${name} flags a parameter that is not there`,
          where: at(nameLine),
          remedy: "The flags are kept as text.",
        });
      continue;
    }
    const flagIndex = names.indexOf(`${name}_FLAG_W`);
    const flags = flagIndex < 0 ? null : rows.map((row) => row[flagIndex]!);
    parameters.push({
      ...numbersOf(rows, rowLines, index, name, flags, file, problems),
      name,
      units: units[index]!,
      index,
      flags,
    });
  }
  return { parameters, lines: Uint32Array.from(rowLines) };
}

function numbersOf(
  rows: readonly (readonly string[])[],
  lines: readonly number[],
  index: number,
  name: string,
  flags: readonly string[] | null,
  file: string,
  problems: Problem[],
): Pick<WhpParameter, "values" | "decimals" | "significantDigits" | "first" | "last"> {
  const values = new Float64Array(rows.length).fill(NaN);
  let decimals = 0;
  let significantDigits = 0;
  let first = NaN;
  let last = NaN;
  for (const [row, cells] of rows.entries()) {
    const text = cells[index]!;
    const value = NUMBER.test(text) ? parseNumber(text) : NaN;
    const where = { file, line: lines[row] ?? 1, column: index + 1, variable: name };
    const flag = flags?.[row];
    if (flag !== undefined && !/^[1-9]$/.test(flag))
      problems.push({
        code: "whp-exchange/flag",
        message: `the flag "${flag}" of ${name} is not a digit from 1 to 9`,
        where,
        remedy: "Flags are those of the WOCE CTD table.",
      });
    if (Number.isNaN(value)) {
      problems.push({
        code: "whp-exchange/number",
        message: `"${text}" under ${name} is not a number as the format writes them`,
        where,
        remedy: "Digits with an optional minus and decimal point; missing is -999.",
      });
      continue;
    }
    if (value === MISSING) continue;
    values[row] = value;
    const printed = printedPrecision(text);
    decimals = Math.max(decimals, printed.decimals);
    significantDigits = Math.max(significantDigits, printed.significantDigits);
    if (Number.isNaN(first)) first = value;
    last = value;
  }
  return { values, decimals, significantDigits, first, last };
}
