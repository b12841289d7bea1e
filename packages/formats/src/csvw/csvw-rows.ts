import { type Problem, parseCells, parseNumber } from "@wherry/core";
import type { CsvwColumn, CsvwTable } from "./csvw-metadata.ts";

/** A column's cells; numbers are NaN where there is no value. */
export interface ReadColumn {
  readonly column: CsvwColumn;
  readonly type: "char" | "byte" | "int" | "float" | "double";
  readonly texts: readonly string[];
  readonly numbers: Float64Array | null;
}

const TYPES: Readonly<Record<string, ReadColumn["type"]>> = {
  byte: "byte",
  unsignedByte: "int",
  short: "int",
  unsignedShort: "int",
  int: "int",
  float: "float",
  double: "double",
  number: "double",
  decimal: "double",
  integer: "double",
  long: "double",
};

/**
 * The cells of a table by its description. Rows of a wrong width are kept out, cells that are not what their datatype
 * says have no value, and both are told.
 *
 * @returns null, with a problem, if header and description differ or no row is whole
 */
export function readCsvwRows(
  text: string,
  table: CsvwTable,
  file: string,
  problems: Problem[],
  findings: Problem[],
): { readonly columns: readonly ReadColumn[]; readonly lines: Uint32Array } | null {
  const tell = (
    list: Problem[],
    code: string,
    message: string,
    line: number,
    remedy: string,
    variable?: string,
  ) =>
    list.push({
      code: `csvw/${code}`,
      message,
      where: { file, line, ...(variable === undefined ? {} : { variable }) },
      remedy,
    });
  const { rows, warnings } = parseCells(text, table.delimiter);
  for (const warning of warnings) findings.push({ ...warning, where: { ...warning.where, file } });
  const header = rows[0]?.cells ?? [];
  const { columns } = table;
  const differs = columns.findIndex(
    ({ name, titles }, i) => header[i] !== name && !titles.includes(header[i] ?? ""),
  );
  if (differs >= 0 || header.length !== columns.length) {
    const i = differs >= 0 ? differs : columns.length;
    tell(
      problems,
      "header",
      `column ${i + 1} is headed "${header[i] ?? "nothing"}", the description says "${columns[i]?.name ?? "nothing"}"`,
      1,
      "Table and description are not of one another. Restore the two that were written together.",
    );
    return null;
  }
  const body = rows.slice(1).filter(({ cells }, i) => !(i === rows.length - 2 && cells.join("") === ""));
  const isWhole = (row: (typeof body)[number]) => row.whole && row.cells.length === columns.length;
  const whole = body.filter(isWhole);
  const short = body.filter((row) => !isWhole(row));
  if (short.length > 0)
    tell(
      findings,
      "row-width",
      `${short.length} of ${body.length} rows are not whole and kept out: line ${short
        .slice(0, 10)
        .map(({ line }) => line)
        .join(", ")}`,
      short[0]!.line,
      `A row has ${columns.length} cells.`,
    );
  if (whole.length === 0) {
    tell(problems, "no-rows", "there is no whole row below the names", 1, "Get the file again.");
    return null;
  }
  const read = columns.map((column, i): ReadColumn => {
    const type = TYPES[column.datatype] ?? "char";
    const texts = whole.map(({ cells }) => cells[i]!);
    const isNull = (cell: string) => column.nulls.includes(cell);
    const odd = (test: (cell: string) => boolean) => texts.findIndex(test);
    const empty = column.required ? odd(isNull) : -1;
    if (empty >= 0)
      tell(
        findings,
        "required",
        `${column.name} has no value, and the description requires one`,
        whole[empty]!.line,
        "Restore the value.",
        column.name,
      );
    if (type === "char")
      return { column, type, texts: texts.map((cell) => (isNull(cell) ? "" : cell)), numbers: null };
    const numbers = Float64Array.from(texts, (cell) => (isNull(cell) ? Number.NaN : numberOf(cell, type)));
    const wrong = odd((cell) => !isNull(cell) && Number.isNaN(numberOf(cell, type)));
    if (wrong >= 0) {
      const count = texts.filter((cell, row) => !isNull(cell) && Number.isNaN(numbers[row]!)).length;
      tell(
        findings,
        "cell",
        `${count} ${count === 1 ? "cell" : "cells"} of ${column.name} cannot be read as ${column.datatype}, the first is "${texts[wrong]!.slice(0, 40)}"`,
        whole[wrong]!.line,
        "They count as missing. Restore the values.",
        column.name,
      );
    }
    return { column, type, texts, numbers };
  });
  return { columns: read, lines: Uint32Array.from(whole, ({ line }) => line) };
}

/** A cell as a number that its type can hold; NaN if it is none. */
function numberOf(cell: string, type: ReadColumn["type"]): number {
  const value = parseNumber(cell);
  if (type === "byte") return Number.isInteger(value) && Math.abs(value) <= 127 ? value : Number.NaN;
  if (type === "int") return Number.isInteger(value) && Math.abs(value) < 2 ** 31 ? value : Number.NaN;
  return value;
}
