import { acddRules } from "../rules/acdd/index.ts";
import { cfRules } from "../rules/cf/index.ts";
import { csvRules } from "../rules/csv/index.ts";
import { flagRules } from "../rules/flags/index.ts";
import { packageRules } from "../rules/package/index.ts";
import { physicsRules } from "../rules/physics/index.ts";
import type { BagRule } from "./bag-rule.ts";
import type { CsvRule } from "./csv-rule.ts";
import { type Rule, type RuleSet, setOf } from "./rule.ts";
import { shippedDocumentRules } from "./rule-document.ts";

/** Every rule on netCDF files that ships, set by set: those written in TypeScript, then those of documents. */
export const allRules: readonly Rule[] = [
  ...cfRules,
  ...acddRules,
  ...flagRules,
  ...physicsRules,
  ...shippedDocumentRules,
];

export type AnyRule = Rule | CsvRule | BagRule;

/** Every rule that ships: those on netCDF files, on tables with metadata, and on deposit packages. */
export const everyRule: readonly AnyRule[] = [...allRules, ...csvRules, ...packageRules];

/** Names of the sets that ship. */
export const ruleSetNames: readonly RuleSet[] = [...new Set(everyRule.map(setOf))];
