import { csvwClause, defineCsvRule } from "../../engine/csv-rule.ts";
import { tableExample } from "./csv-example.ts";

/** Built-in datatypes (section 5.11.1). */
const DATATYPES = new Set(
  [
    "anyAtomicType anyURI base64Binary boolean date dateTime datetime dateTimeStamp decimal integer long int short byte",
    "nonNegativeInteger positiveInteger unsignedLong unsignedInt unsignedShort unsignedByte nonPositiveInteger",
    "negativeInteger double number duration dayTimeDuration yearMonthDuration float gDay gMonth gMonthDay gYear",
    "gYearMonth hexBinary binary QName string normalizedString token language Name NMTOKEN xml html json time any",
  ]
    .join(" ")
    .split(" "),
);

/** Characters of a variable in a URI template (RFC 6570, 2.3), by which columns are referred to. */
const NAME = /^(?:[A-Za-z0-9]|%[0-9A-Fa-f]{2})(?:[A-Za-z0-9_.]|%[0-9A-Fa-f]{2})*$/;

export const csvColumns = defineCsvRule({
  id: "csv/columns",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: csvwClause("5.6, Columns, and 5.11, Datatypes"),
  covers: ["CSVW-4", "CSVW-5", "CSVW-9", "CSVW-10"],
  title: "Columns are described in the words of the vocabulary",
  why: "A program passes over a word that it does not know, and with it what the word should say.",
  remedy: "Correct the description of the column in the metadata document.",
  messages: {
    name: 'the column name "{found}" is no name that addresses can use: letters, digits, underscore, not first',
    datatype: 'the column {variable} has the datatype "{found}", which is none of CSV on the Web',
    limits: "the column {variable} has the minimum {found}, above its maximum {expected}",
    property: "the metadata use {found}, which are no properties of CSV on the Web and have no prefix",
  },
  passing: [
    tableExample(),
    tableExample({ table: { "dc:title": "Casts", "https://schema.org/license": "CC0-1.0" } }),
  ],
  failing: [
    {
      ...tableExample({ csv: "a b\r\n1\r\n", columns: [{ name: "a b", titles: "a b" }] }),
      where: { variable: "a b" },
      message: "name",
    },
    {
      ...tableExample({ csv: "a\r\n1\r\n", columns: [{ name: "a", datatype: "real" }] }),
      where: { variable: "a" },
      message: "datatype",
    },
    {
      ...tableExample({
        csv: "a\r\n\r\n",
        columns: [{ name: "a", datatype: { base: "double", minimum: 5, maximum: 1 } }],
      }),
      where: { variable: "a" },
      message: "limits",
    },
    { ...tableExample({ table: { unit: "m" } }), where: {}, message: "property" },
  ],
  check({ metadata }, report) {
    if (metadata === null || typeof metadata === "string") return;
    for (const { name, named, datatype, minimum, maximum } of metadata.columns ?? []) {
      const where = { variable: name };
      if (named && !NAME.test(name)) report(where, "name", { found: name });
      if (!DATATYPES.has(datatype)) report(where, "datatype", { found: datatype });
      if (minimum !== null && maximum !== null && minimum > maximum)
        report(where, "limits", { found: minimum, expected: maximum });
    }
    if (metadata.strange.length > 0) report({}, "property", { found: metadata.strange, level: "warning" });
  },
});
