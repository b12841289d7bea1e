import { readFile, stat } from "node:fs/promises";
import { extname } from "node:path";
import { fail, nearestNames, type Problem, type Result, succeed } from "@wherry/core";
import { metadataName } from "@wherry/formats";
import {
  type CheckedFile,
  checkFile,
  EDITIONS,
  everyRule,
  type FileContext,
  fullNameOf,
  isEdition,
  onlyRules,
  type Rule,
} from "@wherry/validator";
import { openFileSource } from "./file-source.ts";
import { findFiles } from "./input-files.ts";
import { isArchiveName, isWithin, packageFolders } from "./package-names.ts";
import { isIoError, problemFromIo } from "./problem-from-io.ts";
import { chooseRules } from "./rule-files.ts";
import { readVocabulary } from "./vocabulary-file.ts";

/** By what files are judged, as a person says it: plain data, which threads can be given. */
export interface JudgingChoice {
  /** Names of rule sets and paths of rule documents; all sets that fit a file if not given. */
  readonly rules?: readonly string[];
  /** Ids of rules: findings of others are not told. */
  readonly only?: readonly string[];
  /** Edition of the CF Conventions to judge by, instead of the one that a file claims. */
  readonly edition?: string;
  /** A standard-name table in place of the shipped one. */
  readonly vocabulary?: string;
  /** Epoch seconds. */
  readonly now: number;
}

/** The same, read and ready. */
export interface Bench {
  readonly context: Omit<FileContext, "path" | "metadata">;
  readonly only: ReadonlySet<string> | null;
  /** Rules of documents that do not ship. */
  readonly rules: readonly Rule[];
}

/** What is judged at once: a file, or a package with the files in it. */
export interface Unit {
  readonly path: string;
  readonly kind: "file" | "archive" | "package";
  /** Whether a person named it, rather than a folder that it lies in. */
  readonly named: boolean;
}

const wrongEdition = ({ edition }: JudgingChoice): Problem[] =>
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

function unknownRules(only: readonly string[], more: readonly Rule[]): Problem[] {
  const ids = [...everyRule, ...more].map(({ id }) => id);
  return only
    .filter((id) => !ids.includes(id))
    .map((id) => {
      const near = nearestNames(id, ids, 3);
      return {
        code: "check/rule",
        message: `there is no rule ${id}`,
        where: {},
        remedy:
          near.length > 0
            ? `Perhaps you mean ${near.join(" or ")}.`
            : "The ids of rules stand in brackets behind each finding; --rules takes whole sets.",
      };
    });
}

/** Reads what the choice names; or tells what is wrong with it. */
export async function benchOf(choice: JudgingChoice): Promise<Result<Bench>> {
  const { now, edition, only } = choice;
  const rules = await chooseRules(choice.rules);
  const { sets, more } = rules.ok ? rules.value : { sets: undefined, more: [] };
  const [wrong, ...others] = [
    ...wrongEdition(choice),
    ...(rules.ok ? unknownRules(only ?? [], more) : rules.problems),
  ];
  if (wrong) return fail(wrong, ...others);
  const table = await readVocabulary(choice.vocabulary);
  if (!table.ok) return table;
  return succeed({
    context: {
      now,
      standardNames: table.value,
      ...(edition !== undefined && isEdition(edition) ? { edition } : {}),
      ...(sets === undefined ? {} : { ruleSets: sets }),
      moreRules: more,
    },
    only: only === undefined ? null : new Set(only),
    rules: more,
  });
}

/** What there is to judge where the paths point, in the order of the paths and of names; packages come first. */
export async function findUnits(
  paths: readonly string[],
): Promise<{ units: readonly Unit[]; problems: readonly Problem[] }> {
  const found = await findFiles(paths);
  const named = new Set(paths);
  const folders = packageFolders(found.files);
  const loose = found.files.filter((path) => !folders.some((folder) => isWithin(path, folder)));
  return {
    units: [
      ...folders.map((path): Unit => ({ path, kind: "package", named: named.has(path) })),
      ...loose.map(
        (path): Unit => ({ path, kind: isArchiveName(path) ? "archive" : "file", named: named.has(path) }),
      ),
    ],
    problems: found.problems,
  };
}

/** Loaded when there is one: archives need more of Node than anything else here. */
const packages = () => import("./package-input.ts");

const NETCDF = new Set([".nc", ".nc4", ".cdf"]);

/** Where CSV on the Web looks for the description of a table, without other word. */

const exists = (path: string): Promise<boolean> => stat(path).then(Boolean, () => false);

/** The verdicts on what a unit holds; null if it is of no kind that is checked; a problem if the disk refuses it. */
export async function judgeUnit(
  unit: Unit,
  { context, only }: Bench,
): Promise<Result<readonly CheckedFile[] | null>> {
  try {
    const verdicts = await verdictsOn(unit, context);
    return succeed(
      verdicts === null || only === null ? verdicts : verdicts.map((verdict) => onlyRules(verdict, only)),
    );
  } catch (error) {
    if (!isIoError(error)) throw error;
    return fail(problemFromIo(error, unit.path));
  }
}

async function verdictsOn(
  { path, kind, named }: Unit,
  context: Bench["context"],
): Promise<readonly CheckedFile[] | null> {
  if (kind === "package") return (await packages()).checkPackageFolder(path, context);
  if (kind === "archive") return (await packages()).checkPackageArchive(path, named, context);
  const ending = extname(path).toLowerCase();
  const described = ending === ".csv" && (await exists(metadataName(path)));
  if (!named && !NETCDF.has(ending) && !described) return null;
  return [await (ending === ".csv" ? checkCsv : checkNetcdf)({ path, ...context })];
}

async function checkNetcdf(context: FileContext): Promise<CheckedFile> {
  const { path } = context;
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

async function checkCsv(context: FileContext): Promise<CheckedFile> {
  const { path } = context;
  const described = await exists(metadataName(path));
  return checkFile(await readFile(path), {
    ...context,
    metadata: described ? await readFile(metadataName(path)) : null,
  });
}
