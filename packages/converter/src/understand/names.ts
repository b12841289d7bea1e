import type { OtherLine } from "./blocks.ts";
import { kindOfCell, splitCells } from "./cells.ts";
import type { RowLayout } from "./delimiter.ts";
import { roleOfName } from "./vocabulary/quantity-words.ts";
import { readUnit } from "./vocabulary/unit-spellings.ts";

/** Heads of the columns of a table, one per column. */
export interface NamedHead {
  readonly names: readonly string[];
  /** From a line of units; null where there is no such line. */
  readonly units: readonly (string | null)[];
  readonly nameLine: number;
  readonly unitLine: number | null;
  /** A date and a time of day under one head: index of the first of the two cells. */
  readonly joinedAt: number | null;
}

const PREFIX = /^\s*(?:#|%|\*|\/\/|@|!|;|--)+\s?/;

/**
 * Column heads among the lines above a table: the nearest line that has a word for each column, with a line of
 * units below (or above) it, or none. Rulers and blank lines between them do not count.
 */
export function findNames(
  above: readonly OtherLine[],
  layout: RowLayout,
): {
  readonly above: readonly OtherLine[];
  readonly head: NamedHead | null;
  readonly headLines: readonly number[];
} {
  const rulers = new Set(above.filter(({ text }) => isRulerLine(text)).map(({ number }) => number));
  const near = above
    .filter(({ number }) => !rulers.has(number))
    .slice(-3)
    .reverse();
  const [first, second] = near;
  const head = first ? headOf(first, second, layout) : null;
  const headLines = head ? [head.nameLine, ...(head.unitLine === null ? [] : [head.unitLine])] : [];
  const last = above.at(-1)?.number ?? 0;
  const used = new Set([...headLines, ...[...rulers].filter((n) => n >= Math.min(last - 4, ...headLines))]);
  return { above: head ? above.filter(({ number }) => !used.has(number)) : above, head, headLines };
}

const isRulerLine = (text: string) => /^[\s#*%;,|+\-=_~.:<>]*$/.test(text);

function headOf(first: OtherLine, second: OtherLine | undefined, layout: RowLayout): NamedHead | null {
  const lower = headCells(first.text, layout);
  const upper = second ? headCells(second.text, layout) : null;
  const base = { nameLine: first.number, unitLine: null, joinedAt: lower?.joinedAt ?? null };
  // D, T and S are names above m, degC and PSU, although they could be units by themselves
  const letters =
    upper?.cells.every((cell) => /^[A-Za-z]$/.test(cell)) && lower?.cells.some((cell) => cell.length > 1);
  const namesAbove = upper && (letters || !isUnitLine(upper.cells)) && isNameLine(upper.cells);
  if (lower && upper && isUnitLine(lower.cells) && namesAbove) {
    return {
      names: upper.cells,
      units: lower.cells.map((cell) => (cell === "" ? null : cell)),
      nameLine: second!.number,
      unitLine: first.number,
      joinedAt: upper.joinedAt,
    };
  }
  if (lower && upper && isUnitLine(upper.cells) && !isUnitLine(lower.cells) && knownNames(lower.cells) >= 2) {
    return {
      names: lower.cells,
      units: upper.cells.map((cell) => (cell === "" ? null : cell)),
      nameLine: first.number,
      unitLine: second!.number,
      joinedAt: lower.joinedAt,
    };
  }
  if (lower && isNameLine(lower.cells))
    return { names: lower.cells, units: lower.cells.map(() => null), ...base };
  return null;
}

/** Cells of a possible head line: as many as the rows have, however it is parted. */
function headCells(
  text: string,
  layout: RowLayout,
): { readonly cells: readonly string[]; readonly joinedAt: number | null } | null {
  if (text.length > 4000) return null;
  const bare = text.replace(PREFIX, "");
  const own = splitCells(bare, layout.delimiter, layout.edges);
  // a nameless first cell more than the rows have: nothing tells which name belongs where
  const begun = layout.delimiter.length === 1 && new RegExp(`^[${layout.delimiter}]\\S`).test(text);
  if (begun && splitCells(text, layout.delimiter).length === layout.width + 1) return null;
  const torn =
    layout.delimiter === "fixed" &&
    layout.edges.some((edge) => /^\S\S$/.test(text.slice(edge - 1, edge + 1)));
  const attempts = [
    ...(torn ? [] : [own, splitCells(text, layout.delimiter, layout.edges)]),
    bare.trim().split(/\s{2,}|\t/),
    // a unit in brackets belongs to the name before it
    bare
      .trim()
      .replace(/[^\S\t]+(?=[[(])/g, "_")
      .split(/\s+/),
    ...(["\t", ";", ",", "|", "whitespace"] as const).map((delimiter) => splitCells(bare, delimiter)),
  ].map((cells) => cells.map((cell) => cell.trim().replace(/^"(.*)"$/, "$1")));
  // a remark of as many words as the table has columns is no head
  const isHead = (cells: readonly string[]) =>
    ["whitespace", "fixed"].includes(layout.delimiter) ||
    text.includes(layout.delimiter) ||
    knownNames(cells) > 0 ||
    isUnitLine(cells);
  for (const cells of attempts) {
    if (!isHead(cells)) continue;
    if (cells.length === layout.width) return { cells, joinedAt: null };
    if (cells.length === layout.width + 1 && cells.at(-1) === "")
      return { cells: cells.slice(0, -1), joinedAt: null };
  }
  if (layout.delimiter !== "whitespace") {
    // rows may end in a delimiter that the head has not
    const cells = own;
    return cells.length === layout.width - 1 ? { cells: [...cells, ""], joinedAt: null } : null;
  }
  // one head over a date and a time of day that a blank parts
  for (const cells of attempts) {
    if (cells.length !== layout.width - 1) continue;
    const at = cells.findIndex((cell) =>
      ["datetime", "time", "date"].includes(roleOfName(bareName(cell))?.role ?? ""),
    );
    if (at >= 0) return { cells: [...cells.slice(0, at + 1), "", ...cells.slice(at + 1)], joinedAt: at };
  }
  return null;
}

const bareName = (cell: string) => cell.replace(/[([{].*$/, "").trim() || cell;

function isNameLine(cells: readonly string[]): boolean {
  const filled = cells.filter((cell) => cell !== "");
  if (filled.length === 0 || filled.length < cells.length - 2) return false;
  const words = filled.filter((cell) => /[A-Za-zÀ-ÿ%°]/.test(cell) && kindOfCell(cell) !== "clock");
  return words.length === filled.length || (words.length >= 2 && words.length >= filled.length - 1);
}

function isUnitLine(cells: readonly string[]): boolean {
  const filled = cells.filter((cell) => cell !== "");
  const known = filled.filter((cell) => readUnit(cell) !== null || isTimeFormat(cell));
  const bracketed = filled.filter((cell) => /^[[(].*[\])]$/.test(cell));
  return (
    filled.length > 0 &&
    (known.length === filled.length ||
      bracketed.length === filled.length ||
      (known.length >= 2 && known.length >= filled.length - 1))
  );
}

/** "hh:mm:ss", "yyyy-mm-dd", "UTC" under a time column. */
const isTimeFormat = (cell: string) =>
  /^[[(]?(?:[YyMmDdHhSsj]{1,4}[-/:. T]?)+[\])]?$|^[[(]?(?:UTC|GMT|local)[\])]?$/.test(cell) &&
  cell.replace(/\W/g, "").length > 1;

const knownNames = (cells: readonly string[]) =>
  cells.filter((cell) => roleOfName(bareName(cell)) !== null).length;
