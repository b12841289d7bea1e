import { readFile } from "node:fs/promises";
import {
  fail,
  type Problem,
  parseStandardNameTable,
  type Result,
  type StandardNameTable,
  shippedStandardNames,
  succeed,
} from "@wherry/core";
import { problemFromIo } from "./problem-from-io.ts";

/** The standard-name table of a file, or the shipped one. Nothing is fetched. */
export async function readVocabulary(path: string | undefined): Promise<Result<StandardNameTable>> {
  if (path === undefined) return succeed(shippedStandardNames());
  try {
    const table = parseStandardNameTable(await readFile(path, "utf8"));
    if (table.ok) return table;
    const [first, ...others] = table.problems;
    const inFile = (problem: Problem): Problem => ({ ...problem, where: { file: path, ...problem.where } });
    return fail(inFile(first), ...others.map(inFile));
  } catch (error) {
    return fail(problemFromIo(error, path));
  }
}
