import type { StandardNameTable } from "@wherry/core";
import type { Dataset, Problem } from "@wherry/netcdf";
import { textOf } from "./attribute-value.ts";
import { DatasetView } from "./dataset-view.ts";
import { chooseEdition, conventionNames, type Edition, type EditionChoice } from "./edition.ts";
import type { Finding } from "./finding.ts";
import { allRules } from "./registry.ts";
import { type Rule, type RuleSet, setOf } from "./rule.ts";
import { runRules } from "./run-rules.ts";
import { shippedVocabulary, vocabularyOf } from "./vocabulary.ts";

export interface CheckContext {
  /** Name or path of the file as it is reported. */
  readonly path: string;
  /** Edition of CF to judge by, instead of the one that the file claims. */
  readonly edition?: Edition;
  /** Which sets of rules to run; all that fit the file if not given. */
  readonly ruleSets?: readonly RuleSet[];
  /** Rules beside those written here, such as those of rule documents. */
  readonly moreRules?: readonly Rule[];
  /** The moment of checking, epoch seconds UTC. */
  readonly now: number;
  /** A standard name table in place of the shipped one. */
  readonly standardNames?: StandardNameTable;
  /** The full data beside a file of layer means, to be compared with it. */
  readonly full?: { readonly path: string; readonly dataset: Dataset };
}

export interface CheckedDataset {
  readonly edition: EditionChoice;
  readonly ruleSets: readonly RuleSet[];
  readonly findings: readonly Finding[];
  /** What the rules saw. */
  readonly view: DatasetView;
}

const NETCDF_SETS: readonly RuleSet[] = [...new Set(allRules.map(setOf))];

/** A fault of the file itself, found by the reader of the format. */
export function findingOf(problem: Problem, path: string): Finding {
  return {
    rule: `file/${problem.code.replace("/", "-")}`,
    level: "error",
    basis: "house",
    citation: null,
    where: { file: path, ...problem.where },
    key: problem.code,
    message: problem.message,
    why: "What cannot be read cannot be used or checked.",
    remedy: problem.remedy ?? "Write the file again, or fetch it again if it was damaged on the way.",
    count: 1,
    places: [],
  };
}

/** Whether `Conventions` names ACDD in some version. */
export const claimsAcdd = (conventions: string | undefined): boolean =>
  conventions !== undefined && conventionNames(conventions).some((name) => /^ACDD[- ]\d/i.test(name));

/** Judges an open data set; also tells by which edition and rule sets. */
export async function judgeDataset(dataset: Dataset, context: CheckContext): Promise<CheckedDataset> {
  const { path, now, standardNames, ruleSets, full, moreRules = [] } = context;
  const conventions = textOf(dataset.attributes.get("Conventions"));
  const edition = chooseEdition(conventions, context.edition);
  const chosen = ruleSets ?? [...new Set([...NETCDF_SETS, ...moreRules.map(setOf)])];
  const common = {
    now,
    edition: edition.edition,
    vocabulary: standardNames === undefined ? shippedVocabulary() : vocabularyOf(standardNames),
    holdsToAcdd: claimsAcdd(conventions) || ruleSets?.includes("acdd") === true,
  };
  const beside =
    full === undefined ? {} : { full: new DatasetView(full.dataset, { ...common, path: full.path }) };
  const view = new DatasetView(dataset, { ...common, ...beside, path });
  const rules = [...allRules, ...moreRules].filter((rule) => chosen.includes(setOf(rule)));
  const findings = await runRules(rules, view);
  const faults = [...dataset.problems, ...view.data.problems].map((problem) => findingOf(problem, path));
  return {
    edition,
    ruleSets: chosen,
    findings: [...faults, ...findings].map((finding) => ({
      ...finding,
      where: { file: path, ...finding.where },
    })),
    view,
  };
}

/** The findings on an open data set, in the order of the rules. */
export const checkDataset = async (dataset: Dataset, context: CheckContext): Promise<Finding[]> => [
  ...(await judgeDataset(dataset, context)).findings,
];
