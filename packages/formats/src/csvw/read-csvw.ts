import { failOr, type Problem, type Result, succeed } from "@wherry/core";
import { type CfDsgContext, readCfDsg } from "../cf-dsg/read-cf-dsg.ts";
import type { UnderstoodFile } from "../understood.ts";
import { datasetOfTable } from "./csvw-dataset.ts";
import { readCsvwMetadata } from "./csvw-metadata.ts";
import { readCsvwRows } from "./csvw-rows.ts";
import { metadataName } from "./metadata-name.ts";

/**
 * Casts of a CSV file with the document that describes it (CSV on the Web), as our own products are: the columns' standard
 * names, units, flags and the identity of the casts are those of the description, and nothing is taken from headers.
 *
 * @param metadata the document's bytes
 * @returns problems csvw/… if the document is none or is not that of the table
 * @source  W3C Recommendations "Metadata Vocabulary for Tabular Data" and "Model for Tabular Data", 17 December 2015
 */
export async function readCsvw(
  bytes: Uint8Array,
  metadata: Uint8Array,
  context: CfDsgContext,
): Promise<Result<UnderstoodFile>> {
  const { path } = context;
  const described = readCsvwMetadata(metadata, metadataName(path));
  if (!described.ok) return described;
  const problems: Problem[] = [];
  const findings: Problem[] = [];
  const { text, encoding } = decode(bytes, path, findings);
  const name = path.split(/[/\\]/).at(-1);
  if (described.value.url !== null && described.value.url !== name)
    findings.push({
      code: "csvw/url",
      message: `the description is of ${described.value.url}, not of ${name}`,
      where: { file: metadataName(path) },
      remedy: "If the table was renamed, correct url in the description.",
    });
  const rows = readCsvwRows(text, described.value, path, problems, findings);
  if (!rows) return failOr(problems, () => unreachable());
  const dataset = datasetOfTable(described.value, rows.columns, rows.lines, path);
  if (!dataset.ok) return dataset;
  const read = await readCfDsg(dataset.value, context);
  if (!read.ok) return read;
  const all = [...findings, ...read.value.findings];
  return succeed(
    {
      ...read.value,
      format: read.value.format
        .replace(/^CF netCDF, (.*), .*$/, "CSV with metadata, $1")
        .replace(/^netCDF$/, "CSV with metadata"),
      encoding,
      lineEnding: lineEndOf(text),
      delimiter: described.value.delimiter,
      decimal: ".",
      missingMarkers: [...new Set(described.value.columns.flatMap(({ nulls }) => nulls))].filter(
        (mark) => mark !== "",
      ),
      casts: read.value.casts.map((cast) => ({
        ...cast,
        // a product of rows tells the lines of its own source
        lines:
          cast.finished && !cast.finished.layers
            ? cast.lines
            : cast.lines.map((row) => rows.lines[row - 1] ?? 0),
      })),
      findings: all,
    },
    all,
  );
}

function unreachable(): never {
  throw new RangeError("rows are absent without a problem");
}

function decode(
  bytes: Uint8Array,
  file: string,
  findings: Problem[],
): { readonly text: string; readonly encoding: string } {
  try {
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(bytes), encoding: "utf-8" };
  } catch {
    findings.push({
      code: "csvw/encoding",
      message: "the table is not valid UTF-8; it is read as windows-1252",
      where: { file },
      remedy: "Tables of the web are in UTF-8.",
    });
    return { text: new TextDecoder("windows-1252").decode(bytes), encoding: "windows-1252" };
  }
}

function lineEndOf(text: string): UnderstoodFile["lineEnding"] {
  const ends = new Set(text.match(/\r\n|\n|\r/g));
  if (ends.size > 1) return "mixed";
  return ends.has("\r\n") ? "CRLF" : ends.has("\r") ? "CR" : "LF";
}
