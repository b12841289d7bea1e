import { expect, test } from "vitest";
import { boundsText, longitudeRange } from "./coverage.ts";

test.each([
  { longitudes: [3.1, 3.0, 3.2], west: 3.0, east: 3.2 },
  { longitudes: [179.9, -179.8, 179.7], west: 179.7, east: -179.8 },
  { longitudes: [-10, 10], west: -10, east: 10 },
  { longitudes: [5], west: 5, east: 5 },
])("longitudes $longitudes lie from $west to $east", ({ longitudes, west, east }) => {
  expect(longitudeRange(longitudes)).toEqual({ west, east });
});

test("bounds are a point, a line or a closed ring, latitude first", () => {
  expect(boundsText(50, 50, 3, 3)).toBe("POINT (50 3)");
  expect(boundsText(50, 50, 3, 4)).toBe("LINESTRING (50 3, 50 4)");
  expect(boundsText(50, 51, 3, 4)).toBe("POLYGON ((50 3, 51 3, 51 4, 50 4, 50 3))");
});
