import type { Cast, StepRecord } from "../cast/cast.ts";

/** A flag that a person set, and on which rows. */
export interface ManualFlag {
  readonly id: string;
  readonly who: string;
  /** ISO 8601 UTC. */
  readonly when: string;
  readonly why: string;
  /** Name of the column. */
  readonly quantity: string;
  readonly flag: 1 | 2 | 3 | 4;
  /** Lines of the source, or sea pressures in dbar; both ends included. */
  readonly range: { readonly of: "lines" | "pressure"; readonly from: number; readonly to: number };
}

/** Name under which a person's flags stand among the results of the tests; 0 where they said nothing. */
export const MANUAL = "manual";

/** Rows of a cast that a range means: 1, else 0. Rows without a pressure are in no range of pressure. */
export function rowsInRange(cast: Cast, { of, from, to }: ManualFlag["range"]): Uint8Array {
  const rows = new Uint8Array(cast.rows);
  const places = of === "lines" ? cast.lines : cast.columns.get("pressure")?.values;
  if (places === undefined) return rows;
  for (let k = 0; k < rows.length; k++) if (places[k]! >= from && places[k]! <= to) rows[k] = 1;
  return rows;
}

/** The flags that persons gave rows of a column, of several the last; 0 where none did. */
export function manualFlagsOf(cast: Cast, name: string, manual: readonly ManualFlag[]): Uint8Array | null {
  const own = manual.filter(({ quantity }) => quantity === name);
  if (own.length === 0) return null;
  const flags = new Uint8Array(cast.rows);
  for (const { range, flag } of own) {
    const rows = rowsInRange(cast, range);
    for (let k = 0; k < flags.length; k++) if (rows[k] === 1) flags[k] = flag;
  }
  return flags;
}

/** Puts a person's flags over those of the tests; a missing value stays 9. */
export function overrule(flags: Uint8Array, values: Float64Array, manual: Uint8Array | null): Uint8Array {
  if (manual === null) return flags;
  return flags.map((flag, k) => (manual[k] === 0 || Number.isNaN(values[k]!) ? flag : manual[k]!));
}

const MEANINGS = { 1: "good", 2: "not evaluated", 3: "questionable", 4: "bad" } as const;

/** What a person's judgement did, for the record and the history of the cast. */
export function manualStep(cast: Cast, manual: ManualFlag): StepRecord {
  const { id, who, when, why, quantity, flag, range } = manual;
  const values = cast.columns.get(quantity)?.values;
  const rows = rowsInRange(cast, range);
  const flagged = rows.reduce(
    (sum, row, k) => sum + (row === 1 && !Number.isNaN(values?.[k] ?? Number.NaN) ? 1 : 0),
    0,
  );
  const where = `${range.of === "lines" ? "lines" : "pressures"} ${range.from} to ${range.to}${range.of === "lines" ? "" : " dbar"}`;
  return {
    step: "manual judgement",
    parameters: { judgement: id, who, when, why, quantity, [range.of]: [range.from, range.to], flag },
    counts: { rows: flagged },
    words: `${quantity} at ${where} flagged ${flag} (${MEANINGS[flag]}) by ${who} on ${when.slice(0, 10)}: ${why}`,
  };
}
