import { readFileSync } from "node:fs";
import { type Dataset, parseCdl } from "@wherry/netcdf";
import { testData } from "@wherry/testkit";
import { checkDataset, type Finding } from "../../src/index.ts";

/** The moment of checking: after the date of every product. */
const NOW = Date.parse("2026-11-24T00:00:00Z") / 1000;

/** Files without fault, to be mutated. */
export type Product = "full" | "binned" | "binned_incomplete" | "series";

const texts = new Map<Product, string>();

function textOf(product: Product): string {
  const known = texts.get(product);
  if (known !== undefined) return known;
  const text = readFileSync(testData("reference-products", `${product}.cdl`), "utf8");
  texts.set(product, text);
  return text;
}

/** A place in the text of a product, replaced wherever it stands; a pattern where the text is long. */
export type Change = readonly [from: string | RegExp, to: string];

/** The product with texts replaced. Throws if one of them is not there: then nothing would be tested. */
export function mutated(product: Product, changes: readonly Change[]): Dataset {
  let text = textOf(product);
  for (const [from, to] of changes) {
    const before = text;
    text = typeof from === "string" ? text.replaceAll(from, to) : text.replace(from, to);
    if (text === before) throw new Error(`${String(from)} is not in ${product}`);
  }
  const parsed = parseCdl(text);
  if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join("; "));
  return parsed.value;
}

export const findingsOn = (dataset: Dataset, path = "product.nc"): Promise<Finding[]> =>
  checkDataset(dataset, { path, now: NOW });
