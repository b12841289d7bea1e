import { readdir, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { join } from "node:path";

// By require, since the declarations that come with the library do not compile under exactOptionalPropertyTypes.
const { compileFromFile } = createRequire(import.meta.url)("json-schema-to-typescript") as {
  compileFromFile(path: string, options: Record<string, unknown>): Promise<string>;
};

const banner = (schema: string) =>
  `/** Types of schemas/${schema}. Made by tools/generate.ts; change the schema, not this file. */`;

/** `packages/contracts/schemas/<name>.schema.json` to `packages/contracts/src/<name>.generated.ts`. */
export async function generateContractTypes(root: string): Promise<string[]> {
  const schemas = join(root, "packages", "contracts", "schemas");
  const names = (await readdir(schemas)).filter((name) => name.endsWith(".schema.json")).sort();
  const written: string[] = [];
  for (const schema of names) {
    const path = join("packages", "contracts", "src", schema.replace(".schema.json", ".generated.ts"));
    const types = await compileFromFile(join(schemas, schema), {
      cwd: schemas,
      bannerComment: banner(schema),
      additionalProperties: false,
      style: { printWidth: 110 },
    });
    await writeFile(join(root, path), types);
    written.push(path);
  }
  return written;
}
