import { type SurveySheet, sheetSchema } from "@wherry/contracts";
import type { ValidateFunction } from "ajv";
import { Ajv2020 } from "ajv/dist/2020.js";
import addFormats from "ajv-formats";

/** What this file needs to know of a JSON Schema. */
export interface SchemaNode {
  readonly $ref?: string;
  readonly description?: string;
  readonly type?: string | readonly string[];
  readonly properties?: Readonly<Record<string, SchemaNode>>;
  readonly items?: SchemaNode;
  readonly required?: readonly string[];
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
  readonly $defs?: Readonly<Record<string, SchemaNode>>;
}

/** A kind of document that a person writes: its schema, what messages call it, and the area of their codes. */
export interface DocumentForm {
  readonly schema: SchemaNode;
  readonly called: string;
  readonly area: string;
  /** How to come by one that is right. */
  readonly remedy: string;
}

export const sheetForm: DocumentForm = {
  schema: sheetSchema as SchemaNode,
  called: "the sheet",
  area: "sheet",
  remedy: "Make one with `wherry sheet FILE... --out survey.yaml`.",
};

let compiled: ValidateFunction<SurveySheet> | null = null;
let compiledBase: ValidateFunction | null = null;

/** The sheet's validator, compiled on first use. */
export function sheetValidator(): ValidateFunction<SurveySheet> {
  compiled ??= compile<SurveySheet>(sheetSchema);
  return compiled;
}

/** The validator of sheets that others inherit from, in which no key but the version must stand. */
export function baseValidator(): ValidateFunction {
  const { survey } = sheetSchema.$defs;
  compiledBase ??= compile({
    ...sheetSchema,
    $id: "urn:wherry:schema:base-sheet:1",
    required: ["version"],
    $defs: { ...sheetSchema.$defs, survey: { ...survey, required: [] } },
  });
  return compiledBase;
}

function compile<T>(schema: object): ValidateFunction<T> {
  const ajv = new Ajv2020({ allErrors: true, verbose: true, strictTypes: false });
  addFormats.default(ajv);
  return ajv.compile<T>(schema);
}

/** The schema with its reference followed; words beside the reference go before those behind it. */
export function resolved(node: SchemaNode, root: SchemaNode = sheetForm.schema): SchemaNode {
  const name = node.$ref?.replace("#/$defs/", "");
  if (name === undefined) return node;
  const { $ref, ...beside } = node;
  return { ...root.$defs?.[name], ...beside };
}

/** The part of the schema that stands for a place in the document; null if there is none. */
export function schemaAt(
  path: readonly (string | number)[],
  root: SchemaNode = sheetForm.schema,
): SchemaNode | null {
  let node: SchemaNode | undefined = root;
  for (const step of path) {
    const here: SchemaNode = resolved(node, root);
    node = typeof step === "number" ? here.items : here.properties?.[step];
    if (node === undefined) return null;
  }
  return resolved(node, root);
}
