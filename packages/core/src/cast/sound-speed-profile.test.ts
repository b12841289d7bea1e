import fc from "fast-check";
import { expect, test } from "vitest";
import { soundSpeedChenMillero } from "../seawater/sound-speed-chen-millero.ts";
import type { LayerMeans } from "./layer-means.ts";
import type { MeanColumn } from "./mean-column.ts";
import { soundSpeedAt, soundSpeedProfile, soundSpeedProfileDefaults } from "./sound-speed-profile.ts";

function layersOf(
  columns: Readonly<Record<string, readonly number[]>>,
  flags: readonly number[] = [],
): LayerMeans {
  const count = columns.sound_speed!.length;
  const column = (name: string, values: readonly number[]): [string, MeanColumn] => [
    name,
    {
      name,
      mean: Float64Array.from(values),
      sd: new Float64Array(count),
      count: new Int32Array(count).fill(5),
      flags: Uint8Array.from(values, (value, k) => (Number.isNaN(value) ? 9 : (flags[k] ?? 1))),
    },
  ];
  return {
    width: 1,
    coordinate: "depth",
    direction: "down",
    ownLevels: false,
    centres: Float64Array.from({ length: count }, (_, k) => k + 1),
    bounds: new Float64Array(2 * count),
    columns: new Map(Object.entries(columns).map(([name, values]) => column(name, values))),
    rowsAboveLayers: 0,
    step: { step: "layer means", parameters: {}, counts: {}, words: "" },
  };
}

test("the profile gives every usable layer back within the tolerance, with points of the layers only", () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: 1400, max: 1600, noNaN: true }), { minLength: 1, maxLength: 60 }),
      fc.double({ min: 0, max: 20, noNaN: true }),
      (speeds, tolerance) => {
        const profile = soundSpeedProfile(layersOf({ sound_speed: speeds }), 50, {
          ...soundSpeedProfileDefaults,
          tolerance,
        });
        for (const [k, speed] of speeds.entries())
          expect(Math.abs(soundSpeedAt(profile, k + 1) - speed)).toBeLessThanOrEqual(tolerance + 1e-9);
        for (const [point, layer] of profile.layer.entries()) {
          expect(profile.depth[point]).toBe(layer + 1);
          expect(profile.soundSpeed[point]).toBe(speeds[layer]);
          if (point > 0) expect(profile.depth[point]!).toBeGreaterThan(profile.depth[point - 1]!);
        }
        if (tolerance === 0) expect(profile.depth.length).toBe(speeds.length);
      },
    ),
  );
});

test("a straight line needs its ends only", () => {
  const speeds = Array.from({ length: 20 }, (_, k) => 1480 + 0.5 * k);
  expect([...soundSpeedProfile(layersOf({ sound_speed: speeds }), 50).depth]).toEqual([1, 20]);
});

test("layers without a value or flagged 3 or worse are left out, and nothing is carried unless asked", () => {
  const layers = layersOf({ sound_speed: [1480, Number.NaN, 1600, 1482] }, [1, 1, 4, 2]);
  const profile = soundSpeedProfile(layers, 50, { ...soundSpeedProfileDefaults, tolerance: 0 });
  expect([...profile.depth]).toEqual([1, 4]);
  expect(soundSpeedAt(profile, 0.5)).toBeNaN();
  expect(soundSpeedAt(profile, 4.1)).toBeNaN();
});

test("carried down, sound speed grows with pressure as Chen and Millero's published equation has it", () => {
  const [SP, t] = [34, 8];
  const layers = layersOf({ sound_speed: [1485, 1485], salinity: [SP, SP], temperature: [t, t] });
  const profile = soundSpeedProfile(layers, 45, { tolerance: 0.1, toSurface: true, toDepth: 500 });
  expect([...profile.depth]).toEqual([0, 1, 2, 500]);
  expect([...profile.layer]).toEqual([-1, 0, 1, -1]);
  expect(profile.soundSpeed[0]).toBe(1485);
  // by the TEOS-10 library (python3-gsw 3.6.16) 500 m on latitude 45 are 504.71 dbar, and water of 8 degrees brought
  // there from 2 dbar has 8.0514 degrees
  const change = profile.soundSpeed[3]! - profile.soundSpeed[2]!;
  const expected = soundSpeedChenMillero(SP, 8.0514, 504.71) - soundSpeedChenMillero(SP, t, 2);
  // the two equations part with pressure, by 0.21 m/s at 1000 dbar (TEOS-10 library, SP 35, 10 degrees)
  expect(Math.abs(change - expected)).toBeLessThan(0.15);
});

test("without temperature and salinity nothing is carried down", () => {
  const profile = soundSpeedProfile(layersOf({ sound_speed: [1485, 1486] }), 45, {
    tolerance: 0,
    toSurface: false,
    toDepth: 500,
  });
  expect([...profile.depth]).toEqual([1, 2]);
});
