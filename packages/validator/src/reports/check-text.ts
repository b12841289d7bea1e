import type { Place } from "@wherry/core";
import type { CheckedFile } from "../engine/check-file.ts";
import { type Citation, type Finding, isAtLeast, type Level } from "../engine/finding.ts";
import { findingGroups } from "./finding-groups.ts";
import { counted, wrap } from "./lines.ts";

export interface TextOptions {
  /** Findings of less weight are counted but not written out. All are written if not given. */
  readonly level?: Level;
  /** Findings written out for a file; like ones count once. All if not given. */
  readonly max?: number;
}

const WORDS: Readonly<Record<Level, string>> = { error: "Error", warning: "Warning", advice: "Advice" };

/** "temperature, attribute units", "the file's attribute title", "line 7, column 2". */
export function placeInWords({ variable, attribute, dimension, line, column, byte }: Place): string {
  const parts = [
    variable,
    attribute === undefined
      ? undefined
      : variable === undefined
        ? `global attribute ${attribute}`
        : `attribute ${attribute}`,
    dimension === undefined ? undefined : `dimension ${dimension}`,
    line === undefined ? undefined : `line ${line}`,
    column === undefined ? undefined : `column ${column}`,
    byte === undefined ? undefined : `byte ${byte}`,
  ].filter((part) => part !== undefined);
  return parts.length === 0 ? "the file" : parts.join(", ");
}

export const citationInWords = ({ document, edition, clause }: Citation): string =>
  `${document} ${edition}, ${/^\d|^[A-Z]\.\d/.test(clause) ? `section ${clause}` : clause}`;

const BASIS: Readonly<Record<Finding["basis"], string>> = {
  clause: "",
  reading: "; our reading",
  house: "; our own rule",
};

/** Like findings as lines: place and message, why, where else, what to do, where it stands. */
export function groupText([first, ...others]: readonly [Finding, ...Finding[]]): string[] {
  const { level, where, message, why, remedy, rule, citation, basis } = first;
  const lines = wrap(`${WORDS[level]} at ${placeInWords(where)}: ${message}`, "  ", "    ");
  if (level !== "advice") lines.push(...wrap(why, "    why:  "));
  if (others.length > 0) {
    const named = others
      .slice(0, 12)
      .map(({ where: place }) => placeInWords(place).replace(/, attribute .*$/, ""));
    const rest = others.length > 12 ? ` and ${others.length - 12} more` : "";
    lines.push(...wrap(`${named.join("; ")}${rest}`, "    also: "));
  }
  lines.push(...wrap(remedy, "    do:   "));
  const source = citation === null ? "the format of the file" : citationInWords(citation) + BASIS[basis];
  lines.push(...wrap(`${source} (${rule})`, "    from: "));
  return lines;
}

/** By which edition a file was judged, and why, in a phrase. */
function editionInWords({ editionChoice, ruleSets }: CheckedFile): string {
  const sets = `rules: ${ruleSets.join(", ")}`;
  if (editionChoice === null) return sets;
  const { edition, claimed, because } = editionChoice;
  const reason = {
    claimed: "as the file claims",
    option: "as asked for",
    newest:
      claimed === null
        ? "the newest, as the file names none"
        : `the newest, as CF-${claimed} is not known here`,
  }[because];
  return `CF ${edition}, ${reason}; ${sets}`;
}

function fileLines(file: CheckedFile, options: TextOptions): string[] {
  const { path, format, findings, counts, waived = [] } = file;
  if (format === null) {
    const told = findings.flatMap(({ message, remedy }) => [
      ...wrap(message, "  "),
      ...wrap(remedy, "    do:   "),
    ]);
    return [path, "  This file cannot be read.", ...told];
  }
  const total = `${counted(counts.error, "error")}, ${counted(counts.warning, "warning")}, ${counted(counts.advice, "advice", "pieces of advice")}`;
  const shown = findingGroups(findings.filter(({ level }) => isAtLeast(level, options.level ?? "advice")));
  const written = shown.slice(0, options.max ?? shown.length);
  const left = shown.length - written.length;
  return [
    path,
    ...wrap(`${format}; ${editionInWords(file)}`, "  "),
    ...written.flatMap((group) => ["", ...groupText(group)]),
    ...(left > 0 ? ["", `  ${counted(left, "kind")} of findings more, not written out`] : []),
    "",
    `  ${total}${waived.length > 0 ? `; ${counted(waived.length, "finding")} accepted by waivers` : ""}`,
  ];
}

/** The verdict on one file as plain text: worst first, like findings together, its sum last. Lines end in LF. */
export const fileText = (file: CheckedFile, options: TextOptions = {}): string =>
  `${fileLines(file, options).join("\n")}\n`;

/** Sums over files, taken up one after the other. */
export interface Tally {
  add(file: CheckedFile): void;
  /** The sums in words. */
  text(): string;
}

export function newTally(): Tally {
  const sums = { error: 0, warning: 0, advice: 0 };
  let [all, unread, clean] = [0, 0, 0];
  return {
    add({ format, counts }) {
      all += 1;
      if (format === null) unread += 1;
      else sums.error += counts.error;
      sums.warning += counts.warning;
      sums.advice += counts.advice;
      if (counts.error + counts.warning === 0) clean += 1;
    },
    text() {
      if (all === 0) return "No file was checked.\n";
      const told = [
        counted(sums.error, "error"),
        counted(sums.warning, "warning"),
        counted(sums.advice, "advice", "pieces of advice"),
      ];
      const how = clean === all ? "All" : clean === 0 ? "None" : clean;
      return `${counted(all, "file")} checked: ${told.join(", ")}.\n${how} without error or warning${unread > 0 ? `; ${unread} cannot be read` : ""}.\n`;
    },
  };
}

/** The verdict on several files as plain text, file by file, the sum last. Lines end in LF; no colours. */
export function checkText(files: readonly CheckedFile[], options: TextOptions = {}): string {
  const tally = newTally();
  files.forEach(tally.add);
  return [...files.map((file) => fileText(file, options)), tally.text()].join("\n");
}
