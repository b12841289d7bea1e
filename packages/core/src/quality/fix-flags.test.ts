import { castOf } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import type { Position } from "../cast/cast.ts";
import { positionFlag, positionFlags, timeFlag } from "./fix-flags.ts";

const fix = (latitude: number, longitude: number, satellites: number | null = 9) => ({
  latitude,
  longitude,
  satellites,
  quality: null,
});

describe("flag of a position", () => {
  test.each<[Position | null, number, string]>([
    [null, 9, "no position"],
    [fix(Number.NaN, 4), 9, "latitude missing"],
    [fix(52, 4, 9), 1, "nine satellites"],
    [fix(52, 4, 4), 1, "four satellites"],
    [fix(52, 4, 3), 3, "three satellites: two-dimensional and weak (common practice, no source)"],
    [fix(52, 4, 0), 3, "no satellite"],
    [fix(52, 4, null), 2, "number not told"],
    [fix(91, 4), 4, "beyond the pole"],
    [fix(52, -180.5), 4, "beyond the date line"],
    [fix(-90, 180), 1, "pole and date line themselves"],
  ])("%j is %i: %s", (position, want) => expect(positionFlag(position)).toBe(want));

  test("a boat does not reach the next cast at 100 m/s", () => {
    const at = (time: number, latitude: number, satellites: number | null = 9) =>
      castOf({}, null, { time, start: fix(latitude, 4, satellites) });
    // one degree of latitude is about 111 km, 0.01 degrees 1.1 km
    const casts = [at(1000, 52.01), at(0, 52), at(2000, 53), at(3000, 53.01, null)];
    expect([...positionFlags(casts)]).toEqual([1, 1, 3, 2]);
  });
});

describe("flag of a time", () => {
  const cast = castOf({}, Float64Array.of(0, 1, 2), { time: 100, endTime: 102 });
  test.each([
    [cast, 1, "start, end and rows in order"],
    [{ ...cast, time: Number.NaN }, 9, "not known"],
    [{ ...cast, timeRole: "unknown" as const }, 2, "not known what it stands for"],
    [{ ...cast, endTime: 50 }, 3, "end before start"],
    [{ ...cast, elapsed: Float64Array.of(0, 2, 1) }, 3, "rows run back"],
    [{ ...cast, elapsed: Float64Array.of(0, 0, 1), endTime: Number.NaN }, 1, "same second, no end"],
    [{ ...cast, time: Date.UTC(1899, 11, 31) / 1000 }, 4, "before anybody measured conductivity at sea"],
    [{ ...cast, time: Date.UTC(1900, 0, 1) / 1000, endTime: Number.NaN }, 1, "the first possible moment"],
  ])("%#: %i, %s", (of, want) => expect(timeFlag(of)).toBe(want));

  test("a cast after the data set was made: one of both moments is wrong", () => {
    expect(timeFlag(cast, 99)).toBe(3);
    expect(timeFlag(cast, 100)).toBe(1);
  });
});
