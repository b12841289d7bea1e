import { type ProcessingRecipe, recipeSchema } from "@wherry/contracts";
import { failOr, nearestNames, type Place, type Problem, type Result } from "@wherry/core";
import type { ErrorObject, ValidateFunction } from "ajv";
import { Ajv2020 } from "ajv/dist/2020.js";
import { epochOf } from "./dated-settings.ts";
import { defaultSettings, type RecipeSettings } from "./settings.ts";

let compiled: ValidateFunction<ProcessingRecipe> | null = null;

/** Compiled on first use; x-unit and x-source describe parameters and judge nothing. */
function recipeValidator(): ValidateFunction<ProcessingRecipe> {
  if (compiled === null) {
    const ajv = new Ajv2020({ allErrors: true, verbose: true, strictTypes: false });
    ajv.addVocabulary(["x-unit", "x-source"]);
    compiled = ajv.compile<ProcessingRecipe>(recipeSchema);
  }
  return compiled;
}

/**
 * Settings from a recipe document (JSON or YAML, already parsed); what it leaves out keeps its default.
 *
 * @param document checked against packages/contracts/schemas/recipe.schema.json
 * @param where    the file, for problems
 */
export function readRecipe(document: unknown, where: Place): Result<RecipeSettings> {
  const validate = recipeValidator();
  const problems = validate(document)
    ? rangeProblems(document, where)
    : (validate.errors ?? [])
        .filter(({ keyword }) => keyword !== "anyOf")
        .map((each) => sentence(each, where));
  return failOr(problems, () => {
    const { $schema, version, ...choices } = document as ProcessingRecipe;
    return merged(defaultSettings, choices) as RecipeSettings;
  });
}

type Group = Readonly<Record<string, unknown>>;

const isGroup = (value: unknown): value is Group =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Groups are merged key by key, everything else is replaced. */
function merged(base: unknown, choice: unknown): unknown {
  if (!isGroup(base) || !isGroup(choice)) return choice;
  const result: Record<string, unknown> = { ...base };
  for (const [key, value] of Object.entries(choice)) result[key] = merged(result[key], value);
  return result;
}

/** Days and times of clock readings and corrections, which plain strings of the schema may miss. */
function dateProblems(key: string, value: unknown, path: string, where: Place): Problem[] {
  if (!["date", "instrument", "true"].includes(key) || typeof value !== "string") return [];
  if (!Number.isNaN(epochOf(value))) return [];
  return [
    {
      code: "recipe/date",
      message: `${path} is "${value}", which is not a ${key === "date" ? "day" : "time in UTC"}`,
      where: { ...where, variable: path },
      remedy: `Write it as ${key === "date" ? "2024-02-11" : "2024-05-20T08:00:00Z"}.`,
    },
  ];
}

/** JSON Schema cannot say that the first of two numbers is the lower one. */
function rangeProblems(document: unknown, where: Place, name = ""): Problem[] {
  if (!isGroup(document)) return [];
  return Object.entries(document).flatMap(([key, value]): Problem[] => {
    const path = name === "" ? key : `${name}.${key}`;
    if (!Array.isArray(value))
      return [...dateProblems(key, value, path, where), ...rangeProblems(value, where, path)];
    const [low, high] = value as unknown[];
    if (typeof low !== "number" || typeof high !== "number")
      return value.flatMap((each, index) => rangeProblems(each, where, `${path}.${index}`));
    if (low < high) return [];
    return [
      {
        code: "recipe/range",
        message: `${path} runs from ${low} to ${high}`,
        where: { ...where, variable: path },
        remedy: "Give the lower number first.",
      },
    ];
  });
}

function sentence({ instancePath, keyword, params, data, parentSchema }: ErrorObject, where: Place): Problem {
  const path = instancePath.slice(1).replaceAll("/", ".");
  const about = path === "" ? "the recipe" : path;
  if (keyword === "additionalProperties") {
    const key = String(params.additionalProperty);
    const known = Object.keys((parentSchema?.properties ?? {}) as Group).filter((each) => each !== "$schema");
    const near = nearestNames(key, known);
    return {
      code: "recipe/unknown-key",
      message: `${about} has no parameter "${key}"`,
      where: { ...where, variable: path === "" ? key : `${path}.${key}` },
      remedy: near.length > 0 ? `Did you mean ${near.join(" or ")}?` : `Known are ${known.join(", ")}.`,
    };
  }
  if (keyword === "required")
    return {
      code: "recipe/missing-key",
      message: `${about} lacks "${String(params.missingProperty)}"`,
      where,
      remedy:
        params.missingProperty === "version" ? "Add version: 1." : `Add ${String(params.missingProperty)}.`,
    };
  const unit = parentSchema?.["x-unit"];
  const inUnit = typeof unit === "string" && unit !== "none" ? ` (${unit})` : "";
  const wanted = Array.isArray(params.allowedValues)
    ? `one of ${params.allowedValues.map(String).join(", ")}`
    : keyword === "const"
      ? String(params.allowedValue)
      : keyword === "type"
        ? `a ${[params.type].flat().map(String).join(" or ")}${inUnit}`
        : keyword === "exclusiveMinimum"
          ? `more than ${params.limit}${inUnit}`
          : keyword === "minimum"
            ? `at least ${params.limit}${inUnit}`
            : keyword === "maximum"
              ? `at most ${params.limit}${inUnit}`
              : "two numbers";
  return {
    code: "recipe/value",
    message: `${about} is ${JSON.stringify(data)}, which must be ${wanted}`,
    where: { ...where, ...(path === "" ? {} : { variable: path }) },
    remedy: `Expected: ${String(parentSchema?.description ?? "a value of the right form")}`,
  };
}

/** The recipe document of settings, as it is embedded in the processing record. */
export const recipeDocument = (settings: RecipeSettings): ProcessingRecipe =>
  ({ version: 1, ...settings }) as unknown as ProcessingRecipe;
