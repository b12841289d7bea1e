import { exports, judgeSample, messy, needless } from "../packages/converter/test/judge-messy.ts";
import { judgeOpenFormat, openFolder, openTruth } from "../packages/converter/test/judge-open-formats.ts";
import { understoodPath } from "../packages/converter/test/understand-samples.ts";

// Holds what is understood of every sample against its truth, and prints how many facts are right, asked, left unknown
// or wrong. Ends with 1 if a fact is silently wrong.

const files = [
  ...[messy, exports].flatMap((set) =>
    Object.keys(set.truth).map((name) => ({
      name: `${set.folder.split(/[/\\]/).at(-1)}/${name}`,
      judged: judgeSample(set, name),
      needless: needless(set, name),
    })),
  ),
  ...Object.entries(openTruth).map(([name, want]) => ({
    name: `openformats/${name}`,
    needless: [],
    judged: judgeOpenFormat(understoodPath(`${openFolder}/${name}`), want),
  })),
];
const verdicts = ["right", "asked", "unknown", "wrong"] as const;
const width = Math.max(...files.map(({ name }) => name.length));
const line = (name: string, numbers: readonly (number | string)[]) =>
  [name.padEnd(width), ...numbers.map((number) => String(number).padStart(8))].join("");

console.log(line("file", verdicts));
const sums = verdicts.map(() => 0);
for (const { name, judged, needless } of files) {
  const counts = verdicts.map((verdict) => judged.filter((each) => each.verdict === verdict).length);
  for (const [i, count] of counts.entries()) sums[i]! += count;
  console.log(line(name, counts));
  for (const { fact, verdict, found, want } of judged)
    if (verdict === "wrong" || verdict === "unknown")
      console.log(`  ${verdict}: ${fact} is ${JSON.stringify(found)}, should be ${JSON.stringify(want)}`);
  for (const about of needless) console.log(`  asked without need: ${about}`);
}
console.log(line(`all ${files.length} files`, sums));
if (sums[3] !== 0) process.exitCode = 1;
