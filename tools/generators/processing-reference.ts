import { readFileSync } from "node:fs";
import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { recipeSchema } from "@wherry/contracts";
import {
  type Preset,
  presets,
  type SeaRegion,
  seaRegions,
  spikeReturnShared,
  type Threshold,
} from "@wherry/core";

const statusWords = {
  source: "published, read in the source",
  quoted: "published, read in a public document that quotes the source",
  memory: "published, from memory, not verified",
  house: "our own choice, no source",
  user: "given in the survey's own recipe",
} as const;

type AnyThreshold = Threshold<number | readonly number[]>;

const isThreshold = (value: unknown): value is AnyThreshold =>
  typeof value === "object" && value !== null && "status" in value && "unit" in value;

/** Every threshold of a preset under its path, in the order of the code. */
function thresholds(value: unknown, path: readonly string[] = []): [string, AnyThreshold][] {
  if (isThreshold(value)) return [[path.join(" "), value]];
  if (typeof value !== "object" || value === null || Array.isArray(value)) return [];
  return Object.entries(value).flatMap(([key, child]) => thresholds(child, [...path, key]));
}

const shown = (value: number | readonly number[]): string =>
  [value]
    .flat()
    .map((each) => (Number.isFinite(each) ? String(each) : "open"))
    .join(" to ");

const unitWords = (unit: string): string => (unit === "1" ? "" : ` ${unit}`);

function presetSection(preset: Preset): string {
  const required = Object.entries(preset.required).map(
    ([name, tests]) => `| ${name} | ${tests.join(", ")} |`,
  );
  const rows = thresholds(preset).map(
    ([path, { value, unit, status }]) => `| ${path} | ${shown(value)}${unitWords(unit)} | ${status} |`,
  );
  return [
    `## ${preset.name}`,
    "",
    "| quantity | tests without which a row stays 2 |",
    "| --- | --- |",
    ...required,
    "",
    "| threshold | value | status |",
    "| --- | --- | --- |",
    ...rows,
    "",
  ].join("\n");
}

const regionRow = ({ name, corners, temperature, salinity }: SeaRegion): string =>
  `| ${name} | ${corners?.map(([east, north]) => `${east} ${north}`).join(", ") ?? "everywhere"} | ${shown(temperature.value)} ${temperature.unit} | ${shown(salinity.value)} | ${temperature.status} |`;

function presetsPage(): string {
  const shared = thresholds(spikeReturnShared).map(
    ([path, { value, unit, status }]) => `| ${path} | ${shown(value)}${unitWords(unit)} | ${status} |`,
  );
  return `# Thresholds of the quality tests

Made by tools/generate.ts from packages/core/src/quality/presets.ts; change that file, not this one.

A threshold must be published with the data that it judged: the processing record of a data set lists those used, with their status. Status:

${Object.entries(statusWords)
  .map(([status, words]) => `- ${status}: ${words}`)
  .join("\n")}

Flags are the IODE primary ones: 1 good, 2 not evaluated, 3 questionable, 4 bad, 9 missing. A row is 1 only if every test that its preset requires ran and passed.

${Object.values(presets).map(presetSection).join("\n")}
## Shared by all presets: the rule spike_return

| threshold | value | status |
| --- | --- | --- |
${shared.join("\n")}

## On request: what is known to occur in a region of the sea

Asked for by \`quality.regionalRange\` of the recipe; outside is questionable. The first region that holds a cast counts. The corners of the first two regions are from memory, not verified.

| region | corners, degrees east and north | temperature | salinity | status |
| --- | --- | --- | --- | --- |
${seaRegions.map(regionRow).join("\n")}
`;
}

interface Node {
  readonly title?: string;
  readonly description?: string;
  readonly default?: unknown;
  readonly properties?: Readonly<Record<string, Node>>;
  readonly "x-unit"?: string;
  readonly "x-source"?: string;
}

function parameterRows(node: Node, path: readonly string[] = []): string[] {
  return Object.entries(node.properties ?? {}).flatMap(([key, child]) => {
    if (!("default" in child)) return child.properties ? parameterRows(child, [...path, key]) : [];
    const unit = child["x-unit"] === "none" || child["x-unit"] === "1" ? "" : child["x-unit"];
    const name = [...path, key].join(".");
    return [
      `| ${name} | ${JSON.stringify(child.default)} | ${unit ?? ""} | ${child.description ?? ""} | ${child["x-source"] ?? ""} |`,
    ];
  });
}

function recipePage(example: string): string {
  const schema = recipeSchema as Node;
  return `# The processing recipe

Made by tools/generate.ts from packages/contracts/schemas/recipe.schema.json; change that file, not this one.

Every number that decides what processing does to a cast. Steps run in this order: clock correction, calibration corrections, atmospheric offset, spikes of pressure, segmentation, spikes of temperature and conductivity, response matching, cell thermal inertia, pressure reversals, smoothing, computed quantities, quality tests, comparison of downcast and upcast, layer means or, where they are asked for, burst means. Steps that need numbers of an instrument (clock, calibration, response, cell) are left out where nobody gives them; the survey sheet holds those a person knows, and its processing.recipe any parameter below. The recipe used is part of the processing record of a data set; what an instrument's own numbers changed stands in the steps of each cast.

| parameter | default | unit | what | where the default comes from |
| --- | --- | --- | --- | --- |
${parameterRows(schema).join("\n")}

## Numbers of your own

They stand in the survey sheet. What serves several surveys, such as the thresholds of an institute, may stand in a file of its own that sheets name under \`inherit\`: it has the form of a sheet, \`version: 1\` and \`processing\` are enough. A sheet with every kind of number:

\`\`\`yaml
${example.trimEnd()}
\`\`\`
`;
}

/** A sheet that a test reads. */
const EXAMPLE = join("test-data", "sheets", "own-numbers.yaml");

/** Reference pages of the thresholds and of the recipe. */
export async function generateProcessingReference(root: string): Promise<string[]> {
  const folder = join("docs", "reference");
  await mkdir(join(root, folder), { recursive: true });
  const pages = {
    "quality-thresholds.md": presetsPage(),
    "recipe.md": recipePage(readFileSync(join(root, EXAMPLE), "utf8")),
  };
  for (const [name, text] of Object.entries(pages)) await writeFile(join(root, folder, name), text);
  return Object.keys(pages).map((name) => join(folder, name));
}
