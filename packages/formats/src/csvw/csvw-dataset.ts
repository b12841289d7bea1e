import { fail, type Problem, type Result, succeed } from "@wherry/core";
import {
  type Attribute,
  type Dataset,
  type MemoryVariable,
  memoryDataset,
  numberAttribute,
  textAttribute,
} from "@wherry/netcdf";
import type { CsvwTable, PropertyValue } from "./csvw-metadata.ts";
import type { ReadColumn } from "./csvw-rows.ts";

/** Fill values that no number of a table can have. */
const BYTE_FILL = -128;
const INT_FILL = -(2 ** 31);

/**
 * A table as a contiguous ragged array: rows of one identity are a cast, and what is the same in all rows of every cast
 * and describes it is a value of the cast.
 *
 * @returns problem csvw/scattered if the rows of a cast do not stand together
 */
export function datasetOfTable(
  { primaryKey, properties }: CsvwTable,
  columns: readonly ReadColumn[],
  lines: Uint32Array,
  file: string,
): Result<Dataset> {
  const identity = columns.find(({ column }) => primaryKey.length > 1 && column.name === primaryKey[0]);
  const starts = startsOf(identity, lines.length);
  const names = new Set<string>();
  for (const start of starts) {
    const name = identity?.texts[start] ?? "";
    if (names.has(name))
      return fail({
        code: "csvw/scattered",
        message: `the rows of ${name} do not stand together`,
        where: { file, line: lines[start] ?? 1 },
        remedy: "Sort the table by its key.",
      } satisfies Problem);
    names.add(name);
  }
  const isSeries = /^timeSeries$/i.test(String(properties.get("featureType") ?? ""));
  const role = isSeries ? "timeseries_id" : "profile_id";
  const isSteady = (read: ReadColumn) => steady(read, starts);
  const ofCasts = levels(columns, identity, isSteady, isSeries);
  const variables: MemoryVariable[] = [];
  const dimensions = [
    { name: "cast_of_table", length: starts.length },
    { name: "row_of_table", length: lines.length },
  ];
  if (identity) {
    const sizes = starts.map((start, i) => (starts[i + 1] ?? lines.length) - start);
    variables.push({
      name: "rows_of_cast",
      type: "int",
      dimensions: ["cast_of_table"],
      attributes: [textAttribute("sample_dimension", "row_of_table")],
      data: Int32Array.from(sizes),
    });
  }
  for (const read of columns) {
    const { column } = read;
    if (column.datatype === "dateTime" || (primaryKey.includes(column.name) && read !== identity)) continue;
    const perCast = read === identity || (identity !== undefined && ofCasts.has(read));
    const places = perCast ? starts : Array.from(lines.keys());
    const dimension = perCast ? "cast_of_table" : "row_of_table";
    const own = attributesOf(read, read === identity ? role : null);
    if (read.numbers) variables.push(numberVariable(read, read.numbers, places, dimension, own));
    else {
      const texts = places.map((place) => new TextEncoder().encode(read.texts[place]!));
      const length = texts.reduce((longest, text) => Math.max(longest, text.length), 1);
      const letters = `letters_of_${column.name}`;
      dimensions.push({ name: letters, length });
      const data = new Uint8Array(texts.length * length);
      for (const [i, text] of texts.entries()) data.set(text, i * length);
      variables.push({
        name: column.name,
        type: "char",
        dimensions: [dimension, letters],
        attributes: own,
        data,
      });
    }
  }
  const global = [...properties]
    .filter(([name]) => !name.includes(":"))
    .flatMap(([name, value]) => attribute(name, value));
  return succeed(memoryDataset({ dimensions, attributes: global, variables }));
}

/** Rows on which another cast begins. */
function startsOf(identity: ReadColumn | undefined, rows: number): readonly number[] {
  if (!identity) return [0];
  return Array.from({ length: rows }, (_, row) => row).filter(
    (row) => row === 0 || identity.texts[row] !== identity.texts[row - 1],
  );
}

/** Whether a column has one text in all rows of every cast. */
function steady({ texts }: ReadColumn, starts: readonly number[]): boolean {
  const begins = new Set(starts);
  return texts.every((text, row) => begins.has(row) || text === texts[row - 1]);
}

/** Columns that describe casts: by what they are, and steady; flags go with what they judge. */
function levels(
  columns: readonly ReadColumn[],
  identity: ReadColumn | undefined,
  isSteady: (read: ReadColumn) => boolean,
  isSeries: boolean,
): ReadonlySet<ReadColumn> {
  const judges = ({ column }: ReadColumn) =>
    String(column.properties.get("ancillary_variables") ?? "").split(/\s+/);
  const isFlag = ({ column }: ReadColumn) => column.properties.has("flag_values");
  const plain = columns.filter((read) => read !== identity && !isFlag(read));
  const judged = new Set(columns.flatMap(judges));
  const describes = (read: ReadColumn) => {
    const { standardName, properties, name } = read.column;
    // a quantity of the rows has flags of its own, and our products name what tells of rows
    if (standardName === null && properties.has("ancillary_variables")) return false;
    if (/^(?:elapsed|source_line|text_.*)$/.test(name)) return false;
    if (standardName === null) return !judged.has(name);
    // a depth that nothing judges and that never changes is the nominal one of a series
    if (isSeries && standardName === "depth") return !properties.has("ancillary_variables");
    return /^(?:time|latitude|longitude)$/.test(standardName);
  };
  const found = new Set(plain.filter((read) => describes(read) && isSteady(read)));
  const flagsOfCasts = new Set([...found].flatMap(judges));
  for (const read of columns)
    if (isFlag(read) && flagsOfCasts.has(read.column.name) && isSteady(read)) found.add(read);
  return found;
}

function attributesOf({ column }: ReadColumn, role: string | null): Attribute[] {
  const text = (name: string, value: string | null) => (value === null ? [] : [textAttribute(name, value)]);
  return [
    ...text("long_name", column.description),
    ...text("standard_name", column.standardName),
    ...text("units", column.units),
    ...text("cf_role", role),
    ...[...column.properties]
      .filter(([name]) => !/^(?:long_name|standard_name|units|cf_role|_FillValue)$/.test(name))
      .flatMap(([name, value]) => attribute(name, value)),
  ];
}

function attribute(name: string, value: PropertyValue): Attribute[] {
  if (typeof value === "string") return [textAttribute(name, value)];
  const list = typeof value === "number" ? [value] : value;
  if (list.some((item) => typeof item === "string")) return [textAttribute(name, list.join(" "))];
  const numbers = list.map(Number);
  return numbers.every(Number.isFinite) ? [numberAttribute(name, "double", numbers)] : [];
}

function numberVariable(
  { column, type }: ReadColumn,
  numbers: Float64Array,
  places: readonly number[],
  dimension: string,
  attributes: readonly Attribute[],
): MemoryVariable {
  const values = places.map((place) => numbers[place]!);
  const filled = (fill: number) => values.map((value) => (Number.isNaN(value) ? fill : value));
  const common = { name: column.name, dimensions: [dimension] };
  const fill = (kind: "byte" | "int", value: number) => [
    ...attributes,
    numberAttribute("_FillValue", kind, value),
  ];
  if (type === "byte")
    return { ...common, type, attributes: fill("byte", BYTE_FILL), data: Int8Array.from(filled(BYTE_FILL)) };
  if (type === "int")
    return { ...common, type, attributes: fill("int", INT_FILL), data: Int32Array.from(filled(INT_FILL)) };
  if (type === "float") return { ...common, type, attributes, data: Float32Array.from(values) };
  return { ...common, type: "double", attributes, data: Float64Array.from(values) };
}
