/**
 * Times `wherry convert` as built beside the script that a practitioner would write with pandas, gsw and netCDF4
 * (`baseline_pipeline.py` of the shared folder; Debian: python3-pandas, python3-gsw, python3-netcdf4, python3-xarray):
 *
 *   node tools/bench/convert.js [CASTS]
 *
 * Whole processes from start to exit, in turns, the best of three each, on the same invented casts of 500 rows. Ratios
 * are casts in a second, ours over the script's: higher is better.
 */
import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const ROUNDS = 3;
const MOST_MEGABYTES = 250;
const PYTHON = "/usr/bin/python3";
const casts = Number(process.argv[2] ?? 1000);
const here = import.meta.dirname;
const shared = join(process.env.WHERRY_SHARED ?? join(here, "..", "..", "..", "shared"), "bench");
if (!existsSync(shared)) {
  console.log(`\nconvert is not timed: ${shared} with the script to compare with is not there`);
  process.exit(0);
}

const folder = mkdtempSync(join(tmpdir(), "wherry-bench-"));
const input = join(folder, "casts");
const sheet = join(folder, "survey.yaml");
execFileSync(PYTHON, [join(shared, "make_casts.py"), input, "-n", String(casts), "--rows", "500"]);
writeFileSync(sheet, "version: 1\ncreated: 2026-01-31T12:00:00Z\nsurvey:\n  id: bench\n");

const program = join(here, "..", "..", "packages", "cli", "dist", "wherry.js");
const out = join(folder, "out");
const script = (format) => [
  PYTHON,
  join(shared, "baseline_pipeline.py"),
  input,
  out,
  "--writer",
  "netcdf4",
  "--format",
  format,
];
const convert = (...options) => [
  process.execPath,
  program,
  "convert",
  input,
  "--sheet",
  sheet,
  "--out",
  out,
  ...options,
];
const same = ["--per-cast", "--products", "binned,csv"];
const runs = [
  { name: "script, classic", command: script("NETCDF3_64BIT") },
  { name: "script, netCDF-4", command: script("NETCDF4") },
  { name: "same work, classic", command: convert(...same), beside: 0, goal: 6 },
  { name: "same work, two threads", command: convert(...same, "--jobs", "2"), beside: 0 },
  { name: "full set", command: convert("--products", "full,binned,csv"), beside: 0, goal: 3 },
  { name: "same work, netCDF-4", command: convert(...same, "--format", "netcdf4"), beside: 1, goal: 1 },
];

const best = runs.map(() => null);
for (let round = 0; round < ROUNDS; round++)
  for (const [i, { command }] of runs.entries()) {
    rmSync(out, { recursive: true, force: true });
    const took = JSON.parse(
      execFileSync(PYTHON, [join(here, "measure.py"), ...command], { encoding: "utf8" }),
    );
    if (best[i] === null || took.clock < best[i].clock) best[i] = took;
  }
rmSync(folder, { recursive: true });

console.log(`\n${casts} casts of 500 rows, whole processes, best of ${ROUNDS}; Node ${process.version}`);
console.log("casts in a second; ratio ours / script, higher is better\n");
console.log("run                       casts/s  ratio  by processor  goal  peak MB");
for (const [i, { name, beside, goal }] of runs.entries()) {
  const { clock, processor, megabytes } = best[i];
  const other = beside === undefined ? null : best[beside];
  const ratio = other ? (other.clock / clock).toFixed(2) : "";
  const byProcessor = other ? (other.processor / processor).toFixed(2) : "";
  const missed = goal !== undefined && other.clock / clock < goal ? " missed" : "";
  const heavy = other && megabytes > MOST_MEGABYTES ? ` above ${MOST_MEGABYTES}` : "";
  console.log(
    `${name.padEnd(24)} ${(casts / clock).toFixed(1).padStart(8)} ${ratio.padStart(6)} ${byProcessor.padStart(13)} ${String(goal ?? "").padStart(5)} ${megabytes.toFixed(0).padStart(8)}${missed}${heavy}`,
  );
}
