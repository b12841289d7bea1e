import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { inTemporaryFolder, root, wherryProgram } from "@wherry/testkit";
import { expect, test } from "vitest";

// Follows docs/tutorial/one-cast.md to the letter: its commands in their order, its sheet where it says to replace it,
// and every line that it shows looked for in what the command before it said.

const page = readFileSync(join(root, "docs", "tutorial", "one-cast.md"), "utf8");
const blocks = [...page.matchAll(/^```(sh|text|yaml)\n(.*?)^```$/gms)].map(([, kind, text]) => ({
  kind: kind!,
  text: text!,
}));

/** Commands that end with another status than 0, as the page says. */
const STATUS: Readonly<Record<string, number>> = { "sheet first-deposit/exports": 2 };

const plain = (text: string) => text.replaceAll(/\s+/g, " ").trim();

test("the page has its commands, its sheet and what they show", () => {
  const count = (kind: string) => blocks.filter((block) => block.kind === kind).length;
  expect([count("sh"), count("yaml"), count("text")]).toEqual([9, 1, 8]);
});

test(
  "followed literally, it ends with a package that is whole",
  () =>
    inTemporaryFolder((folder) => {
      symlinkSync(join(root, "docs"), join(folder, "docs"));
      let said = "";
      for (const { kind, text } of blocks) {
        if (kind === "yaml") writeFileSync(join(folder, "first-deposit", "survey.yaml"), text);
        if (kind === "text")
          for (const line of text.trim().split("\n")) expect(plain(said)).toContain(plain(line));
        if (kind !== "sh") continue;
        said = "";
        for (const command of text.trim().split("\n")) {
          const run = command.replace("npm run wherry --", `"${process.execPath}" "${wherryProgram}"`);
          const { status, stdout, stderr } = spawnSync("sh", ["-c", run], { cwd: folder, encoding: "utf8" });
          const [, wanted = 0] = Object.entries(STATUS).find(([words]) => command.includes(words)) ?? [];
          expect([command, status, status === wanted ? "" : stderr]).toEqual([command, wanted, ""]);
          said += stdout + stderr;
        }
      }
      expect(existsSync(join(folder, "first-deposit", "marsh-quay-2025.zip"))).toBe(true);
    }),
  120_000,
);
