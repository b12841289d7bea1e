import { parseCdl } from "@wherry/netcdf";
import { expect, test } from "vitest";
import { judgeDataset } from "../engine/check-dataset.ts";
import { checkedFile, checkFile } from "../engine/check-file.ts";
import { checkText } from "./check-text.ts";

async function judged(cdl: string, path = "cast.nc") {
  const parsed = parseCdl(cdl);
  if (!parsed.ok) throw new Error("no CDL");
  const { edition, ruleSets, findings } = await judgeDataset(parsed.value, {
    path,
    now: 0,
    ruleSets: ["cf"],
  });
  return checkedFile(path, "netCDF classic", findings, ruleSets, edition);
}

const CDL = `:Conventions = "CF-1.6, Own" ; variables:
  float a ; a:units = "PSU" ; a:long_name = "a" ;
  float b ; b:units = "PSU" ; b:long_name = "b" ;
  float c ;`;

test("worst first, like findings together, sum last", async () => {
  const text = checkText([await judged(CDL)]);
  const lines = text.split("\n");
  expect(lines[0]).toBe("cast.nc");
  expect(text).toContain("CF 1.6, as the file claims");
  expect(lines.filter((line) => line.startsWith("  Error"))).toHaveLength(1);
  expect(text).toMatch(/also: b\n/);
  expect(text.indexOf("  Error")).toBeLessThan(text.indexOf("  Warning"));
  expect(text.indexOf("  Warning")).toBeLessThan(text.indexOf("  Advice"));
  expect(text).toMatch(/1 file checked: 2 errors, 1 warning, 1 advice\.\nNone without error or warning\.\n$/);
  expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(100);
});

test("level and max leave findings out but count them", async () => {
  const file = await judged(CDL);
  const errors = checkText([file], { level: "error" });
  expect(errors).not.toContain("Warning at");
  expect(errors).toContain("2 errors, 1 warning, 1 advice");
  expect(checkText([file], { max: 1 })).toContain("2 kinds of findings more, not written out");
});

test("a file that cannot be read says so, with what to do", async () => {
  const text = checkText([await checkFile(new Uint8Array(), { path: "empty.nc", now: 0 })]);
  expect(text).toContain("This file cannot be read.");
  expect(text).toMatch(/1 cannot be read\.\n$/);
});

test("without files it says so", () => expect(checkText([])).toBe("No file was checked.\n"));
