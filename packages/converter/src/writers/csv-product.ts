import type { Dataset } from "@wherry/netcdf";
import { textCell } from "./csv-cell.ts";
import { csvwMetadata } from "./csvw-metadata.ts";
import { type ProductTable, productTable, type TableColumn } from "./product-table.ts";

/** A product as text for people without any software: the table and what describes it. */
export interface CsvProduct {
  /** RFC 4180: comma, CRLF, quotes where needed, one header row; UTF-8. */
  readonly csv: string;
  /** W3C CSVW metadata as JSON. */
  readonly metadata: string;
}

/**
 * The same numbers as a data set of ours as one table of rows, in which what is said once per cast is repeated.
 *
 * @param dataset made by `fullDataset`, `binnedDataset` or `seriesDataset`
 * @param url     name of the CSV file, to which the metadata refer
 */
export async function csvProduct(dataset: Dataset, url: string): Promise<CsvProduct> {
  const { chunks, metadata } = await csvChunks(dataset, url);
  return { csv: [...chunks].join(""), metadata };
}

/** The same with the table in pieces, for data sets whose text is better not held as a whole. */
export async function csvChunks(
  dataset: Dataset,
  url: string,
): Promise<{
  readonly chunks: Iterable<string>;
  readonly metadata: string;
  readonly columns: readonly TableColumn[];
}> {
  const table = await productTable(dataset);
  return { chunks: piecesOf(table), metadata: csvwMetadata(dataset, table, url), columns: table.columns };
}

/** Length of a piece, in characters, after which the next begins. */
const PIECE = 1 << 16;

function* piecesOf({ columns, rows }: ProductTable): Generator<string> {
  let piece = `${columns.map(({ name }) => name).join(",")}\r\n`;
  const cells = columns.map(textOf);
  for (let row = 0; row < rows; row++) {
    for (const [index, cell] of cells.entries()) piece += index === 0 ? cell(row) : `,${cell(row)}`;
    piece += "\r\n";
    if (piece.length < PIECE) continue;
    yield piece;
    piece = "";
  }
  if (piece !== "") yield piece;
}

/** Only texts may need quotes. */
const textOf = (column: TableColumn): ((row: number) => string) =>
  column.datatype === "string" ? (row) => textCell(column.cell(row)) : column.cell;
