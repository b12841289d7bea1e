import type { DataArray, Dimension, NcType } from "../dataset.ts";
import { sizeOf } from "../slab.ts";
import { spellBytes, spellText, spellValue } from "./spell.ts";

const LINE_WIDTH = 80;
/** Characters of one piece of a long text. */
const PIECE = 60;

/** The list of a variable's values, with `_` for the fill value, wrapped at 80 columns behind `lead`. */
export function spellData(
  lead: string,
  type: NcType,
  axes: readonly Dimension[],
  data: DataArray,
  fill: DataArray,
): string {
  const items =
    type === "char"
      ? charItems(axes, data as Uint8Array, (fill as Uint8Array)[0] ?? 0)
      : nest(axes, 0, 0, (at) => [spellItem(data, type, at, fill)]);
  const lines: string[] = [];
  let line = lead;
  let open = true; // nothing stands on this line yet
  for (const item of items) {
    if (!open && line.length + item.length + 3 > LINE_WIDTH) {
      lines.push(`${line},`);
      line = "    ";
      open = true;
    }
    line += open ? item : `, ${item}`;
    open = false;
  }
  lines.push(`${line} ;`);
  return lines.join("\n");
}

function spellItem(data: DataArray, type: NcType, at: number, fill: DataArray): string {
  const value = data[at];
  if (typeof value === "string" || value === undefined) return spellText(value ?? "");
  return Object.is(value, fill[0]) ? "_" : spellValue(value, type);
}

/** Items of all values; those along an unlimited dimension that is not the first stand in braces. */
function* nest(
  axes: readonly Dimension[],
  from: number,
  offset: number,
  itemsOf: (at: number, axis: number) => Iterable<string>,
): Generator<string> {
  const next = axes.findIndex((axis, index) => index > from && axis.unlimited);
  const lengths = axes.map(({ length }) => length);
  const blocks = sizeOf(lengths.slice(from, next < 0 ? axes.length : next));
  if (next < 0) {
    for (let i = 0; i < blocks; i++) yield* itemsOf(offset + i, from);
    return;
  }
  const each = sizeOf(lengths.slice(next));
  for (let i = 0; i < blocks; i++) yield `{${[...nest(axes, next, offset + i * each, itemsOf)].join(", ")}}`;
}

/**
 * Texts of a char variable: a row along the last dimension is one text, without the fill characters at its
 * end; characters along a single dimension are pieces of one text.
 */
function charItems(axes: readonly Dimension[], data: Uint8Array, fill: number): Iterable<string> {
  const last = axes.at(-1);
  const length = last?.length ?? 1;
  const lastUnlimited = axes.findLastIndex(({ unlimited }) => unlimited);
  const rows = axes.length - Math.max(lastUnlimited, 0) > 1 && length > 1;
  return nest(axes, 0, 0, function* (at) {
    if (at % length !== 0) return;
    const row = data.subarray(at, at + length);
    if (rows) yield spellBytes(withoutEnd(row, fill));
    else
      for (const piece of pieces(last?.unlimited === false ? withoutEnd(row, fill, 1) : row))
        yield spellBytes(piece);
  });
}

function withoutEnd(row: Uint8Array, fill: number, least = 0): Uint8Array {
  let end = row.length;
  while (end > least && row[end - 1] === fill) end--;
  return row.subarray(0, end);
}

/** Pieces of bytes that don't cut a character of UTF-8. */
function* pieces(bytes: Uint8Array): Generator<Uint8Array> {
  for (let from = 0; from < bytes.length; ) {
    let to = Math.min(from + PIECE, bytes.length);
    while (to < bytes.length && to > from + 1 && ((bytes[to] ?? 0) & 0xc0) === 0x80) to--;
    yield bytes.subarray(from, to);
    from = to;
  }
}
