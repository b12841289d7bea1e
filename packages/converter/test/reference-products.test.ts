import { type LayerMeans, layerMeans } from "@wherry/core";
import { describe, expect, test } from "vitest";
import { binnedDataset } from "../src/writers/binned-dataset.ts";
import { fullDataset } from "../src/writers/full-dataset.ts";
import { seriesDataset } from "../src/writers/series-dataset.ts";
import { differences, structure } from "./compare.ts";
import { numbers, referenceCasts, referenceProduct, texts } from "./reference-casts.ts";
import { referenceContext } from "./reference-sheet.ts";

const context = referenceContext();

describe("full product beside its reference file", async () => {
  const wanted = referenceProduct("full");
  const casts = await referenceCasts("full");
  const found = fullDataset([...casts].reverse(), context);

  test("variables, types, dimensions and their order", () => {
    const added = ["byte position_qc(profile)", "byte time_qc(profile)"];
    expect(structure(found).variables.filter((line) => !added.includes(line))).toEqual(
      structure(wanted).variables,
    );
    expect(structure(found).variables).toEqual(expect.arrayContaining(added));
    expect([...found.dimensions.values()]).toEqual([...wanted.dimensions.values()]);
  });

  test("attributes, except what is told here", () => {
    const mine = new Map(
      [...structure(found).attributes].filter(([name]) => !/^(position|time)_qc:/.test(name)),
    );
    expect(differences(mine, structure(wanted).attributes)).toEqual(
      [
        // the flags of time and position are named where they belong
        "+ latitude:ancillary_variables",
        "+ longitude:ancillary_variables",
        "+ time:ancillary_variables",
        // the reference says that these are to be added or are a matter of words
        "+ :uuid",
        "+ instrument1:rated_pressure",
        "~ :history",
        "~ :references",
        "~ :source",
        "~ :summary",
      ].sort(),
    );
  });

  test("order of the attributes of each variable", () => {
    for (const [name, { attributes }] of wanted.variables) {
      const mine = [...found.variables.get(name)!.attributes.keys()].filter((key) => attributes.has(key));
      expect(mine).toEqual([...attributes.keys()]);
    }
  });

  test("every number and text", async () => {
    for (const [name, { type }] of wanted.variables) {
      const read = type === "char" ? texts : numbers;
      expect([name, await read(found, name)]).toEqual([name, await read(wanted, name)]);
    }
  });
});

describe("binned product beside its reference file", async () => {
  const wanted = referenceProduct("binned");
  const casts = await referenceCasts("full");
  const means = new Map<string, LayerMeans>(
    casts.map((cast) => [cast.id, layerMeans(cast, { width: 0.5, coordinate: "depth", direction: "down" })]),
  );
  const found = binnedDataset(casts, means, context)!;

  test("variables, types, dimensions and their order", () => {
    const added = ["byte position_qc(profile)", "byte time_qc(profile)"];
    expect(structure(found).variables.filter((line) => !added.includes(line))).toEqual(
      structure(wanted).variables,
    );
    expect([...found.dimensions.keys()]).toEqual([...wanted.dimensions.keys()]);
  });

  test("attributes, except what is told here", () => {
    const ranges = /:(actual_range|geospatial_vertical_(min|max))$/;
    const mine = new Map(
      [...structure(found).attributes].filter(([name]) => !/^(position|time)_qc:/.test(name)),
    );
    const lines = differences(mine, structure(wanted).attributes).filter((line) => !ranges.test(line));
    const means = ["pressure", "temperature", "conductivity", "salinity", "density", "sound_speed"];
    expect(lines).toEqual(
      [
        "+ latitude:ancillary_variables",
        "+ longitude:ancillary_variables",
        "+ time:ancillary_variables",
        "+ :uuid",
        "+ instrument1:rated_pressure",
        "~ :history",
        "~ :references",
        "~ :source",
        "~ :summary",
        // means are over rows flagged 1 or 2, as the design has it, and say so
        ...means.map((name) => `~ ${name}:cell_methods`),
        ...["temperature", "conductivity", "salinity"].map((name) => `~ ${name}_sd:cell_methods`),
      ].sort(),
    );
    expect(mine.get("temperature:cell_methods")).toBe(
      "depth: mean (downcast rows flagged 1 or 2, layers 0.5 m thick)",
    );
  });

  test("layers lie where the reference has them", async () => {
    for (const name of ["row_size", "depth", "depth_bounds", "rows_above_layers"])
      expect([name, await numbers(found, name)]).toEqual([name, await numbers(wanted, name)]);
  });
});

describe("series beside its reference file", async () => {
  const wanted = referenceProduct("series");
  const [cast] = await referenceCasts("series");
  const found = seriesDataset(cast!, context);
  const added = [
    "double end_time()",
    "float pressure_offset()",
    "char source_file(name_length)",
    "byte position_qc()",
    "byte time_qc(time)",
  ];

  test("variables, types, dimensions and their order", () => {
    expect(structure(found).variables.filter((line) => !added.includes(line))).toEqual(
      structure(wanted).variables,
    );
    expect(structure(found).variables).toEqual(expect.arrayContaining(added));
  });

  test("attributes, except what is told here", () => {
    const mine = new Map(
      [...structure(found).attributes].filter(
        ([name]) => !/^(position_qc|time_qc|end_time|pressure_offset|source_file):/.test(name),
      ),
    );
    expect(differences(mine, structure(wanted).attributes)).toEqual(
      [
        "+ :uuid",
        "+ instrument1:rated_pressure",
        "+ latitude:ancillary_variables",
        "+ longitude:ancillary_variables",
        "+ time:ancillary_variables",
        // the sheet of the test names the pier without a remark
        "- platform1:comment",
        "~ :history",
        "~ :id",
        "~ :references",
        "~ :summary",
        "~ :title",
        "~ depth:comment",
        "~ latitude:long_name",
        "~ longitude:long_name",
        "~ nominal_depth:comment",
        "~ nominal_depth:long_name",
        // the judged rows of a series have a value of their own
        "~ segment:flag_meanings",
        "~ segment:flag_values",
        "~ segment:long_name",
      ].sort(),
    );
  });

  test("every number and text", async () => {
    for (const [name, { type }] of wanted.variables) {
      const read = type === "char" ? texts : numbers;
      expect([name, await read(found, name)]).toEqual([name, await read(wanted, name)]);
    }
  });

  test("rows at the fixed depth are told as stay", async () => {
    const stay = seriesDataset(
      {
        ...cast!,
        segments: cast!.segments.map((segment) =>
          segment.kind === "other" ? { ...segment, kind: "stay" as const } : segment,
        ),
      },
      context,
    );
    const before = await numbers(found, "segment");
    expect(await numbers(stay, "segment")).toEqual(before.map((code) => (code === 6 ? 7 : code)));
  });
});
