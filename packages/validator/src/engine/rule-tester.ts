import { parseCdl } from "@wherry/netcdf";
import { DatasetView } from "./dataset-view.ts";
import { NEWEST } from "./edition.ts";
import type { Finding } from "./finding.ts";
import { type Example, levelIn, type Rule } from "./rule.ts";
import { runRules } from "./run-rules.ts";
import { shippedVocabulary } from "./vocabulary.ts";

const asExample = (example: string | Example): Example =>
  typeof example === "string" ? { cdl: example } : example;

/** What a rule finds in one of its examples; the problems of the CDL text if it is none. */
export async function findingsOf(rule: Rule, example: string | Example): Promise<Finding[] | string> {
  const {
    cdl,
    full,
    path = "example.nc",
    edition = NEWEST,
    now = "2030-01-01T00:00:00Z",
  } = asExample(example);
  const parsed = parseCdl(cdl);
  if (!parsed.ok) return parsed.problems.map(({ message }) => message).join("; ");
  const moment = Date.parse(now) / 1000;
  const context = { path, edition, now: moment, vocabulary: shippedVocabulary() };
  const beside = full === undefined ? null : parseCdl(full);
  if (beside?.ok === false) return beside.problems.map(({ message }) => message).join("; ");
  const view =
    beside === null ? {} : { full: new DatasetView(beside.value, { ...context, path: "full.nc" }) };
  return runRules([rule], new DatasetView(parsed.value, { ...context, ...view }));
}

const placeOf = ({ where: { index: _index, ...place } }: Finding) => place;

const sorted = (place: object): string => JSON.stringify(Object.entries(place).sort());

/**
 * Tries a rule on its own examples: each passing one must give nothing from this rule, each failing one exactly one
 * finding at its place with its message and level, and every message must have a failing example.
 *
 * @returns what went otherwise, one sentence each; empty if the rule keeps its promises
 */
export async function tryExamples(rule: Rule): Promise<string[]> {
  const faults: string[] = [];
  if (rule.passing.length === 0) faults.push("no passing example");
  for (const key of Object.keys(rule.messages)) {
    if (!rule.failing.some(({ message }) => message === key)) faults.push(`no failing example for ${key}`);
  }
  for (const example of rule.passing) {
    const found = await findingsOf(rule, example);
    const told = typeof found === "string" ? found : found.map(({ message }) => message).join("; ");
    if (told !== "") faults.push(`a passing example gives: ${told}\n  ${asExample(example).cdl}`);
  }
  for (const example of rule.failing) {
    const found = await findingsOf(rule, example);
    const level = example.level ?? levelIn(rule, example.edition ?? NEWEST);
    const want = `${example.message} ${level} ${sorted(example.where)}`;
    const got =
      typeof found === "string"
        ? found
        : found.map((finding) => `${finding.key} ${finding.level} ${sorted(placeOf(finding))}`).join("; ");
    if (got !== want) faults.push(`a failing example gives: ${got}\n  instead of: ${want}\n  ${example.cdl}`);
    const message = typeof found === "string" ? "" : (found[0]?.message ?? "");
    if (/[{}]/.test(message)) faults.push(`words are missing in: ${message}`);
  }
  return faults;
}
