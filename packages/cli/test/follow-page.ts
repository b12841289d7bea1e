import { spawnSync } from "node:child_process";
import { readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { root, wherryProgram } from "@wherry/testkit";
import { expect } from "vitest";

/** A page of the documentation as its blocks of code, in their order. */
export interface Page {
  readonly blocks: readonly { readonly kind: string; readonly text: string }[];
  readonly count: (kind: string) => number;
}

export function readPage(...path: string[]): Page {
  const page = readFileSync(join(root, "docs", ...path), "utf8");
  const blocks = [...page.matchAll(/^```(sh|text|yaml)\n(.*?)^```$/gms)].map(([, kind, text]) => ({
    kind: kind!,
    text: text!,
  }));
  return { blocks, count: (kind) => blocks.filter((block) => block.kind === kind).length };
}

const plain = (text: string) => text.replaceAll(/\s+/g, " ").trim();

/**
 * Follows a page to the letter in a folder that stands for the root of the clone: its commands in their order, its YAML
 * where it says to save it, and every line that it shows looked for in what the commands before it said.
 *
 * @param yaml   where the page has its YAML saved
 * @param status of commands, by some of their words, that end with another than 0
 */
export function follow(
  { blocks }: Page,
  folder: string,
  yaml: string,
  status: Readonly<Record<string, number>> = {},
): void {
  symlinkSync(join(root, "docs"), join(folder, "docs"));
  let said = "";
  for (const { kind, text } of blocks) {
    if (kind === "yaml") writeFileSync(join(folder, yaml), text);
    if (kind === "text")
      for (const line of text.trim().split("\n")) expect(plain(said)).toContain(plain(line));
    if (kind !== "sh") continue;
    said = "";
    for (const command of text.trim().split("\n")) {
      const run = command.replace("npm run wherry --", `"${process.execPath}" "${wherryProgram}"`);
      const done = spawnSync("sh", ["-c", run], { cwd: folder, encoding: "utf8" });
      const [, wanted = 0] = Object.entries(status).find(([words]) => command.includes(words)) ?? [];
      expect([command, done.status, done.status === wanted ? "" : done.stderr]).toEqual([
        command,
        wanted,
        "",
      ]);
      said += done.stdout + done.stderr;
    }
  }
}
