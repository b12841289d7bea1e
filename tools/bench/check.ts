/**
 * Times `wherry check` in whole processes, each beside another program in the same run:
 *
 * - a file of 10,000 invented casts of 100 levels in six variables (classic, 28 MB), all rules and physics included,
 *   beside a Python program that reads all its variables with netCDF4 (Debian: python3-netcdf4);
 * - a small file beside an empty Node program.
 *
 * Best of several rounds by the clock; ratios are ours over the other's, lower is better. A machine that is busy with
 * other work shows in both, not always alike.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { wherryProgram } from "@wherry/testkit";
import { writeCasts } from "./check-file.ts";

const READ = `import sys, netCDF4
with netCDF4.Dataset(sys.argv[1]) as dataset:
    for variable in dataset.variables.values():
        variable[:]
`;
const GOAL = 3;

/** Milliseconds from start to end of a program; one that fails is no measure. */
function time(command: string, ...args: string[]): number {
  const start = performance.now();
  const { error, status } = spawnSync(command, args, { stdio: "ignore" });
  const took = performance.now() - start;
  if (error) throw error;
  if (status !== 0) throw new Error(`${command} ${args.join(" ")} ended with status ${status}`);
  return took;
}

const folder = mkdtempSync(join(tmpdir(), "wherry-bench-"));
try {
  const at = (name: string) => join(folder, name);
  await writeCasts(at("large.nc"), 10_000, 100);
  await writeCasts(at("small.nc"), 2, 100);
  writeFileSync(at("read.py"), READ);
  writeFileSync(at("empty.mjs"), "");
  const check = (name: string) => time(process.execPath, wherryProgram, "check", at(name));
  const rows = [
    {
      what: "large file, beside netCDF4 reading it",
      rounds: 3,
      ours: () => check("large.nc"),
      other: () => time("/usr/bin/python3", at("read.py"), at("large.nc")),
    },
    {
      what: "small file, beside an empty Node program",
      rounds: 10,
      ours: () => check("small.nc"),
      other: () => time(process.execPath, at("empty.mjs")),
    },
  ];
  console.log(`\nwherry check, whole processes, milliseconds, Node ${process.version}\n`);
  console.log("what                                       ours  other  ratio  goal");
  for (const { what, rounds, ours, other } of rows) {
    const times = Array.from({ length: rounds }, () => [ours(), other()] as const);
    const mine = Math.min(...times.map(([took]) => took));
    const its = Math.min(...times.map(([, took]) => took));
    console.log(
      [
        what.padEnd(41),
        mine.toFixed(0).padStart(5),
        its.toFixed(0).padStart(6),
        (mine / its).toFixed(2).padStart(6),
        String(GOAL).padStart(5),
      ].join(" "),
    );
  }
} finally {
  rmSync(folder, { recursive: true, force: true });
}
