import { defineCsvRule, rfc4180 } from "../../engine/csv-rule.ts";
import { tableExample } from "./csv-example.ts";

export const csvText = defineCsvRule({
  id: "csv/text",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: rfc4180("2"),
  covers: ["CSVW-6"],
  title: "Every row has as many cells as the header, and quotes are closed",
  why: "A row with a cell too many or too few shifts its values under the wrong headings.",
  remedy: "Look at the line for a comma within a value, a missing value, or a quote that is not closed.",
  messages: {
    width: "line {line} has {found} cells, the header has {expected}",
    quote: "line {line}: {found}",
  },
  passing: [tableExample({ csv: 'cast,depth\r\n"a, b",1\r\n' })],
  failing: [
    { ...tableExample({ csv: "cast,depth\r\na,1,5\r\n" }), where: { line: 2 }, message: "width" },
    { ...tableExample({ csv: 'cast,depth\r\na"b,1\r\n' }), where: { line: 2, column: 2 }, message: "quote" },
  ],
  check({ header, rows, irregular }, report) {
    const wrong = rows.filter(({ cells }) => cells.length !== header.length);
    const [first] = wrong;
    if (first !== undefined)
      report({ line: first.line }, "width", {
        found: first.cells.length,
        expected: header.length,
        count: wrong.length,
      });
    const [odd] = irregular;
    if (odd !== undefined) report(odd.where, "quote", { found: odd.message, count: irregular.length });
  },
});
