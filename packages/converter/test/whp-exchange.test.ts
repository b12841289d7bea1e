import { layerMeans } from "@wherry/core";
import { readWhpExchange } from "@wherry/formats";
import { expect, test } from "vitest";
import { whpExchangeFiles } from "../src/writers/whp-exchange.ts";
import { referenceCasts } from "./reference-casts.ts";
import { referenceContext } from "./reference-sheet.ts";

// By WHP-Exchange Format 1.2.1 (2024), Common Format Features, CTD Specific and Quality Codes.

const base = referenceContext();
const context = { ...base, sheet: { ...base.sheet, exchange: { expocode: "99ZZ20240520", stamp: "ABC" } } };
const casts = await referenceCasts("full");
const means = new Map(
  casts.map((cast) => [cast.id, layerMeans(cast, { width: 0.5, coordinate: "depth", direction: "down" })]),
);

const made = whpExchangeFiles(casts, means, context);
const files = made.ok ? made.value : [];

test("there is one file a cast", () => {
  expect(made.ok).toBe(true);
  expect(files.length).toBe(casts.length);
  expect(new Set(files.map(({ name }) => name)).size).toBe(files.length);
});

test.each(files.map((file) => [file.name, file.text] as const))("%s is laid out as described", (_, text) => {
  expect(text).not.toMatch(/\r|\uFEFF/);
  const lines = text.split("\n");
  expect(lines[0]).toMatch(/^CTD,\d{8}ABC$/);
  const count = lines.findIndex((line) => !line.startsWith("#") && !line.startsWith("CTD,"));
  const told = Number(/^NUMBER_HEADERS = (\d+)$/.exec(lines[count]!)![1]);
  const headers = lines.slice(count + 1, count + told).map((line) => line.split(" = "));
  const [names, units, ...rest] = lines.slice(count + told);
  expect(headers.every((pair) => pair.length === 2)).toBe(true);
  for (const name of ["EXPOCODE", "STNNBR", "CASTNO", "DATE", "LATITUDE", "LONGITUDE"])
    expect(headers.filter(([own]) => own === name)).toHaveLength(1);
  expect(names).toBe("CTDPRS,CTDPRS_FLAG_W,CTDTMP,CTDTMP_FLAG_W,CTDSAL,CTDSAL_FLAG_W,CTDNOBS");
  expect(units).toBe("DBAR,,ITS-90,,PSS-78,,");
  expect(rest.slice(-2)).toEqual(["END_DATA", ""]);
  let last = Number.NEGATIVE_INFINITY;
  for (const row of rest.slice(0, -2)) {
    const cells = row.split(",").map((cell) => cell.trim());
    expect(cells).toHaveLength(7);
    for (const cell of cells) expect(cell).toMatch(/^-?\d+(\.\d+)?$/);
    for (const flag of [cells[1], cells[3], cells[5]]) expect(flag).toMatch(/^[1-79]$/);
    expect(Number(cells[0])).toBeGreaterThan(last);
    last = Number(cells[0]);
  }
});

test.each(casts.map((cast) => [cast.id, cast] as const))("%s comes back through the reader", (id, cast) => {
  const file = files.find(({ name }) => name.includes(`_${id}_`))!;
  const read = readWhpExchange(new TextEncoder().encode(file.text), file.name, {
    sha256: "0".repeat(64),
    id,
    timeRole: "start",
  });
  expect(read.ok && read.warnings).toEqual([]);
  const [back] = read.ok ? read.value.casts : [];
  expect(Math.abs(back!.time - cast.time)).toBeLessThan(60);
  expect(back!.start!.latitude).toBeCloseTo(cast.start!.latitude, 6);
  expect(back!.start!.longitude).toBeCloseTo(cast.start!.longitude, 6);
  const layers = means.get(id)!;
  const placed = [...layers.centres.keys()].filter(
    (layer) => !Number.isNaN(layers.columns.get("pressure")!.mean[layer]!),
  );
  for (const [name, step] of [
    ["pressure", 0.01],
    ["temperature", 1e-4],
    ["salinity", 1e-4],
  ] as const) {
    const own = layers.columns.get(name)!;
    const column = back!.columns.get(name)!;
    expect(column.values.length).toBe(placed.length);
    for (const [row, layer] of placed.entries()) {
      const [got, wanted] = [column.values[row]!, own.mean[layer]!];
      if (Number.isNaN(wanted)) expect(got).toBeNaN();
      else expect(Math.abs(got - wanted)).toBeLessThanOrEqual(step / 2 + 1e-9);
      // what passed its tests is "not calibrated" there, which comes back as not evaluated
      const flag = own.flags[layer]!;
      expect(column.flags[row]).toBe(flag === 1 ? 2 : flag);
    }
  }
});

test("hostile words of the sheet stay on their line", () => {
  const title = "evil\nEXPOCODE = 1\r\n\u0000title";
  const hostile = { ...context, sheet: { ...context.sheet, survey: { ...context.sheet.survey, title } } };
  const result = whpExchangeFiles(casts, means, hostile);
  expect(result.ok && result.value[0]!.text.split("\n")[1]).toBe("# evil EXPOCODE = 1 title");
});

test("without a cruise code nothing is written, and a cast without time or position is left out", () => {
  const without = whpExchangeFiles(casts, means, base);
  expect(without.ok ? null : without.problems[0].code).toBe("sheet/expocode-missing");
  const [first, second, ...others] = casts;
  const result = whpExchangeFiles(
    [{ ...first!, time: Number.NaN }, { ...second!, start: null }, ...others],
    means,
    context,
  );
  expect(result.ok && result.value.length).toBe(others.length);
  expect(result.ok && result.warnings.map(({ code }) => code)).toEqual(["whp/left-out", "whp/left-out"]);
});
