/**
 * Holds the validator against files with planted defects: what was found, what was missed, what was said in vain.
 *
 *   pnpm score:check [FOLDER]
 *
 * FOLDER holds the files and their manifest.json; test-data/samples/planted without it.
 */
import { readFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { checkFile, type Finding } from "@wherry/validator";

interface Entry {
  readonly clean: boolean;
  readonly defect: string | null;
  readonly level?: "error" | "warning";
  readonly match?: readonly (readonly string[])[];
  readonly allowed?: readonly { readonly variable?: string; readonly attribute?: string }[];
}

/** A moment after all samples, so that the score does not depend on the day. */
const NOW = Date.parse("2026-11-24T00:00:00Z") / 1000;

function isHit({ where, message }: Finding, { match = [] }: Entry): boolean {
  const text = `${where.variable ?? ""} ${where.attribute ?? ""} ${message}`.toLowerCase();
  const words = new Set(text.split(/[^a-z0-9_]+/));
  return match.some((group) => group.every((word) => words.has(word.toLowerCase())));
}

const isAllowed = ({ where }: Finding, { allowed = [] }: Entry): boolean =>
  allowed.some(
    ({ variable, attribute }) =>
      (variable === undefined || variable === where.variable) &&
      (attribute === undefined || attribute === where.attribute),
  );

const folder = resolve(
  process.argv[2] ?? join(dirname(fileURLToPath(import.meta.url)), "..", "test-data", "samples", "planted"),
);
const { files } = JSON.parse(readFileSync(join(folder, "manifest.json"), "utf8")) as {
  files: Record<string, Entry>;
};
let planted = 0;
let found = 0;
let alarms = 0;
for (const [name, entry] of Object.entries(files)) {
  const { findings } = await checkFile(readFileSync(join(folder, name)), { path: name, now: NOW });
  const hits = entry.clean ? [] : findings.filter((finding) => isHit(finding, entry));
  const isFound = hits.some(({ level }) => level === "error" || level === entry.level);
  const vain = findings.filter(
    (finding) => finding.level !== "advice" && !hits.includes(finding) && !isAllowed(finding, entry),
  );
  if (!entry.clean) planted += 1;
  if (isFound) found += 1;
  alarms += vain.length;
  const answer = entry.clean ? "clean" : isFound ? "found" : "MISSED";
  console.log(`${name}  ${answer}  ${entry.defect ?? "nothing planted"}`);
  for (const { rule, level } of hits) console.log(`    ${level} ${rule}`);
  for (const { rule, level, message } of vain) console.log(`    IN VAIN: ${level} ${rule}: ${message}`);
}
console.log(`\n${found} of ${planted} defects found; ${alarms} errors or warnings in vain.`);
process.exitCode = found === planted && alarms === 0 ? 0 : 1;
