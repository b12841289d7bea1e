import type { Rule } from "../../engine/rule.ts";

export const acddRules: readonly Rule[] = [];
