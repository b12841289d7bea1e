import type { AnyRule } from "../engine/registry.ts";
import { type Rule, type RuleSet, setOf } from "../engine/rule.ts";
import { citationInWords, placeInWords } from "./check-text.ts";
import { type AnyExample, examplePieces } from "./example-pieces.ts";
import { counted } from "./lines.ts";

/** Names of what is filled in, as a reader sees them. */
const words = (text: string): string =>
  text.replace(/\{(?:instead|near)\}/g, "").replace(/\{(\w+)\}/g, "*$1*");

const BASIS: Readonly<Record<Rule["basis"], string>> = {
  clause: "the source says it",
  reading: "our reading of the source",
  house: "our own",
};

const block = (kind: string, text: string): string[] => [
  `\`\`\`${kind}`,
  ...text
    .split("\n")
    .filter((line) => line.trim() !== "")
    .map((line) => line.trim()),
  "```",
  "",
];

/** An example as blocks of code. */
const exampleBlocks = (example: AnyExample): string[] =>
  examplePieces(example).flatMap(({ language, text, name }) => [
    ...(name === undefined ? [] : [`${name}:`, ""]),
    ...block(language, text),
  ]);

/** The part of a rule's id behind the slash: its anchor on the page of its set. */
export const anchorOf = ({ id }: Pick<Rule, "id">): string => id.slice(id.indexOf("/") + 1);

/** One rule as a section: everything that it says of itself. */
export function ruleSection(rule: AnyRule): string {
  const { id, level, basis, citation, editions, title, why, remedy, messages, passing, failing, covers } =
    rule;
  const older = editions?.levels?.map((each) => `${each.level} until ${each.until}`) ?? [];
  const span = [
    editions?.since === undefined ? "every edition" : `CF ${editions.since} and later`,
    ...(editions?.until === undefined ? [] : [`until CF ${editions.until}`]),
  ].join(", ");
  return [
    `<a id="${anchorOf(rule)}"></a>`,
    "",
    `## ${id}`,
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
    "**What it says.**",
    "",
    ...Object.values(messages).map((message) => `- ${words(message)}`),
    "",
    "**Passes:**",
    "",
    ...passing.flatMap(exampleBlocks),
    "**Does not pass:**",
    "",
    ...failing.flatMap((example) => [
      `At ${placeInWords(example.where)}: ${words(messages[example.message] ?? "")}${
        "edition" in example ? ` (CF ${example.edition})` : ""
      }`,
      "",
      ...exampleBlocks(example),
    ]),
  ].join("\n");
}

/** The reference page of a set of rules, in Markdown: a list, then each rule with its examples. */
export function ruleSetPage(set: RuleSet, rules: readonly AnyRule[]): string {
  const own = rules.filter((rule) => setOf(rule) === set);
  return [
    `# Rules of the set ${set}`,
    "",
    `Made by tools/generate.ts from the rules themselves; the examples are their tests. ${counted(own.length, "rule")}.`,
    "",
    "| rule | level | asks |",
    "| --- | --- | --- |",
    ...own.map((rule) => `| [${rule.id}](#${anchorOf(rule)}) | ${rule.level} | ${rule.title} |`),
    "",
    ...own.map(ruleSection),
  ]
    .join("\n")
    .replace(/\n{3,}/g, "\n\n")
    .trimEnd()
    .concat("\n");
}
