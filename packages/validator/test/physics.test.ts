import { readFileSync } from "node:fs";
import {
  density,
  densityEos80,
  depthFromPressure,
  practicalSalinity,
  soundSpeedChenMillero,
} from "@wherry/core";
import { type Dataset, parseCdl } from "@wherry/netcdf";
import { testData } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { checkDataset } from "../src/index.ts";

const NOW = Date.parse("2026-11-24T00:00:00Z") / 1000;
const full = readFileSync(testData("reference-products", "full.cdl"), "utf8");

const parsed = (text: string): Dataset => {
  const result = parseCdl(text);
  if (!result.ok) throw new Error(result.problems.map(({ message }) => message).join("; "));
  return result.value;
};

/** The product with the values of one variable changed, stored in its own type. */
function changed(name: string, change: (value: number, index: number) => number): Dataset {
  const dataset = parsed(full);
  return {
    ...dataset,
    read: async (wanted, slab) => {
      const read = await dataset.read(wanted, slab);
      if (!read.ok || wanted !== name) return read;
      const values = read.value as Float32Array;
      return { ...read, value: values.map((value, index) => (value < -9998 ? value : change(value, index))) };
    },
  };
}

const physics = async (dataset: Dataset): Promise<string[]> =>
  (await checkDataset(dataset, { path: "full.nc", now: NOW, ruleSets: ["physics"] }))
    .filter(({ level }) => level !== "advice")
    .map(({ rule, key, where }) => `${rule} ${key} ${where.variable ?? ""}`);

describe("slips planted in a product of ours, each with the rule that must tell", () => {
  test.each([
    ["conductivity", "in mS cm-1", (v: number) => v * 10, "physics/salinity unit conductivity"],
    ["conductivity", "a tenth", (v: number) => v / 10, "physics/salinity unit conductivity"],
    ["conductivity", "in uS cm-1", (v: number) => v * 1e4, "physics/range unit conductivity"],
    [
      "temperature",
      "in degrees Fahrenheit",
      (v: number) => v * 1.8 + 32,
      "physics/salinity unit temperature",
    ],
    ["temperature", "tenfold", (v: number) => v * 10, "physics/salinity unit temperature"],
    ["temperature", "a hundredth", (v: number) => v / 100, "physics/salinity unit temperature"],
    ["salinity", "as a fraction", (v: number) => v / 1000, "physics/salinity unit salinity"],
    ["salinity", "a tenth", (v: number) => v / 10, "physics/salinity unit salinity"],
    ["conductivity", "a thousandth", (v: number) => v / 1000, "physics/salinity unit conductivity"],
    ["pressure", "in hPa", (v: number) => v * 100, "physics/pressure-depth unit pressure"],
    ["pressure", "in bar", (v: number) => v / 10, "physics/pressure-depth unit pressure"],
    ["depth", "in centimetres", (v: number) => v * 100, "physics/pressure-depth unit pressure"],
    ["depth", "in kilometres", (v: number) => v / 1000, "physics/pressure-depth unit pressure"],
    ["density", "in g cm-3", (v: number) => v / 1000, "physics/range unit density"],
    ["temperature", "half a degree off", (v: number) => v + 0.5, "physics/salinity column salinity"],
    ["salinity", "0.1 off", (v: number) => v + 0.1, "physics/salinity column salinity"],
    ["salinity", "hundredfold", (v: number) => v * 100, "physics/range unit salinity"],
    ["pressure", "in kPa", (v: number) => v * 10, "physics/pressure-depth unit pressure"],
    ["pressure", "in psi", (v: number) => v * 1.450377, "physics/pressure-depth unit pressure"],
    ["depth", "in feet", (v: number) => v / 0.3048, "physics/pressure-depth feet depth"],
    ["density", "as sigma", (v: number) => v - 1000, "physics/range unit density"],
    ["density", "0.5 off", (v: number) => v + 0.5, "physics/density column density"],
    ["sound_speed", "in feet", (v: number) => v / 0.3048, "physics/range unit sound_speed"],
    ["sound_speed", "2 m/s off", (v: number) => v + 2, "physics/sound-speed column sound_speed"],
    [
      "salinity",
      "one value of its own",
      (v: number, i: number) => (i === 40 ? v + 1 : v),
      "physics/salinity differs salinity",
    ],
  ] as const)("%s %s", async (name, _, change, told) => {
    expect(await physics(changed(name, change))).toContain(told);
  });

  test("unchanged, nothing is told", async () => expect(await physics(parsed(full))).toEqual([]));
});

describe("slopes by which storage is allowed for are upper bounds over the ocean", () => {
  const grid = [0, 2.5, 10, 25, 42].flatMap((SP) =>
    [-2, 10, 25, 35].flatMap((t) => [0, 2000, 10_000].map((p) => ({ SP, t, p }))),
  );
  const slope = (f: (x: number) => number, x: number, h: number) => Math.abs((f(x + h) - f(x - h)) / (2 * h));
  test.each(grid)("SP $SP, $t deg C, $p dbar", ({ SP, t, p }) => {
    const C = Math.max(1, SP * 1.3);
    expect(slope((x) => densityEos80(x, t, p), Math.max(1, SP), 0.1)).toBeLessThan(0.85);
    expect(slope((x) => densityEos80(SP, x, p), t, 0.1)).toBeLessThan(0.45);
    expect(slope((x) => density(SP, t, x), p + 1, 0.5)).toBeLessThan(5.3e-3);
    expect(slope((x) => soundSpeedChenMillero(x, t, p), Math.max(1, SP), 0.1)).toBeLessThan(1.6);
    expect(slope((x) => soundSpeedChenMillero(SP, x, p), t, 0.1)).toBeLessThan(5.6);
    expect(slope((x) => soundSpeedChenMillero(SP, t, x), p + 1, 0.5)).toBeLessThan(0.02);
    expect(slope((x) => depthFromPressure(x, 45), p + 1, 0.5)).toBeLessThan(1.03);
    const limit = practicalSalinity(C, t, p) <= 42;
    if (limit) {
      expect(slope((x) => practicalSalinity(x, t, p), C, 0.1)).toBeLessThan(1.6);
      expect(slope((x) => practicalSalinity(C, x, p), t, 0.1)).toBeLessThan(1.6);
      expect(slope((x) => practicalSalinity(C, t, x), p + 1, 0.5)).toBeLessThan(1e-3);
    }
  });
});
