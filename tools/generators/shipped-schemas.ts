import { writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { join } from "node:path";
import { schemasOfDocuments } from "@wherry/validator";
import { Ajv2020 } from "ajv/dist/2020.js";
import { transform } from "esbuild";

type Write = (ajv: Ajv2020, names: Record<string, string>) => string;

// By require, for the module's default export is another one under node than under the type checker.
const { default: standaloneCode } = createRequire(import.meta.url)("ajv/dist/standalone") as {
  default: Write;
};

const NAME = "packages/validator/src/engine/shipped-schemas.generated.ts";

/**
 * The JSON Schemas of the rule documents that ship, compiled to functions, since compiling takes longer than most
 * checks. Only whether a value fits is asked: under `not`, ajv makes no texts and places of what does not.
 */
export async function generateShippedSchemas(root: string): Promise<string[]> {
  const ajv = new Ajv2020({
    strict: false,
    validateFormats: false,
    messages: false,
    logger: false,
    code: { source: true, esm: true },
  });
  const names = new Map<string, string>();
  const table = [...schemasOfDocuments].map(([key, schema]) => {
    const text = JSON.stringify(schema);
    const name = names.get(text) ?? `fits${names.size}`;
    if (!names.has(text)) ajv.addSchema({ not: { not: schema } }, name);
    names.set(text, name);
    return `${JSON.stringify(key)}: ${name},`;
  });
  const compiled = standaloneCode(ajv, Object.fromEntries([...names.values()].map((name) => [name, name])));
  if (compiled.includes("require(")) throw new Error("a schema needs a part of ajv at run time; bundle it");
  const whole = `${compiled.replaceAll("export const ", "const ")}\nexport const shippedSchemas = {${table.join("\n")}};`;
  const { code } = await transform(whole, { minify: true, treeShaking: true, format: "esm", lineLimit: 110 });
  const text = `// @ts-nocheck
// Schemas of the rule documents that ship, compiled. Made by tools/generate.ts; change the documents, not this file.
${code.replace('"use strict";', "")}`;
  await writeFile(join(root, NAME), text);
  return [NAME];
}
