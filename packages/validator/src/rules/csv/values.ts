import { parseNumber } from "@wherry/core";
import { csvwClause, defineCsvRule } from "../../engine/csv-rule.ts";
import type { CsvColumn } from "../../engine/csv-table.ts";
import { tableExample } from "./csv-example.ts";
import { DATATYPE_FORMS } from "./datatype-forms.ts";

type Fault = "form" | "empty" | "limit";

function judge(cell: string, column: CsvColumn): Fault | null {
  const { datatype, nulls, required, minimum, maximum } = column;
  const text = datatype === "string" ? cell : cell.trim();
  if (nulls.includes(text)) return required ? "empty" : null;
  const form = DATATYPE_FORMS[datatype];
  if (form === undefined) return null;
  if (!form(text)) return "form";
  const value = parseNumber(text);
  return (minimum !== null && value < minimum) || (maximum !== null && value > maximum) ? "limit" : null;
}

export const csvValues = defineCsvRule({
  id: "csv/values",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: csvwClause("5.11, Datatypes"),
  covers: ["CSVW-5"],
  title: "Every value is of the datatype that its column has",
  why: "A program that trusts the description stops at such a value, or reads something else.",
  remedy: "Correct the values, or the description of the column {variable}.",
  messages: {
    form: 'line {line}: "{found}" in the column {variable} is no {expected}',
    empty: "line {line}: the column {variable} needs a value",
    limit: "line {line}: {found} in the column {variable} is outside {expected}",
  },
  passing: [tableExample(), tableExample({ csv: "cast,depth\r\na,NaN\r\nb,-1.5e-3\r\n" })],
  failing: [
    {
      ...tableExample({ csv: 'cast,depth\r\na,1\r\nb,"1,5"\r\n' }),
      where: { line: 3, variable: "depth" },
      message: "form",
    },
    {
      ...tableExample({ csv: "cast,depth\r\n,1\r\n" }),
      where: { line: 2, variable: "cast" },
      message: "empty",
    },
    {
      ...tableExample({
        csv: "depth\r\n-1\r\n",
        columns: [{ name: "depth", titles: "depth", datatype: { base: "double", minimum: 0 } }],
      }),
      where: { line: 2, variable: "depth" },
      message: "limit",
    },
  ],
  check({ header, rows, metadata }, report) {
    if (metadata === null || typeof metadata === "string" || metadata.columns?.length !== header.length)
      return;
    for (const [index, column] of metadata.columns.entries()) {
      if (column.special) continue;
      const counts = new Map<Fault, number>();
      const first = new Map<Fault, { line: number; found: string }>();
      for (const { cells, line, whole } of rows) {
        const cell = cells[index];
        const fault = cell === undefined || !whole ? null : judge(cell, column);
        if (cell === undefined || fault === null) continue;
        counts.set(fault, (counts.get(fault) ?? 0) + 1);
        if (!first.has(fault)) first.set(fault, { line, found: cell });
      }
      for (const [fault, { line, found }] of first) {
        const limits = `${column.minimum ?? "any"} to ${column.maximum ?? "any"}`;
        const expected = fault === "limit" ? limits : column.datatype;
        report({ line, variable: column.name }, fault, { found, expected, count: counts.get(fault) ?? 1 });
      }
    }
  },
});
