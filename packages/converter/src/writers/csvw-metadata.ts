import type { Attribute, Dataset, Variable } from "@wherry/netcdf";
import { CELL_WORDS } from "./csv-cell.ts";
import { isContainer, type ProductTable, ROW_COLUMN, type TableColumn } from "./product-table.ts";

/**
 * Description of a product's table.
 *
 * @source W3C Recommendation "Metadata Vocabulary for Tabular Data", 17 December 2015
 */
export function csvwMetadata(dataset: Dataset, table: ProductTable, url: string): string {
  const global = (name: string) => textOf(dataset.attributes.get(name));
  const identity = table.columns.find(({ variable }) => variable?.attributes.has("cf_role"));
  const document = {
    "@context": ["http://www.w3.org/ns/csvw", { "@language": "en" }],
    "@type": "Table",
    url,
    ...given("dc:title", global("title")),
    ...given("dc:description", global("summary")),
    ...given("dc:identifier", global("id")),
    ...given("dc:creator", global("creator_name")),
    ...given("dc:publisher", global("publisher_name")),
    ...given("dc:license", global("license")),
    ...given("dc:created", global("date_created")),
    ...given("dc:modified", global("date_modified")),
    ...given("dc:source", global("source")),
    ...given("dc:provenance", global("history")),
    ...given("dc:references", global("references")),
    ...given("schema:keywords", global("keywords")),
    ...given("schema:version", global("product_version")),
    ...(table.columns.some(({ datatype }) => datatype === "string") ? { "rdfs:comment": CELL_WORDS } : {}),
    "schema:additionalProperty": [
      ...[...dataset.attributes.values()].map((attribute) => property(attribute.name, attribute)),
      ...[...dataset.variables.values()]
        .filter(isContainer)
        .flatMap(({ name, attributes }) =>
          [...attributes.values()].map((attribute) => property(`${name}:${attribute.name}`, attribute)),
        ),
    ],
    dialect: {
      encoding: "utf-8",
      lineTerminators: ["\r\n"],
      delimiter: ",",
      quoteChar: '"',
      doubleQuote: true,
      header: true,
      headerRowCount: 1,
    },
    tableSchema: {
      "@type": "Schema",
      columns: table.columns.map((column) => columnDescription(column, identity)),
      primaryKey: identity ? [identity.name, ROW_COLUMN] : [ROW_COLUMN],
    },
  };
  return `${JSON.stringify(document, null, 2)}\n`;
}

/** Attributes of a variable that have a place of their own in the description or none in a table. */
const SAID_OTHERWISE = new Set([
  "long_name",
  "standard_name",
  "units",
  "_FillValue",
  "coordinates",
  "grid_mapping",
  "bounds",
  "cf_role",
]);

function columnDescription(column: TableColumn, identity: TableColumn | undefined) {
  const { variable } = column;
  const text = (name: string) => textOf(variable?.attributes.get(name));
  const isKey = column === identity || column.name === ROW_COLUMN;
  const isBound = column.description !== null;
  return {
    name: column.name,
    titles: column.name,
    datatype: column.datatype,
    null: "",
    ...(isKey ? { required: true } : {}),
    "dc:description": column.description ?? text("long_name") ?? column.name,
    ...(isBound ? {} : given("schema:propertyID", text("standard_name"))),
    ...given("schema:unitText", text("units")),
    ...(isBound ? {} : additional(variable)),
  };
}

function additional(variable: Variable | null): { "schema:additionalProperty"?: unknown[] } {
  const list = [...(variable?.attributes.values() ?? [])]
    .filter(({ name }) => !SAID_OTHERWISE.has(name))
    .map((attribute) => property(attribute.name, attribute));
  return list.length === 0 ? {} : { "schema:additionalProperty": list };
}

const property = (name: string, attribute: Attribute) => ({
  "schema:name": name,
  "schema:value": plainValue(attribute),
});

function plainValue({ value }: Attribute): string | number | (string | number)[] {
  if (typeof value === "string") return value;
  const list = Array.from(value as ArrayLike<number | bigint | string>, (item) =>
    typeof item === "bigint" ? Number(item) : item,
  );
  return list.length === 1 ? list[0]! : list;
}

const textOf = (attribute: Attribute | undefined): string | null =>
  typeof attribute?.value === "string" && attribute.value !== "" ? attribute.value : null;

const given = (key: string, value: string | null): Record<string, string> =>
  value === null ? {} : { [key]: value };
