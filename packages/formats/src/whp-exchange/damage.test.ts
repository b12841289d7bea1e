import { readFileSync } from "node:fs";
import { testData } from "@wherry/testkit";
import { expect, test } from "vitest";
import { attempt, readOk } from "../../test/asking-nobody.ts";
import { mutationsOf, truncationsOf } from "../../test/damage.ts";
import { readWhpExchangeFile } from "./read-settled.ts";

// Damage to a good file of the format: what is read after it stood there, or is told.
const whole = readFileSync(testData("samples", "openformats", "whp_ok_00003_00001_ct1.csv"));
const valuesOf = (bytes: Uint8Array) =>
  readOk(readWhpExchangeFile, bytes, "x_ct1.csv").casts.flatMap(({ columns }) =>
    ["pressure", "temperature", "salinity"].map((name) => [...(columns.get(name)?.values ?? [])]),
  );
const good = valuesOf(whole);

test("cut at every byte: whole rows of the true cast, and a finding", () => {
  let read = 0;
  for (const bytes of truncationsOf(whole)) {
    const result = attempt(readWhpExchangeFile, bytes, "x_ct1.csv");
    if (!result.ok) continue;
    read++;
    for (const [i, found] of valuesOf(bytes).entries())
      expect(found).toEqual(good[i]!.slice(0, found.length));
    // the line END_DATA without its line end is whole
    if (bytes.length < whole.length - 1)
      expect(result.value.findings.map(({ code }) => code)).toContain("whp-exchange/end-data");
  }
  expect(read).toBeGreaterThan(100);
});

test("500 seeded mutations: no throw; taken without a word, at most one value is another", () => {
  for (const { bytes, kind } of mutationsOf(whole, 500)) {
    const result = attempt(readWhpExchangeFile, bytes, "x_ct1.csv");
    if (!result.ok || result.warnings.length > 0) continue;
    const found = valuesOf(bytes);
    if (kind === "lose a block" || kind === "double a block") {
      // whole lines may be lost or stand twice without a trace in this format: no value is a new one
      for (const [i, column] of found.entries())
        expect(
          column.filter((value) => !good[i]?.some((known) => Object.is(known, value))).length,
        ).toBeLessThan(2);
      continue;
    }
    const different = found.flatMap((column, i) =>
      column.filter((value, row) => !Object.is(value, good[i]?.[row])),
    );
    expect(different.length, kind).toBeLessThanOrEqual(1);
  }
});
