import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { inTemporaryFolder, runWherry } from "@wherry/testkit";
import { expect, test } from "vitest";
import { exportText, lay, SHEET } from "./survey-folder.ts";

// A person's flags, from the command to the product.

const judge = (cwd: string, ...args: string[]) =>
  runWherry(["judge", ...args, "--who", "Ines Invented"], { cwd });
const convert = (cwd: string, out: string, sheet = "survey.yaml", ...more: string[]) =>
  runWherry(["convert", "casts", "-s", sheet, "-o", out, ...more], { cwd });

/** A survey whose sheet lists its cast. */
async function listed(cwd: string): Promise<void> {
  lay(cwd, { "casts/q1.csv": exportText(), "survey.yaml": SHEET });
  expect((await convert(cwd, "first")).status).toBe(0);
  writeFileSync(join(cwd, "survey.yaml"), readFileSync(join(cwd, "first", "survey.yaml")));
}

/** Cells of a column of the full CSV by source line. */
function columnByLine(cwd: string, folder: string, name: string): Map<string, string> {
  const [header, ...rows] = readFileSync(join(cwd, folder, "quay_full.csv"), "utf8")
    .trim()
    .split("\r\n");
  const names = header!.split(",");
  const cells = rows.map((row) => row.split(","));
  return new Map(cells.map((row) => [row[names.indexOf("source_line")]!, row[names.indexOf(name)]!]));
}

const flagged = [
  "--cast",
  "Q1",
  "--quantity",
  "temperature",
  "--lines",
  "90-95",
  "--flag",
  "4",
  "--why",
  'weed, "thick"',
];

test("a judgement is written, applied, recorded and packed; undone, the bytes are as before", () =>
  inTemporaryFolder(async (cwd) => {
    await listed(cwd);
    expect((await convert(cwd, "plain")).status).toBe(0);
    const run = await judge(cwd, "survey.yaml", ...flagged);
    expect(run.status, run.stderr).toBe(0);
    expect(run.stdout).toContain("j1");
    expect((await convert(cwd, "judged")).status).toBe(0);
    const flags = columnByLine(cwd, "judged", "temperature_qc");
    expect(["90", "95"].map((line) => flags.get(line))).toEqual(["4", "4"]);
    expect(columnByLine(cwd, "judged", "salinity_qc").get("92")).toBe("4");
    expect(columnByLine(cwd, "judged", "temperature")).toEqual(columnByLine(cwd, "plain", "temperature"));
    const record = readFileSync(join(cwd, "judged", "quay_processing.json"), "utf8");
    expect(record).toContain("Ines Invented");
    const metadata = readFileSync(join(cwd, "judged", "quay_full.csv-metadata.json"), "utf8");
    expect(metadata).toContain("flagged 4 (bad) by Ines Invented");
    const kept = readFileSync(join(cwd, "judged", "judgements.jsonl"), "utf8");
    expect(kept).toBe(readFileSync(join(cwd, "judgements.jsonl"), "utf8"));

    expect((await convert(cwd, "again")).status).toBe(0);
    for (const name of ["quay_full.nc", "quay_binned.nc", "quay_processing.json"])
      expect(
        readFileSync(join(cwd, "again", name)).equals(readFileSync(join(cwd, "judged", name))),
        name,
      ).toBe(true);

    const undone = await judge(cwd, "survey.yaml", "--undo", "j1", "--why", "it was the water");
    expect(undone.status, undone.stderr).toBe(0);
    expect(readFileSync(join(cwd, "judgements.jsonl"), "utf8").startsWith(kept)).toBe(true);
    expect((await convert(cwd, "undone")).status).toBe(0);
    for (const name of ["quay_full.nc", "quay_processing.json"])
      expect(
        readFileSync(join(cwd, "undone", name)).equals(readFileSync(join(cwd, "plain", name))),
        name,
      ).toBe(true);
    const packed = await runWherry(["pack", "undone", "-o", "bag"], { cwd });
    expect(packed.stdout).toContain("read again and whole");
    expect(readFileSync(join(cwd, "bag", "data", "judgements.jsonl"), "utf8")).toContain('"undo":"j1"');
  }));

test("a source that changed since is told, and the judgement is not applied: 1", () =>
  inTemporaryFolder(async (cwd) => {
    await listed(cwd);
    expect((await judge(cwd, "survey.yaml", ...flagged)).status).toBe(0);
    writeFileSync(join(cwd, "casts", "q1.csv"), exportText({ rows: 138 }));
    const run = await convert(cwd, "changed");
    expect(run.status).toBe(1);
    expect(run.stdout).toContain("another state of the source file");
    expect(columnByLine(cwd, "changed", "temperature_qc").get("92")).not.toBe("4");
  }));

test("--judgements names another file, and it must be there", () =>
  inTemporaryFolder(async (cwd) => {
    await listed(cwd);
    expect((await judge(cwd, "survey.yaml", ...flagged, "--judgements", "mine.jsonl")).status).toBe(0);
    expect((await convert(cwd, "without")).status).toBe(0);
    expect(columnByLine(cwd, "without", "temperature_qc").get("92")).not.toBe("4");
    expect((await convert(cwd, "with", "survey.yaml", "--judgements", "mine.jsonl")).status).toBe(0);
    expect(columnByLine(cwd, "with", "temperature_qc").get("92")).toBe("4");
    expect((await convert(cwd, "gone", "survey.yaml", "--judgements", "gone.jsonl")).status).toBe(3);
  }));

test.each([
  [
    "no cast of that name",
    ["--cast", "Q2", "--quantity", "temperature", "--lines", "1-2", "--flag", "4"],
    "Q1",
  ],
  ["no range", ["--cast", "Q1", "--quantity", "temperature", "--flag", "4"], "--lines"],
  ["two ranges", [...flagged.slice(0, 8), "--pressure", "1-2"], "--pressure"],
  [
    "a range that is none",
    ["--cast", "Q1", "--quantity", "temperature", "--lines", "a-b", "--flag", "4"],
    "120-133",
  ],
  [
    "a flag that is none",
    ["--cast", "Q1", "--quantity", "temperature", "--lines", "1-2", "--flag", "9"],
    "--flag",
  ],
  ["an undoing of nothing", ["--undo", "j7"], "j7"],
  ["an undoing with a flag", ["--undo", "j1", "--flag", "4"], "--undo"],
])("%s: 2, and nothing is written", (_, args, words) =>
  inTemporaryFolder(async (cwd) => {
    lay(cwd, {
      "survey.yaml": `${SHEET}casts:\n  - { id: Q1, file: q1.csv, sha256: "${"a".repeat(64)}" }\n`,
    });
    const run = await judge(cwd, "survey.yaml", ...args, "--why", "x");
    expect(run.status, run.stderr).toBe(2);
    expect(run.stderr).toContain(words);
    expect(() => readFileSync(join(cwd, "judgements.jsonl"))).toThrow();
  }),
);
