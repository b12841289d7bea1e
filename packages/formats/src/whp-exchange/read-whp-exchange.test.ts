import { readFileSync } from "node:fs";
import { temperatureFrom68 } from "@wherry/core";
import { testData } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { readWhpExchange } from "./read-whp-exchange.ts";

// Own invented cast in the format of WHP-Exchange Format 1.2.1 (2024); each test changes one thing about it.
const WHOLE = readFileSync(testData("samples", "openformats", "whp_ok_00003_00001_ct1.csv"), "utf8");
const read = (text: string, timeRole?: "start" | "bottom" | "end") =>
  readWhpExchange(new TextEncoder().encode(text), "x_ct1.csv", {
    sha256: "0".repeat(64),
    id: "x_ct1",
    ...(timeRole ? { timeRole } : {}),
  });
const change = (from: string | RegExp, to: string) => {
  const changed = WHOLE.replace(from, to);
  expect(changed).not.toBe(WHOLE);
  return read(changed);
};

test("the whole file: no warning, flags kept and mapped", () => {
  const result = read(WHOLE);
  expect(result.ok && result.warnings).toEqual([]);
  const cast = result.ok ? result.value.casts[0] : undefined;
  expect(cast?.state).toEqual({
    processing: "averaged",
    pressureZeroed: true,
    lagCorrected: true,
    direction: "unknown",
  });
  const salinity = cast?.columns.get("salinity");
  // source flags 3 and 6 in rows 7 and 8: questionable, and interpolated, which never becomes good
  expect(salinity?.sourceFlags).toMatchObject({ scheme: "WOCE CTD", header: "CTDSAL_FLAG_W" });
  expect([...(salinity?.sourceFlags?.values ?? [])].slice(5, 9)).toEqual(["2", "3", "6", "2"]);
  expect([...(salinity?.flags ?? [])].slice(5, 9)).toEqual([1, 3, 3, 1]);
  expect(cast?.columns.get("temperature")?.flags[4]).toBe(9);
  expect([...(cast?.lines ?? [])].slice(0, 2)).toEqual([15, 16]);
});

test("what its time stands for is asked unless it is told", () => {
  const [open, told] = [read(WHOLE), read(WHOLE, "end")];
  expect(open.ok && open.value.questions.map(({ about, casts }) => [about, casts])).toEqual([
    ["timeRole", ["x_ct1"]],
  ]);
  expect(told.ok && told.value.questions).toEqual([]);
  expect(told.ok && told.value.casts[0]?.endTime).toBe(Date.UTC(2023, 5, 14, 7, 12) / 1000);
});

describe("breaks of the format are problems with a place", () => {
  test.each<[string, string | RegExp, string, string, number | undefined]>([
    ["identifier", "CTD,2023", "CTX,2023", "whp-exchange/identifier", 1],
    ["no header count", "NUMBER_HEADERS = 10\n", "", "whp-exchange/number-headers", 3],
    [
      "header count two too small",
      "NUMBER_HEADERS = 10",
      "NUMBER_HEADERS = 8",
      "whp-exchange/number-headers",
      3,
    ],
    [
      "header count too large",
      "NUMBER_HEADERS = 10",
      "NUMBER_HEADERS = 11",
      "whp-exchange/number-headers",
      3,
    ],
    ["no expocode", "EXPOCODE = 99ZZ20230614", "SHIP = INVENTED", "whp-exchange/header-missing", 3],
    ["a header twice", "SECT_ID = INLET", "STNNBR = 4", "whp-exchange/header-twice", 6],
    ["no day of the calendar", "DATE = 20230614", "DATE = 20230631", "whp-exchange/date", 8],
    ["no time of day", "TIME = 0712", "TIME = 2460", "whp-exchange/time", 9],
    ["latitude beyond the pole", "LATITUDE = 51.2034", "LATITUDE = 95.2034", "whp-exchange/position", 10],
    ["longitude in letters", "LONGITUDE = -4.3101", "LONGITUDE = 4.3101 W", "whp-exchange/position", 11],
    ["an empty name", "CTDTMP,CTDTMP_FLAG_W", ",CTDTMP_FLAG_W", "whp-exchange/names", 13],
    ["a name twice", "CTDSAL,CTDSAL_FLAG_W", "CTDTMP,CTDSAL_FLAG_W", "whp-exchange/name-twice", 13],
    ["a unit too few", "DBAR,,ITS-90,,PSS-78,", "DBAR,,ITS-90,,PSS-78", "whp-exchange/unit-width", 14],
    ["temperature in K of no scale", "ITS-90", "PARSEC", "whp-exchange/unit", 14],
    ["a flag outside 1 to 9", "15.1389,2", "15.1389,0", "whp-exchange/flag", 15],
    ["a plus sign", "16.6345", "+16.634", "whp-exchange/number", 15],
    ["an exponent", "16.6345", "1.66e1", "whp-exchange/number", 15],
    ["pressure that falls", "      3.0,2", "      1.5,2", "whp-exchange/pressure-falls", 17],
    ["no pressure", "CTDPRS,CTDPRS_FLAG_W", "CTDXXX,CTDXXX_FLAG_W", "whp-exchange/no-pressure", undefined],
  ])("%s", (_, from, to, code, line) => {
    const result = change(from, to);
    expect(result.ok).toBe(false);
    const found = result.ok ? undefined : result.problems.find((problem) => problem.code === code);
    expect(found?.where.line).toBe(line);
    expect(found?.remedy).toBeTruthy();
  });

  test("all problems are told at once", () => {
    const result = read(
      WHOLE.replace("DATE = 20230614", "DATE = 2023").replace("51.2034", "95").replace("16.6345", "16,63"),
    );
    expect(!result.ok && result.problems.length).toBeGreaterThanOrEqual(2);
  });
});

