import { writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { join } from "node:path";
import { schemasOfDocuments } from "@wherry/validator";
import { Ajv2020 } from "ajv/dist/2020.js";

type Write = (ajv: Ajv2020, names: Record<string, string>) => string;

// By require, for the module's default export is another one under node than under the type checker.
const { default: standaloneCode } = createRequire(import.meta.url)("ajv/dist/standalone") as {
  default: Write;
};

const NAME = "packages/validator/src/engine/shipped-schemas.generated.ts";

/** The JSON Schemas of the rule documents that ship, compiled to functions: compiling takes longer than most checks. */
export async function generateShippedSchemas(root: string): Promise<string[]> {
  const ajv = new Ajv2020({
    strict: false,
    validateFormats: false,
    messages: false,
    logger: false,
    code: { source: true, esm: true, lines: true },
  });
  const keys = [...schemasOfDocuments.keys()];
  const names = Object.fromEntries(keys.map((key, index) => [`fits${index}`, key]));
  for (const [key, schema] of schemasOfDocuments) ajv.addSchema(schema, key);
  const code = standaloneCode(ajv, names);
  if (code.includes("require(")) throw new Error("a schema needs a part of ajv at run time; bundle it");
  const table = keys.map((key, index) => `  ${JSON.stringify(key)}: fits${index},`).join("\n");
  const text = `// @ts-nocheck
// Schemas of the rule documents that ship, compiled. Made by tools/generate.ts; change the documents, not this file.
${code.replace('"use strict";', "").trim()}

export const shippedSchemas: Readonly<Record<string, (value: unknown) => boolean>> = {
${table}
};
`;
  await writeFile(join(root, NAME), text);
  return [NAME];
}
