import { readFile } from "node:fs/promises";
import { extname } from "node:path";
import { fail, failOr, nearestNames, type Problem, type Result, succeed } from "@wherry/core";
import { type Rule, type RuleSet, ruleSetNames, rulesOfDocument, setOf } from "@wherry/validator";
import { isIoError, problemFromIo } from "./problem-from-io.ts";

export interface ChosenRules {
  /** Sets to use; undefined for all that fit a file. */
  readonly sets: readonly RuleSet[] | undefined;
  /** Rules of documents that do not ship. */
  readonly more: readonly Rule[];
}

/** A word with a slash, a backslash or the ending .json is a path; any other is the name of a set. */
export const isPath = (word: string): boolean =>
  /[\\/]/.test(word) || extname(word).toLowerCase() === ".json";

function unknownSet(name: string): Problem {
  const [near] = nearestNames(name, ruleSetNames, 1);
  return {
    code: "check/rule-set",
    message: `${name} is no set of rules`,
    where: {},
    remedy:
      near === undefined
        ? `Choose from ${ruleSetNames.join(", ")}, or give the path of a document of rules.`
        : `Did you mean ${near}? A document of rules is given by a path that ends in .json.`,
  };
}

/** Line and column, from 1, of the place that the JSON parser names; nothing if it names none. */
function placeInText(text: string, message: string): { line?: number; column?: number } {
  const named = /line (\d+) column (\d+)/.exec(message);
  if (named) return { line: Number.parseInt(named[1]!, 10), column: Number.parseInt(named[2]!, 10) };
  const position = /position (\d+)/.exec(message)?.[1];
  const at =
    position === undefined
      ? /end of JSON/.test(message)
        ? text.length
        : null
      : Number.parseInt(position, 10);
  if (at === null) return {};
  const before = text.slice(0, at).split("\n");
  return { line: before.length, column: (before.at(-1) ?? "").length + 1 };
}

/** What a document of a person's own holds, as it stands. */
export async function readDocument(path: string): Promise<Result<unknown>> {
  let text: string;
  try {
    text = (await readFile(path, "utf8")).replace(/^\uFEFF/, "");
  } catch (error) {
    if (!isIoError(error)) throw error;
    return fail(problemFromIo(error, path));
  }
  try {
    return succeed(JSON.parse(text) as unknown);
  } catch (error) {
    const message = error instanceof Error ? error.message : "";
    return fail({
      code: "rules/json",
      message: `the document of rules is no JSON: ${message}`,
      where: { file: path, ...placeInText(text, message) },
      remedy: "Correct the JSON at this place.",
    });
  }
}

/** The rules of a document of a person's own. */
export async function readRuleFile(path: string): Promise<Result<readonly Rule[]>> {
  const document = await readDocument(path);
  if (!document.ok) return document;
  const rules = rulesOfDocument(document.value, path);
  if (!rules.ok) return rules;
  const [first] = rules.value;
  if (first !== undefined && ruleSetNames.includes(setOf(first)))
    return fail({
      code: "rules/set-taken",
      message: `the document has the id ${setOf(first)}, which is a set that ships`,
      where: { file: path },
      remedy: "Give the document an id of its own.",
    });
  return rules;
}

/** What `--rules` chooses: names of sets and paths of documents, in any order. */
export async function chooseRules(words: readonly string[] | undefined): Promise<Result<ChosenRules>> {
  if (words === undefined) return succeed({ sets: undefined, more: [] });
  const problems: Problem[] = [];
  const sets: RuleSet[] = [];
  const more: Rule[] = [];
  for (const word of new Set(words)) {
    if (!isPath(word)) {
      if (ruleSetNames.includes(word)) sets.push(word);
      else problems.push(unknownSet(word));
      continue;
    }
    const read = await readRuleFile(word);
    if (!read.ok) problems.push(...read.problems);
    else {
      const own = read.value.map(setOf);
      const [set] = own;
      if (set === undefined) continue;
      if (sets.includes(set))
        problems.push({
          code: "rules/set-taken",
          message: `two documents have the id ${set}`,
          where: { file: word },
          remedy: "Give each document an id of its own.",
        });
      sets.push(set);
      more.push(...read.value);
    }
  }
  return failOr(problems, () => ({ sets, more }));
}
