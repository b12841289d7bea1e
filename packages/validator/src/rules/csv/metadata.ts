import { csvwClause, defineCsvRule } from "../../engine/csv-rule.ts";
import { tableExample } from "./csv-example.ts";

const CONTEXT = "http://www.w3.org/ns/csvw";

const namesContext = (context: unknown): boolean =>
  context === CONTEXT || (Array.isArray(context) && context[0] === CONTEXT);

export const csvMetadata = defineCsvRule({
  id: "csv/metadata",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: csvwClause("5, Annotating Tables"),
  covers: ["CSVW-1", "CSVW-2", "CSVW-3", "CSVW-10"],
  title: "A table has a metadata document that describes its columns",
  why: "A table alone does not say what its columns are or in which units.",
  remedy: "Put a file with the name of the table and -metadata.json at its end beside it.",
  messages: {
    missing: "there is no metadata document for the table",
    broken: "the metadata document cannot be used: {found}",
    context: "the metadata document does not have the @context of CSV on the Web",
    columns: "the metadata document describes no columns",
    url: 'the metadata document describes "{found}", not this file',
  },
  passing: [tableExample(), tableExample({ table: { "@context": [CONTEXT, { "@language": "en" }] } })],
  failing: [
    { csv: "a\r\n1\r\n", metadata: null, where: {}, message: "missing" },
    { csv: "a\r\n1\r\n", metadata: "{", where: {}, message: "broken" },
    { ...tableExample({ table: { "@context": "other" } }), where: {}, message: "context" },
    { ...tableExample({ table: { tableSchema: {} } }), where: {}, message: "columns" },
    { ...tableExample({ table: { url: "other.csv" } }), where: {}, message: "url" },
  ],
  check({ metadata, path }, report) {
    if (metadata === null) return report({}, "missing");
    if (typeof metadata === "string") return report({}, "broken", { found: metadata });
    const { context, columns, url } = metadata;
    const name = path.split(/[\\/]/).at(-1) ?? "";
    if (!namesContext(context)) report({}, "context", { expected: CONTEXT });
    if (columns === null) report({}, "columns");
    if (url !== null && decodeURI(url).split("/").at(-1) !== name)
      report({}, "url", { found: url, expected: name });
  },
});
