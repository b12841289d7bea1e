import type { Dataset } from "@wherry/netcdf";
import { csvwMetadata } from "./csvw-metadata.ts";
import { productTable } from "./product-table.ts";

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
  const table = await productTable(dataset);
  const lines = [table.columns.map(({ name }) => quoted(name)).join(",")];
  for (let row = 0; row < table.rows; row++) {
    let line = "";
    for (const [index, column] of table.columns.entries()) {
      if (index > 0) line += ",";
      line += quoted(column.cell(row));
    }
    lines.push(line);
  }
  return { csv: `${lines.join("\r\n")}\r\n`, metadata: csvwMetadata(dataset, table, url) };
}

const quoted = (cell: string): string =>
  /[",\r\n]/.test(cell) || cell !== cell.trim() ? `"${cell.replaceAll('"', '""')}"` : cell;
