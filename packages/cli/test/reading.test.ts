import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { inTemporaryFolder, runWherry } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { exportText, SHEET } from "./survey-folder.ts";

/** Converts one export with some answers in the sheet. */
async function convert(here: string, text: string, answers: readonly string[], out = "result") {
  writeFileSync(join(here, "a.csv"), text);
  const lines =
    answers.length === 0 ? "" : `answers:\n${answers.map((answer) => `  - ${answer}\n`).join("")}`;
  writeFileSync(join(here, "survey.yaml"), SHEET + lines);
  return runWherry(["convert", "a.csv", "--sheet", "survey.yaml", "--out", out, "--force"], { cwd: here });
}

/** A variable of a written file, as ncdump of the netCDF library prints it. */
const dumped = (here: string, variable: string) =>
  /data:\s+\S+ = ([^;]*)/.exec(
    execFileSync("ncdump", ["-v", variable, "-p", "9,17", join(here, "result", "quay_full.nc")], {
      encoding: "utf8",
    }),
  )?.[1];

describe("what an export says about itself is not passed over", () => {
  test("a clock that was fast holds the cast back; the answer moves its time", () =>
    inTemporaryFolder(async (here) => {
      const text = `logger clock fast by 90 s\n${exportText()}`;
      const asked = await convert(here, text, []);
      expect(asked.status).toBe(2);
      expect(asked.stdout).toContain('{ about: clockCorrection, where: "a.csv", value: "-90 s" }');
      const answered = await convert(here, text, [
        '{ about: clockCorrection, where: "a.csv", value: "-90 s" }',
      ]);
      expect(answered.status).toBe(0);
      // 2025-05-13T08:58:30Z
      expect(dumped(here, "time")).toContain(String(Date.UTC(2025, 4, 13, 8, 58, 30) / 1000));
    }));

  test("flags of no named scheme hold the cast back until someone names it", () =>
    inTemporaryFolder(async (here) => {
      const text = exportText()
        .replace("temperature (degC),", "temperature (degC),qc,")
        .replace(/^(\d[\d.]*,[\d.]+,[\d.]+),/gm, "$1,2,");
      const asked = await convert(here, text, []);
      expect(asked.status).toBe(2);
      expect(asked.stdout).toContain("flagScheme");
      const answered = await convert(here, text, [
        '{ about: "flagScheme:qc", where: "a.csv", value: unknown }',
      ]);
      expect(answered.status).toBe(0);
    }));

  test("an answer for a file that did not need it is a finding: status 1, and all is written", () =>
    inTemporaryFolder(async (here) => {
      const { status, stdout } = await convert(here, exportText(), [
        '{ about: timeZone, where: "a.csv", value: "+02:00" }',
      ]);
      expect(status).toBe(1);
      expect(stdout).toContain("the answer on timeZone was not used");
      expect(dumped(here, "time")).toContain(String(Date.UTC(2025, 4, 13, 9) / 1000));
    }));
});
