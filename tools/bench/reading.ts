/**
 * Times the reading of numeric text beside pandas' C engine (Debian: python3-pandas):
 *
 *   tsx --conditions=wherry-source tools/bench/reading.ts [MEGABYTES]
 *
 * Both read the same invented file from the disk, in turns, five times each: header, five columns of numbers. "text to
 * columns" is what pandas does too: layout, rows, numbers. "whole understanding" is `understandFile` with all it finds
 * out about the cast. Ratios are ours over pandas', in MB/s, so higher is better; they go by processor time, which a
 * busy machine disturbs less than the clock. The sums of the columns are compared.
 */
import { spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { understandFile } from "@wherry/converter";
import { findBlocks } from "../../packages/converter/src/understand/blocks.ts";
import { guessDecimal } from "../../packages/converter/src/understand/decimal-sign.ts";
import { findLayout } from "../../packages/converter/src/understand/delimiter.ts";
import { openText } from "../../packages/converter/src/understand/encoding.ts";
import { TextLines } from "../../packages/converter/src/understand/lines.ts";
import { tableOf } from "../../packages/converter/src/understand/read-table.ts";

const ROUNDS = 5;
const GOAL = 1.8;
const megabytes = Number(process.argv[2] ?? 20);

const HEAD = [
  "# cast: invented, to time the reading of numbers",
  "# start time: 2024-03-01T06:00:00Z",
  "# start latitude: 58.100000",
  "# start longitude: 5.200000",
  "elapsed_s,pressure_dbar,temperature_c,conductivity_ms_cm,turbidity_ntu",
];
const folder = mkdtempSync(join(tmpdir(), "wherry-bench-"));
const path = join(folder, "cast.csv");
let seed = 1;
const noise = (): number => {
  seed = (Math.imul(seed, 1_664_525) + 1_013_904_223) >>> 0;
  return seed / 2 ** 32 - 0.5;
};
const rows: string[] = [];
const count = Math.round((megabytes * 1e6) / 36);
for (let i = 0; i < count; i++) {
  const depth = (1 - Math.abs(i / count - 0.5) * 2) * 80 + 0.1 * Math.sin(i / 5) + 0.3;
  rows.push(
    [
      (i / 4).toFixed(2),
      (depth + 0.01 * noise()).toFixed(3),
      (14 - depth / 12 + 0.01 * noise()).toFixed(4),
      (24 + depth / 8 + 0.01 * noise()).toFixed(4),
      (1.5 + noise() / 10).toFixed(2),
    ].join(","),
  );
}
writeFileSync(path, `${[...HEAD, ...rows].join("\n")}\n`);
rows.length = 0;
const { size } = statSync(path);

interface Timing {
  readonly clock: number;
  readonly processor: number;
  readonly sums: readonly number[];
}

function timed(read: () => readonly Float64Array[]): Timing {
  const [clock, processor] = [performance.now(), process.cpuUsage()];
  const columns = read();
  const { user, system } = process.cpuUsage(processor);
  const seconds = (performance.now() - clock) / 1000;
  const sums = columns.map((values) => values.reduce((sum, value) => sum + value, 0));
  return { clock: seconds, processor: (user + system) / 1e6, sums };
}

function toColumns(): readonly Float64Array[] {
  const { bytes } = openText(readFileSync(path));
  const layout = findLayout(bytes)!;
  const lines = new TextLines(bytes);
  const { blocks } = findBlocks(lines, layout, guessDecimal(bytes, layout));
  const { columns } = tableOf(blocks[0]!, lines, layout, { decimal: ".", named: [] });
  return columns.values.map((values) => values.subarray(0, columns.rows));
}

function understand(): readonly Float64Array[] {
  const understood = understandFile(readFileSync(path), "cast.csv", { sha256: "0".repeat(64), answers: [] });
  if (!understood.ok) throw new Error(understood.problems[0].message);
  const { elapsed, columns } = understood.value.casts[0]!;
  return [elapsed!, ...[...columns.values()].map(({ values }) => values)];
}

const pandas = spawn(
  "/usr/bin/python3",
  [join(import.meta.dirname, "reading.py"), path, String(HEAD.length - 1)],
  {
    stdio: ["pipe", "pipe", "inherit"],
  },
);
const answers = createInterface({ input: pandas.stdout })[Symbol.asyncIterator]();
const answer = async <T>(): Promise<T> => {
  const { value, done } = await answers.next();
  if (done) throw new Error("pandas' side ended early; is python3-pandas installed?");
  return JSON.parse(value) as T;
};
const theirs = (): Promise<Timing> => {
  pandas.stdin.write("\n");
  return answer<Timing>();
};
const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;

const { version } = await answer<{ version: string }>();
const rounds: { columns: Timing; whole: Timing; its: Timing }[] = [];
for (let round = -2; round < ROUNDS; round++) {
  const each = { columns: timed(toColumns), whole: timed(understand), its: await theirs() };
  // two rounds for the compiler, and for pandas to be loaded
  if (round >= 0) rounds.push(each);
}
pandas.stdin.end();
rmSync(folder, { recursive: true });

console.log(
  `\nReading ${(size / 1e6).toFixed(1)} MB of numbers, median of ${ROUNDS}; pandas ${version}, C engine`,
);
console.log("MB for each second of processor time; ratio ours / pandas, higher is better\n");
console.log("part                   ours  pandas  ratio  by clock");
for (const [name, of, goal] of [
  ["text to columns", (round: (typeof rounds)[number]) => round.columns, GOAL],
  ["whole understanding", (round: (typeof rounds)[number]) => round.whole, null],
] as const) {
  const speed = (pick: (timing: Timing) => number) => [
    size / 1e6 / median(rounds.map((round) => pick(of(round)))),
    size / 1e6 / median(rounds.map((round) => pick(round.its))),
  ];
  const [mine, its] = speed(({ processor }) => processor) as [number, number];
  const [byClock, itsByClock] = speed(({ clock }) => clock) as [number, number];
  const goalWords = goal === null ? "" : `  goal ${goal}${mine / its >= goal ? "" : ", missed"}`;
  console.log(
    `${name.padEnd(20)} ${mine.toFixed(0).padStart(6)} ${its.toFixed(0).padStart(7)} ${(mine / its).toFixed(2).padStart(6)} ${(byClock / itsByClock).toFixed(2).padStart(9)}${goalWords}`,
  );
}
const { columns, its } = rounds[0]!;
for (const [c, sum] of columns.sums.entries())
  if (Math.abs(sum - its.sums[c]!) > 1e-9 * Math.abs(sum))
    throw new Error(`column ${c} adds up to ${sum}, pandas has ${its.sums[c]}`);
