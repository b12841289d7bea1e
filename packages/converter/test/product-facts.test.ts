import { describe, expect, test } from "vitest";
import { dataSetFacts } from "../src/deposit/data-set-facts.ts";
import { positionsCsv } from "../src/deposit/positions.ts";
import { type ProductFacts, productFacts } from "../src/deposit/product-facts.ts";
import { fullDataset } from "../src/writers/full-dataset.ts";
import { seriesDataset } from "../src/writers/series-dataset.ts";
import { targetNamed } from "../src/writers/target.ts";
import { referenceCasts } from "./reference-casts.ts";
import { referenceContext } from "./reference-sheet.ts";

const general = referenceContext();
const template = { ...general, target: targetNamed("us-template") };
const casts = await referenceCasts("full");
const [series] = await referenceCasts("series");

async function factsOf(...datasets: Parameters<typeof productFacts>[1][]): Promise<ProductFacts[]> {
  const all: ProductFacts[] = [];
  for (const [index, dataset] of datasets.entries()) {
    const read = await productFacts(`p${index}.nc`, dataset);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    all.push(read.value);
  }
  return all;
}

describe.each([
  ["ragged", general],
  ["padded, with numbers for ids", template],
])("casts of products, %s", (_, context) => {
  test("are those that were written, in time order", async () => {
    const products = await factsOf(seriesDataset(series!, context), fullDataset(casts, context));
    const { casts: found, box, time } = dataSetFacts(context.sheet, products, { created: "", software: "" });
    const written = [...casts, series!].sort((a, b) => a.time - b.time);
    expect(found.map(({ id }) => id)).toEqual(written.map(({ id }) => id));
    expect(found.map(({ latitude, longitude }) => [latitude, longitude])).toEqual(
      written.map(({ start }) => [start?.latitude, start?.longitude]),
    );
    expect(found.map(({ kind }) => kind)).toEqual(
      written.map(({ kind }) => (kind === "profile" ? "profile" : "timeSeries")),
    );
    const latitudes = written.map(({ start }) => start!.latitude);
    expect([box?.south, box?.north]).toEqual([Math.min(...latitudes), Math.max(...latitudes)]);
    expect(time?.start).toBe(new Date(written[0]!.time * 1000).toISOString().replace(".000Z", "Z"));
  });

  test("without a position are listed with empty cells", async () => {
    const lost = [{ ...casts[0]!, start: null, end: null }, casts[1]!];
    const products = await factsOf(fullDataset(lost, context));
    const found = dataSetFacts(context.sheet, products, { created: "", software: "" });
    const row = positionsCsv(found)
      .split("\r\n")
      .find((line) => line.startsWith(`${casts[0]!.id},`));
    expect(row?.split(",").slice(4, 6)).toEqual(["", ""]);
    expect(found.box?.south).toBe(casts[1]!.start!.latitude);
  });
});
