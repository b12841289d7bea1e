import { mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { type AnyRule, anchorOf, everyRule, ruleSetNames, ruleSetPage, setOf } from "@wherry/validator";

interface Requirement {
  readonly id: string;
  readonly part: string;
  readonly kind: string;
  readonly text: string;
}

const readRequirements = async (path: string): Promise<Requirement[]> =>
  (await readFile(path, "utf8"))
    .split("\n")
    .filter((line) => line.startsWith("CF-"))
    .map((line) => {
      const [id = "", part = "", kind = "", text = ""] = line.split("\t");
      return { id, part, kind, text };
    });

/** Requirements that no rule checks, with the reason. */
const UNCHECKED: Readonly<Record<string, string>> = {
  "CF-2.4-A2": "later; no construct shows that a file is meant in the old style that it speaks of",
  "CF-4.4.3-T11": "not applicable: how times are counted, nothing that a file shows",
  "CF-9.3.1-T25": "not applicable: what the form is; a file that has it another way has another form",
};

function coverage(requirements: readonly Requirement[]): string {
  const checkedBy = new Map<string, AnyRule[]>();
  for (const rule of everyRule)
    for (const id of rule.covers) checkedBy.set(id, [...(checkedBy.get(id) ?? []), rule]);
  const answer = ({ id, kind }: Requirement): string => {
    const by = checkedBy.get(id);
    if (by !== undefined)
      return `checked: ${by.map((rule) => `[${rule.id}](${setOf(rule)}.md#${anchorOf(rule)})`).join(", ")}`;
    const reason = UNCHECKED[id] ?? "open";
    return kind === "later" && reason === "open" ? "later; check says so where a file uses it" : reason;
  };
  const count = (rows: readonly Requirement[], word: string) =>
    rows.filter((row) => answer(row).startsWith(word)).length;
  const parts = [
    [
      "Conformance document of CF 1.13",
      requirements.filter(({ part, kind }) => part === "1" && kind !== "old"),
    ],
    ["Older editions", requirements.filter(({ kind }) => kind === "old")],
    ["Text of the conventions alone", requirements.filter(({ part }) => part === "2")],
  ] as const;
  const bases = ["clause", "reading", "house"] as const;
  return [
    "# What is checked",
    "",
    "Made by tools/generate.ts. Numbers such as CF-3.1-R1 are ours: section of CF 1.13, R for requirement, A for recommendation, T for the text of the conventions; the wording is ours too, that of the conventions prevails.",
    "",
    "## Rules by set and basis",
    "",
    `| set | rules | ${bases.join(" | ")} |`,
    "| --- | --- | --- | --- | --- |",
    ...ruleSetNames.map((set) => {
      const own = everyRule.filter((rule) => setOf(rule) === set);
      const by = bases.map((basis) => own.filter((rule) => rule.basis === basis).length);
      return `| [${set}](${set}.md) | ${own.length} | ${by.join(" | ")} |`;
    }),
    "",
    "## Requirements",
    "",
    "| source | requirements | checked | not applicable | left out | later | open |",
    "| --- | --- | --- | --- | --- | --- | --- |",
    ...parts.map(
      ([name, rows]) =>
        `| ${name} | ${rows.length} | ${["checked", "not applicable", "left out", "later", "open"].map((word) => count(rows, word)).join(" | ")} |`,
    ),
    "",
    ...parts.flatMap(([name, rows]) => [
      `### ${name}`,
      "",
      "| requirement | asks | answer |",
      "| --- | --- | --- |",
      ...rows.map((row) => `| ${row.id} | ${row.text} | ${answer(row)} |`),
      "",
    ]),
  ].join("\n");
}

/** One page for each set of rules and one that says what is checked. */
export async function generateRuleReference(root: string): Promise<string[]> {
  const folder = join(root, "docs", "reference", "rules");
  await mkdir(folder, { recursive: true });
  const requirements = await readRequirements(join(root, "tools", "generators", "cf-requirements.tsv"));
  const known = new Set(requirements.map(({ id }) => id));
  const strange = everyRule
    .flatMap(({ covers }) => covers)
    .filter((id) => id.startsWith("CF-") && !known.has(id));
  if (strange.length > 0)
    throw new Error(`rules cover requirements that are not listed: ${strange.join(", ")}`);
  const pages: readonly (readonly [string, string])[] = [
    ["coverage", coverage(requirements)],
    ...ruleSetNames.map((set): [string, string] => [set, ruleSetPage(set, everyRule)]),
  ];
  const paths: string[] = [];
  for (const [name, text] of pages) {
    const path = join("docs", "reference", "rules", `${name}.md`);
    await writeFile(join(root, path), text);
    paths.push(path);
  }
  return paths;
}
