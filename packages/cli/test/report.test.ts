import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { inTemporaryFolder, runWherry } from "@wherry/testkit";
import { expect, test } from "vitest";
import { exportText, lay, SHEET } from "./survey-folder.ts";

const survey = { "casts/q1.csv": exportText(), "survey.yaml": SHEET };
const convert = (...more: string[]) => ["convert", "casts", "--sheet", "survey.yaml", ...more];
const ring = [
  [-4.09, 46.285],
  [-4.085, 46.285],
  [-4.085, 46.3],
  [-4.09, 46.285],
];
const shore = (coordinates: unknown) => JSON.stringify({ type: "Polygon", coordinates });

test("the report is written with the rest, with a shore of one's own, and left out on request", () =>
  inTemporaryFolder(async (folder) => {
    lay(folder, { ...survey, "shore.geojson": shore([ring]) });
    const { status } = await runWherry(convert("--out", "out", "--shoreline", "shore.geojson"), {
      cwd: folder,
    });
    expect(status).toBe(0);
    const page = readFileSync(join(folder, "out", "quay_report.html"), "utf8");
    expect(page).toContain("Shore: the file given for this survey.");
    expect(page).toContain("Casts at an invented quay");
    await runWherry(convert("--out", "bare", "--products", "full"), { cwd: folder });
    expect(existsSync(join(folder, "bare", "quay_full.nc"))).toBe(true);
    expect(existsSync(join(folder, "bare", "quay_report.html"))).toBe(false);
  }));

test.each([
  ["metres instead of degrees", shore([[[500_000, 5_100_000]]]), "degrees east and north", 2],
  ["no GeoJSON", '{"land": true}', "no GeoJSON object", 2],
  ["no JSON", "land", "no JSON", 3],
])("a shore that is %s: nothing written", (_, text, words, expected) =>
  inTemporaryFolder(async (folder) => {
    lay(folder, { ...survey, "shore.geojson": text });
    const { status, stderr } = await runWherry(convert("--out", "out", "--shoreline", "shore.geojson"), {
      cwd: folder,
    });
    expect(status).toBe(expected);
    expect(stderr).toContain(words);
    expect(existsSync(join(folder, "out"))).toBe(false);
  }),
);
