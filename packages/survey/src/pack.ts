import { rename, rm, stat } from "node:fs/promises";
import { basename, dirname, join, resolve } from "node:path";
import {
  type ArchiveForm,
  bagInfo,
  type Checked,
  type Checksum,
  dataSetFacts,
  describingFiles,
  fitsZip,
  tagFiles,
} from "@wherry/converter";
import { fail, type Problem, parseIsoTime, type Result, succeed } from "@wherry/core";
import { type CheckedFile, type Counts, checkDocument, htmlPage } from "@wherry/validator";
import { archiveSink, type BagSink, type Content, folderSink } from "./bag-sink.ts";
import { type CheckOutcome, check } from "./check.ts";
import {
  contentOfBytes,
  contentOfFile,
  factsOfProducts,
  type ResultOfConversion,
  readResult,
} from "./pack-contents.ts";
import { mapFile } from "./pack-map.ts";
import { isIoError, problemFromIo } from "./problem-from-io.ts";
import { beginResult, DECLARATION } from "./result-folder.ts";

export interface PackOptions {
  readonly out: string;
  /** A folder unless given. */
  readonly archive?: ArchiveForm;
  /** SHA-512 beside SHA-256. */
  readonly sha512: boolean;
  /** Replace an earlier package. */
  readonly force: boolean;
  readonly signal?: AbortSignal;
}

export interface Packed {
  readonly out: string;
  /** Files of the payload. */
  readonly files: number;
  readonly bytes: number;
  /** What the check of the products found; the report is in the package. */
  readonly counts: Counts;
  /** Hidden files of the folder that were not taken. */
  readonly skipped: readonly string[];
}

/**
 * Makes the deposit package of a finished result. It is written under a hidden name, read again and compared with its
 * manifests, and gets its name only then. No byte of it depends on the day, the machine or the place.
 *
 * @throws AbortError if the run is interrupted; nothing is left then
 */
export async function pack(folder: string, options: PackOptions): Promise<Result<Packed>> {
  const result = await readResult(folder);
  if (!result.ok) return result;
  try {
    const contents = await gather(folder, result.value, options);
    if (!contents.ok) return contents;
    const written = await writeBag(contents.value, result.value.created, options);
    if (!written.ok) return written;
    const { payload, counts } = contents.value;
    return succeed(
      {
        out: written.value.out,
        files: payload.length,
        bytes: payload.reduce((sum, { size }) => sum + size, 0),
        counts,
        skipped: result.value.skipped,
      },
      [...result.warnings, ...written.warnings],
    );
  } catch (error) {
    if (isIoError(error)) return fail(problemFromIo(error, options.out));
    throw error;
  }
}

type Packable = Content & Checked;

interface BagContents {
  readonly payload: readonly Packable[];
  readonly tags: readonly Packable[];
  readonly counts: Counts;
}

/** Everything that goes into the package, with checksums. */
async function gather(
  folder: string,
  result: ResultOfConversion,
  { sha512, signal }: PackOptions,
): Promise<Result<BagContents>> {
  const algorithms: readonly Checksum[] = sha512 ? ["sha256", "sha512"] : ["sha256"];
  const products = await factsOfProducts(folder, result);
  if (!products.ok) return products;
  const checked = await check([folder], {
    // what dates are held against must not change with the day
    now: secondsOf(result.created),
    ...(signal === undefined ? {} : { signal }),
  });
  if (!checked.ok) return checked;
  const [unreadable, ...others] = checked.value.problems;
  if (unreadable) return fail(unreadable, ...others);
  const given: Packable[] = [];
  for (const path of result.files) {
    signal?.throwIfAborted();
    given.push(await contentOfFile(join(folder, path), `data/${path}`, algorithms));
  }
  const facts = dataSetFacts(result.sheet, products.value, result);
  const outcome = inPackage(checked.value, folder);
  const made = describingFiles(
    facts,
    given.map(({ path, size }) => ({ path: path.slice("data/".length), size })),
    [...checkReports(result.sheet.survey.id, outcome), ...(await mapFile(facts))],
    sha512 ? "sha512" : "sha256",
  );
  const taken = made.find(({ path }) => result.files.includes(path));
  if (taken)
    return fail({
      code: "result/name-taken",
      message: `${folder} holds a file with the name ${taken.path}, which the package gives to one of its own`,
      where: { file: join(folder, taken.path) },
      remedy: "Give your file another name.",
    });
  const payload = [
    ...given,
    ...made.map(({ path, text }) =>
      contentOfBytes(new TextEncoder().encode(text), `data/${path}`, algorithms),
    ),
  ].sort((a, b) => (a.path < b.path ? -1 : 1));
  const tags = tagFiles(payload, bagInfo(facts), algorithms).map(({ path, bytes }) =>
    contentOfBytes(bytes, path, algorithms),
  );
  return succeed({ payload, tags, counts: sumOf(outcome.files) });
}

function secondsOf(created: string): number {
  const read = parseIsoTime(created);
  return read.ok ? read.value.epochSeconds : 0;
}

