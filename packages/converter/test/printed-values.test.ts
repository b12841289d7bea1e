import { type Cast, type Column, printedPrecision } from "@wherry/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { csvProduct } from "../src/writers/csv-product.ts";
import { fullDataset } from "../src/writers/full-dataset.ts";
import { numbers, referenceCasts } from "./reference-casts.ts";
import { referenceContext } from "./reference-sheet.ts";

const context = referenceContext();
const [base] = await referenceCasts("full");

/** Decimal texts as an instrument prints them: one number of decimals for a column. */
const printedColumn = fc
  .tuple(
    fc.integer({ min: 0, max: 8 }),
    fc.array(fc.bigInt({ min: -(10n ** 10n), max: 10n ** 11n }), {
      minLength: base!.rows,
      maxLength: base!.rows,
    }),
    fc.integer({ min: 0, max: 10 }),
  )
  .map(([decimals, digits, shift]) =>
    digits.map((number) => {
      const small = number / 10n ** BigInt(shift);
      const all = (small < 0n ? -small : small).toString().padStart(decimals + 1, "0");
      const point = all.length - decimals;
      const text = all.slice(0, point) + (decimals > 0 ? `.${all.slice(point)}` : "");
      return small < 0n ? `-${text}` : text;
    }),
  );

interface Printed {
  readonly name: string;
  /** As the source gives it. */
  readonly units: string | null;
  readonly toHouse: (printed: number) => number;
  readonly toPrinted: (stored: number, offset: number) => number;
}

const inMicrosiemens = {
  // held in mS cm-1, stored in S m-1
  toHouse: (x: number) => x / 1000,
  toPrinted: (x: number) => x * 10_000,
};

const QUANTITIES: readonly Printed[] = [
  { name: "temperature", units: "degree_C", toHouse: (x) => x, toPrinted: (x) => x },
  { name: "conductivity", units: "uS/cm", ...inMicrosiemens },
  { name: "conductivity", units: "micro mhos", ...inMicrosiemens },
  { name: "conductivity", units: null, ...inMicrosiemens },
  // an offset of 0.137 dbar is subtracted and stands in the file
  { name: "pressure", units: null, toHouse: (x) => x - 0.137, toPrinted: (x, offset) => x + offset },
];

function castOf({ name, units, toHouse }: Printed, texts: readonly string[]): Cast {
  const printed = texts.map(Number);
  const precision = texts.map((text) => printedPrecision(text));
  const column: Column = {
    ...base!.columns.get(name)!,
    values: Float64Array.from(printed, toHouse),
    source: {
      header: name,
      units,
      index: 0,
      decimals: Math.max(...precision.map(({ decimals }) => decimals)),
      significantDigits: Math.max(...precision.map(({ significantDigits }) => significantDigits)),
      first: printed[0]!,
      last: printed.at(-1)!,
    },
  };
  return { ...base!, pressureOffset: 0.137, columns: new Map([[name, column]]) };
}

const plain = (text: string) => text.replace(/^-(0(\.0*)?)$/, "$1");

test.each(QUANTITIES)("$name in $units as printed is recovered from file and CSV", async (quantity) => {
  const { name, toPrinted } = quantity;
  const types = new Set<string>();
  await fc.assert(
    fc.asyncProperty(printedColumn, async (texts) => {
      const decimals = texts[0]!.split(".")[1]?.length ?? 0;
      const dataset = fullDataset([castOf(quantity, texts)], context);
      types.add(dataset.variables.get(name)!.type);
      const stored = await numbers(dataset, name);
      const offset = (await numbers(dataset, "pressure_offset"))[0]!;
      expect(stored.map((value) => plain(toPrinted(value, offset).toFixed(decimals)))).toEqual(
        texts.map(plain),
      );
      const { csv } = await csvProduct(dataset, "x.csv");
      const [header, ...rows] = csv.trimEnd().split("\r\n");
      const place = header!.split(",").indexOf(name);
      const cells = rows.map((row) => Number(row.split(",")[place]));
      expect(cells.map((value) => plain(toPrinted(value, offset).toFixed(decimals)))).toEqual(
        texts.map(plain),
      );
    }),
    // equal values throughout and no unit: nothing tells the size of the printed step but the digits
    { numRuns: 200, examples: [[Array.from({ length: base!.rows }, () => "0.00000000")]] },
  );
  expect([...types].sort()).toEqual(["double", "float"]);
});
