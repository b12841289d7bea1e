import { csvwClause, defineCsvRule } from "../../engine/csv-rule.ts";
import { tableExample } from "./csv-example.ts";

const keyed = (csv: string, primaryKey: string) =>
  tableExample({ csv, table: { tableSchema: { columns: [{ name: "id" }, { name: "x" }], primaryKey } } });

export const csvKey = defineCsvRule({
  id: "csv/key",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: csvwClause("5.5, Schemas"),
  covers: ["CSVW-7"],
  title: "The columns of the primary key exist and tell all rows apart",
  why: "Rows are referred to by their key; two rows with one key cannot be told apart.",
  remedy: "Correct primaryKey in the metadata, or the rows with one key.",
  messages: {
    unknown: "primaryKey names {found}, which is no column",
    twice: "line {line} has the same key as an earlier row: {found}",
  },
  passing: [keyed("id,x\r\na,1\r\nb,1\r\n", "id")],
  failing: [
    { ...keyed("id,x\r\na,1\r\n", "key"), where: {}, message: "unknown" },
    { ...keyed("id,x\r\na,1\r\na,2\r\n", "id"), where: { line: 3 }, message: "twice" },
  ],
  check({ rows, metadata }, report) {
    if (metadata === null || typeof metadata === "string" || metadata.columns === null) return;
    const { columns, primaryKey } = metadata;
    const places = primaryKey.map((name) => columns.findIndex((column) => column.name === name));
    const unknown = primaryKey.filter((_, index) => places[index] === -1);
    if (unknown.length > 0) return report({}, "unknown", { found: unknown });
    if (primaryKey.length === 0) return;
    const seen = new Set<string>();
    let twice = 0;
    let first: { line: number; found: string[] } | null = null;
    for (const { cells, line } of rows) {
      const found = places.map((place) => cells[place] ?? "");
      const key = JSON.stringify(found);
      if (seen.has(key)) {
        twice += 1;
        first ??= { line, found };
      }
      seen.add(key);
    }
    if (first !== null) report({ line: first.line }, "twice", { found: first.found, count: twice });
  },
});
