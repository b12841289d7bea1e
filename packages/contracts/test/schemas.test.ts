import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "@wherry/testkit";
import { Ajv2020 } from "ajv/dist/2020.js";
import addFormats from "ajv-formats";
import { describe, expect, test } from "vitest";

const folder = join(root, "packages", "contracts", "schemas");
const schemas = readdirSync(folder)
  .filter((name) => name.endsWith(".schema.json"))
  .map((name) => [name, JSON.parse(readFileSync(join(folder, name), "utf8"))] as const);

interface Node {
  readonly [key: string]: unknown;
}

/** Every object schema within a schema, with the way to it. */
function* objects(node: unknown, path: string): Generator<{ path: string; node: Node }> {
  if (typeof node !== "object" || node === null) return;
  if ("properties" in node) yield { path, node: node as Node };
  for (const [key, value] of Object.entries(node)) yield* objects(value, `${path}/${key}`);
}

describe.each(schemas)("%s", (name, schema) => {
  test("is a JSON Schema of 2020-12, strictly", () => {
    const ajv = new Ajv2020({ strict: true, strictTypes: false, strictRequired: true });
    addFormats.default(ajv);
    // annotations of recipe parameters; they restrict nothing
    ajv.addVocabulary(["x-unit", "x-source"]);
    expect(schema.$schema).toBe("https://json-schema.org/draft/2020-12/schema");
    expect(schema.$id).toBe(`urn:wherry:schema:${name.replace(".schema.json", "")}:1`);
    expect(() => ajv.compile(schema)).not.toThrow();
  });

  test("says of every group of keys whether others are allowed", () => {
    const open = [...objects(schema, "")].filter(({ node }) => node.additionalProperties === undefined);
    // the parts of a condition are of a group that says it
    expect(open.map(({ path }) => path).filter((path) => !/\/(if|then|else)(\/|$)/.test(path))).toEqual([]);
  });
});

test("every key of the sheet is told in words", () => {
  const sheet = schemas.find(([name]) => name === "sheet.schema.json")![1];
  const silent = [...objects(sheet, "")].flatMap(({ path, node }) =>
    Object.entries(node.properties as Record<string, { description?: string; $ref?: string }>)
      .filter(([, own]) => {
        const target = own.$ref && sheet.$defs[own.$ref.replace("#/$defs/", "")];
        return own.description === undefined && target?.description === undefined;
      })
      .map(([key]) => `${path}/${key}`),
  );
  // sensors are named by what they measure
  expect(silent.filter((path) => !path.startsWith("/$defs/instrument/properties/sensors/"))).toEqual([]);
});

test("every schema has its types beside it", () => {
  for (const [name] of schemas) {
    const types = readFileSync(
      join(root, "packages", "contracts", "src", name.replace(".schema.json", ".generated.ts")),
      "utf8",
    );
    expect(types).toContain("export interface");
  }
});
