import type { Rule } from "../../engine/rule.ts";

export const csvRules: readonly Rule[] = [];
