import { type Problem, type Result, succeed } from "@wherry/core";
import { metadataName } from "@wherry/formats";
import { type CheckedFile, type Rule, type Waiver, waiverDesk, waiversOf } from "@wherry/validator";
import { readJson } from "./json-file.ts";
import { type Bench, benchOf, findUnits, type JudgingChoice, judgeUnit, type Unit } from "./judge-files.ts";
import type { RunOptions } from "./understand-files.ts";

export interface CheckOptions extends RunOptions, JudgingChoice {
  /** A document of findings that a person accepts. */
  readonly waivers?: string;
  /** Files judged at the same time, each by a thread; 1, without threads, if not given. */
  readonly jobs?: number;
}

/** What is known when all files have been judged. */
export interface CheckEnd {
  /** Files of folders that are of no kind that can be checked. */
  readonly skipped: readonly string[];
  /** Files that the disk refused. */
  readonly problems: readonly Problem[];
  /** Waivers that have expired or that nothing needs. */
  readonly warnings: readonly Problem[];
  /** Rules of documents that do not ship. */
  readonly rules: readonly Rule[];
}

export interface CheckOutcome extends CheckEnd {
  readonly files: readonly CheckedFile[];
}

type Judge = (unit: Unit) => Promise<Result<readonly CheckedFile[] | null>>;

/** Units that are under way or wait for their turn to be told, for each thread. */
const AHEAD = 4;

/**
 * Checks netCDF files, CSV with its metadata, and deposit packages; in folders the rest is skipped. Verdicts are given
 * out in the order of the files, each as soon as those before it are there, and not kept.
 */
export async function checkEach(
  paths: readonly string[],
  options: CheckOptions,
  take: (file: CheckedFile) => void | Promise<void>,
): Promise<Result<CheckEnd>> {
  const bench = await benchOf(options);
  if (!bench.ok) return bench;
  const waivers = await readWaivers(options.waivers);
  if (!waivers.ok) return waivers;
  const { now, signal, onProgress, jobs = 1 } = options;
  const { units, problems: missing } = await findUnits(paths);
  const desk = waiverDesk(waivers.value, { now, file: options.waivers ?? "" });
  const problems = [...missing];
  const skipped: string[] = [];
  // they are read with their tables
  const descriptions = new Set(units.map(({ path }) => metadataName(path)));
  const checkers = await startCheckers(Math.min(jobs, units.length), options, bench.value);
  try {
    const ahead: ReturnType<Judge>[] = [];
    let next = 0;
    for (const [index, unit] of units.entries()) {
      signal?.throwIfAborted();
      onProgress?.(index, units.length, unit.path);
      while (next < units.length && ahead.length < checkers.ahead) {
        const verdicts = checkers.judge(units[next++]!);
        // whoever waits for it gets the error; if nobody comes to it any more, it is none
        verdicts.catch(() => {});
        ahead.push(verdicts);
      }
      const verdicts = await ahead.shift()!;
      if (!verdicts.ok) problems.push(...verdicts.problems);
      else if (verdicts.value !== null) for (const file of verdicts.value) await take(desk.judge(file));
      else if (!descriptions.has(unit.path)) skipped.push(unit.path);
    }
  } finally {
    await checkers.close();
  }
  return succeed({ skipped, problems, warnings: desk.warnings(), rules: bench.value.rules });
}

/** The same with all verdicts at once. */
export async function check(paths: readonly string[], options: CheckOptions): Promise<Result<CheckOutcome>> {
  const files: CheckedFile[] = [];
  const end = await checkEach(paths, options, (file) => void files.push(file));
  return end.ok ? succeed({ ...end.value, files }) : end;
}

interface Checkers {
  readonly judge: Judge;
  /** Units that may be under way at once. */
  readonly ahead: number;
  close(): Promise<void>;
}

async function startCheckers(jobs: number, options: CheckOptions, bench: Bench): Promise<Checkers> {
  if (jobs <= 1) return { judge: (unit) => judgeUnit(unit, bench), ahead: 1, close: async () => {} };
  const { Piscina } = await import("piscina");
  const filename = new URL("./check-thread.js", import.meta.url).href;
  const pool = new Piscina({ filename, minThreads: jobs, maxThreads: jobs });
  const { rules, only, edition, vocabulary, now } = options;
  const choice = {
    now,
    ...(rules === undefined ? {} : { rules }),
    ...(only === undefined ? {} : { only }),
    ...(edition === undefined ? {} : { edition }),
    ...(vocabulary === undefined ? {} : { vocabulary }),
  };
  return {
    judge: (unit) => pool.run({ unit, choice }),
    ahead: jobs * AHEAD,
    close: () => pool.destroy(),
  };
}

async function readWaivers(path: string | undefined): Promise<Result<readonly Waiver[]>> {
  if (path === undefined) return succeed([]);
  const document = await readJson(path);
  return document.ok ? waiversOf(document.value, path) : document;
}