describe("what the format once allowed, or can be read without doubt, is a warning or a finding", () => {
  test.each<[string, string | RegExp, string, string]>([
    ["CRLF", /\n/g, "\r\n", "whp-exchange/line-end"],
    ["byte-order mark", /^/, "\uFEFF", "whp-exchange/byte-order-mark"],
    [
      "a header count that forgot itself",
      "NUMBER_HEADERS = 10",
      "NUMBER_HEADERS = 9",
      "whp-exchange/number-headers-short",
    ],
    ["a free header", "SECT_ID = INLET", "INSTRUMENT_ID = 0417", "whp-exchange/free-header"],
    ["no TIME", "TIME = 0712", "SECTOR = 0712", "whp-exchange/no-time"],
    ["no END_DATA", "END_DATA\n", "", "whp-exchange/end-data"],
    ["a short row", "      3.0,2,  15.2795,2,", "      3.0,2,", "whp-exchange/row-width"],
    ["a value flagged as not sampled", "16.6345,2", "16.6345,9", "whp-exchange/flag-and-value"],
  ])("%s", (_, from, to, code) => {
    const result = change(from, to);
    expect(result.ok && result.warnings.map((warning) => warning.code)).toContain(code);
  });

  test("a value that is there and was flagged missing counts as not evaluated", () => {
    const result = change("16.6345,2", "16.6345,5");
    expect(result.ok && result.value.casts[0]?.columns.get("temperature")?.flags[0]).toBe(2);
  });

  test("lines behind END_DATA are passed over", () => {
    const result = read(`${WHOLE}anything, at all\n1,2,3\n`);
    expect(result.ok && result.value.casts[0]?.rows).toBe(12);
  });
});

test("-999 is missing by value, however it is padded", () => {
  const result = change("    -999,9", "-999.0000,9");
  expect(result.ok && result.value.casts[0]?.columns.get("temperature")?.values[4]).toBeNaN();
});

test("IPTS-68 becomes ITS-90", () => {
  const result = change("ITS-90", "IPTS-68");
  const column = result.ok ? result.value.casts[0]?.columns.get("temperature") : undefined;
  // t90 = t68 / 1.00024 (Saunders 1990, WOCE Newsletter 10)
  expect(column?.values[0]).toBe(temperatureFrom68(16.6345));
  expect(column?.source).toMatchObject({ units: "IPTS-68", first: 16.6345, decimals: 4 });
});

test("parameters that the reader does not know pass through with their units", () => {
  const wide = WHOLE.replace("CTDSAL_FLAG_W\n", "CTDSAL_FLAG_W,CTDFLUOR\n")
    .replace("PSS-78,\n", "PSS-78,,0-5VDC\n")
    .replace(/^( +\d.*)$/gm, "$1,0.125");
  const result = read(wide);
  expect(result.ok && result.value.casts[0]?.columns.get("ctdfluor")).toMatchObject({
    standardName: null,
    units: "V",
    source: { units: "0-5VDC" },
  });
});
