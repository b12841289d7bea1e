import { createHash } from "node:crypto";
import { readFile } from "node:fs/promises";
import { fail, type Result } from "@wherry/core";
import { metadataName, readCsvw, type UnderstoodFile } from "@wherry/formats";

/**
 * What a CSV file holds by the description beside it, as our own products have one; null if there is none. Where
 * products are to be made it is refused: what is described like this was processed before.
 *
 * @param name what the casts call their source
 * @throws     the system's error if a file can't be read
 */
export async function readDescribedTable(
  path: string,
  name: string,
  use: "read" | "refuse",
): Promise<Result<UnderstoodFile> | null> {
  if (!/\.csv$/i.test(path)) return null;
  const metadata = await readIfThere(metadataName(path));
  if (metadata === null) return null;
  if (use === "refuse")
    return fail({
      code: "input/described-table",
      message: `${name} is a table with a description beside it, as products have one, and products are not made from products`,
      where: { file: name },
      remedy: `Convert the export that it came from. wherry look ${name} says what it holds; take ${metadataName(name)} away if it is an export all the same.`,
    });
  const bytes = await readFile(path);
  const sha256 = createHash("sha256").update(bytes).digest("hex");
  return readCsvw(bytes, metadata, { path: name, sha256 });
}

async function readIfThere(path: string): Promise<Uint8Array | null> {
  try {
    return await readFile(path);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === "ENOENT") return null;
    throw error;
  }
}
