import type { OtherLine } from "./blocks.ts";
import { kindOfCell, splitCells } from "./cells.ts";
import { type HeaderLine, readHeaderLine } from "./header-lines.ts";
import { headerTopics } from "./vocabulary/header-words.ts";
import { wordsOf } from "./words.ts";

/**
 * Lines of a header, and beside them what a small table among them says: a line of names above one line of as many
 * values is read as one line "name: value" for each column. A table of several rows is left as it stands, since it
 * does not say which of them is meant.
 */
export function readHeaderLines(lines: readonly OtherLine[]): readonly HeaderLine[] {
  const found: HeaderLine[] = [];
  for (let i = 0; i < lines.length; i++) {
    const table = tableAt(lines, i);
    if (table === null) {
      const line = readHeaderLine(lines[i]!);
      if (line) found.push(line);
      continue;
    }
    const { names, rows, delimiter } = table;
    const [only, ...more] = rows;
    if (only && more.length === 0) {
      const values = splitCells(only.text, delimiter);
      for (const [c, name] of names.entries()) {
        const value = values[c] ?? "";
        const line = value === "" ? null : readHeaderLine({ number: only.number, text: `${name}: ${value}` });
        if (line) found.push(line);
      }
    }
    i += rows.length;
  }
  return found;
}

/** A line of names for two or more facts of a header, with the lines of as many values below it. */
function tableAt(lines: readonly OtherLine[], at: number) {
  const head = lines[at]!.text;
  if (head.length > 2000) return null;
  for (const delimiter of ["\t", ";", "|", ","] as const) {
    if (!head.includes(delimiter)) continue;
    const names = splitCells(head, delimiter);
    const named = names.filter((name) => /[A-Za-zÀ-ÿ]/.test(name) && !/\d{2}/.test(name)).length;
    const telling = names.filter((name) => headerTopics(wordsOf(name)).size > 0).length;
    if (names.length < 3 || named < names.length || telling < 2) continue;
    const rows: OtherLine[] = [];
    for (let i = at + 1; i < lines.length && lines[i]!.number === lines[at]!.number + rows.length + 1; i++) {
      const cells = splitCells(lines[i]!.text, delimiter);
      const valued = cells.filter((cell) => kindOfCell(cell) !== "text").length;
      if (cells.length !== names.length || valued < 2) break;
      rows.push(lines[i]!);
    }
    if (rows.length > 0) return { names, rows, delimiter };
  }
  return null;
}
