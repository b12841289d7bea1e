import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { test } from "vitest";

/** Root of the repository. */
export const root = join(dirname(fileURLToPath(import.meta.url)), "..", "..", "..");

/**
 * Folder of sample files that are not ours to publish, laid beside the repository where it exists
 * (`WHERRY_SHARED` names another place).
 */
const shared = process.env.WHERRY_SHARED ?? join(root, "..", "shared");

/** Path of a sample file or folder, or null where the samples are absent. */
export function sharedPath(...parts: string[]): string | null {
  const path = join(shared, ...parts);
  return existsSync(path) ? path : null;
}

/** A test on sample files; where they are absent it is skipped and says so. */
export function testWithShared(
  parts: readonly string[],
  name: string,
  run: (path: string) => void | Promise<void>,
) {
  const path = sharedPath(...parts);
  if (path !== null) test(name, () => run(path));
  else
    test(name, (context) =>
      context.skip(`skipped: sample folder ${parts.join("/")} is not beside the repository`),
    );
}

/** Path inside test-data. */
export const testData = (...parts: string[]): string => join(root, "test-data", ...parts);
