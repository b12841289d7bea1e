import { createHash } from "node:crypto";
import { mkdirSync } from "node:fs";
import { dirname, join } from "node:path";
import {
  type ByteSource,
  csvChunks,
  dataDictionary,
  packValues,
  type SurveyInput,
  surveyProducts,
  whpExchangeFiles,
} from "@wherry/converter";
import { fail, type Result, succeed } from "@wherry/core";
import { type Dataset, type Sink, writeClassic, writeNetcdf4 } from "@wherry/netcdf";
import { piecesOf, withBytes } from "./byte-source.ts";
import { NewFile, writeNew } from "./write-file.ts";

export const FORMATS = ["classic", "netcdf4"] as const;
/** Classic netCDF, which needs no library to be read; or netCDF-4 of the classic model, packed. */
export type Format = (typeof FORMATS)[number];

/** Beyond it files get little smaller and take much longer. */
const DEFLATE = 4;

/** Bytes above which offsets no longer fit CDF-1; well below its limit of 2 GiB. */
const LARGE = 2 ** 31 - 2 ** 20;

/**
 * Writes the data sets of a survey into a folder, each as NetCDF and, if wanted, as CSV with its metadata.
 *
 * @returns names of the files written
 * @throws the system's error if the disk refuses
 */
export async function writeProducts(
  folder: string,
  survey: SurveyInput,
  {
    withCsv,
    format,
    packed,
  }: { readonly withCsv: boolean; readonly format: Format; readonly packed: boolean },
  signal?: AbortSignal,
): Promise<Result<string[]>> {
  const names: string[] = [];
  let count = 0;
  const dictionary = dataDictionary();
  for (const { kind, stem, dataset } of surveyProducts(survey)) {
    // An interruption is heard only between turns of the event loop.
    if (count++ % 16 === 0) await new Promise(setImmediate);
    signal?.throwIfAborted();
    const written = await writeNetcdf(
      join(folder, `${stem}.nc`),
      packed ? await packValues(dataset) : dataset,
      format,
    );
    if (!written.ok) return written;
    names.push(`${stem}.nc`);
    // who corrects soundings reads text
    if (!withCsv && kind !== "soundspeed") continue;
    const { chunks, metadata, columns } = await csvChunks(dataset, `${stem}.csv`);
    dictionary.add(kind, stem, dataset, columns);
    writeNew(join(folder, `${stem}.csv`), chunks);
    writeNew(join(folder, `${stem}.csv-metadata.json`), [metadata]);
    names.push(`${stem}.csv`, `${stem}.csv-metadata.json`);
  }
  const columns = dictionary.text();
  if (columns !== "") {
    const name = `${survey.context.sheet.survey.id}_columns.txt`;
    writeNew(join(folder, name), [columns]);
    names.push(name);
  }
  return succeed(names);
}

async function writeNetcdf(path: string, dataset: Dataset, format: Format): Promise<Result<void>> {
  const file = new NewFile(path);
  const sink: Sink = (chunk) => file.write(chunk);
  try {
    const written =
      format === "netcdf4"
        ? await writeNetcdf4(dataset, { deflate: DEFLATE, model: "classic" }, sink)
        : await writeClassic(dataset, { version: sizeOf(dataset) < LARGE ? 1 : 2 }, sink);
    return written.ok ? succeed(undefined) : fail(...written.problems);
  } finally {
    file.close();
  }
}

/** Bytes of the data at eight bytes a value, which no type exceeds. */
const sizeOf = (dataset: Dataset): number =>
  [...dataset.variables.values()].reduce((sum, { shape }) => sum + 8 * shape.reduce((a, b) => a * b, 1), 0);

export interface Original {
  readonly path: string;
  readonly name: string;
  readonly sha256: string;
}

/** Layer means as files of the exchange format, one a cast; casts that it can't hold are told as warnings. */
export async function writeWhpExchange(folder: string, survey: SurveyInput): Promise<Result<string[]>> {
  const made = whpExchangeFiles(survey.casts, survey.layers, survey.context);
  if (!made.ok) return made;
  for (const { name, text } of made.value) writeNew(join(folder, name), [text]);
  return succeed(
    made.value.map(({ name }) => name),
    made.warnings,
  );
}

/** The source files byte for byte, in folders as they came; refused if one is not what was understood. */
export async function keepOriginals(folder: string, originals: readonly Original[]): Promise<Result<void>> {
  const folders = new Set<string>();
  for (const [index, { path, name, sha256 }] of originals.entries()) {
    if (index % 16 === 0) await new Promise(setImmediate);
    const target = join(folder, "original", name);
    if (!folders.has(dirname(target))) mkdirSync(dirname(target), { recursive: true });
    folders.add(dirname(target));
    if (copyHashed(path, target) !== sha256) {
      return fail({
        code: "io/changed",
        message: `${path} changed while the survey was converted`,
        where: { file: path },
        remedy: "Run the command again when the file is at rest.",
      });
    }
  }
  return succeed(undefined);
}

/** Copies a file; the SHA-256 of what was written. */
function copyHashed(from: string, to: string): string {
  const hash = createHash("sha256");
  function* pieces(source: ByteSource) {
    for (const piece of piecesOf(source)) {
      hash.update(piece);
      yield piece;
    }
  }
  withBytes(from, (source) => writeNew(to, pieces(source)));
  return hash.digest("hex");
}