/** The verdicts with the paths that files have in the package. */
function inPackage(outcome: CheckOutcome, folder: string): CheckOutcome {
  const start = join(folder, "x").slice(0, -1);
  const path = (text: string) => (text.startsWith(start) ? text.slice(start.length) : text);
  return {
    ...outcome,
    skipped: outcome.skipped.map(path),
    files: outcome.files.map((file) => ({
      ...file,
      path: path(file.path),
      findings: file.findings.map((finding) => ({
        ...finding,
        where:
          finding.where.file === undefined
            ? finding.where
            : { ...finding.where, file: path(finding.where.file) },
      })),
    })),
  };
}

const checkReports = (id: string, { files, skipped }: CheckOutcome) => [
  { path: `${id}_check.json`, text: `${JSON.stringify(checkDocument(files, skipped), null, 2)}\n` },
  { path: `${id}_check.html`, text: htmlPage(files) },
];

const sumOf = (files: readonly CheckedFile[]): Counts =>
  files.reduce(
    (sum, { counts }) => ({
      error: sum.error + counts.error,
      warning: sum.warning + counts.warning,
      advice: sum.advice + counts.advice,
    }),
    { error: 0, warning: 0, advice: 0 },
  );

/** Where a package is written until it gets its name. */
interface Building {
  readonly out: string;
  readonly path: string;
  readonly sink: BagSink;
  finish(): Promise<void>;
  abandon(): Promise<void>;
}

async function beginPackage(
  files: readonly Packable[],
  created: string,
  { out, archive, force }: PackOptions,
): Promise<Result<Building>> {
  if (archive !== undefined) return beginArchive(files, created, out, archive, force);
  const begun = await beginResult(out, force, DECLARATION);
  if (!begun.ok) return begun;
  const { building, finish, abandon } = begun.value;
  return succeed({ out, path: building, sink: folderSink(building), finish, abandon });
}

async function beginArchive(
  files: readonly Packable[],
  created: string,
  wanted: string,
  archive: ArchiveForm,
  force: boolean,
): Promise<Result<Building>> {
  const out = wanted.toLowerCase().endsWith(`.${archive}`) ? wanted : `${wanted}.${archive}`;
  if (archive === "zip" && !fitsZip(files))
    return fail({
      code: "result/zip-too-large",
      message: `a zip archive holds at most 65,535 files and 4 GiB, and this package has ${files.length} files and may be larger`,
      where: { file: out },
      remedy: "Use --tar, which has no such limit.",
    });
  if (!force && (await stat(out).then(Boolean, () => false)))
    return fail({
      code: "result/finished",
      message: `${out} exists already`,
      where: { file: out },
      remedy: "Name another file, or add --force to replace it.",
    });
  const base = basename(out).slice(0, -archive.length - 1);
  // the ending tells the check what it is
  const path = join(dirname(resolve(out)), `.${base}.wherry-part.${archive}`);
  const sink = await archiveSink(path, archive, base, secondsOf(created));
  return succeed({
    out,
    path,
    sink,
    finish: () => rename(path, out),
    async abandon() {
      await sink.abandon();
      await rm(path, { force: true });
    },
  });
}

/** Writes, verifies and names the package. */
async function writeBag(
  { tags, payload }: BagContents,
  created: string,
  options: PackOptions,
): Promise<Result<{ readonly out: string }>> {
  const files = [...tags, ...payload];
  const begun = await beginPackage(files, created, options);
  if (!begun.ok) return begun;
  const { out, path, sink, finish, abandon } = begun.value;
  try {
    for (const content of files) {
      options.signal?.throwIfAborted();
      await sink.add(content);
    }
    await sink.finish();
    const read = await verifyPackage(path);
    options.signal?.throwIfAborted();
    // the hidden name is nobody's business
    const named = ({ where, ...problem }: Problem): Problem => ({
      ...problem,
      where: where.file === undefined ? where : { ...where, file: where.file.replace(path, out) },
    });
    const [fault, ...others] = (read.ok ? read.value.problems : read.problems).map(named);
    if (fault) {
      await abandon();
      return fail(fault, ...others);
    }
    await finish();
    return succeed({ out }, read.ok ? read.warnings.map(named) : []);
  } catch (error) {
    await abandon();
    throw error;
  }
}

export interface Verified {
  /** What is missing, unexpected or changed; nothing if the package is whole. */
  readonly problems: readonly Problem[];
}

/** Reads a package again and compares it with its manifests (RFC 8493, section 3). */
export async function verifyPackage(path: string): Promise<Result<Verified>> {
  const judged = await check([path], { rules: ["package"], now: 0 });
  if (!judged.ok) return judged;
  const [unreadable, ...others] = judged.value.problems;
  if (unreadable) return fail(unreadable, ...others);
  const findings = judged.value.files.flatMap((file) => file.findings);
  const problems = (level: "error" | "warning") =>
    findings
      .filter((finding) => finding.level === level)
      .map(({ rule, message, where, remedy }): Problem => ({ code: rule, message, where, remedy }));
  if (judged.value.files.length === 0)
    return fail({
      code: "package/no-bag",
      message: `${path} is no deposit package`,
      where: { file: path },
      remedy: "Name a folder with a bagit.txt, or a zip or tar archive of one.",
    });
  return succeed({ problems: problems("error") }, problems("warning"));
}
