import { formatIsoTime } from "@wherry/core";
import type { DataArray, Dataset, Variable } from "@wherry/netcdf";
import { floatText } from "./number-text.ts";
import { productRows } from "./product-rows.ts";

/** One column of a product as a table of rows. */
export interface TableColumn {
  readonly name: string;
  /** The variable whose numbers it holds; null for what the table itself adds. */
  readonly variable: Variable | null;
  /** For what is not said by the variable. */
  readonly description: string | null;
  readonly datatype: "string" | "float" | "double" | "byte" | "int" | "dateTime";
  /** Text of a row's cell; empty where the value is missing. */
  cell(row: number): string;
}

/** A product as one table: values of the cast are repeated in each of its rows. */
export interface ProductTable {
  readonly rows: number;
  readonly columns: readonly TableColumn[];
}

/** Number of the row within its cast, which together with the cast is a key. */
export const ROW_COLUMN = "row";

/** The table of a product of ours, however its casts are arranged. */
export async function productTable(dataset: Dataset): Promise<ProductTable> {
  const { rows, castOf, rowOf, placeIn } = await productRows(dataset);
  const columns: TableColumn[] = [];
  for (const variable of dataset.variables.values()) {
    if (isContainer(variable) || variable.attributes.has("sample_dimension")) continue;
    const result = await dataset.read(variable.name);
    if (!result.ok) throw new RangeError(result.problems[0].message);
    const place = placeIn(variable);
    const own = columnsOf(variable, result.value, place ?? castOf);
    columns.push(...(place ? own : own.map((column) => perCast(column, castOf))));
    if (variable.attributes.has("cf_role"))
      columns.push({
        name: ROW_COLUMN,
        variable: null,
        description: "number of the row within its cast, the first row is 1",
        datatype: "int",
        cell: (row) => String(rowOf(row) + 1),
      });
    if (variable.name === "time") {
      const clock = clockColumn(variable, result.value, place ?? castOf);
      columns.push(place ? clock : perCast(clock, castOf));
    }
  }
  return { rows, columns };
}

/** A column whose text is made once for each cast, not for each of its rows. */
function perCast(column: TableColumn, castOf: (row: number) => number): TableColumn {
  let known = -1;
  let text = "";
  return {
    ...column,
    cell: (row) => {
      const cast = castOf(row);
      if (cast !== known) [known, text] = [cast, column.cell(row)];
      return text;
    },
  };
}

/** Variables that hold nothing but attributes. */
export const isContainer = ({ name, dimensions, attributes }: Variable): boolean =>
  dimensions.length === 0 && (attributes.has("grid_mapping_name") || /^(platform|instrument)\d+$/.test(name));

const decoder = new TextDecoder();

function columnsOf(variable: Variable, data: DataArray, place: (row: number) => number): TableColumn[] {
  const { name, type, shape } = variable;
  if (type === "char") {
    const length = shape.at(-1) ?? 1;
    const bytes = data as Uint8Array;
    const cell = (row: number) => {
      const start = place(row) * length;
      return decoder.decode(bytes.subarray(start, start + length)).replace(/\0+$/, "");
    };
    return [{ name, variable, description: null, datatype: "string", cell }];
  }
  const text = textOf(variable, data);
  const datatype = type as "float" | "double" | "byte" | "int";
  if (variable.dimensions.at(-1) === "bound")
    return ["lower", "upper"].map((edge, index) => ({
      name: `${name}_${edge}`,
      variable,
      description: `${edge} bound of the ${name === "time_bounds" ? "burst" : "layer"}, in the unit of ${name.replace("_bounds", "")}`,
      datatype,
      cell: (row) => text(2 * place(row) + index),
    }));
  return [{ name, variable, description: null, datatype, cell: (row) => text(place(row)) }];
}

function textOf(variable: Variable, data: DataArray): (index: number) => string {
  const fill = variable.attributes.get("_FillValue")?.value;
  const missing = typeof fill === "object" && fill.length === 1 ? Number(fill[0]) : null;
  const write = variable.type === "float" ? floatText : String;
  return (index) => {
    const value = Number(data[index]);
    return value === missing ? "" : write(value);
  };
}

/** The time in the form that people read, beside the number that programs read. */
function clockColumn(variable: Variable, data: DataArray, place: (row: number) => number): TableColumn {
  const text = textOf(variable, data);
  return {
    name: "time_utc",
    variable: null,
    description: "the time of column time as date and time, UTC",
    datatype: "dateTime",
    cell: (row) => (text(place(row)) === "" ? "" : formatIsoTime(Number(data[place(row)]))),
  };
}
