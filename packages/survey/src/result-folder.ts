import { mkdir, readdir, rename, rm, stat } from "node:fs/promises";
import { basename, dirname, join, resolve } from "node:path";
import { fail, type Problem, type Result, succeed } from "@wherry/core";
import { problemFromIo } from "./problem-from-io.ts";
import { syncTree } from "./write-file.ts";

/** A finished result is told by its processing record, which is in every one. */
const RECORD = /_processing\.json$/;
/** A finished package by its declaration. */
export const DECLARATION = /^bagit\.txt$/;

/** Whether names of files are those of a finished result. */
export const isResult = (names: readonly string[]): boolean => names.some((name) => RECORD.test(name));

const exists = async (path: string): Promise<boolean> =>
  stat(path).then(
    () => true,
    () => false,
  );

/**
 * A folder of products that comes into being in one step: everything is written to a hidden sibling, which takes
 * the final name when all is done. What a killed run left behind is removed by the next one.
 */
export interface ResultFolder {
  /** Where files are written for now. */
  readonly building: string;
  /** Gives the finished folder its name; an earlier result is replaced only now. */
  finish(): Promise<void>;
  /** Removes what was built so far. */
  abandon(): Promise<void>;
}

/**
 * Makes the sibling folder, or says why the result can't be written.
 *
 * @param mark name of a file by which an earlier result is known
 */
export async function beginResult(out: string, force: boolean, mark = RECORD): Promise<Result<ResultFolder>> {
  const target = resolve(out);
  const parent = dirname(target);
  const prefix = `.${basename(target)}.wherry-`;
  const previous = join(parent, `${prefix}previous`);
  try {
    // Killed between the two renames of finish(): the earlier result is still the good one.
    if (!(await exists(target)) && (await exists(previous))) await rename(previous, target);
    const refusal = await mayReplace(target, out, force, mark);
    if (refusal) return fail(refusal);
    await mkdir(parent, { recursive: true });
    for (const name of await readdir(parent)) {
      if (name.startsWith(prefix)) await rm(join(parent, name), { recursive: true, force: true });
    }
    const building = join(parent, `${prefix}part`);
    await mkdir(building);
    return succeed({
      building,
      async finish() {
        await syncTree(building);
        if (await exists(target)) await rename(target, previous);
        await rename(building, target);
        await rm(previous, { recursive: true, force: true });
      },
      abandon: () => rm(building, { recursive: true, force: true }),
    });
  } catch (error) {
    return fail(problemFromIo(error, out));
  }
}

async function mayReplace(
  target: string,
  out: string,
  force: boolean,
  mark: RegExp,
): Promise<Problem | null> {
  if (!(await exists(target))) return null;
  if (!(await stat(target)).isDirectory()) {
    return {
      code: "result/not-a-folder",
      message: `${out} is a file`,
      where: { file: out },
      remedy: "Name a folder.",
    };
  }
  const names = await readdir(target);
  if (names.length === 0) return null;
  if (!names.some((name) => mark.test(name))) {
    return {
      code: "result/foreign-folder",
      message: `${out} holds other files and is no result of an earlier run`,
      where: { file: out },
      remedy: "Choose another folder: this one is left as it is, even with --force.",
    };
  }
  if (force) return null;
  return {
    code: "result/finished",
    message: `${out} already holds a finished result`,
    where: { file: out },
    remedy: "Choose another folder, or add --force to replace it.",
  };
}
