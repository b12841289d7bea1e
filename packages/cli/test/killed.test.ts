import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { inTemporaryFolder, runWherry } from "@wherry/testkit";
import { expect, test } from "vitest";
import { exportText, lay, SHEET } from "./survey-folder.ts";

// Killed at any moment: what stands under the final name is whole, of this run or of an earlier one.

const MOMENTS = 50;
const EXPORTS = Object.fromEntries(
  Array.from({ length: 6 }, (_, k) => [`casts/c${k}.csv`, exportText({ name: `C${k}` })]),
);
const SHEETS = ["first", "second"] as const;
const convert = (sheet: string) => [
  "convert",
  "casts",
  "--sheet",
  `${sheet}.yaml`,
  "--out",
  "result",
  "--per-cast",
  "--force",
];

/** A folder's files with their bytes, as one hash; null if there is no such folder. */
function contentOf(folder: string): string | null {
  if (!existsSync(folder)) return null;
  const hash = createHash("sha256");
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name))
    .sort();
  for (const path of files) hash.update(path.slice(folder.length)).update(readFileSync(path));
  return hash.digest("hex");
}

test(
  `killed at ${MOMENTS} moments: an earlier result is whole or the new one is, and a rerun completes`,
  () =>
    inTemporaryFolder(async (folder) => {
      const sheets = SHEETS.map((name) => [`${name}.yaml`, SHEET.replace("Casts at", `The ${name} look at`)]);
      lay(folder, { ...EXPORTS, ...Object.fromEntries(sheets) });
      const result = join(folder, "result");
      const whole = new Set<string>();
      let duration = 0;
      for (const sheet of SHEETS) {
        const started = performance.now();
        expect((await runWherry(convert(sheet), { cwd: folder })).status).toBe(0);
        duration = performance.now() - started;
        whole.add(contentOf(result)!);
      }
      expect(whole.size).toBe(2);

      let seed = 20_250_602;
      const random = () => {
        seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0;
        return seed / 2 ** 32;
      };
      const ends = { killed: 0, finished: 0 };
      for (let k = 0; k < MOMENTS; k++) {
        const moment = performance.now() + random() * 1.1 * duration;
        const { status } = await runWherry(convert(SHEETS[k % 2]!), {
          cwd: folder,
          interrupt: { signal: "SIGKILL", when: () => performance.now() >= moment },
        });
        expect([0, null]).toContain(status);
        ends[status === null ? "killed" : "finished"]++;
        // between the two renames the earlier result has a hidden name, under which the next run finds it
        const content = contentOf(result) ?? contentOf(join(folder, ".result.wherry-previous"));
        expect(whole).toContain(content);
      }
      expect(ends.killed).toBeGreaterThan(MOMENTS / 4);

      expect((await runWherry(convert(SHEETS[0]), { cwd: folder })).status).toBe(0);
      expect(contentOf(result)).toBe([...whole][0]);
      expect(readdirSync(folder).filter((name) => name.startsWith("."))).toEqual([]);
    }),
  900_000,
);
