import { describe, expect, test } from "vitest";
import type { Column } from "../cast/cast.ts";
import { codeFor, type FlagScheme, flagSchemeOf, primaryFlag } from "./flag-schemes.ts";
import { sourceFlagTest } from "./source-flags.ts";

// Meanings of the codes: WHP-Exchange (WOCE CTD), Argo reference table 2, SeaDataNet L20, World Ocean Database
// documentation; the mapping is a decision of this project, and the table below is that decision.

const context = { comparedWithSamples: false, rangeAlone: false };

const forward: readonly (readonly [FlagScheme, readonly (readonly [string, number])[]])[] = [
  [
    "QARTOD",
    [
      ["1", 1],
      ["2", 2],
      ["3", 3],
      ["4", 4],
      ["9", 9],
    ],
  ],
  [
    "Argo",
    [
      ["0", 2],
      ["1", 1],
      ["2", 1],
      ["3", 3],
      ["4", 4],
      ["5", 1],
      ["8", 3],
      ["9", 9],
    ],
  ],
  [
    "SeaDataNet L20",
    [
      ["0", 2],
      ["1", 1],
      ["2", 1],
      ["3", 3],
      ["4", 4],
      ["5", 1],
      ["6", 3],
      ["7", 3],
      ["8", 3],
      ["A", 3],
      ["B", 1],
      ["Q", 3],
      ["9", 9],
    ],
  ],
  [
    "WOCE CTD",
    [
      ["1", 2],
      ["2", 1],
      ["3", 3],
      ["4", 4],
      ["5", 9],
      ["6", 3],
      ["7", 1],
      ["9", 9],
    ],
  ],
  [
    "WOD",
    [
      ["0", 1],
      ["1", 3],
      ["5", 3],
      ["6", 4],
      ["9", 4],
    ],
  ],
];

describe("flag schemes", () => {
  for (const [scheme, pairs] of forward)
    test.each(pairs)(`${scheme} %s is %i`, (code, flag) =>
      expect(primaryFlag(scheme, code)?.flag).toBe(flag),
    );

  test("what is lost is said: an interpolated value, a probably good one", () => {
    expect(primaryFlag("WOCE CTD", "6")?.lost).toContain("interpolated");
    expect(primaryFlag("Argo", "2")?.lost).toContain("probably good");
    expect(primaryFlag("Argo", "1")?.lost).toBeNull();
  });

  test.each([
    ["QARTOD", ["1", "2", "3", "4", "9"]],
    ["SeaDataNet L20", ["1", "0", "3", "4", "9"]],
    ["Argo", ["1", "0", "3", "4", "9"]],
    ["GTSPP", ["1", "0", "3", "4", "9"]],
    ["WOCE CTD", ["1", "1", "3", "4", "5"]],
    ["WOD", ["0", null, "3", "8", null]],
  ] as const)("primary flags as %s", (scheme, codes) =>
    expect(([1, 2, 3, 4, 9] as const).map((flag) => codeFor(scheme, flag, context).code)).toEqual(codes),
  );

  test("a good value is calibrated in the WOCE scheme only after a comparison with samples", () => {
    expect(codeFor("WOCE CTD", 1, { ...context, comparedWithSamples: true })).toEqual({
      code: "2",
      lost: null,
    });
    expect(codeFor("WOCE CTD", 1, context).lost).not.toBeNull();
  });

  test("whatever survives a way to a scheme and back says so: no loss, no change", () => {
    for (const scheme of ["QARTOD", "SeaDataNet L20", "Argo", "GTSPP", "WOCE CTD", "WOD"] as const)
      for (const flag of [1, 2, 3, 4, 9] as const) {
        const { code, lost } = codeFor(scheme, flag, context);
        if (code !== null && lost === null) expect(primaryFlag(scheme, code)?.flag).toBe(flag);
      }
  });

  test("codes that a scheme does not have, and schemes that nobody named", () => {
    expect(primaryFlag("QARTOD", "5")).toBeNull();
    expect(flagSchemeOf("unknown")).toBeNull();
    expect(flagSchemeOf("WHP CTD flags")).toBe("WOCE CTD");
  });
});

describe("flags of the source as a test", () => {
  const column = (scheme: string, values: readonly string[]): Column => ({
    name: "salinity",
    standardName: null,
    longName: "",
    units: "1",
    values: Float64Array.of(30, 30, 30, Number.NaN, 30),
    flags: new Uint8Array(5),
    source: null,
    sourceFlags: { scheme, header: "F", values },
    tests: new Map(),
    method: null,
  });
  test("mapped; missing by its value, not by its flag; unknown codes are not evaluated", () =>
    expect(sourceFlagTest(column("WOCE CTD", ["2", "4", "9", "2", "x"]))).toEqual(
      Uint8Array.of(1, 4, 2, 9, 2),
    ));
  test("a scheme that is not known is not mapped", () =>
    expect(sourceFlagTest(column("unknown", ["1", "1", "1", "1", "1"]))).toBeNull());
});
