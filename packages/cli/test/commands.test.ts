import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { inTemporaryFolder, runWherry } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { exportText, lay, SHEET } from "./survey-folder.ts";

const COMMANDS = ["look", "sheet", "convert", "check", "explain", "vocabulary"];
const convert = (...more: string[]) => ["convert", "casts", "--sheet", "survey.yaml", ...more];
const survey = {
  "casts/q1.csv": exportText(),
  "casts/q2.csv": exportText({ name: "Q2" }),
  "survey.yaml": SHEET,
};

describe("help", () => {
  test.each([[], ...COMMANDS.map((name) => [name])])(
    "%s has an example and goes to standard output: 0",
    async (...name) => {
      const { status, stdout, stderr } = await runWherry([...name, "--help"]);
      expect([status, stderr]).toEqual([0, ""]);
      expect(stdout).toMatch(/Examples?:\n {2}\$ wherry /);
    },
  );

  test("the program's own says what results are not for", async () => {
    expect((await runWherry(["--help"])).stdout).toMatch(/not for navigation or diving/);
  });
});

describe("wrong usage: 2, told on standard error", () => {
  test.each([
    [["convrt"], "convert"],
    [["look"], "path"],
    [["look", "--explian", "a.csv"], "--explain"],
    [["convert", "a.csv", "--out", "x"], "--sheet"],
    [["convert", "a.csv", "-s", "s.yaml", "-o", "x", "--products", "full,bined"], "binned"],
    [["convert", "a.csv", "-s", "s.yaml", "-o", "x", "--jobs", "0"], "whole number"],
    [["check", "a.nc", "--fail-on", "nothing"], "warning"],
    [["check", "a.nc", "--edition", "2.0"], "1.13"],
    [["explain", "cf/latitude-unit"], "cf/latitude-units"],
    [["sheet"], "--check"],
  ])("%j", async (args, hint) => {
    const { status, stdout, stderr } = await runWherry(args);
    expect(status).toBe(2);
    expect(stdout).toBe("");
    expect(stderr).toContain(hint);
  });
});

test("explain tells rule, source, a passing and a failing example: 0", async () => {
  const { status, stdout } = await runWherry(["explain", "cf/latitude-units"]);
  expect(status).toBe(0);
  expect(stdout).toContain("CF Conventions");
  expect(stdout).toContain("degrees_north");
});

describe("vocabulary", () => {
  test("tells the versions of what ships: 0", async () => {
    const { status, stdout } = await runWherry(["vocabulary", "--json"]);
    expect(status).toBe(0);
    const { vocabularies } = JSON.parse(stdout);
    expect(vocabularies[0]).toMatchObject({
      name: "CF standard names",
      version: "83",
      date: "2023-10-17T15:09:35Z",
    });
    expect(vocabularies[0].entries).toBeGreaterThan(5000);
  });

  test("tells of a name its unit, of an alias the current name: 0", async () => {
    const { status, stdout } = await runWherry([
      "vocabulary",
      "sea_water_practical_salinity",
      "chlorophyll_concentration_in_sea_water",
    ]);
    expect(status).toBe(0);
    expect(stdout).toContain("canonical unit 1");
    expect(stdout).toContain("now mass_concentration_of_chlorophyll_in_sea_water");
  });

  test("offers what is spelt nearly so: 1", async () => {
    const { status, stdout } = await runWherry(["vocabulary", "sea_water_temprature"]);
    expect(status).toBe(1);
    expect(stdout).toContain("sea_water_temperature");
  });

  test("takes another table, or says why it cannot: 3", () =>
    inTemporaryFolder(async (cwd) => {
      lay(cwd, {
        "table.xml": `<standard_name_table><version_number>90</version_number>
<entry id="new_name"><canonical_units>m</canonical_units></entry></standard_name_table>`,
        "no.xml": "nothing",
      });
      const taken = await runWherry(["vocabulary", "new_name", "--vocabulary", "table.xml"], { cwd });
      expect([taken.status, taken.stdout]).toEqual([0, "new_name: canonical unit m\n"]);
      expect((await runWherry(["vocabulary", "--vocabulary", "no.xml"], { cwd })).status).toBe(3);
    }));
});

test("a sheet made from files is accepted by convert, and --check says what an archive still lacks: 1", () =>
  inTemporaryFolder(async (cwd) => {
    lay(cwd, { "casts/q1.csv": exportText() });
    expect((await runWherry(["sheet", "casts", "--out", "new.yaml"], { cwd })).status).toBe(0);
    expect((await runWherry(["sheet", "casts", "--out", "new.yaml"], { cwd })).status).toBe(2);
    const lacks = await runWherry(["sheet", "--check", "new.yaml"], { cwd });
    expect(lacks.status).toBe(1);
    expect(lacks.stdout).toContain("survey.title");
    expect((await runWherry(["convert", "casts", "-s", "new.yaml", "-o", "out"], { cwd })).status).toBe(0);
  }));

