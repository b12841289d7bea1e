import { fail, nearestNames, type Result, succeed } from "@wherry/core";
import { type AnyRule, everyRule } from "../engine/registry.ts";
import type { Rule, RuleText } from "../engine/rule.ts";
import { MENDERS } from "../mend/menders.ts";
import { citationInWords, placeInWords } from "./check-text.ts";
import { type AnyExample, examplePieces } from "./example-pieces.ts";
import { wrap } from "./lines.ts";

const BASIS: Readonly<Record<RuleText["basis"], string>> = {
  clause: "The source says it.",
  reading: "This is our reading of the source.",
  house: "This is a rule of our own.",
};

const exampleText = (example: AnyExample): string =>
  examplePieces(example)
    .map(({ name, text }) => (name === undefined ? text : `${name}:\n${text}`))
    .join("\n");

const indent = (text: string): string[] =>
  text
    .split("\n")
    .filter((line) => line.trim() !== "")
    .map((line) => `    ${line.trim()}`);

/** In which editions a rule holds and with which level, where that is not always the same. */
function editionsOf({ editions, level }: RuleText): string[] {
  if (editions === undefined) return [];
  const { since, until, levels = [] } = editions;
  const from = since === undefined ? "all editions" : `CF ${since} and later`;
  const to = until === undefined ? "" : `, until CF ${until}`;
  const older = levels.map((each) => `${each.level} until ${each.until}`);
  return wrap(
    `Holds in ${from}${to}${older.length > 0 ? `; ${older.join(", ")}, then ${level}` : ""}.`,
    "  ",
  );
}

/** A rule in plain words: what, why, where it stands, what to do, an example that passes and one that fails. */
export function ruleText(rule: AnyRule): string {
  const { id, title, why, remedy, level, basis, citation, passing, failing, messages } = rule;
  const [good] = passing;
  const [bad] = failing;
  return [
    `${id} (${level})`,
    "",
    ...wrap(title, "  "),
    "",
    ...wrap(why, "  Why: ", "       "),
    ...wrap(
      remedy.replace(/\{(?:instead|near)\}/g, "").replace(/\{(\w+)\}/g, "<$1>"),
      "  What to do: ",
      "       ",
    ),
    ...wrap(`${citationInWords(citation)}. ${BASIS[basis]}`, "  Source: ", "       "),
    ...editionsOf(rule),
    ...(MENDERS.has(id) ? ["  wherry mend repairs it where only one thing can be meant."] : []),
    "",
    ...(good === undefined ? [] : ["  This passes:", ...indent(exampleText(good)), ""]),
    ...(bad === undefined
      ? []
      : [
          `  This does not (at ${placeInWords(bad.where)}: ${(messages[bad.message] ?? "").replace(/\{(\w+)\}/g, "<$1>")}):`,
          ...indent(exampleText(bad)),
          "",
        ]),
  ].join("\n");
}

/**
 * Explains a rule by its id.
 *
 * @param more  rules of documents beside those that ship
 * @returns     the text, or rule/unknown with the ids that are nearest in spelling or that hold the words
 */
export function explainRule(id: string, more: readonly Rule[] = []): Result<string> {
  const rules: readonly AnyRule[] = [...everyRule, ...more];
  const rule = rules.find((each) => each.id === id.trim().toLowerCase());
  if (rule !== undefined) return succeed(ruleText(rule));
  const ids = rules.map((each) => each.id);
  const word = id.trim().toLowerCase().replaceAll("_", "-");
  const holding = ids.filter((each) => word.length > 2 && each.includes(word));
  const near = [...new Set([...nearestNames(word, ids), ...holding])].slice(0, 3);
  return fail({
    code: "rule/unknown",
    message: `There is no rule ${id}.`,
    where: {},
    remedy:
      near.length > 0
        ? `Perhaps you mean ${near.join(" or ")}.`
        : "The ids of rules stand in brackets behind each finding of check.",
  });
}
