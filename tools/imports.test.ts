import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import { root } from "@wherry/testkit";
import { describe, expect, test } from "vitest";

// packages/imports.json is the architecture: what each package may import. Tests and tools are free.

interface Row {
  readonly ours: readonly string[];
  readonly libraries: readonly string[];
  readonly node: readonly string[];
}

const packages = join(root, "packages");
const table = JSON.parse(readFileSync(join(packages, "imports.json"), "utf8")) as Record<string, Row>;
const folders = readdirSync(packages, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name);

const sources = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts") && !name.endsWith(".test.ts"))
    .map((name) => join(folder, name));

/** Every module name in `import`, `export … from` and `import()`. */
export function importedNames(text: string): string[] {
  const code = text.replace(/\/\*[\s\S]*?\*\//g, "").replace(/(^|\s)\/\/.*$/gm, "");
  const statements =
    /(?:^|[\s;])(?:import|export)\s[^"'`;()]*?from\s*["']([^"']+)["']|(?:^|[\s;])import\s*["']([^"']+)["']|\bimport\(\s*["']([^"']+)["']\s*\)/g;
  return [...code.matchAll(statements)].map((match) => (match[1] ?? match[2] ?? match[3]) as string);
}

const libraryOf = (name: string) =>
  name
    .split("/")
    .slice(0, name.startsWith("@") ? 2 : 1)
    .join("/");

/** Why an import is not allowed, or null. */
function complaint(folder: string, file: string, name: string, row: Row): string | null {
  if (name.startsWith(".")) {
    const target = resolve(dirname(file), name);
    const home = join(packages, folder);
    return target.startsWith(`${home}/`) || target.startsWith(`${home}\\`) ? null : "leaves the package";
  }
  if (name.startsWith("node:")) return row.node.includes(name) ? null : "node module not in the table";
  if (name.startsWith("@wherry/")) {
    const other = name.slice("@wherry/".length);
    if (other.includes("/")) return "deep import into another package";
    return row.ours.includes(other) ? null : "package not in the table";
  }
  return row.libraries.includes(libraryOf(name)) ? null : "library not in the table";
}

test("the scan sees every form of import", () => {
  const text = `import a from "a";\nimport { b,\n c } from '@x/b/deep';\nimport "c";\nexport * from "./d.ts";
    const e = await import("e"); // import "not-this"\n/* import "nor-this" */\nimport type { F } from "f";`;
  expect(importedNames(text)).toEqual(["a", "@x/b/deep", "c", "./d.ts", "e", "f"]);
});

test("every package has a row, and every row a package", () => {
  expect(Object.keys(table).sort()).toEqual(folders.sort());
});

test("no arrow points back", () => {
  const order = Object.keys(table);
  const reach = (from: string, seen: Set<string>): Set<string> => {
    for (const next of table[from]?.ours ?? []) if (!seen.has(next)) reach(next, seen.add(next));
    return seen;
  };
  expect(order.filter((name) => reach(name, new Set()).has(name))).toEqual([]);
  expect([...reach("validator", new Set())]).not.toContain("converter");
});

describe.each(folders)("%s", (folder) => {
  const row = table[folder] ?? { ours: [], libraries: [], node: [] };

  test("imports only what the table allows", () => {
    const complaints = sources(join(packages, folder, "src")).flatMap((file) =>
      importedNames(readFileSync(file, "utf8")).flatMap((name) => {
        const why = complaint(folder, file, name, row);
        return why === null ? [] : [`${relative(root, file)}: ${name} (${why})`];
      }),
    );
    expect(complaints).toEqual([]);
  });

  test("declares what the table lists, no more and no less", () => {
    const manifest = JSON.parse(readFileSync(join(packages, folder, "package.json"), "utf8")) as {
      dependencies?: Record<string, string>;
    };
    const listed = [...row.ours.map((name) => `@wherry/${name}`), ...row.libraries];
    expect(Object.keys(manifest.dependencies ?? {}).sort()).toEqual([...listed].sort());
  });

  test("has a README with both lists", () => {
    const readme = readFileSync(join(packages, folder, "README.md"), "utf8");
    expect(readme).toMatch(/^## What it does$/m);
    expect(readme).toMatch(/^## What it may not do$/m);
  });
});
