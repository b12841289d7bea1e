import fc from "fast-check";
import { expect, test } from "vitest";
import { parseCdl } from "../src/cdl/parse-cdl.ts";
import { toCdl } from "../src/cdl/to-cdl.ts";
import type { NcType } from "../src/dataset.ts";
import { anyCdlDataset } from "./any-cdl-dataset.ts";
import { contentOf, unwrap } from "./content.ts";

const types: readonly NcType[] = [
  ..."byte char short int float double ubyte ushort uint int64 uint64 string".split(" "),
] as NcType[];

test("what is written as CDL is read back, bit by bit", async () => {
  const datasets = anyCdlDataset({ types, extended: true, generator: false });
  const property = fc.asyncProperty(datasets, async (dataset) => {
    const text = await toCdl(dataset);
    expect(await contentOf(unwrap(parseCdl(text)))).toEqual(await contentOf(dataset));
  });
  await fc.assert(property, { seed: 20_260_315, numRuns: 500 });
});

test("the header alone has no values", async () => {
  const dataset = unwrap(parseCdl("dimensions: x = 2 ; int a(x) ; a:b = 1s ; a = 3, 4 ;"));
  expect(await toCdl(dataset, { name: "made up", data: false })).toBe(
    [
      "netcdf made\\ up {",
      "dimensions:",
      "\tx = 2 ;",
      "variables:",
      "\tint a(x) ;",
      "\t\ta:b = 1s ;",
      "}",
      "",
    ].join("\n"),
  );
});

test("any text is read or refused with the place, never more", () => {
  const letters = fc.constantFrom(
    ..."{}(),;:=*_\"'\\/ \n-+.0129eExfbsulLUaαnetcdf".split(""),
    "data:",
    "int ",
    "char ",
    "NaN",
    "x=3;",
    "a(x);",
    "a=",
    "group: g {",
  );
  const property = fc.property(fc.string({ unit: letters, maxLength: 60 }), (text) => {
    const read = parseCdl(text);
    if (read.ok) return;
    for (const { code, where } of read.problems) {
      expect(code).toMatch(/^cdl\//);
      expect(where.line).toBeGreaterThan(0);
      expect(where.column).toBeGreaterThan(0);
    }
  });
  fc.assert(property, { seed: 20_260_316, numRuns: 3000 });
});
