import { acddRules } from "../rules/acdd/index.ts";
import { cfRules } from "../rules/cf/index.ts";
import { csvRules } from "../rules/csv/index.ts";
import { flagRules } from "../rules/flags/index.ts";
import { physicsRules } from "../rules/physics/index.ts";
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

/** Names of the sets that ship. */
export const ruleSetNames: readonly RuleSet[] = [...new Set([...allRules, ...csvRules].map(setOf))];
