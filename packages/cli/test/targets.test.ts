import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { inTemporaryFolder, runWherry } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { exportText, lay, SHEET } from "./survey-folder.ts";

// Two casts of one shape, so that their layers have the same levels.

const FILES = {
  "q1.csv": exportText({ name: "Q1" }),
  "q2.csv": exportText({ name: "Q2" }).replace("09:00:00", "11:00:00"),
  "survey.yaml": SHEET,
};
const HDF5 = 0x89;

describe.each([
  ["general", null, null],
  ["ctd-guide", null, null],
  ["us-template", "Profile_Incomplete", "Profile_Orthogonal"],
])("target %s", (target, rows, layers) => {
  test.each(["classic", "netcdf4"])("%s files pass the check", (format) =>
    inTemporaryFolder(async (folder) => {
      lay(folder, FILES);
      const options = ["--sheet", "survey.yaml", "--out", "result", "--target", target, "--format", format];
      const run = await runWherry(["convert", "q1.csv", "q2.csv", ...options], { cwd: folder });
      expect(run).toMatchObject({ status: 0 });
      for (const [name, template] of [
        ["quay_full.nc", rows],
        ["quay_binned.nc", layers],
      ] as const) {
        const bytes = readFileSync(join(folder, "result", name));
        expect(bytes[0] === HDF5).toBe(format === "netcdf4");
        // attributes stand unpacked in both kinds
        const found = /NCEI_NetCDF_(\w+)_Template_v2\.0/.exec(bytes.toString("latin1"))?.[1] ?? null;
        expect([name, found]).toEqual([name, template]);
      }
      const check = await runWherry(["check", "result", "--rules", "cf", "csv", "us-template", "--json"], {
        cwd: folder,
      });
      const { files, skipped } = JSON.parse(check.stdout) as {
        files: { findings: { level: string }[] }[];
        skipped: string[];
      };
      // what describes a table is read with it
      expect(skipped.filter((path) => path.endsWith("-metadata.json"))).toEqual([]);
      const checked = readdirSync(join(folder, "result")).filter((name) => /\.(nc|csv)$/.test(name));
      expect(files).toHaveLength(checked.length);
      const findings = files.flatMap((file) => file.findings).filter(({ level }) => level !== "advice");
      expect(findings).toEqual([]);
    }),
  );
});

test("sheet --check asks for what the target asks for", () =>
  inTemporaryFolder(async (folder) => {
    lay(folder, FILES);
    const check = async (target: string) =>
      (await runWherry(["sheet", "--check", "survey.yaml", "--target", target], { cwd: folder })).stdout;
    expect(await check("us-template")).toMatch(/^warning +Add survey\.sea_name: /m);
    expect(await check("general")).not.toContain("survey.sea_name");
    expect(await check("general")).toMatch(/^advice +Add instruments: /m);
    expect(await check("ctd-guide")).toMatch(/^warning +Add instruments: /m);
  }));

test("a target that is not known is refused with those that are", () =>
  inTemporaryFolder(async (folder) => {
    lay(folder, FILES);
    const run = await runWherry(
      ["convert", "q1.csv", "--sheet", "survey.yaml", "--out", "r", "--target", "x"],
      { cwd: folder },
    );
    expect(run.status).toBe(2);
    expect(run.stderr).toContain("general, ctd-guide, us-template");
    expect(readdirSync(folder)).not.toContain("r");
  }));

test("a document of one's own is a target", () =>
  inTemporaryFolder(async (folder) => {
    const document = {
      version: 1,
      id: "harbour",
      title: "What an invented harbour archive asks",
      document: { name: "Invented harbour archive", edition: "1" },
      products: {
        target: "harbour",
        layouts: { profiles: "multidimensional", profile: "single", series: "single" },
        attributes: [{ on: "file", name: "harbour_form", value: "padded", layout: "incomplete" }],
        sheet: [{ key: "survey.program", level: "error" }],
      },
      rules: [
        {
          id: "form",
          level: "warning",
          basis: "clause",
          clause: "1",
          title: "The form is named",
          why: "The archive sorts by it.",
          remedy: "Set harbour_form.",
          message: "no form is named",
          each: "file",
          must: { properties: { attributes: { required: ["harbour_form"] } } },
        },
      ],
    };
    const { products: _, ...withoutProducts } = document;
    lay(folder, {
      ...FILES,
      "harbour.json": JSON.stringify(document),
      "rules-only.json": JSON.stringify(withoutProducts),
    });
    const options = ["--sheet", "survey.yaml", "--out", "result", "--products", "full"];
    const convert = (target: string) =>
      runWherry(["convert", "q1.csv", "q2.csv", ...options, "--target", target], { cwd: folder });
    expect(await convert("rules-only.json")).toMatchObject({
      status: 2,
      stderr: expect.stringContaining("Add products with target and layouts"),
    });
    expect(await convert("harbour.json")).toMatchObject({ status: 0 });
    const check = await runWherry(["check", "result", "--rules", "harbour.json"], { cwd: folder });
    expect(check.stdout).toContain("no error, no warning, no advice");
    const sheet = await runWherry(["sheet", "--check", "survey.yaml", "--target", "harbour.json"], {
      cwd: folder,
    });
    expect(sheet).toMatchObject({
      status: 1,
      stdout: expect.stringMatching(/^error +Add survey\.program: /m),
    });
  }));

test("packed files pass the check and differ in nothing but the type", () =>
  inTemporaryFolder(async (folder) => {
    lay(folder, FILES);
    const convert = (out: string, ...options: string[]) =>
      runWherry(["convert", "q1.csv", "q2.csv", "--sheet", "survey.yaml", "--out", out, ...options], {
        cwd: folder,
      });
    expect(await convert("plain")).toMatchObject({ status: 0 });
    expect(await convert("packed", "--packed")).toMatchObject({ status: 0 });
    const check = await runWherry(["check", "packed", "--rules", "cf", "csv", "flags", "physics"], {
      cwd: folder,
    });
    expect(check).toMatchObject({ status: 0, stdout: expect.stringContaining("no error, no warning") });
    const bytes = (out: string, name: string) => readFileSync(join(folder, out, name));
    expect(bytes("packed", "quay_full.csv").equals(bytes("plain", "quay_full.csv"))).toBe(true);
    expect(bytes("packed", "quay_full.nc").length).toBeLessThan(bytes("plain", "quay_full.nc").length);
  }));
