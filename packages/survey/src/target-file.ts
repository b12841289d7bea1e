import type { RuleDocument } from "@wherry/contracts";
import { generalTarget, type Target, targetNamed, targetNames } from "@wherry/converter";
import { fail, nearestNames, type Result, succeed } from "@wherry/core";
import { rulesOfDocument } from "@wherry/validator";
import { readJson } from "./json-file.ts";
import { isPath } from "./rule-files.ts";

/** Names of what a data set can be meant for. */
export const TARGETS = targetNames;

/** What `--target` chooses: the name of a target that ships, or the path of a document of rules that tells one. */
export async function chooseTarget(word: string | undefined): Promise<Result<Target>> {
  if (word === undefined) return succeed(generalTarget);
  if (!isPath(word)) return targetNames.includes(word) ? succeed(targetNamed(word)) : unknownTarget(word);
  const document = await readJson(word);
  if (!document.ok) return document;
  const rules = await rulesOfDocument(document.value, word);
  if (!rules.ok) return rules;
  const { products } = document.value as RuleDocument;
  if (products) return succeed(products);
  return fail({
    code: "target/no-products",
    message: "the document of rules does not tell how data sets for its archive are written",
    where: { file: word },
    remedy: "Add products with target and layouts, as the schema of rule documents has them.",
  });
}

function unknownTarget(name: string): Result<never> {
  const [near] = nearestNames(name, targetNames, 1);
  return fail({
    code: "target/unknown",
    message: `${name} is no target`,
    where: {},
    remedy: `${near === undefined ? "" : `Did you mean ${near}? `}Choose from ${targetNames.join(", ")}, or give the path of a document of rules.`,
  });
}
