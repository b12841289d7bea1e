import type { Cast, CastState, Column, Evidence, Problem } from "@wherry/core";
import type { Dataset } from "@wherry/netcdf";
import type { CastTimes } from "./coordinates.ts";
import { type CastPlace, type Layout, placeOfRow, rowCount } from "./layout.ts";
import type { CastRows } from "./row-columns.ts";
import { areSegments, segmentsOf } from "./segments.ts";
import { flagMeanings } from "./source-flags.ts";

export interface CastParts {
  readonly dataset: Dataset;
  readonly layout: Layout;
  readonly source: Cast["source"];
  readonly kind: Cast["kind"];
  readonly times: CastTimes;
  readonly positions: { readonly starts: readonly Cast["start"][]; readonly ends: readonly Cast["end"][] };
  readonly fixedDepths: readonly Cast["fixedDepth"][] | null;
  readonly pressureOffsets: Float64Array;
  readonly ids: readonly (string | null)[] | null;
  /** Ids of the station or trajectory of each profile. */
  readonly owners: readonly (string | null)[] | null;
  readonly rows: readonly CastRows[];
  readonly evidence: readonly Evidence[];
  readonly notes: readonly string[];
  readonly averaged: boolean;
  readonly instrument: Cast["instrument"];
}

/** Puts together the casts of a file; places that hold nothing at all are no casts. */
export function buildCasts(parts: CastParts): {
  readonly casts: readonly Cast[];
  /** Place in the layout of each cast. */
  readonly places: readonly number[];
  readonly findings: readonly Problem[];
} {
  const { layout, source } = parts;
  const stem = source.path.replace(/^.*[\\/]/, "").replace(/\.[^.]*$/, "");
  const used = new Set<string>();
  const casts: Cast[] = [];
  const places: number[] = [];
  const empty: string[] = [];
  for (const [index, place] of layout.places.entries()) {
    const kept = keptRows(parts, index, place);
    const { columns, texts } = cut(parts.rows[index]!, kept);
    const stated = parts.ids?.[index] ?? null;
    if (kept === 0 && Number.isNaN(parts.times.times[index]!) && stated === null && layout.padded) continue;
    const owner = parts.owners?.[index] ?? null;
    const wanted = stated ?? (layout.places.length === 1 ? stem : `${owner ?? stem}-${index + 1}`);
    const id = uniqueId(wanted, used);
    if (kept === 0) empty.push(id);
    const notes = [
      ...(stated === null || stated === id ? [] : [`called "${stated}" in the file`]),
      ...(owner === null ? [] : [`belongs to ${owner}`]),
    ];
    casts.push(castOf(parts, index, place, { id, kept, columns, texts, notes }));
    places.push(index);
  }
  if (empty.length === 0) return { casts, places, findings: [] };
  const finding = {
    code: "cf-dsg/no-rows",
    message: `${empty.length === 1 ? "one cast has" : `${empty.length} casts have`} no rows: ${empty.slice(0, 8).join(", ")}${empty.length > 8 ? " …" : ""}`,
    where: { file: source.path },
    remedy: "Check whether the file was written whole.",
  };
  return { casts, places, findings: [finding] };
}

/** Rows up to the last that holds anything: beyond it, arrays of unequal casts are padding. */
function keptRows({ layout, rows, times }: CastParts, index: number, place: CastPlace): number {
  const all = rowCount(place.rows);
  if (!layout.padded) return all;
  const { columns, texts } = rows[index]!;
  const elapsed = times.elapsed[index];
  const holds = (row: number) =>
    (elapsed != null && !Number.isNaN(elapsed[row]!)) ||
    [...columns.values()].some(({ values }) => !Number.isNaN(values[row]!)) ||
    [...texts.values()].some((cells) => cells[row] !== "");
  let kept = all;
  while (kept > 0 && !holds(kept - 1)) kept--;
  return kept;
}

function cut({ columns, texts }: CastRows, kept: number) {
  const shorter = (column: Column): Column => {
    if (column.values.length === kept) return column;
    const { values, flags, sourceFlags } = column;
    return {
      ...column,
      values: values.slice(0, kept),
      flags: flags.slice(0, kept),
      sourceFlags: sourceFlags && { ...sourceFlags, values: sourceFlags.values.slice(0, kept) },
    };
  };
  return {
    columns: new Map([...columns].map(([name, column]) => [name, shorter(column)])),
    texts: new Map([...texts].map(([header, cells]) => [header, cells.slice(0, kept)])),
  };
}

function castOf(
  parts: CastParts,
  index: number,
  place: CastPlace,
  own: {
    readonly id: string;
    readonly kept: number;
    readonly columns: ReadonlyMap<string, Column>;
    readonly texts: ReadonlyMap<string, readonly string[]>;
    readonly notes: readonly string[];
  },
): Cast {
  const { times, positions, source } = parts;
  const { kept, columns } = own;
  const elapsed = times.elapsed[index]?.slice(0, kept) ?? null;
  const segments = segmentsIn(parts, own.texts);
  const directions = new Set(segments.map(({ kind }) => kind));
  const state: CastState = {
    processing: parts.averaged || (elapsed === null && parts.kind === "profile") ? "averaged" : "unknown",
    pressureZeroed: columns.get("pressure")?.standardName === "sea_water_pressure_due_to_sea_water",
    lagCorrected: false,
    direction: directions.has("down") && directions.has("up") ? "both" : "unknown",
  };
  return {
    id: own.id,
    kind: parts.kind,
    state,
    rows: kept,
    time: times.times[index]!,
    timeRole: times.roles[index]!,
    endTime: times.endTimes[index]!,
    elapsed,
    start: positions.starts[index] ?? null,
    end: positions.ends[index] ?? null,
    fixedDepth: parts.fixedDepths?.[index] ?? null,
    instrument: parts.instrument,
    notes: own.notes.length === 0 ? parts.notes : [...own.notes, ...parts.notes],
    columns,
    texts: own.texts,
    lines: Uint32Array.from({ length: kept }, (_, row) => placeOfRow(place.rows, row) + 1),
    source,
    evidence: parts.evidence,
    pressureOffset: parts.pressureOffsets[index]!,
    segments,
    steps: [],
  };
}

/** Segments by a flag variable whose meanings are those of segments. */
function segmentsIn({ dataset }: CastParts, texts: ReadonlyMap<string, readonly string[]>): Cast["segments"] {
  for (const [name, codes] of texts) {
    const variable = dataset.variables.get(name);
    const meanings = variable ? flagMeanings(variable) : new Map<string, string>();
    if (areSegments(meanings.values())) return segmentsOf(codes.map((code) => meanings.get(code)));
  }
  return [];
}

/** The id with the letters that ids may have; numbered if another cast of the file has it. */
function uniqueId(wanted: string, used: Set<string>): string {
  const base = wanted.replace(/[^A-Za-z0-9._-]+/g, "-").replace(/^-+|-+$/g, "") || "cast";
  let id = base;
  for (let n = 2; used.has(id); n++) id = `${base}-${n}`;
  used.add(id);
  return id;
}
