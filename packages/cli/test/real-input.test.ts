import { readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { inTemporaryFolder, runWherry, sharedPath, testWithShared } from "@wherry/testkit";
import { describe, expect } from "vitest";
import { SHEET } from "./survey-folder.ts";

// Files that nobody here made: the worked example of the WHP-Exchange format description, World Ocean Database,
// Argo and netCDF corpus files (origins stand beside the samples).

const CRASH = /fault of the program|^\s+at .+:\d+:\d+/m;
const folder = sharedPath("samples", "real");
const files =
  folder === null
    ? []
    : readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) =>
        statSync(join(folder, name)).isFile(),
      );

describe("look", () => {
  testWithShared(["samples", "real"], "answers for every real file, in one JSON document", async (real) => {
    for (const name of files) {
      const { status, stdout, stderr } = await runWherry(["look", "--json", join(real, name)]);
      expect(stderr, name).not.toMatch(CRASH);
      expect([0, 3], name).toContain(status);
      expect(JSON.parse(stdout).version, name).toBe(1);
    }
  });
});

describe("check", () => {
  testWithShared(
    ["samples", "real"],
    "answers for every real netCDF file, in one JSON document",
    async (real) => {
      const netcdf = files.filter((name) => /\.(nc\d?)$/.test(name));
      expect(netcdf.length).toBeGreaterThan(10);
      for (const name of netcdf) {
        const { status, stdout, stderr } = await runWherry(["check", "--json", join(real, name)]);
        expect(stderr, name).not.toMatch(CRASH);
        expect([0, 1, 3], name).toContain(status);
        expect(JSON.parse(stdout).files, name).toHaveLength(1);
      }
    },
  );
});

describe("convert", () => {
  const cast = ["samples", "real", "whp", "318M20130321_00001_00002_ct1.csv"];

  testWithShared(
    cast,
    "the published WHP-Exchange example, once what its time stands for is answered",
    (path) =>
      inTemporaryFolder(async (here) => {
        const args = ["convert", path, "--sheet", "survey.yaml", "--out", "result"];
        writeFileSync(join(here, "survey.yaml"), SHEET);
        const asked = await runWherry(args, { cwd: here });
        expect(asked.status).toBe(2);
        expect(asked.stdout).toContain("timeRole");
        writeFileSync(
          join(here, "survey.yaml"),
          `${SHEET}answers:\n  - { about: timeRole, where: "${basename(path)}", value: bottom }\n`,
        );
        const { status, stderr } = await runWherry(args, { cwd: here });
        expect(stderr).toBe("");
        expect(status).toBe(0);
        // First and last row of the example as published, pressure and salinity; its flags are all 2, "acceptable".
        const [head = "", ...rows] = readFileSync(join(here, "result", "quay_full.csv"), "utf8")
          .trimEnd()
          .split("\r\n");
        const column = (name: string) => head.split(",").indexOf(name);
        const cell = (row: number, name: string) => Number(rows[row]?.split(",")[column(name)]);
        expect(rows).toHaveLength(8);
        expect([cell(0, "pressure"), cell(0, "salinity")]).toEqual([2, 34.6935]);
        expect([cell(7, "pressure"), cell(7, "salinity")]).toEqual([16, 34.6916]);
        const original = readFileSync(join(here, "result", "original", basename(path)));
        expect(original.equals(readFileSync(path))).toBe(true);
      }),
  );
});
