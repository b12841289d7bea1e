import type { Level } from "@wherry/survey";

/** Levels of findings from the worst on. */
export const LEVELS: readonly Level[] = ["error", "warning", "advice"];
