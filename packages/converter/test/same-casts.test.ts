import { readFileSync } from "node:fs";
import type { Cast } from "@wherry/core";
import { testData } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { type SameCast, sameCasts } from "../src/understand/same-casts.ts";
import { understandFile } from "../src/understand/understand-file.ts";

// Variants of the invented demo casts, each with one thing changed that makes two files of one cast.

const SHA256 = "0".repeat(64);
const names = "01 02 03 04 05 06 07 08 09 10 11 12 13 14 15".split(" ");
const ending = (name: string) =>
  ({
    "03": "txt",
    "04": "txt",
    "10": "txt",
    "13": "txt",
    "05": "tsv",
    "06": "tsv",
    "12": "tsv",
    "07": "dat",
    "08": "dat",
    "14": "dat",
  })[name] ?? "csv";

function castsOf(text: string | Uint8Array, path: string): readonly Cast[] {
  const bytes = typeof text === "string" ? new TextEncoder().encode(text) : text;
  const read = understandFile(bytes, path, { sha256: SHA256, answers: [] });
  if (!read.ok) throw new Error(read.problems[0].message);
  return read.value.casts;
}

const demo = names.flatMap((name) => {
  const file = `oe25_${name}.${ending(name)}`;
  return castsOf(new Uint8Array(readFileSync(testData("demo", file))), file);
});
const original = readFileSync(testData("demo", "oe25_01.csv"), "utf8");
const lines = original.trimEnd().split("\n");
const headAt = lines.findIndex((line) => /temperature/i.test(line) && line.split(",").length > 3);
const [header, head, rows] = [
  lines.slice(0, headAt),
  lines[headAt]!.split(","),
  lines.slice(headAt + 1).map((line) => line.split(",")),
];
const at = (word: RegExp) => head.findIndex((name) => word.test(name));
const [pressure, temperature, conductivity] = [at(/pressure/i), at(/temperature/i), at(/conductivity/i)];

const text = (changes: {
  header?: readonly string[];
  head?: readonly string[];
  rows?: readonly (readonly string[])[];
}) =>
  `${[...(changes.header ?? header), (changes.head ?? head).join(","), ...(changes.rows ?? rows).map((row) => row.join(","))].join("\n")}\n`;

/** The pairs among all demo casts and the variant. */
function pairs(variant: string): SameCast[] {
  return sameCasts([...demo, ...castsOf(variant, "variant.csv")]);
}

const withCell = (index: number, change: (value: number) => string) =>
  rows.map((row) => row.map((cell, k) => (k === index ? change(Number(cell)) : cell)));

/** Means of the way down in layers of half a metre, from the columns alone. */
function layerMeans(): string[][] {
  const p = rows.map((row) => Number(row[pressure]));
  const deepest = p.indexOf(Math.max(...p));
  const soaked = rows.findIndex((_, row) => p[row]! > 2.5);
  const layers: string[][] = [];
  for (let centre = 3; centre <= Math.max(...p) - 0.5; centre += 0.5) {
    const own = rows
      .slice(soaked, deepest + 1)
      .filter((row) => Math.abs(Number(row[pressure]) - centre) < 0.25);
    if (own.length === 0) continue;
    const mean = (index: number) => own.reduce((sum, row) => sum + Number(row[index]), 0) / own.length;
    layers.push([centre.toFixed(1), mean(temperature).toFixed(3), mean(conductivity).toFixed(3)]);
  }
  return layers;
}

test("the demo casts are all different, though some were made at one place", () => {
  expect(demo.length).toBe(15);
  expect(sameCasts(demo)).toEqual([]);
});

describe("one cast in two files", () => {
  test.each<[string, string, RegExp | null]>([
    ["a copy", text({}), null],
    [
      "other rounding",
      text({ rows: withCell(temperature, (value) => value.toFixed(1)) }),
      /temperature with 3 and with 1 decimals/,
    ],
    [
      "degrees Fahrenheit",
      text({
        head: head.map((name, k) => (k === temperature ? "temperature (degF)" : name)),
        rows: withCell(temperature, (value) => (value * 1.8 + 32).toFixed(3)),
      }),
      /temperature in .* and in degF/,
    ],
    [
      "pressure in psi",
      text({
        head: head.map((name, k) => (k === pressure ? "pressure (psi)" : name)),
        rows: withCell(pressure, (value) => (value / 0.6894757).toFixed(3)),
      }),
      /pressure in .* and in psi/,
    ],
    [
      "local time without the zone told right",
      text({ header: header.map((line) => line.replace(/06:12:04/, "08:12:04")) }),
      /the times differ: 2025-05-13T06:12:04Z and 2025-05-13T08:12:04Z/,
    ],
    [
      "the longitude without its sign",
      text({
        header: header.map((line) => line.replace(/-4\.02/g, "4.02").replace(/(4\.02\d+)\s*W/g, "$1 E")),
      }),
      /the longitude has the other sign/,
    ],
    ["every third row", text({ rows: rows.filter((_, row) => row % 3 === 0) }), /has 112 of the 334 rows/],
    [
      "layer means",
      text({
        head: ["pressure (dbar)", "temperature (degC)", "conductivity (mS/cm)"],
        rows: layerMeans(),
      }),
      /has layer means of the rows/,
    ],
  ])("%s", (_, variant, difference) => {
    const found = pairs(variant);
    expect(found.map(({ casts }) => casts.map(({ path }) => path))).toEqual([["oe25_01.csv", "variant.csv"]]);
    expect(found[0]!.how).toBe(difference === null ? "exact" : "near");
    if (difference) expect(found[0]!.differences.join("; ")).toMatch(difference);
  });

  test("values of another place are no second cast", () => {
    const moved = text({ header: header.map((line) => line.replace(/46\.30/g, "47.30")) });
    expect(pairs(moved)).toEqual([]);
  });
});
