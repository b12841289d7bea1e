import { readFile, stat } from "node:fs/promises";
import { extname } from "node:path";
import { fail, type Problem, type Result, succeed } from "@wherry/core";
import {
  applyWaivers,
  type CheckedFile,
  checkFile,
  EDITIONS,
  type FileContext,
  fullNameOf,
  isEdition,
  type Rule,
  type Waiver,
  waiversOf,
} from "@wherry/validator";
import { openFileSource } from "./file-source.ts";
import { findFiles } from "./input-files.ts";
import { readJson } from "./json-file.ts";
import { isArchiveName, isWithin, packageFolders } from "./package-names.ts";
import { isIoError, problemFromIo } from "./problem-from-io.ts";
import { chooseRules } from "./rule-files.ts";
import type { RunOptions } from "./understand-files.ts";
import { readVocabulary } from "./vocabulary-file.ts";

export interface CheckOptions extends RunOptions {
  /** Names of rule sets and paths of rule documents; all sets that fit a file if not given. */
  readonly rules?: readonly string[];
  /** Edition of the CF Conventions to judge by, instead of the one that a file claims. */
  readonly edition?: string;
  /** A standard-name table in place of the shipped one. */
  readonly vocabulary?: string;
  /** A document of findings that a person accepts. */
  readonly waivers?: string;
  /** Epoch seconds. */
  readonly now: number;
}

export interface CheckOutcome {
  readonly files: readonly CheckedFile[];
  /** Files of folders that are of no kind that can be checked. */
  readonly skipped: readonly string[];
  /** Files that the disk refused. */
  readonly problems: readonly Problem[];
  /** Waivers that have expired or that nothing needs. */
  readonly warnings: readonly Problem[];
  /** Rules of documents that do not ship. */
  readonly rules: readonly Rule[];
}

/** Loaded when there is one: archives need more of Node than anything else here. */
const packages = () => import("./package-input.ts");

const NETCDF = new Set([".nc", ".nc4", ".cdf"]);

/** Where CSV on the Web looks for the description of a table, without other word. */
const metadataOf = (path: string): string => `${path}-metadata.json`;

const exists = (path: string): Promise<boolean> => stat(path).then(Boolean, () => false);

/** Checks netCDF files, CSV with its metadata, and deposit packages; in folders the rest is skipped. */
export async function check(paths: readonly string[], options: CheckOptions): Promise<Result<CheckOutcome>> {
  const rules = await chooseRules(options.rules);
  const [wrong, ...others] = [...wrongEdition(options), ...(rules.ok ? [] : rules.problems)];
  if (wrong) return fail(wrong, ...others);
  const { sets, more } = rules.ok ? rules.value : { sets: undefined, more: [] };
  const table = await readVocabulary(options.vocabulary);
  if (!table.ok) return table;
  const waivers = await readWaivers(options.waivers);
  if (!waivers.ok) return waivers;
  const { now, edition, signal, onProgress } = options;
  const judging = {
    now,
    standardNames: table.value,
    ...(edition !== undefined && isEdition(edition) ? { edition } : {}),
    ...(sets === undefined ? {} : { ruleSets: sets }),
    moreRules: more,
  };
  const found = await findFiles(paths);
  const folders = packageFolders(found.files);
  const loose = found.files.filter((path) => !folders.some((folder) => isWithin(path, folder)));
  const problems: Problem[] = [...found.problems];
  const files: CheckedFile[] = [];
  const skipped: string[] = [];
  /** The verdicts on what a path stands for; null if it is of no kind that is checked. */
  const verdictsOn = async (path: string): Promise<readonly CheckedFile[] | null> => {
    if (folders.includes(path)) return (await packages()).checkPackageFolder(path, judging);
    if (isArchiveName(path))
      return (await packages()).checkPackageArchive(path, paths.includes(path), judging);
    const kind = extname(path).toLowerCase();
    const described = kind === ".csv" && (await exists(metadataOf(path)));
    if (!paths.includes(path) && !NETCDF.has(kind) && !described) return null;
    const context: FileContext = { path, ...judging };
    return [kind === ".csv" ? await checkCsv(path, described, context) : await checkNetcdf(path, context)];
  };
  const units = [...folders, ...loose];
  for (const [index, path] of units.entries()) {
    signal?.throwIfAborted();
    onProgress?.(index, units.length, path);
    try {
      const verdicts = await verdictsOn(path);
      if (verdicts === null) skipped.push(path);
      else files.push(...verdicts);
    } catch (error) {
      if (!isIoError(error)) throw error;
      problems.push(problemFromIo(error, path));
    }
  }
  const file = options.waivers ?? "";
  const judged = applyWaivers(files, waivers.value, { now, file });
  return succeed({ files: judged.files, skipped, problems, warnings: judged.warnings, rules: more });
}

async function readWaivers(path: string | undefined): Promise<Result<readonly Waiver[]>> {
  if (path === undefined) return succeed([]);
  const document = await readJson(path);
  return document.ok ? waiversOf(document.value, path) : document;
}

async function checkNetcdf(path: string, context: FileContext): Promise<CheckedFile> {
  const source = await openFileSource(path);
  const full = fullNameOf(path);
  const beside = full === null || !(await exists(full)) ? null : await openFileSource(full);
  try {
    return await checkFile(
      source,
      full === null || beside === null ? context : { ...context, full: { path: full, source: beside } },
    );
  } finally {
    await source.close();
    await beside?.close();
  }
}

const checkCsv = async (path: string, described: boolean, context: FileContext): Promise<CheckedFile> =>
  checkFile(await readFile(path), {
    ...context,
    metadata: described ? await readFile(metadataOf(path)) : null,
  });

const wrongEdition = ({ edition }: CheckOptions): Problem[] =>
  edition === undefined || isEdition(edition)
    ? []
    : [
        {
          code: "check/edition",
          message: `${edition} is no edition of the CF Conventions that is known here`,
          where: {},
          remedy: `Choose from ${EDITIONS.join(", ")}.`,
        },
      ];
