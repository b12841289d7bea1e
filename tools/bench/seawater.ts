/**
 * Times the column twins of @wherry/core against the TEOS-10 library (Debian: python3-gsw), which is C:
 *
 *   pnpm bench [POINTS] [--plain]
 *
 * Both compute the same 10 million points, in turns, five times each on one thread. Ratios are ours over the
 * library's, so lower is better; they go by processor time, which a busy machine disturbs less than the clock. The
 * library's functions make a new column for the result, ours fill a given one. Results are compared as well. With
 * --plain the vector twins are left out.
 */
import { spawn } from "node:child_process";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { fileURLToPath } from "node:url";
import * as core from "@wherry/core";

const ROUNDS = 5;
const SAMPLE = 9973;
const args = process.argv.slice(2);
const plain = args.includes("--plain");
const points = Number(args.find((arg) => arg !== "--plain") ?? 1e7);
// the twins are loaded at the first call
if (plain) Reflect.deleteProperty(globalThis, "WebAssembly");

const column = (step: number, low: number, high: number): Float64Array => {
  const values = new Float64Array(points);
  for (let i = 0; i < points; i++) values[i] = ((i * step) % 1) * (high - low) + low;
  return values;
};

// the same columns as in library.py: spread evenly over brackish and sea water, in no order
const SP = column(0.6180339887498949, 0.5, 40);
const t = column(0.7548776662466927, 0, 30);
const p = column(0.5698402909980532, 0, 500);
const [C, SA, CT, out] = [1, 2, 3, 4].map(() => new Float64Array(points)) as [
  Float64Array,
  Float64Array,
  Float64Array,
  Float64Array,
];
core.conductivityFromSalinityColumn(SP, t, p, C);
core.referenceSalinityColumn(SP, SA);
core.conservativeTemperatureColumn(SA, t, p, CT);

const quantities: readonly { name: string; goal: number; run: () => void }[] = [
  { name: "practicalSalinity", goal: 1.1, run: () => core.practicalSalinityColumn(C, t, p, out) },
  { name: "soundSpeed", goal: 1.1, run: () => core.soundSpeedColumn(SA, CT, p, out) },
  {
    name: "conservativeTemperature",
    goal: 1.1,
    run: () => core.conservativeTemperatureColumn(SA, t, p, out),
  },
  { name: "depthFromPressure", goal: 1.1, run: () => core.depthFromPressureColumn(p, 45, out) },
  { name: "absoluteSalinity", goal: 1.3, run: () => core.absoluteSalinityColumn(SP, p, -30, 30, out) },
  { name: "density", goal: 1.1, run: () => core.densityColumn(SA, CT, p, out) },
];

interface Timing {
  readonly processor: number;
  readonly clock: number;
  readonly sample: readonly number[];
}

const script = join(fileURLToPath(new URL(".", import.meta.url)), "library.py");
const library = spawn("/usr/bin/python3", [script, String(points)], { stdio: ["pipe", "pipe", "inherit"] });
const answers = createInterface({ input: library.stdout })[Symbol.asyncIterator]();
const answer = async <T>(): Promise<T> => {
  const { value, done } = await answers.next();
  if (done) throw new Error("the library's side ended early; is python3-gsw installed?");
  return JSON.parse(value) as T;
};
const theirs = (name: string): Promise<Timing> => {
  library.stdin.write(`${name}\n`);
  return answer<Timing>();
};

function ours(run: () => void): Timing {
  const [clock, processor] = [process.hrtime.bigint(), process.cpuUsage()];
  run();
  const { user, system } = process.cpuUsage(processor);
  const seconds = Number(process.hrtime.bigint() - clock) / 1e9;
  const sample = Array.from({ length: Math.ceil(points / SAMPLE) }, (_, i) => out[i * SAMPLE]!);
  return { processor: (user + system) / 1e6, clock: seconds, sample };
}

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;
const nanoseconds = (seconds: number): string => ((seconds * 1e9) / points).toFixed(1);
const heightIsNegative = (name: string): number => (name === "depthFromPressure" ? -1 : 1);

const { version } = await answer<{ version: string }>();
console.log(
  `${points} points, median of ${ROUNDS}; Node ${process.version}, gsw ${version}${plain ? ", without vector twins" : ""}`,
);
console.log("nanoseconds of processor time per point; ratio ours / library, lower is better\n");
console.log("quantity                   ours  library  ratio  (least to most)  by clock  goal    difference");
for (const { name, goal, run } of quantities) {
  // once each before it counts: compilers and first touches of memory
  ours(run);
  await theirs(name);
  const rounds: { mine: Timing; its: Timing }[] = [];
  for (let round = 0; round < ROUNDS; round++) rounds.push({ mine: ours(run), its: await theirs(name) });
  const by = (of: (timing: Timing) => number) => [
    median(rounds.map(({ mine }) => of(mine))),
    median(rounds.map(({ its }) => of(its))),
  ];
  const [mine, its] = by(({ processor }) => processor) as [number, number];
  const [myClock, itsClock] = by(({ clock }) => clock) as [number, number];
  const pairs = rounds.map((round) => round.mine.processor / round.its.processor);
  const { mine: last, its: other } = rounds[0]!;
  const difference = Math.max(
    ...last.sample.map((value, i) => Math.abs(value - heightIsNegative(name) * other.sample[i]!)),
  );
  console.log(
    [
      name.padEnd(24),
      nanoseconds(mine).padStart(6),
      nanoseconds(its).padStart(8),
      (mine / its).toFixed(2).padStart(6),
      `(${Math.min(...pairs).toFixed(2)} to ${Math.max(...pairs).toFixed(2)})`.padStart(16),
      (myClock / itsClock).toFixed(2).padStart(9),
      goal.toFixed(1).padStart(5),
      difference.toExponential(1).padStart(13),
      mine / its <= goal ? "" : " missed",
    ].join(" "),
  );
}
library.stdin.end();
