import { expect, test } from "vitest";
import { readZone, writeZone, zoneAmong } from "./zone.ts";

// offsets of ISO 8601 and RFC 3339; abbreviations are common practice, no source
test.each<[string, number[] | undefined]>([
  ["UTC", [0]],
  ["Z", [0]],
  ["UTC+2", [120]],
  ["UTC-07:00", [-420]],
  ["GMT−3", [-180]],
  ["+09:30", [570]],
  ["+0930", [570]],
  ["MESZ", [120]],
  ["BST", [60, 360]],
  ["-7", undefined],
  ["+15:00", undefined],
  ["local", undefined],
  ["", undefined],
])("readZone(%j)", (text, want) => expect(readZone(text)?.minutes).toEqual(want));

test("bare hours only where the words call them an offset", () =>
  expect(readZone("-7", true)?.minutes).toEqual([-420]));

test.each<[string, number[] | undefined]>([
  ["ROUND OF STATIONS, clock UTC", [0]],
  ["all times are UTC+2", [120]],
  ["UTC = local + 7 h", [-420]],
  ["Heure locale (UTC+2)", [120]],
  ["SST and Z", undefined],
  ["wind WEST 4", undefined],
])("zoneAmong(%j)", (text, want) => expect(zoneAmong(text)?.minutes).toEqual(want));

test.each([
  [0, "+00:00"],
  [-420, "-07:00"],
  [570, "+09:30"],
])("writeZone(%i)", (minutes, want) => {
  expect(writeZone(minutes)).toBe(want);
  expect(readZone(want)?.minutes).toEqual([minutes]);
});
