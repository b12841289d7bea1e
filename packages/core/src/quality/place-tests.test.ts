import { castOf } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { judgedRegion } from "./place-tests.ts";
import { regionAt, regionalRange } from "./regional-range.ts";
import { surfaceLayer } from "./surface-layer.ts";

describe("regional range", () => {
  // places by any atlas; ranges of doi 10.13155/36230 as quoted in public documents
  test.each([
    ["off Jeddah", 38, 21, "Red Sea", [21.7, 40], [2, 41]],
    ["between Sardinia and Sicily", 11, 38.5, "Mediterranean Sea", [10, 40], [2, 40]],
    ["off Crete", 25, 34.5, "Mediterranean Sea", [10, 40], [2, 40]],
    ["middle of the North Sea", 3, 56, "north-western shelves", [-2, 24], [0, 37]],
    ["Bay of Biscay", -5, 46, "south-western shelves", [-2, 30], [0, 38]],
    ["west of Portugal", -12, 39, "south-western shelves", [-2, 30], [0, 38]],
    ["Barents Sea", 35, 74, "Arctic Ocean", [-1.92, 25], [2, 40]],
    ["Beaufort Sea", -150, 72, "Arctic Ocean", [-1.92, 25], [2, 40]],
    ["South Pacific", -120, -30, "whole ocean", [-2.5, 40], [2, 41]],
  ] as const)("%s", (_, longitude, latitude, name, temperature, salinity) => {
    const region = regionAt(longitude, latitude);
    expect(region.name).toBe(name);
    expect(region.temperature.value).toEqual(temperature);
    expect(region.salinity.value).toEqual(salinity);
  });

  test("limits pass, beyond them is questionable, missing is 9", () =>
    expect([...regionalRange(Float64Array.of(10, 40, 9.99, 40.01, Number.NaN), [10, 40])]).toEqual([
      1, 1, 3, 3, 9,
    ]));

  test("no region without a position, or unless asked for", () => {
    const start = { latitude: 56, longitude: 3, satellites: null, quality: null };
    const cast = castOf({}, null, { start });
    expect(judgedRegion(cast, { regionalRange: true, surfaceLayer: null })?.name).toBe(
      "north-western shelves",
    );
    expect(judgedRegion(cast, { regionalRange: false, surfaceLayer: null })).toBeNull();
    expect(
      judgedRegion({ ...cast, start: null, end: null }, { regionalRange: true, surfaceLayer: null }),
    ).toBeNull();
  });
});

test("surface layer: above the limit questionable, at it good, without a pressure not judged", () =>
  expect([
    ...surfaceLayer(Float64Array.of(1, 1, 1, 1, NaN), Float64Array.of(0.2, 0.5, 3, NaN, 0.2), 0.5),
  ]).toEqual([3, 1, 1, 2, 9]));
