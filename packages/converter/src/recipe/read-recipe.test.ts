import { recipeSchema } from "@wherry/contracts";
import { describe, expect, test } from "vitest";
import { readRecipe, recipeDocument } from "./read-recipe.ts";
import { defaultSettings } from "./settings.ts";

const where = { file: "recipe.yaml" };

interface Node {
  readonly properties?: Readonly<Record<string, Node>>;
  readonly default?: unknown;
  readonly description?: string;
  readonly "x-unit"?: string;
  readonly "x-source"?: string;
}

/** Parameters of the schema: places that have a default. */
function parameters(node: Node, path: readonly string[] = []): [string, Node][] {
  if ("default" in node) return [[path.join("."), node]];
  return Object.entries(node.properties ?? {}).flatMap(([key, child]) => parameters(child, [...path, key]));
}

const at = (path: string): unknown =>
  path.split(".").reduce<unknown>((value, key) => (value as Record<string, unknown>)[key], defaultSettings);

/** Names of all settings, as far as the schema knows them as parameters. */
function settingNames(value: unknown, known: ReadonlySet<string>, path: readonly string[] = []): string[] {
  const name = path.join(".");
  if (known.has(name) || typeof value !== "object" || value === null) return [name];
  return Object.entries(value).flatMap(([key, child]) => settingNames(child, known, [...path, key]));
}

describe("the recipe schema", () => {
  const all = parameters(recipeSchema as Node);

  test.each(all)("%s has description, unit and source, and the default that the code uses", (path, node) => {
    expect(node.description).toBeTruthy();
    expect(node["x-unit"]).toBeTruthy();
    expect(node["x-source"]).toBeTruthy();
    expect(at(path)).toEqual(node.default);
  });

  test("every setting is a parameter of the schema", () => {
    const names = all.map(([path]) => path);
    expect(settingNames(defaultSettings, new Set(names)).sort()).toEqual([...names].sort());
  });
});

describe("reading a recipe", () => {
  test("an empty recipe is the defaults", () => {
    expect(readRecipe({ version: 1 }, where)).toEqual({ ok: true, value: defaultSettings, warnings: [] });
  });

  test("settings as a document read back as the same settings", () => {
    const read = readRecipe(JSON.parse(JSON.stringify(recipeDocument(defaultSettings))), where);
    expect(read.ok && read.value).toEqual(defaultSettings);
  });

  test("what is given replaces the default, the rest of its group stays", () => {
    const read = readRecipe(
      { version: 1, preset: "fresh", atmosphericOffset: { air: { lookSeconds: 6 } } },
      where,
    );
    expect(read.ok && read.value.preset).toBe("fresh");
    expect(read.ok && read.value.atmosphericOffset.air.lookSeconds).toBe(6);
    expect(read.ok && read.value.atmosphericOffset.air.edge).toBe(0.3);
  });

  test.each([
    [{}, "recipe/missing-key", "version"],
    [{ version: 1, layer: {} }, "recipe/unknown-key", "layers"],
    [{ version: 1, segmentation: { bottomBend: 0.4 } }, "recipe/unknown-key", "bottomBand"],
    [{ version: 1, preset: "lake" }, "recipe/value", "Kind of water"],
    [{ version: 1, layers: { width: 0 } }, "recipe/value", "Thickness"],
    [{ version: 1, layers: { width: "1" } }, "recipe/value", "Thickness"],
    [{ version: 1, atmosphericOffset: { absoluteRange: [10, 7] } }, "recipe/range", "lower"],
    [{ version: 1, quality: { sensorRanges: { temperature: [30, -2] } } }, "recipe/range", "lower"],
    [
      { version: 1, clock: { pairs: [{ instrument: "yesterday", true: "2025-01-01T00:00:00Z" }] } },
      "recipe/date",
      "2024-05-20T08:00:00Z",
    ],
    [{ version: 1, calibration: { pressure: [{ date: "2025-02-30" }] } }, "recipe/date", "2024-02-11"],
    [
      {
        version: 1,
        quality: {
          tests: { climatology: { temperature: [{ pressureRange: [5, 1], expectedRange: [0, 1] }] } },
        },
      },
      "recipe/range",
      "lower",
    ],
    ["fresh", "recipe/value", "Expected"],
  ])("%j is refused: %s", (document, code, remedy) => {
    const read = readRecipe(document, where);
    expect(read.ok).toBe(false);
    if (read.ok) return;
    expect(read.problems[0].code).toBe(code);
    expect(read.problems[0].remedy).toContain(remedy);
    expect(read.problems[0].where.file).toBe("recipe.yaml");
  });
});
