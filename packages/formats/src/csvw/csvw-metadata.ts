import { fail, type Problem, type Result, succeed } from "@wherry/core";

/** A value of a property, as JSON holds it. */
export type PropertyValue = string | number | readonly (string | number)[];

/** A column as its metadata describe it. */
export interface CsvwColumn {
  readonly name: string;
  /** Texts that may head it. */
  readonly titles: readonly string[];
  readonly datatype: string;
  /** Cells with these texts have no value. */
  readonly nulls: readonly string[];
  readonly required: boolean;
  readonly description: string | null;
  /** CF standard name, where a property or its address says it. */
  readonly standardName: string | null;
  readonly units: string | null;
  readonly properties: ReadonlyMap<string, PropertyValue>;
}

export interface CsvwTable {
  readonly url: string | null;
  readonly delimiter: string;
  readonly columns: readonly CsvwColumn[];
  readonly primaryKey: readonly string[];
  readonly properties: ReadonlyMap<string, PropertyValue>;
}

type Json = Readonly<Record<string, unknown>>;

const CONTEXT = "http://www.w3.org/ns/csvw";

const isObject = (value: unknown): value is Json =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const textOf = (value: unknown): string | null => (typeof value === "string" && value !== "" ? value : null);

const textsOf = (value: unknown): string[] => {
  if (typeof value === "string") return [value];
  if (Array.isArray(value)) return value.flatMap(textsOf);
  return isObject(value) ? Object.values(value).flatMap(textsOf) : [];
};

/**
 * Reads the document that describes one table.
 *
 * @returns problem csvw/metadata if it is none, describes several tables, or gives no columns
 * @source  W3C Recommendation "Metadata Vocabulary for Tabular Data", 17 December 2015
 */
export function readCsvwMetadata(bytes: Uint8Array, file: string): Result<CsvwTable> {
  const refuse = (message: string) =>
    fail({
      code: "csvw/metadata",
      message,
      where: { file },
      remedy:
        "Restore the document that was written with the table, or take it away to have the table read as text.",
    } satisfies Problem);
  let document: unknown;
  try {
    document = JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(bytes));
  } catch {
    return refuse("the description of the table is no JSON in UTF-8");
  }
  if (!isObject(document) || !textsOf(document["@context"]).includes(CONTEXT))
    return refuse(`the description of the table does not name the context ${CONTEXT}`);
  const tables = Array.isArray(document.tables) ? document.tables.filter(isObject) : [document];
  const [table] = tables;
  if (!table || tables.length > 1) return refuse(`the document describes ${tables.length} tables, not one`);
  const schema = isObject(table.tableSchema) ? table.tableSchema : {};
  const described = Array.isArray(schema.columns) ? schema.columns : [];
  const columns = described.filter(isObject).filter(({ virtual }) => virtual !== true);
  if (columns.length === 0) return refuse("the document describes no columns");
  const dialect = isObject(table.dialect) ? table.dialect : {};
  const delimiter = textOf(dialect.delimiter) ?? ",";
  if (!/^[^"\r\n]$/.test(delimiter)) return refuse(`the delimiter "${delimiter}" is not one character`);
  if (dialect.header === false || (dialect.headerRowCount ?? 1) !== 1)
    return refuse("the table has no single row of names above its rows, which is what can be read");
  return succeed({
    url: textOf(table.url),
    delimiter,
    columns: columns.map((column, i) => columnOf(column, i, table)),
    primaryKey: textsOf(schema.primaryKey),
    properties: propertiesOf(table),
  });
}

function columnOf(column: Json, index: number, table: Json): CsvwColumn {
  const titles = textsOf(column.titles);
  const { datatype } = column;
  const base = isObject(datatype) ? datatype.base : datatype;
  const nulls = textsOf(column.null ?? table.null);
  const properties = propertiesOf(column);
  const address = /\/standard_names?\/([a-z0-9_]+)\/?$/.exec(textOf(column.propertyUrl) ?? "")?.[1];
  const stated = properties.get("standard_name");
  return {
    name: textOf(column.name) ?? titles[0] ?? `column_${index + 1}`,
    titles,
    datatype: textOf(base) ?? "string",
    nulls: nulls.length > 0 ? nulls : [""],
    required: column.required === true,
    description: textsOf(column["dc:description"])[0] ?? null,
    standardName: textOf(column["schema:propertyID"]) ?? address ?? textOf(stated) ?? null,
    units: textOf(column["schema:unitText"]) ?? textOf(properties.get("units")),
    properties,
  };
}

/** Properties as a list of names with their values. */
function propertiesOf(owner: Json): ReadonlyMap<string, PropertyValue> {
  const list = owner["schema:additionalProperty"];
  const found = new Map<string, PropertyValue>();
  for (const each of Array.isArray(list) ? list.filter(isObject) : []) {
    const name = textOf(each["schema:name"]);
    const value = each["schema:value"];
    const plain = (item: unknown): item is string | number =>
      typeof item === "string" || typeof item === "number";
    if (name !== null && (plain(value) || (Array.isArray(value) && value.every(plain))))
      found.set(name, value);
  }
  return found;
}
