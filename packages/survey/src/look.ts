import { type SameCast, sameCasts } from "@wherry/converter";
import type { Problem } from "@wherry/core";
import type { UnderstoodFile } from "@wherry/formats";
import { gatherKnowledge, type ReadingOptions, unusedAnswers } from "./reading-knowledge.ts";
import { type RunOptions, readExports } from "./understand-files.ts";

export interface LookOptions extends RunOptions, ReadingOptions {}

export interface LookOutcome {
  readonly files: readonly UnderstoodFile[];
  readonly skipped: readonly string[];
  readonly problems: readonly Problem[];
  /** What was noticed beside the files. */
  readonly warnings: readonly Problem[];
  readonly sameCasts: readonly SameCast[];
}

/** What files hold as understood. Nothing is written. */
export async function look(paths: readonly string[], options: LookOptions = {}): Promise<LookOutcome> {
  const knowledge = await gatherKnowledge(options);
  if (!knowledge.ok)
    return { files: [], skipped: [], problems: knowledge.problems, warnings: [], sameCasts: [] };
  const { exports, skipped, problems } = await readExports(paths, knowledge.value, "as given", {
    ...options,
    looking: true,
  });
  const files = exports.map(({ understood }) => understood);
  const warnings = [...knowledge.warnings, ...unusedAnswers(knowledge.value.answers, files)];
  return { files, skipped, problems, warnings, sameCasts: sameCasts(files.flatMap(({ casts }) => casts)) };
}
