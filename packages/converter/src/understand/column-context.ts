import type { Evidence } from "@wherry/core";
import type { FileFacts } from "./file-facts.ts";
import type { NumberColumn } from "./number-column.ts";
import type { RawColumn } from "./raw-cast.ts";
import type { QuantityId } from "./vocabulary/quantities.ts";
import type { UnitSpelling } from "./vocabulary/unit-spellings.ts";

/** A column of a known quantity in a known unit. */
export interface Settled {
  readonly column: RawColumn;
  readonly quantity: QuantityId;
  readonly unit: UnitSpelling | null;
  readonly numbers: NumberColumn;
}

/** What the columns of a cast depend on beside themselves. */
export interface ColumnContext {
  readonly id: string;
  readonly facts: FileFacts;
  /** Epoch seconds of the cast, NaN if not known. */
  readonly time: number;
  readonly timeColumns: ReadonlyMap<string, "absolute" | "elapsed">;
  /** Every row got its time. */
  readonly rowsTimed: boolean;
}

/** Notes how something about a column is known: what it holds, or another fact about it. */
export type Note = (
  column: RawColumn,
  certainty: Evidence["certainty"],
  because: string,
  fact?: "pressureKind",
) => void;
