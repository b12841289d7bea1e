import { describe, expect, test } from "vitest";
import type { Column } from "./cast.ts";
import { printedResolution } from "./printed-resolution.ts";

// Units by definition: 1 S m-1 = 10 mS cm-1, 1 m of depth is itself, a Fahrenheit degree is 5/9 of a Celsius one.

function column(units: string | null, printed: readonly number[], decimals: number, factor: number): Column {
  return {
    name: "conductivity",
    standardName: null,
    longName: "",
    units: "mS cm-1",
    values: Float64Array.from(printed, (value) => value * factor),
    flags: new Uint8Array(printed.length).fill(2),
    source: {
      header: "C",
      units,
      index: 0,
      decimals,
      significantDigits: 5,
      first: printed[0]!,
      last: printed.at(-1)!,
    },
    sourceFlags: null,
    tests: new Map(),
    method: null,
  };
}

describe("smallest printed step", () => {
  test("a record that is 0 in air at both ends keeps the factor of its unit", () =>
    expect(printedResolution(column("S/m", [0, 3.1234, 0], 4, 10))).toBeCloseTo(1e-3, 12));
  test("without a unit the ends of the record tell the factor", () =>
    expect(printedResolution(column(null, [1, 3.12, 2], 2, 10))).toBeCloseTo(0.1, 12));
  test("without a unit and with equal ends the digits printed are the bound", () =>
    expect(printedResolution(column(null, [0, 3.1234, 0], 4, 0.1))).toBeCloseTo(0.31234e-5, 12));
  test("degrees Fahrenheit in a Celsius column", () => {
    const fahrenheit = column("degF", [50.0, 51.1, 50.0], 1, 1);
    expect(printedResolution({ ...fahrenheit, units: "degree_C" })).toBeCloseTo(0.5 / 9, 12);
  });
  test("a computed column has none", () =>
    expect(printedResolution({ ...column("S/m", [1, 2], 1, 10), source: null })).toBeNaN());
});
