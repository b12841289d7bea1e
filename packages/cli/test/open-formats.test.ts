import { copyFileSync, existsSync, readFileSync, writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import { inTemporaryFolder, runWherry, sharedPath, testData, testWithShared } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { SHEET } from "./survey-folder.ts";

// Files in published formats with invented data and truths of their own (test-data/samples/openformats/truth.json),
// from the file to a checked product.

const sample = (name: string) => testData("samples", "openformats", name);

/** A CSV product as cells by column; its cells hold neither commas nor quotes here. */
function table(path: string) {
  const [head = "", ...rows] = readFileSync(path, "utf8").trimEnd().split("\r\n");
  const names = head.split(",");
  return rows.map((row) => {
    const cells = row.split(",");
    return (name: string) => cells[names.indexOf(name)] ?? "no such column";
  });
}

async function convert(here: string, files: readonly string[], answers: readonly string[]) {
  for (const file of files) copyFileSync(file, join(here, basename(file)));
  const lines = answers.length > 0 ? `answers:\n${answers.map((line) => `  - ${line}\n`).join("")}` : "";
  writeFileSync(
    join(here, "survey.yaml"),
    `${SHEET}  summary: Invented casts in published formats.\n${lines}`,
  );
  const names = files.map((file) => basename(file));
  return runWherry(["convert", ...names, "--sheet", "survey.yaml", "--out", "result", "--force"], {
    cwd: here,
  });
}

/** Findings of our checks on the products by level. */
async function levels(here: string): Promise<readonly string[]> {
  const { stdout } = await runWherry(["check", "--json", "result"], { cwd: here });
  const { files } = JSON.parse(stdout) as { files: { path: string; findings: { level: string }[] }[] };
  // originals that came as netCDF are checked too, and are not ours
  const ours = files.filter(({ path }) => !path.includes("original"));
  expect(ours).toHaveLength(4);
  return ours.flatMap(({ findings }) => findings.map(({ level }) => level));
}

test("World Ocean Database: a cast without a time waits, and answers let both through", () =>
  inTemporaryFolder(async (here) => {
    const file = sample("wod_two_casts.dat");
    const role = '{ about: timeRole, where: "wod_two_casts.dat", value: start }';
    const some = await convert(here, [file], [role]);
    expect(some.status).toBe(2);
    expect(some.stdout).toContain("9000501");
    expect(new Set(table(join(here, "result", "quay_full.csv")).map((cell) => cell("profile_id")))).toEqual(
      new Set(["9000500"]),
    );
    const time = '{ about: time, where: "wod_two_casts.dat#9000501", value: "2023-06-15T06:00:00Z" }';
    const all = await convert(here, [file], [role, time]);
    expect([all.status, all.stderr]).toEqual([0, ""]);
    const rows = table(join(here, "result", "quay_full.csv"));
    expect(rows).toHaveLength(15 + 18);
    const of = (row: number) =>
      ["time_utc", "pressure", "temperature", "salinity"].map((name) => rows[row]!(name));
    expect(of(0)).toEqual(["2023-06-14T07:15:00Z", "1", "16.637", "15.139"]);
    expect(of(32)).toEqual(["2023-06-15T06:00:00Z", "18.2", "11", "32.569"]);
    // the source's flag 4 of the temperature at level 5 is kept as it came, and the value is not good
    expect(rows[5]!("temperature_source_flag")).toBe("4");
    expect(rows[5]!("temperature_qc")).not.toBe("1");
    expect(await levels(here)).not.toContain("error");
    expect(readFileSync(join(here, "result", "original", basename(file))).equals(readFileSync(file))).toBe(
      true,
    );
  }));

test("WHP-Exchange: single files and an archive, and flags of two schemes are not mixed", () =>
  inTemporaryFolder(async (here) => {
    const files = [
      sample("whp_crlf_ct1.csv"),
      testData("whp-zip", "two_casts_ct1.zip"),
      sample("wod_two_casts.dat"),
    ];
    const asked = await convert(here, files, []);
    expect(asked.status).toBe(2);
    expect(existsSync(join(here, "result"))).toBe(false);
    const { status } = await convert(here, files, [
      '{ about: timeRole, where: "*", value: bottom }',
      '{ about: time, where: "wod_two_casts.dat#9000501", value: "2023-06-15T06:00:00Z" }',
    ]);
    expect(status).toBe(0);
    const rows = table(join(here, "result", "quay_full.csv"));
    const flag = (id: string, row: number) =>
      rows.filter((cell) => cell("profile_id") === id)[row]!("salinity_source_flag");
    expect(flag("whp_crlf_ct1", 6)).toBe("WOCE CTD: 3");
    expect(flag("99ZZ_00004_00001_ct1", 7)).toBe("WOCE CTD: 6");
    expect(flag("9000500", 0)).toBe("WOD: 0");
    expect(await levels(here)).not.toContain("error");
  }));

test("TESAC: the decade is asked, and the product has the time of launch", () =>
  inTemporaryFolder(async (here) => {
    const asked = await convert(here, [sample("tesac_ok.txt")], []);
    expect(asked.status).toBe(2);
    expect(asked.stdout).toContain("decade");
    const { status } = await convert(
      here,
      [sample("tesac_ok.txt")],
      ['{ about: decade, where: "tesac_ok.txt", value: 2023 }'],
    );
    expect(status).toBe(0);
    const rows = table(join(here, "result", "quay_full.csv"));
    expect(rows).toHaveLength(7);
    expect(["time_utc", "depth", "temperature", "salinity"].map((name) => rows[6]!(name))).toEqual([
      "2023-06-14T07:12:00Z",
      "13",
      "11",
      "32.55",
    ]);
    expect(await levels(here)).not.toContain("error");
  }));

test("our own tables are read by their description, and written again as they are", () =>
  inTemporaryFolder(async (here) => {
    const file = sample("wod_two_casts.dat");
    await convert(
      here,
      [file],
      [
        '{ about: timeRole, where: "*", value: bottom }',
        '{ about: time, where: "wod_two_casts.dat#9000501", value: "2023-06-15T06:00:00Z" }',
      ],
    );
    const { status, stdout } = await runWherry(["look", "--json", "result/quay_full.csv"], { cwd: here });
    expect(status).toBe(0);
    const { files } = JSON.parse(stdout) as {
      files: { format: string; casts: { id: string; rows: number }[]; questions: unknown[] }[];
    };
    expect(files[0]).toMatchObject({ format: "CSV with metadata, profile", questions: [] });
    expect(files[0]?.casts.every((cast) => "finished" in cast)).toBe(true);
    expect(files[0]?.casts.map(({ id, rows }) => [id, rows])).toEqual([
      ["9000500", 15],
      ["9000501", 18],
    ]);
    const again = await runWherry(
      ["convert", "result/quay_full.csv", "--sheet", "survey.yaml", "--out", "again"],
      { cwd: here },
    );
    expect([again.status, again.stderr]).toEqual([0, ""]);
    expect(readFileSync(join(here, "again", "quay_full.csv"), "utf8")).toBe(
      readFileSync(join(here, "result", "quay_full.csv"), "utf8"),
    );
  }));

describe("real files that nobody here made", () => {
  testWithShared(
    ["samples", "real", "wod", "iquod.dat"],
    "the World Ocean Database variant with uncertainties",
    (path) =>
      inTemporaryFolder(async (here) => {
        const { status } = await convert(here, [path], ['{ about: timeRole, where: "*", value: start }']);
        expect(status).toBe(0);
        const rows = table(join(here, "result", "quay_full.csv")).filter(
          (cell) => cell("profile_id") === "9615302",
        );
        // real/wod/truth.json, by an independent decoder
        expect(rows).toHaveLength(1000);
        const of = (row: number) => ["temperature", "salinity"].map((name) => Number(rows[row]!(name)));
        expect([of(0), of(999)]).toEqual([
          [-1.6601, 33.9502],
          [1.1173, 34.7222],
        ]);
        expect(await levels(here)).not.toContain("error");
      }),
  );

  testWithShared(["samples", "real", "argo"], "Argo files are looked at as casts", async (folder) => {
    const path = sharedPath("samples", "real", "argo", "D1900857_029.nc") ?? folder;
    const { status, stdout } = await runWherry(["look", "--json", path]);
    const { files } = JSON.parse(stdout) as {
      files: { format: string; casts: { id: string; rows: number }[] }[];
    };
    expect(status).toBe(0);
    expect(files[0]?.format).toBe("Argo profile netCDF");
    expect(files[0]?.casts.map(({ id }) => id)).toEqual(["1900857_029", "1900857_029-2"]);
  });

  testWithShared(
    ["samples", "real", "argo", "D5900865_011.nc"],
    "an Argo file becomes a product with its adjusted values",
    (path) =>
      inTemporaryFolder(async (here) => {
        const asked = await convert(here, [path], []);
        expect([asked.status, asked.stdout.includes("timeRole")]).toEqual([2, true]);
        const { status } = await convert(here, [path], ['{ about: timeRole, where: "*", value: end }']);
        expect(status).toBe(0);
        const rows = table(join(here, "result", "quay_full.csv"));
        expect(rows).toHaveLength(71);
        // PRES_ADJUSTED as the reference netCDF library reads it: 9.7 and 20 dbar; the raw values are 10.2 and 20.5
        expect([rows[0]!("pressure"), rows[1]!("pressure")]).toEqual(["9.7", "20"]);
        expect(await levels(here)).not.toContain("error");
      }),
  );
});
