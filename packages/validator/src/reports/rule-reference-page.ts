import type { Rule } from "../engine/rule.ts";
import { citationInWords, placeInWords } from "./check-text.ts";

/** Names of what is filled in, as a reader sees them. */
const words = (text: string): string =>
  text.replace(/\{(?:instead|near)\}/g, "").replace(/\{(\w+)\}/g, "*$1*");

const BASIS: Readonly<Record<Rule["basis"], string>> = {
  clause: "the source says it",
  reading: "our reading of the source",
  house: "our own",
};

const block = (text: string): string[] => [
  "```cdl",
  ...text
    .split("\n")
    .filter((line) => line.trim() !== "")
    .map((line) => line.trim()),
  "```",
  "",
];

/** The reference page of a rule, in Markdown: everything that the rule says of itself. */
export function ruleReferencePage(rule: Rule): string {
  const { id, level, basis, citation, editions, title, why, remedy, messages, passing, failing, covers } =
    rule;
  const older = editions?.levels?.map((each) => `${each.level} until ${each.until}`) ?? [];
  const span = [
    editions?.since === undefined ? "every edition" : `CF ${editions.since} and later`,
    ...(editions?.until === undefined ? [] : [`until CF ${editions.until}`]),
  ].join(", ");
  return [
    `# ${id}`,
    "",
    `${title}.`,
    "",
    "| | |",
    "| --- | --- |",
    `| level | ${[...older, level].join(", then ")} |`,
    `| source | ${citationInWords(citation)} (${BASIS[basis]}) |`,
    ...(id.startsWith("cf/") ? [`| holds in | ${span} |`] : []),
    ...(covers.length > 0 ? [`| requirements | ${covers.join(", ")} |`] : []),
    "",
    `**Why.** ${why}`,
    "",
    `**What to do.** ${words(remedy)}`,
    "",
    "## What it says",
    "",
    ...Object.values(messages).map((message) => `- ${words(message)}`),
    "",
    "## Passes",
    "",
    ...passing.flatMap((example) => block(typeof example === "string" ? example : example.cdl)),
    "## Does not pass",
    "",
    ...failing.flatMap(({ cdl, where, message, edition }) => [
      `At ${placeInWords(where)}: ${words(messages[message] ?? "")}${edition === undefined ? "" : ` (CF ${edition})`}`,
      "",
      ...block(cdl),
    ]),
  ].join("\n");
}
