import type { ChangedAttribute, MendOutput } from "@wherry/contracts";
import type { Counts, Finding } from "../engine/finding.ts";
import { changeInWords, type MendedAttribute } from "../mend/mend-dataset.ts";
import { findingEntry } from "./check-document.ts";
import { groupText } from "./check-text.ts";
import { findingGroups } from "./finding-groups.ts";
import { counted, wrap } from "./lines.ts";

/** What was mended in a file, and what is left for a person. */
export interface MendReport {
  readonly file: string;
  readonly out: string;
  readonly mended: readonly MendedAttribute[];
  /** Worst first. */
  readonly left: readonly Finding[];
  readonly counts: Counts;
}

/** As the document that `wherry mend --json` prints. */
export const mendDocument = ({ file, out, mended, left, counts }: MendReport): MendOutput => ({
  version: 1,
  file,
  out,
  // the generated type of a field that may hold any JSON value is narrower than its schema
  changes: mended.map(
    ({ message, ...change }) => ({ ...change, because: message }) as unknown as ChangedAttribute,
  ),
  left: left.map(findingEntry),
  counts: { ...counts },
});

/** As plain text: the changes, then what a person must decide, the sum last. Advice is counted, not written out. */
export function mendText({ file, out, mended, left, counts }: MendReport): string {
  const { error, warning, advice } = counts;
  const groups = findingGroups(left.filter(({ level }) => level !== "advice"));
  return [
    file,
    ...(mended.length === 0 ? ["  Nothing to mend: the file was copied as it is."] : []),
    ...mended.flatMap((change) => wrap(`${changeInWords(change)} (${change.rule})`, "  ", "    ")),
    ...(groups.length === 0 ? [] : ["", "Left for a person to decide:"]),
    ...groups.flatMap((group) => ["", ...groupText(group)]),
    "",
    `Written to ${out}: ${counted(mended.length, "attribute")} mended.`,
    `Left: ${counted(error, "error")}, ${counted(warning, "warning")}, ${counted(advice, "advice", "pieces of advice")}.`,
    "",
  ].join("\n");
}
