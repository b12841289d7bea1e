import { mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { type Quantity, quantities, type References, readReferences } from "./quantities.ts";
import { readQuantityChecks } from "./quantity-checks.ts";

/** What a comment says: its first paragraph, and the parts after @param, @returns and @source. */
interface Contract {
  readonly words: string;
  readonly parameters: readonly string[];
  readonly returns: string;
  readonly source: string;
}

function contractOf(name: string, text: string): Contract {
  const start = text.search(new RegExp(`^export function ${name}\\(`, "m"));
  const opening = text.lastIndexOf("/**", start);
  const comment = text.slice(opening + 3, text.indexOf("*/", opening));
  if (start < 0 || !/^\s*$/.test(text.slice(text.indexOf("*/", opening) + 2, start))) {
    throw new Error(`no comment stands before ${name}`);
  }
  const plain = comment.replace(/^ *\* ?/gm, "").replace(/\{@link (\w+)\}/g, "`$1`");
  const [words, ...tags] = plain.split(/^@/m);
  const flat = (part: string) => part.trim().replace(/\s+/g, " ");
  const tagged = (tag: string) =>
    tags.filter((each) => each.startsWith(`${tag} `)).map((each) => flat(each.slice(tag.length)));
  return {
    words: flat(words!),
    parameters: tagged("param"),
    returns: tagged("returns").join(" "),
    source: tagged("source").join(" "),
  };
}

const rangeWords = (range: Quantity["range"]): string =>
  Object.entries(range)
    .map(([name, [low, high]]) => `${name} ${low} to ${high}`)
    .join("; ");

/** One digit, rounded up. */
function atMost(differences: readonly number[]): string {
  const largest = Math.max(...differences.map(Math.abs));
  if (Number.isNaN(largest)) throw new Error("a difference is not a number");
  if (largest === 0) return "none";
  const [digits, exponent] = largest.toExponential(12).split("e") as [string, string];
  const up = Math.ceil(Number(digits));
  return up < 10 ? `${up}e${Number(exponent)}` : `1e${Number(exponent) + 1}`;
}

function section(
  { name }: Quantity,
  { words, parameters, returns, source }: Contract,
  check: string | undefined,
): string {
  const items = [
    ...parameters.map((each) => each.replace(/^(\w+) /, "`$1`: ")),
    ...(returns === "" ? [] : [`returns ${returns}`]),
    ...(source === "" ? [] : [`source: ${source}`]),
    ...(check === undefined ? [] : [`check value: ${check}`]),
  ];
  return [`## ${name}`, "", words, "", ...items.map((item) => `- ${item}`), ""].join("\n");
}

function row(quantity: Quantity, references: References): string {
  const { name, symbol, unit, range, differences, against } = quantity;
  const difference = differences === null ? "" : atMost(differences(references));
  const anchor = name.toLowerCase();
  return `| [${name}](#${anchor}) | ${symbol} | ${unit} | ${rangeWords(range)} | ${difference} | ${against} |`;
}

/** Reference page of the equations of sea water. */
export async function generateQuantitiesReference(root: string): Promise<string[]> {
  const references = readReferences(root);
  const checks = readQuantityChecks(root);
  const sections = await Promise.all(
    quantities.map(async (quantity) => {
      const path = join(root, "packages", "core", "src", "seawater", quantity.file);
      const contract = contractOf(quantity.name, await readFile(path, "utf8"));
      return section(quantity, contract, checks.get(quantity.name));
    }),
  );
  const page = `# Quantities of sea water

Made by tools/generate.ts from packages/core/src/seawater; change those files, not this one.

Everything that \`@wherry/core\` computes of sea water. Conductivity is in mS cm-1, temperature in degree Celsius on ITS-90, pressure is sea pressure in dbar, positions are in decimal degrees, depth is in metres downwards. Functions compute beyond the range too; who stores such a number says so. They give NaN only where the mathematics fails. An equation has a twin, its name with \`Column\` behind, that fills a given column.

Sound speed and depth are not for navigation or diving decisions; the local authority and licensed practice decide.

The largest difference is rounded up to one digit, in the unit of the quantity. Absolute Salinity and the anomaly ratio differ because the table is stored to 1e-9. Excepted are places in Central America below 3800 dbar, where they are up to 0.02 g kg-1 off: the cells of 4 by 4 degrees with their south-west corners at 260 E 18 N, 268 E 10 N, 268 E 14 N and 272 E 10 N. The freezing temperature is a polynomial that approaches the exact form.

| function | symbol | unit | range | largest difference | compared with |
| --- | --- | --- | --- | --- | --- |
${quantities.map((quantity) => row(quantity, references)).join("\n")}

${sections.join("\n")}`;
  const folder = join("docs", "reference");
  await mkdir(join(root, folder), { recursive: true });
  const path = join(folder, "quantities.md");
  await writeFile(join(root, path), page);
  return [path];
}
