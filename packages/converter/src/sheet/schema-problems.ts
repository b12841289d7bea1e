import { nearestNames, type Place, type Problem } from "@wherry/core";
import type { ErrorObject } from "ajv";
import { type DocumentForm, type SchemaNode, schemaAt, sheetForm } from "./sheet-schema.ts";

export type SheetPath = readonly (string | number)[];

/** Finds the place of a value, or of a key itself, in the document's text. */
export type Locate = (path: SheetPath, which: "key" | "value") => Place;

/** What ajv found, in plain sentences with places; several findings about one value become one. */
export function schemaProblems(
  errors: readonly ErrorObject[],
  locate: Locate,
  form: DocumentForm = sheetForm,
): Problem[] {
  const alternatives = new Set(
    errors.filter(({ keyword }) => keyword === "anyOf").map(({ instancePath }) => instancePath),
  );
  const problems = new Map<string, Problem>();
  for (const error of errors) {
    // the branches of a choice say less than the choice itself
    if (alternatives.has(error.instancePath) && error.keyword !== "anyOf") continue;
    const problem = sentence(error, locate, form);
    const key = `${problem.code} ${error.instancePath} ${isAboutKeys(error) ? problem.message : ""}`;
    if (!problems.has(key)) problems.set(key, problem);
  }
  return [...problems.values()];
}

const isAboutKeys = ({ keyword }: ErrorObject): boolean =>
  keyword === "additionalProperties" || keyword === "required" || keyword === "dependentRequired";

function sentence(error: ErrorObject, locate: Locate, form: DocumentForm): Problem {
  const path = pathOf(error.instancePath);
  const name = nameOf(path);
  const { params, keyword } = error;
  if (keyword === "additionalProperties")
    return unknownKey(path, String(params.additionalProperty), locate, form);
  if (keyword === "required" || keyword === "dependentRequired") {
    const key = String(params.missingProperty);
    const words = schemaAt([...path, key], form.schema)?.description;
    return {
      code: `${form.area}/missing-key`,
      message: `${inWords(path, form)} lacks "${key}"`,
      where: locate(path, "key"),
      remedy: words === undefined ? `Add ${key}.` : `Add ${key}: ${uncapitalized(words)}`,
    };
  }
  const where = locate(path, "value");
  const schema = schemaAt(path, form.schema) ?? {};
  if (error.data === null)
    return {
      code: `${form.area}/empty-value`,
      message: `${name} is empty`,
      where,
      remedy: `Fill it in${described(schema)}, or put # before the line.`,
    };
  if (keyword === "type" || (keyword === "anyOf" && typeof error.data === "object"))
    return wrongType(name, error, schema, where, form);
  if (keyword === "enum" || keyword === "const") return notAllowed(name, error, where, form);
  if (keyword === "uniqueItems")
    return {
      code: `${form.area}/repeated`,
      message: `${name} holds the same entry twice`,
      where,
      remedy: "Remove one of them.",
    };
  const limit = limitWords(error);
  return {
    code: `${form.area}/value`,
    message: `${name} is ${shown(error.data)}${limit === null ? "" : `, which must be ${limit}`}`,
    where,
    remedy: `Expected${described(schema)}`,
  };
}

function unknownKey(path: SheetPath, key: string, locate: Locate, form: DocumentForm): Problem {
  const known = Object.keys(schemaAt(path, form.schema)?.properties ?? {}).filter(
    (name) => name !== "$schema",
  );
  const near = nearestNames(key, known);
  return {
    code: `${form.area}/unknown-key`,
    message: `${inWords(path, form)} has no key "${key}"`,
    where: locate([...path, key], "key"),
    remedy:
      near.length > 0
        ? `Did you mean ${near.map((name) => `"${name}"`).join(" or ")}?`
        : `Known keys are ${known.join(", ")}.`,
  };
}

const TYPE_WORDS: Readonly<Record<string, string>> = {
  string: "a text",
  number: "a number",
  integer: "a whole number",
  boolean: "true or false",
  object: "a group of keys",
  array: "a list",
};

function wrongType(
  name: string,
  { params, data, keyword }: ErrorObject,
  schema: SchemaNode,
  where: Place,
  form: DocumentForm,
) {
  const wanted = keyword === "type" ? [params.type].flat().map(String) : ["string"];
  const isScalar = typeof data === "number" || typeof data === "boolean";
  const remedy =
    wanted.includes("string") && isScalar
      ? `Put it in quotes: "${String(data)}".`
      : wanted.includes("array")
        ? "Begin each entry of the list on a line of its own with a hyphen."
        : `Expected${described(schema)}`;
  return {
    code: `${form.area}/type`,
    message: `${name} is ${shown(data)}, where ${wanted.map((type) => TYPE_WORDS[type] ?? type).join(" or ")} is expected`,
    where,
    remedy,
  };
}

function notAllowed(
  name: string,
  { params, data, keyword }: ErrorObject,
  where: Place,
  form: DocumentForm,
): Problem {
  const allowed: unknown[] = keyword === "enum" ? params.allowedValues : [params.allowedValue];
  const near = nearestNames(String(data), allowed.map(String));
  return {
    code: `${form.area}/choice`,
    message: `${name} is ${shown(data)}; it can be ${orList(allowed.map(String))}`,
    where,
    ...(near.length > 0 ? { remedy: `Did you mean ${orList(near.map((word) => `"${word}"`))}?` } : {}),
  };
}

function limitWords({ keyword, params }: ErrorObject): string | null {
  if (keyword === "minimum") return `at least ${params.limit}`;
  if (keyword === "maximum") return `at most ${params.limit}`;
  if (keyword === "exclusiveMinimum") return `more than ${params.limit}`;
  if (keyword === "maxLength") return `at most ${params.limit} characters long`;
  return null;
}

function shown(data: unknown): string {
  if (typeof data === "string") return data.length > 60 ? `"${data.slice(0, 57)}..."` : `"${data}"`;
  if (Array.isArray(data)) return "a list";
  if (typeof data === "object" && data !== null) return "a group of keys";
  return String(data);
}

const described = ({ description }: SchemaNode): string =>
  description === undefined ? "" : `: ${uncapitalized(description).replace(/\.$/, "")}`;

const uncapitalized = (text: string): string =>
  /^[A-Z][a-z ]/.test(text) ? text[0]!.toLowerCase() + text.slice(1) : text;

const orList = (items: readonly string[]): string =>
  items.length < 2 ? items.join("") : `${items.slice(0, -1).join(", ")} or ${items.at(-1)}`;

/** A JSON pointer as steps. Digits alone are places in a list: no key of a sheet is a number. */
function pathOf(pointer: string): SheetPath {
  if (pointer === "") return [];
  return pointer
    .slice(1)
    .split("/")
    .map((step) => step.replaceAll("~1", "/").replaceAll("~0", "~"))
    .map((step) => (/^\d+$/.test(step) ? Number.parseInt(step, 10) : step));
}

/** As `survey.title`, `casts[2].file` with entries counted from 1. */
export const nameOf = (path: SheetPath): string =>
  path.reduce<string>(
    (text, step) =>
      typeof step === "number" ? `${text}[${step + 1}]` : text === "" ? step : `${text}.${step}`,
    "",
  );

const inWords = (path: SheetPath, { called }: DocumentForm): string =>
  path.length === 0 ? called : nameOf(path);
