import { type Cast, parseNumber } from "@wherry/core";
import type { Question, UnderstoodFile } from "@wherry/formats";
import { type SameCast, sameCastProblem } from "../same-casts.ts";
import { isoTime, type LookColumn, lookDocument } from "./look-document.ts";

/**
 * What `look` prints: a note per file on casts, times, places and columns, with how each is known, and the open
 * questions last with the exact answer to give. Plain text, no colour, lines end with LF.
 */
export function lookText(
  files: readonly UnderstoodFile[],
  options: { readonly explain: boolean },
  sameCasts: readonly SameCast[] = [],
): string {
  return [...files.map((file) => fileNote(file, options.explain)), ...sameCastNote(sameCasts)].join("\n");
}

/** Casts that stand twice, those of two files that differ in the same way together. */
function sameCastNote(sameCasts: readonly SameCast[]): string[] {
  if (sameCasts.length === 0) return [];
  const lines = ["The same cast twice"];
  const groups = new Map<string, SameCast[]>();
  for (const same of sameCasts) {
    const files = JSON.stringify(same.casts.map(({ path }) => path));
    groups.set(files, [...(groups.get(files) ?? []), same]);
  }
  for (const own of groups.values()) {
    lines.push(...own.slice(0, 3).map((same) => `  - ${sameCastProblem(same).message}`));
    if (own.length > 3) lines.push(`    and so are ${own.length - 3} more casts of these files`);
  }
  return [`${lines.join("\n")}\n`];
}

const indent = (line: string): string => (line === "" ? "" : `  ${line}`);

function fileNote(file: UnderstoodFile, explain: boolean): string {
  const lines = [file.path, `  ${layoutLine(file)}`];
  const [looked] = lookDocument([file]).files;
  for (const [i, cast] of file.casts.entries()) {
    lines.push("", ...castNote(cast, looked?.casts[i]?.columns ?? [], file.encoding !== null).map(indent));
    if (explain) lines.push("", ...explained(cast).map(indent).map(indent));
  }
  if (file.findings.length > 0) {
    lines.push("", "  Found while reading");
    for (const { message, remedy } of file.findings)
      lines.push(`    - ${message}.${remedy ? ` ${remedy}` : ""}`);
  }
  lines.push("", ...questionNote(file.questions).map(indent));
  return `${lines.join("\n")}\n`;
}

const DELIMITERS: Readonly<Record<string, string>> = {
  ",": "commas",
  ";": "semicolons",
  "\t": "tabs",
  "|": "bars",
  whitespace: "blanks",
  fixed: "fixed columns",
};

function layoutLine({
  format,
  encoding,
  lineEnding,
  delimiter,
  decimal,
  missingMarkers,
}: UnderstoodFile): string {
  const parts = [format];
  if (encoding !== null) parts.push(encoding);
  if (lineEnding !== null) parts.push(`line ends ${lineEnding}`);
  if (delimiter !== null) parts.push(DELIMITERS[delimiter] ?? delimiter);
  if (decimal !== null) parts.push(decimal === "," ? "decimal comma" : "decimal point");
  if (missingMarkers.length > 0) parts.push(`missing: ${missingMarkers.join(" ")}`);
  return parts.join(", ");
}

function castNote(cast: Cast, columns: readonly LookColumn[], isText: boolean): string[] {
  const lines = [
    `Cast ${cast.id}: ${kindWords(cast)}, ${cast.rows} rows${isText ? ` (lines ${cast.lines[0] ?? 0} to ${cast.lines.at(-1) ?? 0})` : ""}`,
  ];
  const role = cast.timeRole === "unknown" ? "time" : cast.timeRole;
  const timeKnown = certainty(cast, "time");
  const facts: [string, string][] = [
    [role, Number.isNaN(cast.time) ? "not known" : `${isoTime(cast.time)}${timeKnown}`],
  ];
  if (!Number.isNaN(cast.endTime) && cast.timeRole !== "end")
    facts.push(["end", isoTime(cast.endTime) ?? ""]);
  const zone = cast.evidence.find(({ fact }) => fact === "timeZone");
  if (zone) facts.push(["clock", zone.because]);
  facts.push([
    "position",
    cast.start ? `${positionWords(cast.start)}${certainty(cast, "latitude")}` : "not known",
  ]);
  if (cast.end) facts.push(["end fix", positionWords(cast.end)]);
  const { model, serialNumber, ratedPressure } = cast.instrument;
  const instrument = [
    model,
    serialNumber === null ? null : `serial number ${serialNumber}`,
    ratedPressure === null ? null : `rated to ${ratedPressure} dbar`,
  ].filter((part) => part !== null);
  if (instrument.length > 0) facts.push(["instrument", instrument.join(", ")]);
  for (const [name, value] of facts) lines.push(`  ${name.padEnd(11)}${value}`);
  lines.push("", ...columnTable(columns).map(indent));
  for (const { fact, because } of cast.evidence)
    if (fact.startsWith("comparison:")) lines.push(`  ${fact.slice("comparison:".length)}: ${because}`);
  return lines;
}

