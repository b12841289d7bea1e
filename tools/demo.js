// Runs the main job on the demo survey: test-data/demo to demo-output, and that to demo-package.zip. Ends with 0 only if
// all went as it must.
import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = join(dirname(fileURLToPath(import.meta.url)), "..");
const program = join(root, "packages", "cli", "dist", "wherry.js");
const survey = join("test-data", "demo");
const out = "demo-output";
const deposit = "demo-package.zip";

/** Runs wherry and gives its exit status; its words go straight to the terminal. */
function wherry(...args) {
  console.log(`\n$ wherry ${args.join(" ")}`);
  const { status, error } = spawnSync(process.execPath, [program, ...args], { cwd: root, stdio: "inherit" });
  if (error) throw error;
  return status;
}

function expectStatus(what, status, expected) {
  if (status === expected) return;
  console.error(`\ndemo: ${what} ended with status ${status}, ${expected} was expected.`);
  process.exit(1);
}

expectStatus(
  "convert",
  wherry("convert", survey, "--sheet", join(survey, "survey.yaml"), "--out", out, "--force"),
  1,
);
console.log("\nStatus 1 is right here: one demo cast was cut off by a dead battery, and that is a finding.");
expectStatus("check", wherry("check", out, "--fail-on", "warning"), 0);
expectStatus("pack", wherry("pack", out, "--out", deposit, "--zip", "--force"), 0);
expectStatus("pack --verify", wherry("pack", "--verify", deposit), 0);

if (!existsSync(join(root, out))) {
  console.error(`demo: ${out} is missing`);
  process.exit(1);
}
console.log(`\nWritten to ${out}/:`);
for (const name of readdirSync(join(root, out)).sort()) {
  const stats = statSync(join(root, out, name));
  console.log(
    stats.isDirectory() ? `  ${name}/` : `  ${name.padEnd(44)} ${String(stats.size).padStart(9)} bytes`,
  );
}
const [page, layers, rows] = ["_report.html", "_binned.csv", "_full.nc"].map((end) =>
  readdirSync(join(root, out)).find((name) => name.endsWith(end)),
);
console.log(`
Open first:
  ${out}/${page}  the survey at a glance, in a browser
  ${out}/${layers}   layer means, in any spreadsheet
  ${out}/${rows}      every row with its flags, in any program that reads netCDF
  ${deposit}      what would go to an archive: all of it, with records, read-me and checksums
The survey is invented. Not for navigation or diving: the hydrographic authority and licensed practice decide.`);
