import type { Rule } from "../../engine/rule.ts";
import { missing } from "./missing.ts";
import { scheme } from "./scheme.ts";
import { values } from "./values.ts";

/** Rules about quality flags, in the order in which they are run and listed. */
export const flagRules: readonly Rule[] = [missing, scheme, values];
