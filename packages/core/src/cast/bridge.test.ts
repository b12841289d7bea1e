import { expect, test } from "vitest";
import { bridge } from "./bridge.ts";

const seconds = Float64Array.of(0, 1, 2, 4, 5);

test("rows left out and missing rows lie on the line between their neighbours in time", () => {
  const bridged = bridge(Float64Array.of(0, 99, Number.NaN, 8, 9), seconds, Uint8Array.of(0, 1, 0, 0, 0));
  expect([...bridged]).toEqual([0, 2, 4, 8, 9]);
});

test("at the ends the nearest value stands", () =>
  expect([...bridge(Float64Array.of(7, 1, 2, 3, Number.NaN), seconds, Uint8Array.of(1, 0, 0, 0, 0))]).toEqual(
    [1, 1, 2, 3, 3],
  ));

test("nothing left is missing throughout", () =>
  expect([...bridge(new Float64Array(5), seconds, new Uint8Array(5).fill(1))].every(Number.isNaN)).toBe(
    true,
  ));
