import { copyFileSync, existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { inTemporaryFolder, root, runWherry } from "@wherry/testkit";
import { expect, test } from "vitest";

const folder = join(root, "docs", "how-to");
const page = readFileSync(join(folder, "check-a-colleagues-submission.md"), "utf8");

/** Pieces of the page in their order: commands, lines of what they say ("…" for the rest of one), the file to write. */
const pieces = [...page.matchAll(/```(sh|text|json)\n([\s\S]*?)```/g)].map(([, kind, text]) => ({
  kind: kind!,
  text: text!,
}));

/** Status of each command, in the order of the page. */
const STATUS = [1, 0, 0, 0, 0, 1];

test("the page on a colleague's submission, followed literally", () =>
  inTemporaryFolder(async (cwd) => {
    copyFileSync(join(folder, "submission", "tarn-loch-2024.nc"), join(cwd, "tarn-loch-2024.nc"));
    const statuses: (number | null)[] = [];
    let said = "";
    for (const { kind, text } of pieces) {
      if (kind === "json") writeFileSync(join(cwd, "waivers.json"), text);
      else if (kind === "sh") {
        expect(text).toMatch(/^wherry [^\n]*\n$/);
        const run = await runWherry(text.trim().split(" ").slice(1), { cwd });
        statuses.push(run.status);
        said = run.stdout;
      } else
        for (const line of text.trimEnd().split("\n")) {
          const start = line.replace(/ …$/, "");
          const found = said
            .split("\n")
            .find((each) => (start === line ? each === line : each.startsWith(start)));
          expect(found ?? said).toContain(start);
        }
    }
    expect(statuses).toEqual(STATUS);
    expect(existsSync(join(cwd, "letter.md")) && existsSync(join(cwd, "page.html"))).toBe(true);
  }));
