import { createHash } from "node:crypto";
import { createReadStream } from "node:fs";
import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import type { ProcessingDocument, SurveySheet } from "@wherry/contracts";
import { type Checked, type Checksum, type ProductFacts, productFacts, readSheet } from "@wherry/converter";
import { fail, failOr, type Problem, type Result, succeed } from "@wherry/core";
import { openDataset } from "@wherry/netcdf";
import type { Content } from "./bag-sink.ts";
import { openFileSource } from "./file-source.ts";
import { isIoError, problemFromIo } from "./problem-from-io.ts";

/** A finished result of a conversion, as it lies in a folder. */
export interface ResultOfConversion {
  readonly sheet: SurveySheet;
  readonly created: string;
  readonly software: string;
  /** Paths of its files below the folder, with "/", in order. */
  readonly files: readonly string[];
  /** Hidden files, which are not taken. */
  readonly skipped: readonly string[];
}

const RECORD = /_processing\.json$/;

/** Reads what a result says of itself. */
export async function readResult(folder: string): Promise<Result<ResultOfConversion>> {
  const found = await filesBelow(folder);
  if (!found.ok) return found;
  const { files, skipped } = found.value;
  const records = files.filter((path) => RECORD.test(path) && !path.includes("/"));
  const [record] = records;
  if (record === undefined || records.length > 1)
    return fail({
      code: "result/no-result",
      message:
        record === undefined
          ? `${folder} is no result of a conversion: it holds no processing record`
          : `${folder} holds the processing records of ${records.length} surveys`,
      where: { file: folder },
      remedy: "Name the folder that wherry convert wrote with --out.",
    });
  const read = await ownRecord(join(folder, record));
  if (!read.ok) return read;
  const { created, software, sheet: name } = read.value;
  if (created === undefined || name === undefined)
    return fail({
      code: "result/old-result",
      message: `${record} does not tell which sheet it was made with: it is of an older version of this program`,
      where: { file: join(folder, record) },
      remedy: "Convert the survey again.",
    });
  try {
    const sheet = readSheet(await readFile(join(folder, name), "utf8"), join(folder, name));
    return sheet.ok
      ? succeed({ sheet: sheet.value, created, software, files, skipped }, sheet.warnings)
      : sheet;
  } catch (error) {
    if (!isIoError(error)) throw error;
    return fail(problemFromIo(error, join(folder, name)));
  }
}

async function ownRecord(path: string): Promise<Result<Partial<ProcessingDocument> & { software: string }>> {
  try {
    const document = JSON.parse(await readFile(path, "utf8")) as Partial<ProcessingDocument> | null;
    return succeed({ ...document, software: String(document?.software) });
  } catch {
    return fail({
      code: "result/record",
      message: `${path} is not the processing record that this program writes`,
      where: { file: path },
      remedy: "Convert the survey again.",
    });
  }
}

/** All files below a folder; links are refused, for what they lead to may be gone tomorrow. */
async function filesBelow(folder: string): Promise<Result<Pick<ResultOfConversion, "files" | "skipped">>> {
  const files: string[] = [];
  const skipped: string[] = [];
  const refused: Problem[] = [];
  const visit = async (below: string): Promise<void> => {
    for (const entry of await readdir(join(folder, below), { withFileTypes: true })) {
      const path = below === "" ? entry.name : `${below}/${entry.name}`;
      if (entry.name.startsWith(".")) skipped.push(path);
      else if (entry.isDirectory()) await visit(path);
      else if (entry.isFile()) files.push(path);
      else
        refused.push({
          code: "result/link",
          message: `${path} is a link or device, not a file`,
          where: { file: join(folder, path) },
          remedy: "Put the file itself in its place.",
        });
    }
  };
  try {
    await visit("");
  } catch (error) {
    if (!isIoError(error)) throw error;
    return fail(problemFromIo(error, folder));
  }
  return failOr(refused, () => ({ files: files.sort(), skipped: skipped.sort() }));
}

/** What the netCDF products of a result say of themselves. */
export async function factsOfProducts(
  folder: string,
  { files, sheet }: ResultOfConversion,
): Promise<Result<ProductFacts[]>> {
  const facts: ProductFacts[] = [];
  const names = files.filter((path) => path.startsWith(`${sheet.survey.id}_`) && path.endsWith(".nc"));
  for (const name of names) {
    const source = await openFileSource(join(folder, name));
    try {
      const opened = await openDataset(source);
      if (!opened.ok) return opened;
      const own = await productFacts(name, opened.value);
      opened.value.close?.();
      if (!own.ok) return own;
      facts.push(own.value);
    } finally {
      await source.close();
    }
  }
  return succeed(facts);
}

const PIECE = 1 << 20;

/** A file on the disk as content; a change between hashing and writing is noticed by the checksum. */
export async function contentOfFile(
  full: string,
  path: string,
  algorithms: readonly Checksum[],
): Promise<Content & Checked> {
  const pieces = () => createReadStream(full, { highWaterMark: PIECE }) as AsyncIterable<Uint8Array>;
  const hashes = algorithms.map((name) => [name, createHash(name)] as const);
  let size = 0;
  for await (const piece of pieces()) {
    size += piece.length;
    for (const [, hash] of hashes) hash.update(piece);
  }
  return {
    path,
    size,
    checksums: Object.fromEntries(hashes.map(([name, hash]) => [name, hash.digest("hex")])),
    pieces,
  };
}

/** The same of bytes in memory. */
export function contentOfBytes(
  bytes: Uint8Array,
  path: string,
  algorithms: readonly Checksum[],
): Content & Checked {
  return {
    path,
    size: bytes.length,
    checksums: Object.fromEntries(
      algorithms.map((name) => [name, createHash(name).update(bytes).digest("hex")]),
    ),
    async *pieces() {
      yield bytes;
    },
  };
}
