import type { Finding, Level } from "../engine/finding.ts";

const LEVELS: readonly Level[] = ["error", "warning", "advice"];

export type FindingGroup = readonly [Finding, ...Finding[]];

/** Findings of one rule and message stand together; worst first, then what stands once before what stands everywhere. */
export function findingGroups(findings: readonly Finding[]): FindingGroup[] {
  const found = new Map<string, [Finding, ...Finding[]]>();
  for (const finding of findings) {
    const key = `${finding.level} ${finding.rule} ${finding.key}`;
    const known = found.get(key);
    if (known === undefined) found.set(key, [finding]);
    else known.push(finding);
  }
  // what stands once is more often the cause, what stands everywhere the consequence
  const weight = ([{ level }]: FindingGroup) => LEVELS.indexOf(level);
  return [...found.values()].sort((a, b) => weight(a) - weight(b) || a.length - b.length);
}
