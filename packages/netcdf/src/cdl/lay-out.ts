import type { DataArray, NcType } from "../dataset.ts";
import { sizeOf } from "../slab.ts";
import { decodeText } from "../text.ts";
import { newArray } from "../types.ts";
import type { Constant } from "./constant.ts";
import { type Complaint, isComplaint, nameOf, notOf, numberOf } from "./constant-value.ts";

/** One axis of a variable while its text is read: the length of an unlimited one grows with the data. */
export interface Axis {
  readonly name: string;
  length: number;
  readonly unlimited: boolean;
}

/** Index of the next unlimited axis behind `axis`: from there on values stand in braces; -1 if there is none. */
const nextUnlimited = (axes: readonly Axis[], axis: number): number =>
  axes.findIndex((candidate, index) => index > axis && candidate.unlimited);

const sizeFrom = (axes: readonly Axis[], from: number, to = axes.length): number =>
  sizeOf(axes.slice(from, to).map(({ length }) => length));

/** Values that one text fills up: in a char variable of several dimensions each text takes whole rows. */
const rowLength = (type: NcType, axes: readonly Axis[], from: number): number =>
  type === "char" && axes.length - from > 1 ? (axes.at(-1)?.length ?? 1) : 1;

function valuesIn(type: NcType, item: Constant, row: number): number {
  if (type !== "char" || item.kind !== "text") return 1;
  return row > 1 ? Math.max(Math.ceil(item.bytes.length / row), 1) * row : item.bytes.length;
}

/** Lengthens the unlimited axes so that a list of values fits. */
export function growUnlimited(
  type: NcType,
  axes: readonly Axis[],
  items: readonly Constant[],
  from = 0,
): void {
  const axis = axes[from];
  if (!axis) return;
  const next = nextUnlimited(axes, from);
  const row = rowLength(type, axes, from);
  const count = next < 0 ? items.reduce((sum, item) => sum + valuesIn(type, item, row), 0) : items.length;
  const each = sizeFrom(axes, from + 1, next < 0 ? axes.length : next);
  if (axis.unlimited && each > 0) axis.length = Math.max(axis.length, Math.ceil(count / each));
  if (next < 0) return;
  for (const item of items) if (item.kind === "list") growUnlimited(type, axes, item.items, next);
}

/**
 * Row-major values of a variable from its list of constants; what is left out and `_` is the fill value.
 *
 * @returns the array, or what is wrong with the list
 */
export function layOut(
  type: NcType,
  axes: readonly Axis[],
  fill: DataArray,
  items: readonly Constant[],
): DataArray | Complaint {
  const data = newArray(type, sizeFrom(axes, 0));
  (data as unknown[] & { fill(value: unknown): unknown }).fill(fill[0]);
  return fillBlock(data, type, axes, items, 0, 0) ?? data;
}

function fillBlock(
  data: DataArray,
  type: NcType,
  axes: readonly Axis[],
  items: readonly Constant[],
  from: number,
  offset: number,
): Complaint | null {
  const next = nextUnlimited(axes, from);
  if (next < 0)
    return fillPlain(data, type, items, rowLength(type, axes, from), offset, sizeFrom(axes, from));
  const blocks = sizeFrom(axes, from, next);
  const each = sizeFrom(axes, next);
  for (const [index, item] of items.entries()) {
    if (item.kind !== "list")
      return {
        at: item.at,
        message: `values along the unlimited dimension ${axes[next]?.name}, which is not the first, stand in braces`,
      };
    if (index >= blocks) return tooMany(item, blocks);
    const complaint = fillBlock(data, type, axes, item.items, next, offset + index * each);
    if (complaint) return complaint;
  }
  return null;
}

const tooMany = (item: Constant, room: number): Complaint => ({
  at: item.at,
  message: `there are more values than the ${room} that the dimensions hold`,
});

function fillPlain(
  data: DataArray,
  type: NcType,
  items: readonly Constant[],
  row: number,
  offset: number,
  room: number,
): Complaint | null {
  let done = 0;
  for (const item of items) {
    const many = valuesIn(type, item, row);
    if (done + many > room) return tooMany(item, room);
    if (item.kind !== "fill") {
      const complaint = put(data, type, item, offset + done);
      if (complaint) return complaint;
    }
    done += many;
  }
  return null;
}

function put(data: DataArray, type: NcType, item: Constant, at: number): Complaint | null {
  if (item.kind === "list")
    return {
      at: item.at,
      message: "braces stand only around values along an unlimited dimension that is not the first",
    };
  if (type === "char") {
    if (item.kind !== "text" && item.kind !== "character") return notOf(nameOf(item), type, item.at);
    (data as Uint8Array).set(item.bytes, at);
  } else if (type === "string") {
    if (item.kind === "text" || item.kind === "character")
      (data as string[])[at] = decodeText(item.bytes).text;
    else if (item.kind === "nil") (data as string[])[at] = "";
    else return notOf(nameOf(item), type, item.at);
  } else {
    const value = numberOf(item, type);
    if (isComplaint(value)) return value;
    (data as Float64Array)[at] = value as number;
  }
  return null;
}
