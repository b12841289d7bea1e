import { type CellRow, type Problem, parseCells } from "@wherry/core";

/** A column as its metadata describe it. */
export interface CsvColumn {
  readonly name: string;
  /** Whether the metadata give the name, or it was made of the title or the place. */
  readonly named: boolean;
  /** Texts that may head the column. */
  readonly titles: readonly string[];
  /** Name of the built-in datatype; "string" if none is given. */
  readonly datatype: string;
  readonly minimum: number | null;
  readonly maximum: number | null;
  /** Cells with these texts have no value. */
  readonly nulls: readonly string[];
  readonly required: boolean;
  /** Cells hold lists or values in a format of their own, which are not examined. */
  readonly special: boolean;
}

export interface CsvMetadata {
  readonly context: unknown;
  readonly url: string | null;
  readonly columns: readonly CsvColumn[] | null;
  readonly primaryKey: readonly string[];
  /** Names of properties that the document uses and the vocabulary does not know: no prefix, no address. */
  readonly strange: readonly string[];
}

/** A table as text with what describes it. */
export interface CsvTable {
  readonly path: string;
  readonly isUtf8: boolean;
  /** The first row: cells of the header. */
  readonly header: readonly string[];
  /** The rows after the header. */
  readonly rows: readonly CellRow[];
  readonly irregular: readonly Problem[];
  /** Null if there is no document; a text says why it cannot be used. */
  readonly metadata: CsvMetadata | string | null;
}

type Json = Readonly<Record<string, unknown>>;

const isObject = (value: unknown): value is Json =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const textsOf = (value: unknown): string[] => {
  if (typeof value === "string") return [value];
  if (Array.isArray(value)) return value.filter((item) => typeof item === "string");
  // a map from languages to titles
  return isObject(value) ? Object.values(value).flatMap(textsOf) : [];
};

const decode = (bytes: Uint8Array): { text: string; isUtf8: boolean } => {
  try {
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(bytes), isUtf8: true };
  } catch {
    return { text: new TextDecoder("windows-1252").decode(bytes), isUtf8: false };
  }
};

export function readCsvTable(bytes: Uint8Array, metadata: Uint8Array | null, path: string): CsvTable {
  const { text, isUtf8 } = decode(bytes);
  const read = metadata === null ? null : readMetadata(metadata);
  const { rows, warnings } = parseCells(text);
  const [head, ...others] = rows;
  return {
    path,
    isUtf8,
    header: head?.cells ?? [],
    // a last empty line is no row
    rows: others.filter(({ cells }, index) => !(index === others.length - 1 && cells.join("") === "")),
    irregular: warnings,
    metadata: read,
  };
}

function readMetadata(bytes: Uint8Array): CsvMetadata | string {
  const { text, isUtf8 } = decode(bytes);
  if (!isUtf8) return "it is not UTF-8";
  let document: unknown;
  try {
    document = JSON.parse(text);
  } catch (error) {
    return `it is no JSON: ${error instanceof Error ? error.message : "unknown reason"}`;
  }
  if (!isObject(document)) return "it is no JSON object";
  const [only] =
    Array.isArray(document.tables) && document.tables.length === 1 ? document.tables : [document];
  const table = isObject(only) ? only : document;
  const schema = isObject(table.tableSchema) ? table.tableSchema : null;
  const columns = Array.isArray(schema?.columns) ? schema.columns.filter(isObject) : null;
  return {
    context: document["@context"],
    url: typeof table.url === "string" ? table.url : null,
    columns: columns?.map((column, index) => readColumn(column, index, table)) ?? null,
    primaryKey: textsOf(schema?.primaryKey),
    strange: [...new Set([document, table, schema ?? {}, ...(columns ?? [])].flatMap(strangeOf))],
  };
}

/** Properties of tables, schemas and columns (Metadata Vocabulary for Tabular Data, sections 5.3 to 5.7). */
const PROPERTIES = new Set(
  [
    "@context @id @type url tables tableSchema columns primaryKey foreignKeys rowTitles notes dialect transformations",
    "tableDirection suppressOutput name titles virtual null lang textDirection separator ordered default datatype",
    "required aboutUrl propertyUrl valueUrl",
  ]
    .join(" ")
    .split(" "),
);

/** Common properties have a prefix or are addresses; a plain word that the vocabulary does not have says nothing. */
const strangeOf = (object: Json): string[] =>
  Object.keys(object).filter((key) => !key.includes(":") && !PROPERTIES.has(key));

function readColumn(column: Json, index: number, table: Json): CsvColumn {
  const { datatype } = column;
  const titles = textsOf(column.titles);
  const base = isObject(datatype) ? datatype.base : datatype;
  const limit = (key: string) => {
    const value = isObject(datatype) ? datatype[key] : undefined;
    return typeof value === "number" ? value : null;
  };
  const nulls = textsOf(column.null ?? table.null);
  return {
    name: typeof column.name === "string" ? column.name : (titles[0] ?? `_col.${index + 1}`),
    named: typeof column.name === "string",
    titles,
    datatype: typeof base === "string" ? base : "string",
    minimum: limit("minimum") ?? limit("minInclusive"),
    maximum: limit("maximum") ?? limit("maxInclusive"),
    nulls: nulls.length > 0 ? nulls : [""],
    required: column.required === true,
    special: column.separator !== undefined || (isObject(datatype) && datatype.format !== undefined),
  };
}
