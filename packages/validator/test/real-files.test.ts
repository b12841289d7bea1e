import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { testWithShared } from "@wherry/testkit";
import { expect } from "vitest";
import { checkFile } from "../src/index.ts";

const NOW = Date.parse("2026-11-24T00:00:00Z") / 1000;

/**
 * Every error on the real files, by rule, as read by a person: each is true. "psu" is no unit of UDUNITS (CF 3.1);
 * casts of profiling floats claim CF-1.6 with featureType but attach no `coordinates` (CF 9.5).
 */
const READ: Readonly<Record<string, readonly string[]>> = {};

testWithShared(["samples", "real"], "real netCDF files are judged without a crash, and each error was read", async (folder) => {
  const names = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => /\.nc\d?$/.test(name));
  expect(names.length).toBeGreaterThan(10);
  const errors: Record<string, string[]> = {};
  for (const name of names.sort()) {
    const { findings } = await checkFile(readFileSync(join(folder, name)), { path: name, now: NOW });
    const rules = findings.filter(({ level }) => level === "error").map(({ rule }) => rule);
    if (rules.length > 0) errors[name] = [...new Set(rules)].sort();
  }
  expect(errors).toEqual(READ);
});
