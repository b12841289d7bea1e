import { extname } from "node:path";
import { fail, failOr, nearestNames, type Problem, type Result, succeed } from "@wherry/core";
import { type Rule, type RuleSet, ruleSetNames, rulesOfDocument, setOf } from "@wherry/validator";
import { readJson } from "./json-file.ts";

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

/** The rules of a document of a person's own. */
async function readRuleFile(path: string): Promise<Result<readonly Rule[]>> {
  const document = await readJson(path);
  if (!document.ok) return document;
  const rules = await rulesOfDocument(document.value, path);
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
