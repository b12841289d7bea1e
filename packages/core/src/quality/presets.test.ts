import { describe, expect, test } from "vitest";
import { presets, type Threshold } from "./presets.ts";

const thresholds = (value: unknown, path: string): [string, Threshold<unknown>][] => {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return [];
  if ("status" in value) return [[path, value as unknown as Threshold<unknown>]];
  return Object.entries(value).flatMap(([key, child]) => thresholds(child, `${path}.${key}`));
};

describe.each(Object.values(presets))("preset $name", (preset) => {
  test("every threshold has a unit and a status", () => {
    const all = thresholds(preset, preset.name);
    expect(all.length).toBeGreaterThan(15);
    for (const [, { unit, status }] of all) {
      expect(unit).not.toBe("");
      expect(["source", "quoted", "memory", "house"]).toContain(status);
    }
  });

  test("expected ranges lie within sensor ranges", () => {
    for (const { sensor, expected } of Object.values(preset.ranges)) {
      if (expected === null) continue;
      expect(expected.value[0]).toBeGreaterThanOrEqual(sensor.value[0]);
      expect(expected.value[1]).toBeLessThanOrEqual(sensor.value[1]);
    }
  });
});

test("no open-ocean limit judges an estuary or a lake", () => {
  expect(presets.estuary.ranges.salinity.expected!.value[0]).toBe(0);
  expect(presets.fresh.ranges.salinity.expected!.value[0]).toBe(0);
  expect(presets.estuary.spikeVertical).toEqual({});
});
