import type { Problem } from "@wherry/core";
import type { UnderstoodFile } from "@wherry/formats";
import { type RunOptions, readExports } from "./understand-files.ts";

export interface LookOutcome {
  readonly files: readonly UnderstoodFile[];
  readonly skipped: readonly string[];
  readonly problems: readonly Problem[];
}

/** What files hold as understood. Nothing is written. */
export async function look(paths: readonly string[], options: RunOptions = {}): Promise<LookOutcome> {
  const { exports, skipped, problems } = await readExports(paths, [], "as given", {
    ...options,
    netcdf: "read",
  });
  return { files: exports.map(({ understood }) => understood), skipped, problems };
}
