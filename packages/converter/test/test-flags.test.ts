import { readSimulated } from "@wherry/testkit";
import { expect, test } from "vitest";
import { processCast } from "../src/recipe/process-cast.ts";
import { defaultSettings } from "../src/recipe/settings.ts";
import { fullDataset } from "../src/writers/full-dataset.ts";
import { numbers } from "./reference-casts.ts";
import { referenceContext } from "./reference-sheet.ts";

const cast = processCast(readSimulated("dev-b-shelf"), {
  ...defaultSettings,
  quality: { ...defaultSettings.quality, regionalRange: true, surfaceLayer: 1.2 },
});
const dataset = fullDataset([cast], { ...referenceContext(), testFlags: true });
const flagsOf = (name: string) => numbers(dataset, `${name}_qc`);

test.each(["temperature", "conductivity", "salinity", "pressure"])(
  "the worst flag that a test gives %s is its flag, and the tests stand beside it",
  async (name) => {
    const { dimensions, attributes } = dataset.variables.get(name)!;
    const listed = String(attributes.get("ancillary_variables")?.value).split(" ");
    const single = [...cast.columns.get(name)!.tests.keys()].map((each) => `${name}_${each}`);
    expect(single.length).toBeGreaterThan(3);
    for (const each of single) {
      expect(listed).toContain(`${each}_qc`);
      expect(dataset.variables.get(`${each}_qc`)?.dimensions).toEqual(dimensions);
    }
    const results = await Promise.all(single.map(flagsOf));
    const flags = await flagsOf(name);
    flags.forEach((flag, row) => {
      const caught = results.map((result) => result[row]!).filter((each) => each === 3 || each === 4);
      if (caught.length > 0 && flag !== 9) expect(flag).toBe(Math.max(...caught));
      else expect([1, 2, 9]).toContain(flag);
    });
  },
);

test("tests carry the standard names of their kind, where there is one", () => {
  const name = (test: string) => dataset.variables.get(`${test}_qc`)?.attributes.get("standard_name")?.value;
  // CF standard name table 83
  expect(name("temperature_gross_range")).toBe("gross_range_test_quality_flag");
  expect(name("temperature_spike_return")).toBe("spike_test_quality_flag");
  expect(name("pressure_pressure_increasing")).toBe("quality_flag");
});

test("rows of the surface layer are questionable, and so are those of a region's limits", async () => {
  const [surface, p] = [await flagsOf("temperature_surface_layer"), await numbers(dataset, "pressure")];
  const judged = surface.flatMap((flag, row) => (flag === 1 || flag === 3 ? [row] : []));
  expect(judged.length).toBeGreaterThan(1000);
  // pressure of a spike is left out, and single precision is a step of 1e-6 here
  for (const row of judged)
    if (Math.abs(p[row]! - 1.2) > 1e-5) expect(surface[row]).toBe(p[row]! < 1.2 ? 3 : 1);
  expect(await flagsOf("salinity_regional_range")).toContain(1);
});

test("nothing of it stands in a file where it is not asked for", () => {
  const plain = fullDataset([cast], referenceContext());
  expect([...plain.variables.keys()].filter((name) => name.includes("gross_range"))).toEqual([]);
});
