import { mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { profilePicture } from "@wherry/charts";
import { instrumentOf, processCast, readSheet, settingsFromSheet, understandFile } from "@wherry/converter";
import type { Problem, Result } from "@wherry/core";

function settled<T>(result: Result<T>): T {
  if (result.ok) return result.value;
  throw new Error(result.problems.map((problem: Problem) => problem.message).join("\n"));
}

/** The picture in the README: a cast of the invented demo survey with spikes, processed as its sheet says. */
export async function generateDemoPicture(root: string): Promise<string[]> {
  const demo = join(root, "test-data", "demo");
  const sheet = settled(readSheet(await readFile(join(demo, "survey.yaml"), "utf8"), "survey.yaml"));
  const file = "oe25_09.csv";
  const context = { sha256: "", answers: sheet.answers ?? [] };
  const understood = settled(understandFile(await readFile(join(demo, file)), file, context));
  const [cast] = understood.casts;
  if (!cast) throw new Error(`${file} holds no cast`);
  const processed = processCast(cast, settingsFromSheet(sheet, instrumentOf(cast, { sheet })));
  const picture = profilePicture(processed, {
    title: `${cast.id}, a cast of the invented demo survey`,
    quantities: ["temperature", "salinity"],
    width: 760,
    height: 660,
  });
  const path = join("docs", "pictures", "demo-cast.svg");
  await mkdir(join(root, "docs", "pictures"), { recursive: true });
  await writeFile(join(root, path), picture);
  return [path];
}
