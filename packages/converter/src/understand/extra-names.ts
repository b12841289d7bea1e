import type { ColumnMeaning } from "./column-meaning.ts";
import type { RawColumn } from "./raw-cast.ts";
import type { QuantityId } from "./vocabulary/quantities.ts";
import { readUnit } from "./vocabulary/unit-spellings.ts";
import { plainWords } from "./words.ts";

/** Names of a quantity in the heads of columns that a person's notes add to those known here. */
export interface ExtraName {
  readonly quantity: QuantityId;
  readonly language: string;
  readonly names: readonly string[];
  /** Unit of the numbers where the file gives none. */
  readonly unit: string | null;
  /** How it is known, in the person's words. */
  readonly evidence: string;
  /** Whose it is, as `the notes coast.yaml`. */
  readonly from: string;
  /** Words that stand in every file that it holds for; all files if not given. */
  readonly filesWith?: string;
}

/** What a column holds by the person's own names; null if none of them is its. */
export function namedByPerson({ head }: RawColumn, names: readonly ExtraName[]): ColumnMeaning | null {
  const heads = new Set([plainWords(head.name), plainWords(head.header)]);
  heads.delete("");
  const entry = names.find((each) => each.names.some((name) => heads.has(plainWords(name))));
  if (!entry) return null;
  const unit = head.unit ?? (entry.unit === null ? null : readUnit(entry.unit));
  return {
    kind: "quantity",
    quantity: entry.quantity,
    unit,
    because: `${entry.from} call "${head.header}" ${entry.quantity} (${entry.language}: ${entry.evidence})`,
    bareConductivity: false,
    byPerson: true,
  };
}