function kindWords({ kind, state, fixedDepth, finished }: Cast): string {
  const parts = [
    kind === "profile"
      ? "profile"
      : `series at one depth${fixedDepth ? ` (${fixedDepth.depth} m from ${fixedDepth.reference === "unknown" ? "an unknown reference" : fixedDepth.reference})` : ""}`,
  ];
  if (finished) parts.push("finished before: a product of this program");
  if (state.processing === "raw") parts.push("rows in time as recorded");
  if (state.processing === "averaged") parts.push("levels, averaged before");
  if (state.pressureZeroed) parts.push("pressure already zeroed");
  if (state.lagCorrected) parts.push("sensor lag already corrected");
  if (state.direction === "down" || state.direction === "up") parts.push(`${state.direction}cast only`);
  return parts.join(", ");
}

function positionWords({ latitude, longitude, satellites, quality }: NonNullable<Cast["start"]>): string {
  const degrees = (value: number, positive: string, negative: string) =>
    `${Math.abs(value).toFixed(5)}° ${value < 0 ? negative : positive}`;
  const parts = [degrees(latitude, "N", "S"), degrees(longitude, "E", "W")];
  if (satellites !== null) parts.push(`${satellites} satellites`);
  if (quality !== null) parts.push(quality);
  return parts.join(", ");
}

const certainty = (cast: Cast, fact: string): string => {
  const known = cast.evidence.find(
    (each) => each.fact === fact || (fact === "latitude" && each.fact === "position"),
  );
  return known ? ` (${known.certainty})` : "";
};

/** How a column is known; how its values compare with ours is told by itself. */
const known = (evidence: LookColumn["evidence"]): string => {
  const telling = evidence.filter(({ because }) => !because.startsWith("kept as received"));
  return [...new Set(telling.map(({ certainty }) => certainty))].join(", ");
};

function columnTable(columns: readonly LookColumn[]): string[] {
  const rows = [
    ["column", "holds", "unit", "first", "last", "missing", "known"],
    ...columns.map((column) => [
      column.header,
      column.standardName ??
        (column.evidence.some(({ because }) => because.startsWith("it counts time"))
          ? "elapsed time"
          : "kept as it is"),
      column.sourceUnits === null || column.sourceUnits === column.units
        ? (column.units ?? "")
        : `${column.sourceUnits} -> ${column.units ?? "?"}`,
      String(column.first ?? column.sourceFirst ?? ""),
      String(column.last ?? column.sourceLast ?? ""),
      String(column.missing),
      known(column.evidence),
    ]),
  ].map((row) =>
    row.map((cell) =>
      /^-?\d+\.\d{7,}$/.test(cell)
        ? parseNumber(cell)
            .toFixed(6)
            .replace(/\.?0+$/, "")
        : cell,
    ),
  );
  const widths = rows[0]!.map((_, c) => Math.max(...rows.map((row) => [...(row[c] ?? "")].length)));
  return rows.map((row) =>
    row
      .map((cell, c) => cell + " ".repeat(widths[c]! - [...cell].length))
      .join("  ")
      .trimEnd(),
  );
}

/** What each line or variable of the source told, in its order, and the lines of which nothing was taken. */
function explained({ id, evidence, notes }: Cast): string[] {
  const places = new Map<string, string[]>();
  const byLine = [...evidence].sort((a, b) => (a.where.line ?? Infinity) - (b.where.line ?? Infinity));
  for (const { fact, certainty: known, because, where } of byLine) {
    const place =
      where.line === undefined ? (where.variable ?? where.attribute ?? "whole file") : `line ${where.line}`;
    const words = because.replace(/^answered: /, "").replace(`${place} says `, "");
    places.set(place, [...(places.get(place) ?? []), `${fact}: ${known}, ${words}`]);
  }
  const width = Math.max(0, ...[...places.keys()].map((place) => place.length));
  const lines = [...places].flatMap(([place, facts]) =>
    facts.map((fact, index) => `  ${(index === 0 ? place : "").padEnd(width)}  ${fact}`),
  );
  const untold = notes.filter((note) => {
    const bare = note.trim().replace(/^[#%*;/!@\s]+/, "");
    return /\w/.test(bare) && !bare.includes(id) && !evidence.some(({ because }) => because.includes(bare));
  });
  return [
    "How it is known, line by line",
    ...lines,
    ...(untold.length === 0
      ? []
      : ["", "Kept as notes, nothing taken from them", ...untold.map((note) => `  ${note.trim()}`)]),
  ];
}

function questionNote(questions: readonly Question[]): string[] {
  if (questions.length === 0) return ["No open questions."];
  const lines = [questions.length === 1 ? "One open question" : `${questions.length} open questions`];
  for (const [i, { text, where, casts, candidates, answerWith }] of questions.entries()) {
    lines.push(`  ${i + 1}. ${text}${where.line === undefined ? "" : ` (line ${where.line})`}`);
    if (candidates.length > 0) lines.push(`     possible: ${candidates.join(", ")}`);
    if (casts.length > 0)
      lines.push(
        `     waits: ${casts.length > 8 ? `${casts.slice(0, 8).join(", ")} and ${casts.length - 8} more` : casts.join(", ")}`,
      );
    lines.push("     put under answers: in the survey sheet", `       - ${answerWith}`);
  }
  return lines;
}
