import { csvwClause, defineCsvRule } from "../../engine/csv-rule.ts";
import { tableExample } from "./csv-example.ts";

export const csvHeader = defineCsvRule({
  id: "csv/header",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: csvwClause("5.6, Columns"),
  covers: ["CSVW-4"],
  title: "The columns described are the columns of the table, in their order",
  why: "Programs take the description of a column by its place; one column too few shifts all units and names.",
  remedy: "Make header and metadata agree.",
  messages: {
    count: "the table has {found} columns, its metadata describe {expected}",
    title: 'column {place} is headed "{found}", the metadata call it "{expected}"',
    twice: 'the metadata describe two columns with the name "{found}"',
  },
  passing: [tableExample()],
  failing: [
    {
      ...tableExample({ columns: [{ name: "cast", titles: "cast" }] }),
      where: { line: 1 },
      message: "count",
    },
    {
      ...tableExample({ columns: [{ titles: "cast" }, { titles: "pressure" }] }),
      where: { line: 1, variable: "pressure" },
      message: "title",
    },
    {
      ...tableExample({ csv: "a,b\r\n1,2\r\n", columns: [{ name: "a" }, { name: "a", titles: "b" }] }),
      where: { variable: "a" },
      message: "twice",
    },
  ],
  check({ header, metadata }, report) {
    if (metadata === null || typeof metadata === "string" || metadata.columns === null) return;
    const { columns } = metadata;
    if (columns.length !== header.length)
      return report({ line: 1 }, "count", { found: header.length, expected: columns.length });
    const names = columns.map(({ name }) => name);
    const twice = names.find((name, index) => names.indexOf(name) !== index);
    if (twice !== undefined) report({ variable: twice }, "twice", { found: twice });
    for (const [index, { name, titles }] of columns.entries()) {
      const found = header[index] ?? "";
      const accepted = titles.length > 0 ? titles : [name];
      if (!accepted.includes(found.trim()))
        report({ line: 1, variable: name }, "title", {
          found,
          expected: accepted,
          fill: { place: index + 1 },
        });
    }
  },
});