test("several jobs, another folder and another day write the same bytes", () =>
  inTemporaryFolder(async (cwd) => {
    lay(cwd, {
      ...survey,
      "elsewhere/casts/q1.csv": exportText(),
      "elsewhere/casts/q2.csv": exportText({ name: "Q2" }),
    });
    lay(cwd, { "elsewhere/survey.yaml": SHEET });
    expect((await runWherry(convert("--out", "one"), { cwd })).status).toBe(0);
    const other = { cwd: join(cwd, "elsewhere"), env: { TZ: "Pacific/Auckland", LANG: "de_DE.UTF-8" } };
    expect((await runWherry(convert("--out", "two", "--jobs", "3"), other)).status).toBe(0);
    const files = (folder: string) =>
      readdirSync(folder, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map((entry) => join(entry.parentPath, entry.name));
    const [one, two] = [join(cwd, "one"), join(cwd, "elsewhere", "two")];
    expect(files(one).map((path) => path.slice(one.length))).toEqual(
      files(two).map((path) => path.slice(two.length)),
    );
    for (const path of files(one)) {
      const twin = readFileSync(join(two, path.slice(one.length)));
      expect(readFileSync(path).equals(twin), path).toBe(true);
    }
  }));

describe("--products and --per-cast", () => {
  test.each([
    [["--products", "binned"], ["quay_binned.nc"]],
    [
      ["--products", "full,csv"],
      ["quay_columns.txt", "quay_full.csv", "quay_full.csv-metadata.json", "quay_full.nc"],
    ],
    [
      ["--products", "full", "--per-cast"],
      ["quay_Q1_full.nc", "quay_Q2_full.nc"],
    ],
  ])("%j", (options, expected) =>
    inTemporaryFolder(async (cwd) => {
      lay(cwd, survey);
      expect((await runWherry(convert("--out", "out", ...options), { cwd })).status).toBe(0);
      const always = ["original", "quay_processing.json", "survey.yaml"];
      expect(readdirSync(join(cwd, "out")).sort()).toEqual([...expected, ...always].sort());
    }),
  );
});

test("a newer standard-name table is named in what is written, and checked with", () =>
  inTemporaryFolder(async (cwd) => {
    const table =
      "# CF standard name table version 999\nname\tcanonical_units\talias_of\nsea_water_temperature\tK\t\n";
    lay(cwd, { ...survey, "names.tsv": table, "broken.tsv": "no table\n" });
    expect((await runWherry(convert("--out", "out", "--vocabulary", "names.tsv"), { cwd })).status).toBe(0);
    expect(readFileSync(join(cwd, "out", "quay_full.nc"), "latin1")).toContain("CF Standard Name Table v999");
    const checked = await runWherry(["check", "out", "--vocabulary", "names.tsv", "--json"], { cwd });
    const { files } = JSON.parse(checked.stdout) as {
      files: { findings: { where: { variable?: string } }[] }[];
    };
    const variables = files.flatMap(({ findings }) => findings.map(({ where }) => where.variable));
    expect(variables).toContain("salinity"); // its standard name is not in this table
    expect(variables).not.toContain("temperature");
    const broken = await runWherry(["check", "out", "--vocabulary", "broken.tsv"], { cwd });
    expect([broken.status, broken.stderr.includes("broken.tsv")]).toEqual([3, true]);
  }));

test("results go to standard output alone, one JSON document however many files", () =>
  inTemporaryFolder(async (cwd) => {
    lay(cwd, survey);
    const { status, stdout } = await runWherry(["look", "casts/q1.csv", "casts/q2.csv", "--json"], { cwd });
    expect(status).toBe(0);
    expect(JSON.parse(stdout).files).toHaveLength(2);
    expect(stdout).not.toContain("\u001b");
  }));

test("check writes the verdict in every form, by the endings of the names, and takes waivers", () =>
  inTemporaryFolder(async (cwd) => {
    const bare = Uint8Array.from([0x43, 0x44, 0x46, 1, ...new Array<number>(28).fill(0)]);
    lay(cwd, {
      "empty.nc": new TextDecoder().decode(bare),
      "waivers.json": JSON.stringify({
        version: 1,
        waivers: [{ rule: "cf/conventions", reason: "a test of the format", by: "K. Invented" }],
      }),
    });
    const reports = ["page.html", "letter.md", "run.sarif", "run.xml", "run.json"];
    const { status } = await runWherry(["check", "empty.nc", "--rules", "cf", "--report", ...reports], {
      cwd,
    });
    expect(status).toBe(1);
    for (const name of reports)
      expect(readFileSync(join(cwd, name), "utf8"), name).toMatch(/cf\/conventions/);
    const waived = await runWherry(["check", "empty.nc", "--rules", "cf", "--waivers", "waivers.json"], {
      cwd,
    });
    expect(waived.status).toBe(0);
    const unknown = await runWherry(["check", "empty.nc", "--report", "verdict.pdf"], { cwd });
    expect([unknown.status, unknown.stderr]).toEqual([2, expect.stringContaining(".html")]);
  }));
