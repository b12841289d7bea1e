import { csvwClause, defineCsvRule } from "../../engine/csv-rule.ts";
import { tableExample } from "./csv-example.ts";

export const csvEncoding = defineCsvRule({
  id: "csv/encoding",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: csvwClause("5.9, Dialect Descriptions"),
  covers: ["CSVW-8"],
  title: "The table is UTF-8",
  why: "In another encoding, letters with marks and signs such as the degree are shown wrongly.",
  remedy: "Write the table again as UTF-8.",
  messages: { other: "the table is not UTF-8" },
  passing: [tableExample({ csv: "cast,depth\r\nMündung,1\r\n" })],
  failing: [
    {
      ...tableExample({ csv: "cast,depth\r\nMündung,1\r\n" }),
      encoding: "windows-1252",
      where: {},
      message: "other",
    },
  ],
  check({ isUtf8 }, report) {
    if (!isUtf8) report({}, "other");
  },
});
