import fc from "fast-check";
import { expect, test } from "vitest";
import { floatText } from "./number-text.ts";

test.each([
  { value: Math.fround(0.1), want: "0.1" },
  { value: Math.fround(3.5128), want: "3.5128" },
  { value: 16777216, want: "16777216" },
  { value: -9999, want: "-9999" },
  { value: 0, want: "0" },
])("$value is written $want", ({ value, want }) => {
  expect(floatText(value)).toBe(want);
});

test("every single-precision number reads back as itself", () => {
  fc.assert(
    fc.property(fc.float({ noNaN: true, noDefaultInfinity: true }), (value) => {
      expect(Math.fround(Number(floatText(value))) === value).toBe(true);
    }),
    { numRuns: 2000 },
  );
});
