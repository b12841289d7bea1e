import { spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { inTemporaryFolder, root, runWherry, testData } from "@wherry/testkit";
import Papa from "papaparse";
import { describe, expect, test } from "vitest";

// Runs the examples of docs/how-to/open-the-products.md as they stand there, where the programs are installed.

const page = readFileSync(join(root, "docs", "how-to", "open-the-products.md"), "utf8");
const examples = (language: string): readonly string[] =>
  [...page.matchAll(new RegExp(`^\`\`\`${language}\n(.*?)^\`\`\`$`, "gms"))].map(([, code]) => code!);

const LANGUAGES = [
  {
    language: "python",
    needs: "/usr/bin/python3 with netCDF4, xarray and pandas (Debian: python3-netcdf4, python3-xarray)",
    has: ["/usr/bin/python3", "-c", "import netCDF4, xarray, pandas"],
    run: ["/usr/bin/python3", "example"],
    count: 4,
  },
  {
    language: "r",
    needs: "R with ncdf4 (Debian: r-base-core, r-cran-ncdf4)",
    has: ["Rscript", "-e", "library(ncdf4)"],
    run: ["Rscript", "example"],
    count: 2,
  },
  {
    language: "octave",
    needs: "Octave with netcdf (Debian: octave, octave-netcdf)",
    has: ["octave", "--no-gui", "--quiet", "--eval", "pkg load netcdf"],
    run: ["octave", "--no-gui", "--quiet", "example"],
    count: 1,
  },
] as const;

const start = ([command, ...args]: readonly string[], cwd?: string) =>
  spawnSync(command!, args, { encoding: "utf8", ...(cwd === undefined ? {} : { cwd }) });

/** Largest temperature of every cast that is flagged 1 or 2, from the CSV by a parser that is not ours. */
function largestFrom(csv: string): ReadonlyMap<string, number> {
  const largest = new Map<string, number>();
  for (const row of Papa.parse<Record<string, string>>(csv, { header: true, skipEmptyLines: true }).data) {
    const { profile_id: name = "", temperature = "", temperature_qc: flag = "" } = row;
    if (temperature !== "" && Number(flag) <= 2)
      largest.set(name, Math.max(largest.get(name) ?? -Infinity, Number(temperature)));
  }
  return largest;
}

describe.each(LANGUAGES)("$language", ({ language, needs, has, run, count }) => {
  test("the page has the examples", () => expect(examples(language)).toHaveLength(count));

  test("they run, and find the largest temperature of every cast", (context) => {
    if (start(has).status !== 0) return context.skip(`skipped: needs ${needs}`);
    return inTemporaryFolder(async (folder) => {
      const survey = testData("demo");
      const out = join(folder, "out");
      await runWherry([
        "convert",
        survey,
        "--sheet",
        join(survey, "survey.yaml"),
        "--out",
        out,
        "--products",
        "binned,series,csv",
      ]);
      const wanted = largestFrom(readFileSync(join(out, "ostrel-2025_binned.csv"), "utf8"));
      expect(wanted.size).toBe(15);
      for (const code of examples(language)) {
        writeFileSync(join(out, "example"), code);
        const { status, stdout, stderr } = start(run, out);
        expect([status, stderr.replace(/^octave: .*\n/gm, "")]).toEqual([0, ""]);
        if (!code.includes("temperature")) {
          expect(stdout).toContain("2025-05-13 12:00:00");
          continue;
        }
        const found = new Map(
          [...stdout.matchAll(/^(OE25-\d+) (\d+\.\d\d)$/gm)].map(([, name, value]) => [name!, Number(value)]),
        );
        expect([...found.keys()]).toEqual([...wanted.keys()]);
        // printed to two places
        for (const [name, value] of found) expect(Math.abs(value - wanted.get(name)!)).toBeLessThan(0.0051);
      }
    });
  }, 60_000);
});
