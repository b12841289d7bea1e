import type { ColumnContext } from "./column-context.ts";
import { extentOf } from "./number-column.ts";
import type { RawCast, RawColumn } from "./raw-cast.ts";
import { QUANTITIES, type QuantityId } from "./vocabulary/quantities.ts";

interface Marker {
  readonly text: string;
  readonly value: number;
}

const NINES = /^[+-]?9{2,}(?:[.,]9+|[.,]0+)?$|^[+-]?1[eE]\+?(?:[12]\d|3\d)$|^-9[.,]99+$/;
/** Counts of time pass through nines. */
const COUNTS: ReadonlySet<string> = new Set(["elapsed", "epoch", "since", "serial", "dayOfYear", "time"]);
const MIN_NEGATIVE = -9;

/**
 * Numbers of nines that no header names. Negative ones that the quantity cannot have are missing values; positive
 * ones that it is unlikely to have are asked about.
 */
export function suspectMarkers(cast: RawCast, { facts, id }: ColumnContext): readonly Marker[] {
  const found = new Map<number, Marker>();
  for (const column of cast.columns) {
    const { numbers, meaning } = column;
    if (!numbers || COUNTS.has(meaning.kind)) continue;
    const { min, max } = extentOf(numbers.values);
    if (!(min <= MIN_NEGATIVE) && !(max >= 99)) continue;
    for (const marker of ninesOf(cast, column)) {
      if (found.has(marker.value)) continue;
      if (
        (marker.value < 0 || marker.value > 1e9) &&
        (meaning.kind === "quantity" || meaning.kind === "letter" || marker.value <= -999)
      )
        found.set(marker.value, marker);
      else if (
        marker.value > 0 &&
        stands(numbers.values, marker.value, meaning.kind === "quantity" ? meaning.quantity : null)
      ) {
        const settled = facts.inquiry.settle({
          topic: "missingMarker",
          column: column.head.header,
          holds: [id],
          text: `Does "${marker.text}" under "${column.head.header}" mark a missing value? It stands far from the other values.`,
          candidates: [marker.text, "none"],
          read: (value) =>
            value === marker.text || value === "none" || value === String(marker.value) ? value : null,
          form: `"${marker.text}" if it does, "none" if it is a value`,
        });
        if (settled && settled.value !== "none") found.set(marker.value, marker);
      }
    }
  }
  return [...found.values()];
}

function ninesOf(cast: RawCast, column: RawColumn): readonly Marker[] {
  const markers = new Map<number, Marker>();
  const { values } = column.numbers!;
  for (let row = 0; row < values.length; row++) {
    const value = values[row]!;
    if ((value > MIN_NEGATIVE && value < 99) || Number.isNaN(value) || markers.has(value)) continue;
    const text = cast.rows.cell(row, column.index);
    if (NINES.test(text)) markers.set(value, { text, value });
  }
  return [...markers.values()];
}

/** A positive number of nines far above everything else in its column. */
function stands(values: Float64Array, nines: number, quantity: QuantityId | null): boolean {
  const rest = extentOf(values.filter((value) => value !== nines));
  if (!Number.isFinite(rest.max)) return quantity !== null && QUANTITIES[quantity].kinds[0] !== "length";
  return nines > 2 * Math.max(1, rest.max);
}
