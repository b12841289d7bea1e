import { createHash } from "node:crypto";
import { existsSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { understandTable } from "@wherry/converter";
import type { Result } from "@wherry/core";
import { type Answer, metadataName, type UnderstoodFile } from "@wherry/formats";

/**
 * What a CSV file holds by the description beside it, as our own products have one; null if there is none.
 *
 * @param name what the casts call their source
 * @throws     the system's error if a file can't be read
 */
export async function readDescribedTable(
  path: string,
  name: string,
  answers: readonly Answer[],
): Promise<Result<UnderstoodFile> | null> {
  if (!/\.csv$/i.test(path)) return null;
  if (!existsSync(metadataName(path))) return null;
  const [bytes, metadata] = await Promise.all([readFile(path), readFile(metadataName(path))]);
  const sha256 = createHash("sha256").update(bytes).digest("hex");
  return understandTable(bytes, metadata, name, { sha256, answers });
}
