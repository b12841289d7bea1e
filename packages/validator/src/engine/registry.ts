import { acddRules } from "../rules/acdd/index.ts";
import { cfRules } from "../rules/cf/index.ts";
import type { Rule } from "./rule.ts";

/** Every rule on netCDF files that is written in TypeScript, set by set. */
export const allRules: readonly Rule[] = [...cfRules, ...acddRules];
