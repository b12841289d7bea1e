import {
  type Cast,
  type Column,
  convertUnits,
  type Evidence,
  type Problem,
  parseDecimal,
} from "@wherry/core";
import type { UnderstoodFile } from "@wherry/formats";
import type { SameCast } from "../same-casts.ts";
import { QUANTITIES, type Quantity } from "../vocabulary/quantities.ts";

/** What `look --json` prints, of the form of the schema look.schema.json. */
export interface LookDocument {
  readonly version: 1;
  readonly files: readonly LookFile[];
  readonly sameCasts: readonly SameCast[];
  readonly warnings: readonly LookFinding[];
}

export type LookFinding = Omit<Problem, "remedy"> & { readonly remedy: string | null };

export interface LookFile
  extends Pick<
    UnderstoodFile,
    "path" | "format" | "sha256" | "encoding" | "lineEnding" | "delimiter" | "decimal" | "missingMarkers"
  > {
  readonly casts: readonly LookCast[];
  readonly questions: readonly {
    readonly about: string;
    readonly where: UnderstoodFile["questions"][number]["where"];
    readonly text: string;
    readonly casts: readonly string[];
    readonly candidates: readonly string[];
    readonly answerWith: string;
  }[];
  readonly findings: readonly LookFinding[];
}

export interface LookCast {
  readonly id: string;
  readonly kind: Cast["kind"];
  readonly state: Cast["state"];
  /** Only for casts of a product of this program. */
  readonly finished?: true;
  /** ISO 8601 UTC; null where it is not known. */
  readonly start: string | null;
  readonly end: string | null;
  readonly time: string | null;
  readonly timeRole: Cast["timeRole"];
  readonly latitude: number | null;
  readonly longitude: number | null;
  readonly endLatitude: number | null;
  readonly endLongitude: number | null;
  /** m */
  readonly fixedDepth: number | null;
  readonly rows: number;
  readonly columns: readonly LookColumn[];
}

export interface LookColumn {
  readonly header: string;
  readonly standardName: string | null;
  readonly units: string | null;
  readonly sourceUnits: string | null;
  readonly first: number | null;
  readonly last: number | null;
  readonly sourceFirst: number | string | null;
  readonly sourceLast: number | string | null;
  readonly missing: number;
  readonly evidence: readonly {
    readonly certainty: Evidence["certainty"];
    readonly because: string;
    readonly line: number | null;
  }[];
}

/** The JSON document of `look`: units as products store them, times in UTC, null for what is not known. */
export function lookDocument(
  files: readonly UnderstoodFile[],
  sameCasts: readonly SameCast[] = [],
  warnings: readonly Problem[] = [],
): LookDocument {
  return { version: 1, files: files.map(lookFile), sameCasts, warnings: warnings.map(lookFinding) };
}

const lookFinding = ({ code, message, where, remedy }: Problem): LookFinding => ({
  code,
  message,
  where,
  remedy: remedy ?? null,
});

function lookFile(file: UnderstoodFile): LookFile {
  const { path, format, sha256, encoding, lineEnding, delimiter, decimal, missingMarkers } = file;
  return {
    path,
    format,
    sha256,
    encoding,
    lineEnding,
    delimiter,
    decimal,
    missingMarkers,
    casts: file.casts.map((cast) => lookCast(cast, file.decimal)),
    questions: file.questions.map(({ about, where, text, casts, candidates, answerWith }) => ({
      about,
      where,
      text,
      casts,
      candidates,
      answerWith,
    })),
    findings: file.findings.map(lookFinding),
  };
}

function lookCast(cast: Cast, decimal: UnderstoodFile["decimal"]): LookCast {
  const end = Number.isNaN(cast.endTime) && cast.timeRole === "end" ? cast.time : cast.endTime;
  const texts = [...(cast.timeColumns ?? []), ...cast.texts].map(([header, cells]) =>
    textColumn(cast, header, cells, decimal),
  );
  const numbers = [...cast.columns.values()].map((column) => numberColumn(cast, column));
  return {
    id: cast.id,
    kind: cast.kind,
    state: cast.state,
    ...(cast.finished ? { finished: true as const } : {}),
    start: cast.timeRole === "start" ? isoTime(cast.time) : null,
    end: isoTime(end),
    time: isoTime(cast.time),
    timeRole: cast.timeRole,
    latitude: cast.start?.latitude ?? null,
    longitude: cast.start?.longitude ?? null,
    endLatitude: cast.end?.latitude ?? null,
    endLongitude: cast.end?.longitude ?? null,
    fixedDepth: cast.fixedDepth?.depth ?? null,
    rows: cast.rows,
    columns: [...texts, ...numbers],
  };
}

/** ISO 8601 UTC to the millisecond, without a fraction of zero; null for NaN. */
export function isoTime(seconds: number): string | null {
  if (Number.isNaN(seconds)) return null;
  return new Date(Math.round(seconds * 1000)).toISOString().replace(/\.000Z$/, "Z");
}

const finite = (value: number | undefined): number | null =>
  value === undefined || Number.isNaN(value) ? null : value;

/** Unit in which products store a column of a cast. */
export function productUnits(column: Pick<Column, "name" | "units">): string | null {
  const known = Object.values(QUANTITIES as Record<string, Quantity>).find(
    ({ name }) => name === column.name,
  );
  return (known?.houseUnits === column.units ? known?.productUnits : undefined) ?? column.units;
}

function numberColumn(cast: Cast, column: Column): LookColumn {
  const units = productUnits(column);
  const inUnits = (value: number | undefined) => {
    if (value === undefined || Number.isNaN(value)) return null;
    return units === null || units === column.units || column.units === null
      ? value
      : finite(convertUnits(value, column.units, units));
  };
  const header = column.source?.header ?? column.name;
  return {
    header,
    standardName: column.standardName,
    units,
    sourceUnits: column.source?.units ?? null,
    first: inUnits(column.values.find((value) => !Number.isNaN(value))),
    last: inUnits(column.values.findLast((value) => !Number.isNaN(value))),
    sourceFirst: finite(column.source?.first),
    sourceLast: finite(column.source?.last),
    missing: column.values.reduce((count, value) => count + (Number.isNaN(value) ? 1 : 0), 0),
    evidence: [...evidenceOf(cast, `column:${header}`), ...evidenceOf(cast, `comparison:${header}`)],
  };
}

function textColumn(
  cast: Cast,
  header: string,
  cells: readonly string[] | { readonly first: string; readonly last: string },
  decimal: UnderstoodFile["decimal"],
): LookColumn {
  const all = "first" in cells ? [cells.first, cells.last] : cells;
  const filled = all.filter((cell) => cell !== "");
  const absolute = evidenceOf(cast, `timeColumn:${header}`);
  const elapsed = evidenceOf(cast, `elapsedColumn:${header}`);
  const asNumber = (cell: string | undefined) => {
    if (cell === undefined) return null;
    const value = parseDecimal(cell, { decimal: decimal ?? "." });
    return Number.isNaN(value) ? cell : value;
  };
  return {
    header,
    standardName: absolute.length > 0 ? "time" : null,
    units: null,
    sourceUnits: null,
    first: null,
    last: null,
    sourceFirst: asNumber(filled[0]),
    sourceLast: asNumber(filled.at(-1)),
    missing: all.length - filled.length,
    evidence: [...absolute, ...elapsed],
  };
}

const evidenceOf = (cast: Cast, fact: string): LookColumn["evidence"] =>
  cast.evidence
    .filter((each) => each.fact === fact)
    .map(({ certainty, because, where }) => ({ certainty, because, line: where.line ?? null }));
