import { expect, test } from "vitest";
import { type Axis, findCoordinates } from "./position.ts";

// degrees, minutes and seconds by arithmetic; forms are common practice, no source
const signed = (text: string, axis: Axis | null = null) =>
  findCoordinates(text, axis).map(({ degrees, sign }) =>
    sign === null ? null : Math.round(sign * degrees * 1e7) / 1e7,
  );

test.each<[string, (number | null)[]]>([
  ["48° 38,59' N;2° 1,48' W", [48.6431667, -2.0246667]],
  ["51 12.100N 004 18.200W", [51.2016667, -4.3033333]],
  ["34.80123 S\t138.40456 E", [-34.80123, 138.40456]],
  ["N51.2030 W004.2970", [51.203, -4.297]],
  ["N 51.2030 W 004.2970", [51.203, -4.297]],
  ["51-12-20 N 4-18-00 W", [51.2055556, -4.3]],
  ["51°12'20\" N, 4°18'00\" W", [51.2055556, -4.3]],
  ["5112.345,N,00418.200,W", [51.20575, -4.3033333]],
  ["60° 30,0' N 5° 30,0' Ø", [60.5, 5.5]],
  ["2° 1,48' O", [null]],
  ["51.2, -4.3", [51.2, -4.3]],
  ["51.2 4.3", [51.2, 4.3]],
  ["-51.2 S", []],
  ["91.0 N", []],
  ["51 61.0 N", [51]],
])("%j", (text, want) => expect(signed(text)).toEqual(want));

test("a blank between degrees and minutes is believed where the key says latitude", () => {
  expect(signed("51 12.345", "latitude")).toEqual([51.20575]);
  expect(findCoordinates("51 12.345 E", "latitude")).toEqual([]);
});
