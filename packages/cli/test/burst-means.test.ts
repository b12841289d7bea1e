import { copyFileSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { inTemporaryFolder, runWherry, testData } from "@wherry/testkit";
import Papa from "papaparse";
import { expect, test } from "vitest";

type Row = Readonly<Record<string, string>>;

const table = (text: string, delimiter: string): readonly Row[] =>
  Papa.parse<Row>(text, { header: true, skipEmptyLines: true, delimiter }).data;

/** Rows of the export by the minute of their burst: temperatures as printed, at the fixed depth. */
function sourceBursts(): ReadonlyMap<string, readonly number[]> {
  const text = readFileSync(testData("bursts", "oe25_p2.tsv"), "utf8");
  const bursts = new Map<string, number[]>();
  for (const row of table(text.slice(text.indexOf("time [UTC]")), "\t")) {
    const minute = row["time [UTC]"]!.slice(0, "2025-05-13T12:00".length);
    bursts.set(minute, [...(bursts.get(minute) ?? []), Number(row["temperature [degC]"])]);
  }
  return bursts;
}

test.each(["general", "us-template"])("means of bursts beside the rows of a series, for %s", (target) =>
  inTemporaryFolder(async (folder) => {
    for (const name of ["oe25_p2.tsv", "survey.yaml"])
      copyFileSync(testData("bursts", name), join(folder, name));
    const run = await runWherry(
      ["convert", "oe25_p2.tsv", "--sheet", "survey.yaml", "--out", "result", "--target", target],
      { cwd: folder },
    );
    expect(run).toMatchObject({ status: 0 });
    const check = await runWherry(["check", "result"], { cwd: folder });
    expect(check).toMatchObject({
      status: 0,
      stdout: expect.stringContaining("no error, no warning, no advice"),
    });

    const written = (end: string) =>
      readFileSync(join(folder, "result", `ostrel-2025-bursts_series_OE25-P2${end}`), "utf8");
    const means = table(written("_bursts.csv"), ",");
    const source = sourceBursts();
    expect(means).toHaveLength(source.size);
    // the first burst begins on the way down, the last ends on the way up: all others are whole
    for (const mean of means.slice(1, -1)) {
      const rows = source.get(mean.time_utc!.slice(0, "2025-05-13T12:00".length))!;
      expect(Number(mean.temperature_count)).toBe(rows.length);
      const expected = rows.reduce((sum, value) => sum + value, 0) / rows.length;
      expect(Math.abs(Number(mean.temperature) - expected)).toBeLessThanOrEqual(2e-6);
      expect(Number(mean.time_bounds_upper) - Number(mean.time_bounds_lower)).toBe(19);
    }
    // every row of the record stays in the file of the series
    const rows = [...source.values()].reduce((sum, burst) => sum + burst.length, 0);
    expect(table(written(".csv"), ",")).toHaveLength(rows);
  }),
);

test("nothing is averaged unless the recipe asks for it", () =>
  inTemporaryFolder(async (folder) => {
    copyFileSync(testData("bursts", "oe25_p2.tsv"), join(folder, "oe25_p2.tsv"));
    const sheet = readFileSync(testData("bursts", "survey.yaml"), "utf8");
    writeFileSync(join(folder, "survey.yaml"), sheet.replace("mean: true", "mean: false"));
    const run = await runWherry(["convert", "oe25_p2.tsv", "--sheet", "survey.yaml", "--out", "result"], {
      cwd: folder,
    });
    expect(run).toMatchObject({ status: 0 });
    expect(run.stdout + run.stderr).not.toMatch(/_bursts\./);
  }));
