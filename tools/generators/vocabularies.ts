import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { packNames } from "../../packages/core/src/vocabulary/packed-names.ts";
import { parseStandardNameTable } from "../../packages/core/src/vocabulary/parse-standard-names.ts";

const sources = join("test-data", "standards");
const target = join("packages", "core", "src", "vocabulary");
const notice = "Made by tools/generate.ts from test-data/standards. Facts only: no descriptions are taken.";

const quoted = (text: string | null) => JSON.stringify(text);
const block = (text: string) => `\`${text.replaceAll(/[\\`$]/g, (sign) => `\\${sign}`)}\``;

/** The CF standard-name table, from its published XML form or the tab-separated list of its facts. */
export async function generateStandardNames(root: string): Promise<string[]> {
  const source = await readFile(join(root, sources, "cf-standard-names.tsv"), "utf8");
  const table = parseStandardNameTable(source);
  if (!table.ok) throw new Error(JSON.stringify(table.problems, null, 2));
  const packed = packNames(table.value);
  const path = join(target, "standard-names.generated.ts");
  await writeFile(
    join(root, path),
    `/** CF standard-name table, version ${packed.version}. ${notice} */
import type { PackedNames } from "./packed-names.ts";

export const packedStandardNames: PackedNames = {
  version: ${quoted(packed.version)},
  lastModified: ${quoted(packed.lastModified)},
  words: ${block(packed.words)},
  units: ${block(packed.units)},
  names: ${block(packed.names)},
};
`,
  );
  return [path];
}

/** Area types and region names of CF: a title line that tells the version, then one word a line. */
export async function generateWordLists(root: string): Promise<string[]> {
  const list = async (file: string, name: string) => {
    const [title = "", ...lines] = (await readFile(join(root, sources, file), "utf8")).split("\n");
    const version = /version (\d+)/.exec(title)?.[1];
    const words = lines.filter((line) => line !== "");
    if (!version || words.some((word) => /\s/.test(word))) throw new Error(`${file} has another form`);
    return `export const ${name} = { version: ${quoted(version)}, words: ${quoted(words.join(" "))} };\n`;
  };
  const path = join(target, "word-lists.generated.ts");
  const lists = [
    await list("cf-area-types.txt", "areaTypeWords"),
    await list("cf-regions.txt", "regionWords"),
  ];
  await writeFile(join(root, path), `/** Word lists of CF. ${notice} */\n${lists.join("")}`);
  return [path];
}
