import type { Answer } from "@wherry/formats";
import { describe, expect, test } from "vitest";
import { lookDocument } from "../src/understand/report/look-document.ts";
import { exports } from "./judge-messy.ts";
import { asked, understoodPath } from "./understand-samples.ts";

// Each question of the sample exports, answered by what the truth file says: then nothing is open and the fact is right.

function answered(name: string, ...given: readonly [about: string, value: string, cast?: string][]) {
  const answers = given.map(
    ([about, value, cast]): Answer => ({ about, where: cast ? `${name}#${cast}` : name, value }),
  );
  const file = understoodPath(`${exports.folder}/${name}`, answers);
  expect(asked(file)).toEqual([]);
  expect(file.findings.map(({ code }) => code)).not.toContain("answers/not-needed");
  return lookDocument([file]).files[0]!;
}

const START = "2023-06-02T08:30:00Z";

describe("times", () => {
  test.each<[string, readonly [string, string][], string]>([
    ["serial-days-of-unknown-epoch.csv", [["units:Date/Time", "days since 1899-12-30"]], START],
    [
      "serial-days-of-unknown-epoch.csv",
      [["units:Date/Time", "days since 1904-01-01"]],
      "2027-06-03T08:30:00Z",
    ],
    ["serial-days-under-time.csv", [["units:time", "days since 1899-12-30"]], START],
    ["day-of-year-with-fraction.csv", [["units:day of year (UTC)", "1.5"]], START],
    ["day-of-year-with-fraction.csv", [["units:day of year (UTC)", "0.5"]], "2023-06-03T08:30:00Z"],
    ["day-of-year-without-year.csv", [["time", START]], START],
    ["clock-fast.csv", [["clockCorrection", "-252 s"]], "2023-06-02T08:25:48Z"],
    ["clock-slow-by.csv", [["clockCorrection", "0 s"]], START],
    ["start-is-approximate.csv", [["time", "2023-06-02T08:40:00Z"]], "2023-06-02T08:40:00Z"],
    ["seconds-that-begin-late.csv", [["time", START]], START],
    ["utc-is-local-minus-two.csv", [["timeZone", "+02:00"]], START],
    ["zone-ist.csv", [["timeZone", "+05:30"]], "2023-06-02T03:00:00Z"],
    ["two-digit-year.csv", [["dateOrder", "day-month-year"]], "2007-06-05T08:30:00Z"],
  ])("%s: %j", (name, given, start) => expect(answered(name, ...given).casts[0]?.start).toBe(start));

  test("one start for several casts: each gets its own", () => {
    const name = "casts-by-a-column-one-start.csv";
    const { casts } = answered(name, ["time", START, "A7"], ["time", "2023-06-02T09:00:00Z", "A8"]);
    expect(casts.map(({ start }) => start)).toEqual([START, "2023-06-02T09:00:00Z"]);
  });
});

describe("positions", () => {
  test.each<[string, readonly [string, string][], readonly (number | null)[]]>([
    ["swapped-beyond-the-pole.csv", [["position", "47.50100, -122.30200"]], [47.501, -122.302, null, null]],
    ["end-fix-forty-kilometres-off.csv", [["endPosition", "none"]], [51.201, -4.302, null, null]],
    [
      "end-fix-with-the-other-sign.csv",
      [["endPosition", "51.20140, -4.30210"]],
      [51.201, -4.302, 51.2014, -4.3021],
    ],
    ["position-is-approximate.csv", [["position", "51.2, -4.3"]], [51.2, -4.3, null, null]],
    ["old-datum.csv", [["position", "51.2003, -4.3035"]], [51.2003, -4.3035, null, null]],
    ["letter-o-alone.csv", [["hemisphere", "west"]], [51.201, -4.302, null, null]],
    ["packed-in-columns-near-the-equator.csv", [["position", "0.5, 9.302"]], [0.5, 9.302, null, null]],
  ])("%s: %j", (name, given, want) => {
    const [cast] = answered(name, ...given).casts;
    expect([cast?.latitude, cast?.longitude, cast?.endLatitude, cast?.endLongitude]).toEqual(want);
  });
});

describe("columns", () => {
  // expected values by the definitions of the units, as in the truth file
  test.each<[string, readonly [string, string][], string, string | null, number]>([
    ["pressure-in-bar-called-dbar.csv", [["units:pressure [dbar]", "bar"]], "pressure [dbar]", "dbar", 0.2],
    ["depth-in-feet-called-metres.csv", [["units:depth [m]", "ft"]], "depth [m]", "m", 0.656 * 0.3048],
    ["fahrenheit-called-celsius.csv", [["units:temp [degC]", "degF"]], "temp [degC]", "degree_C", 16.782778],
    [
      "siemens-per-metre-called-ms.csv",
      [["units:conductivity [mS/cm]", "S/m"]],
      "conductivity [mS/cm]",
      "S m-1",
      1.9532,
    ],
    ["heights-below-zero.csv", [["depthSign", "upward"]], "depth [m]", "m", 0.2],
    ["bare-ec.csv", [["conductivityKind", "in situ"]], "EC mS/cm", "S m-1", 1.9532],
    [
      "nines-that-nobody-names.csv",
      [["missingMarker:temperature [degC]", "99.9"]],
      "temperature [degC]",
      "degree_C",
      16.8,
    ],
    [
      "one-column-with-points-among-commas.csv",
      [["decimalSign:Leitfähigkeit [mS/cm]", "decimal"]],
      "Leitfähigkeit [mS/cm]",
      "S m-1",
      1.9532,
    ],
    [
      "micro-sign-lost.csv",
      [["units:conductivity [?S/cm]", "uS/cm"]],
      "conductivity [?S/cm]",
      "S m-1",
      1.9532,
    ],
  ])("%s: %j", (name, given, header, units, first) => {
    const column = answered(name, ...given).casts[0]?.columns.find((each) => each.header === header);
    expect(column?.units).toBe(units);
    expect(column?.first).toBeCloseTo(first, 3);
  });
});
