/**
 * Times one cast through all steps and tests (`processCast`), and its reading (`understandFile`), beside a short numpy
 * and gsw script that reads the same file and computes salinity, density, sound speed and depth of its rows (Debian:
 * python3-gsw, python3-numpy). Milliseconds of processor time per 2,000 rows, which a busy machine disturbs less than
 * the clock; ratios are ours over the script's, lower is better. The script neither cuts the cast nor judges it.
 *
 * Plain JavaScript run by node itself, so that the packages are timed as they are built: a loader that translates on
 * the way adds a quarter to the times of short functions.
 */
import { spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";
import { defaultSettings, processCast, understandFile } from "@wherry/converter";
import { readSimulated, testData } from "@wherry/testkit";

const NAME = "dev-b-shelf";
const WARM_UP = 500;
const ROUNDS = 101;

const path = testData("casts", `${NAME}.csv`);
const bytes = new Uint8Array(readFileSync(path));
const cast = readSimulated(NAME);
/** @param {number} milliseconds */
const per2000 = (milliseconds) => (milliseconds * 2000) / cast.rows;

/**
 * Median over the rounds, each with fresh inputs: what is remembered of one column must not help the next round.
 *
 * @template T
 * @param {() => T} input
 * @param {(value: T) => void} run
 */
function timed(input, run) {
  /** @type {number[]} */
  const times = [];
  for (let round = -WARM_UP; round < ROUNDS; round++) {
    const value = input();
    const start = process.cpuUsage();
    run(value);
    const { user, system } = process.cpuUsage(start);
    if (round >= 0) times.push((user + system) / 1000);
  }
  return median(times);
}

/** @param {readonly number[]} values */
const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

const processing = timed(
  () => ({ ...cast, elapsed: cast.elapsed?.slice() ?? null, columns: structuredClone(cast.columns) }),
  (fresh) => processCast(fresh, defaultSettings),
);
const context = { sha256: "0".repeat(64), answers: [] };
const reading = timed(
  () => bytes,
  (fresh) => {
    if (!understandFile(fresh, `${NAME}.csv`, context).ok) throw new Error(`${NAME}.csv was not understood`);
  },
);

const script = join(fileURLToPath(new URL(".", import.meta.url)), "cast.py");
if (cast.start === null) throw new Error(`${NAME} has no position`);
const { longitude, latitude } = cast.start;
const library = spawn("/usr/bin/python3", [script, path, String(longitude), String(latitude)], {
  stdio: ["pipe", "pipe", "inherit"],
});
const answers = createInterface({ input: library.stdout })[Symbol.asyncIterator]();
/** What the script says next. */
const answer = async () => {
  const { value, done } = await answers.next();
  if (done) throw new Error("the script's side ended early; are python3-numpy and python3-gsw installed?");
  return JSON.parse(value);
};
const { version } = await answer();
/** @type {{ reading: number, computing: number }[]} */
const rounds = [];
for (let round = -5; round < ROUNDS; round++) {
  library.stdin.write("\n");
  const took = await answer();
  if (took.rows !== cast.rows) throw new Error(`the script read ${took.rows} rows of ${cast.rows}`);
  if (round >= 0) rounds.push(took);
}
library.stdin.end();
const itsReading = median(rounds.map((each) => each.reading));
const itsComputing = median(rounds.map((each) => each.computing));

console.log(`\nOne cast of ${cast.rows} rows, median of ${ROUNDS} rounds after ${WARM_UP}; gsw ${version}`);
console.log("milliseconds of processor time per 2,000 rows; ratio ours / script, lower is better\n");
console.log("part                          ours  numpy and gsw  ratio");
for (const [part, mine, its] of [
  ["reading", reading, itsReading],
  ["steps and tests (goal 2)", processing, itsComputing],
  ["both", reading + processing, itsReading + itsComputing],
])
  console.log(
    [
      part.padEnd(26),
      per2000(mine).toFixed(2).padStart(7),
      per2000(its).toFixed(2).padStart(14),
      (mine / its).toFixed(2).padStart(6),
    ].join(" "),
  );
