import { copyFileSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type Dataset, openDataset } from "@wherry/netcdf";
import { inTemporaryFolder, testData } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { convert } from "../src/convert.ts";

// Products read back and written again: every number, type, flag and text of every variable stays what it was.

const demoSheet = testData("demo", "survey.yaml");
const sample = (name: string) => testData("samples", "openformats", name);

const bare = (...lines: string[]) =>
  [
    "version: 1",
    "created: 2025-06-02T08:00:00Z",
    "survey: { id: quay, title: Invented casts }",
    ...lines,
    "",
  ].join("\n");

async function open(path: string): Promise<Dataset> {
  const opened = await openDataset(new Uint8Array(readFileSync(path)));
  if (!opened.ok) throw new Error(opened.problems[0].message);
  return opened.value;
}

/** Variables with type, dimensions, attributes and values. */
async function contentOf(path: string) {
  const dataset = await open(path);
  const content: Record<string, unknown> = {};
  for (const { name, type, dimensions, shape, attributes } of dataset.variables.values()) {
    const read = await dataset.read(name);
    if (!read.ok) throw new Error(read.problems[0].message);
    const told = Object.fromEntries([...attributes.values()].map((each) => [each.name, each.value]));
    content[name] = { type, dimensions, shape, told, values: read.value };
  }
  dataset.close?.();
  return content;
}

/** Converts sources to products and each product once more, and compares. */
async function bothWays(
  folder: string,
  sources: readonly string[],
  sheet: string,
  way: { target?: string; format?: "classic" | "netcdf4"; perCast?: boolean },
): Promise<number> {
  const options = {
    products: ["full", "binned", "series", "csv"] as const,
    perCast: false,
    force: true,
    version: "0",
    ...way,
    sheet,
  };
  const out = join(folder, "first");
  const done = await convert(sources, { ...options, out });
  if (!done.ok) throw new Error(done.problems[0].message);
  expect(done.value.held).toEqual([]);
  const products = readdirSync(out).filter((name) => /\.nc$/.test(name));
  for (const product of products) {
    const before = await contentOf(join(out, product));
    const table = product.replace(/\.nc$/, ".csv");
    for (const name of [product, table]) {
      const again = join(folder, "again");
      const written = await convert([join(out, name)], { ...options, out: again });
      if (!written.ok) throw new Error(`${name}: ${written.problems[0].message}`);
      expect([name, written.value.findings, written.value.held]).toEqual([name, [], []]);
      expect(await contentOf(join(again, product)), name).toEqual(before);
      expect(readFileSync(join(again, table), "utf8"), name).toBe(readFileSync(join(out, table), "utf8"));
    }
  }
  return products.length;
}

describe("products read back and written again change in nothing", () => {
  test.each([
    { target: "general", format: "classic", perCast: false, files: 3 },
    { target: "us-template", format: "netcdf4", perCast: false, files: 3 },
    { target: "us-template", format: "classic", perCast: true, files: 31 },
  ] as const)("the demo survey: $target, $format, one file per cast $perCast", ({ files, ...way }) =>
    inTemporaryFolder(async (folder) => {
      expect(await bothWays(folder, [testData("demo")], demoSheet, way)).toBe(files);
    }),
  );

  test.each<[string, string, readonly string[]]>([
    [
      "WHP-Exchange with flags",
      "whp_ok_00003_00001_ct1.csv",
      ['  - { about: timeRole, where: "*", value: bottom }'],
    ],
    [
      "World Ocean Database with flags",
      "wod_two_casts.dat",
      [
        '  - { about: timeRole, where: "*", value: start }',
        '  - { about: time, where: "wod_two_casts.dat#9000501", value: "2023-06-15T06:00:00Z" }',
      ],
    ],
  ])("%s: levels as they came, with the source's flags", (_, file, answers) =>
    inTemporaryFolder(async (folder) => {
      const sheet = join(folder, "survey.yaml");
      writeFileSync(sheet, bare("answers:", ...answers));
      copyFileSync(sample(file), join(folder, file));
      expect(await bothWays(folder, [join(folder, file)], sheet, {})).toBe(2);
    }),
  );

  test("a station and remarks that only the product tells are kept, and its history goes on", () =>
    inTemporaryFolder(async (folder) => {
      const out = join(folder, "first");
      const options = { products: ["full"] as const, perCast: false, force: true, version: "0" };
      await convert([testData("demo")], { ...options, sheet: demoSheet, out });
      const sheet = join(folder, "other.yaml");
      writeFileSync(sheet, bare());
      const again = join(folder, "again");
      const done = await convert([join(out, "ostrel-2025_full.nc")], { ...options, sheet, out: again });
      expect(done.ok).toBe(true);
      const [before, after] = [
        await contentOf(join(out, "ostrel-2025_full.nc")),
        await contentOf(join(again, "quay_full.nc")),
      ];
      for (const name of [
        "profile_id",
        "station",
        "remarks",
        "source_file",
        "salinity",
        "salinity_uncertainty",
      ])
        expect(after[name], name).toEqual(
          name === "salinity"
            ? expect.objectContaining({ values: (before[name] as { values: unknown }).values })
            : before[name],
        );
      const history = (await open(join(again, "quay_full.nc"))).attributes.get("history")?.value;
      const former = (await open(join(out, "ostrel-2025_full.nc"))).attributes.get("history")?.value;
      expect(String(history).startsWith(String(former))).toBe(true);
      expect(history).toContain("all steps skipped: the file is a product of this program");
    }));
});
