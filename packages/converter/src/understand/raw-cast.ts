import type { Block, OtherLine } from "./blocks.ts";
import { type Parting, partingAt } from "./cast-gaps.ts";
import type { Moment } from "./clock.ts";
import { type ColumnHead, readHead } from "./column-head.ts";
import { type ColumnMeaning, meaningOf } from "./column-meaning.ts";
import { otherSign, withOtherSign } from "./column-sign.ts";
import type { RowLayout } from "./delimiter.ts";
import { namedByPerson } from "./extra-names.ts";
import type { FileFacts } from "./file-facts.ts";
import type { HeaderLine } from "./header-lines.ts";
import { type Inquiry, oneOf } from "./inquiry.ts";
import type { NumberColumn, NumberStyleOfFile } from "./number-column.ts";
import { numbersOf, partOf, type Table } from "./read-table.ts";
import { readMoments } from "./row-times.ts";
import { readHeaderLines } from "./small-tables.ts";
import type { TableRows } from "./table-rows.ts";
import { roleOfName } from "./vocabulary/quantity-words.ts";

/** A column as it stands in one cast. */
export interface RawColumn {
  readonly index: number;
  readonly head: ColumnHead;
  readonly meaning: ColumnMeaning;
  readonly numbers: NumberColumn | null;
  /** Whether a person has to say if its points (or commas) group thousands. */
  readonly signDoubtful: boolean;
  /** For dates and times. */
  readonly moments: readonly (Moment | null)[] | null;
}

/** A cast before anything about it has been decided. */
export interface RawCast {
  /** Lines that belong to this cast alone. */
  readonly own: readonly HeaderLine[];
  /** Lines for all casts of the file. */
  readonly shared: readonly HeaderLine[];
  readonly notes: readonly string[];
  /** Name in a cast column; null if there is none. */
  readonly columnName: string | null;
  readonly rows: TableRows;
  /** From 1. */
  readonly lines: Uint32Array;
  readonly columns: readonly RawColumn[];
  readonly headLine: number | null;
  /** How rows without a word between them were told to be casts; null if nothing parts them. */
  readonly parting: Parting | null;
  /** Lines that other casts have as well, so that a time of day in them is not this cast's own. */
  readonly common: "none" | "shared" | "all";
}

/** What a person has said: answers, and names of their own for quantities. */
type Person = Pick<FileFacts, "inquiry" | "names">;

/** Divides the lines outside the tables into those for every cast and those for one. */
export function shareLines(blocks: readonly Block[], below: readonly OtherLine[]) {
  const [first, second] = blocks;
  const read = readHeaderLines;
  if (!first) return { shared: [], own: [], texts: [] };
  if (!second)
    return {
      shared: [] as HeaderLine[],
      own: [read([...first.above, ...below])],
      texts: [[...first.above, ...below].map(({ text }) => text)],
    };
  // the line that opens the second cast also opened the first; what stands above it is for all
  const shape = (text: string) =>
    text
      .replace(/\d+/g, "0")
      .replace(/[A-Za-z]$/, "A")
      .trim();
  const opening = second.above[0] ? shape(second.above[0].text) : null;
  const at = first.above.findIndex(({ text }) => shape(text) === opening);
  const sharedLines = at < 0 ? [] : first.above.slice(0, at);
  const own = blocks.map((block, i) => {
    const lines = i === 0 ? first.above.slice(Math.max(at, 0)) : block.above;
    return i === blocks.length - 1 ? [...lines, ...below] : lines;
  });
  return {
    shared: read(sharedLines),
    own: own.map(read),
    texts: own.map((lines) => [...sharedLines, ...lines].map(({ text }) => text)),
  };
}

export function headsOfBlock(block: Block, layout: RowLayout): readonly ColumnHead[] {
  const { head } = block;
  const width = layout.width;
  const names = head ? head.names.filter((_, i) => head.joinedAt === null || i !== head.joinedAt + 1) : [];
  const units = head ? head.units.filter((_, i) => head.joinedAt === null || i !== head.joinedAt + 1) : [];
  const count = head?.joinedAt == null ? width : width - 1;
  return Array.from({ length: count }, (_, i) => readHead(names[i] ?? "", units[i] ?? null));
}

/** Casts of a block: one, or one for each value of a cast column. */
export function rawCasts(
  block: Block,
  table: Table,
  heads: readonly ColumnHead[],
  lines: {
    readonly own: readonly HeaderLine[];
    readonly shared: readonly HeaderLine[];
    readonly texts: readonly string[];
  },
  style: NumberStyleOfFile,
  person: Person,
): readonly RawCast[] {
  const { inquiry } = person;
  const common = { notes: lines.texts, headLine: block.head?.nameLine ?? null, common: "none" as const };
  const groups = groupsByCast(table, heads, style).map(({ name, rows }): RawCast => {
    const own = rows === null ? table : partOf(table, rows, style);
    return {
      ...common,
      own: lines.own,
      shared: lines.shared,
      columnName: name,
      rows: own.rows,
      lines: own.rows.at.map((i) => i + 1),
      columns: rawColumns(own, heads, style, inquiry),
      parting: null,
    };
  });
  const [whole] = groups;
  if (groups.length > 1 || !whole || whole.columnName !== null || block.gaps.length === 0) return groups;
  const vertical = whole.columns.find((column) => column.numbers !== null && isVertical(column, person));
  const answer = inquiry.given({ topic: "castSplitting", read: oneOf("one", "each") })?.value ?? null;
  const parting = vertical?.numbers ? partingAt(block.gaps, vertical.numbers.values, answer) : null;
  if (parting === null) return groups;
  const { firstRows } = parting;
  if (firstRows.length === 1) return [{ ...whole, parting }];
  return firstRows.map((from, i) => {
    const to = firstRows[i + 1] ?? table.rows.length;
    const part = partOf(
      table,
      Array.from({ length: to - from }, (_, row) => from + row),
      style,
    );
    return {
      ...whole,
      own: [],
      shared: [...lines.own, ...lines.shared],
      rows: part.rows,
      lines: part.rows.at.map((line) => line + 1),
      columns: rawColumns(part, heads, style, inquiry),
      parting,
    };
  });
}

/** Pressure or depth, by its head or as a person answered. */
function isVertical(column: RawColumn, { inquiry, names }: Person): boolean {
  const isOne = (name: string) => ["pressure", "absolute_pressure", "depth"].includes(name);
  const { header } = column.head;
  const answered = inquiry.given({ topic: "quantity", column: header, read: (value) => value })?.value;
  if (answered !== undefined) return isOne(answered.split(/\s*\[/)[0]!);
  const meaning = namedByPerson(column, names) ?? column.meaning;
  if (meaning.kind === "letter") return meaning.letters.some(isOne);
  return (meaning.kind === "quantity" || meaning.kind === "contradiction") && isOne(meaning.quantity);
}

/** Marks casts that have lines in common, except where their elapsed times go on from one to the next. */
export function markShared(casts: readonly RawCast[]): readonly RawCast[] {
  if (casts.length < 2) return casts;
  const elapsed = casts.map(
    ({ columns }) => columns.find(({ meaning }) => meaning.kind === "elapsed")?.numbers ?? null,
  );
  const goesOn = elapsed.every(
    (numbers, i) => numbers !== null && (i === 0 || numbers.first > elapsed[i - 1]!.last),
  );
  return goesOn
    ? casts
    : casts.map((cast) => ({
        ...cast,
        common:
          cast.own.length === 0 || casts.some((other) => other !== cast && other.own === cast.own)
            ? "all"
            : "shared",
      }));
}

/** Numbers of a column, by its own decimal sign where that is not the file's. */
function numbersBySign(
  table: Table,
  index: number,
  header: string,
  sample: readonly string[],
  style: NumberStyleOfFile,
  inquiry: Inquiry,
): Pick<RawColumn, "numbers" | "signDoubtful"> {
  const byFile = () => numbersOf(table, index, style);
  if (otherSign(sample, style.decimal) === null) return { numbers: byFile(), signDoubtful: false };
  const cells = table.rows.column(index);
  const sign = otherSign(cells, style.decimal);
  const given = inquiry.given({
    topic: "decimalSign",
    column: header,
    read: oneOf("decimal", "thousands"),
  })?.value;
  if (sign === null || given === "thousands") return { numbers: byFile(), signDoubtful: false };
  if (sign === "doubtful" && !given) return { numbers: byFile(), signDoubtful: true };
  return { numbers: withOtherSign(cells, style) ?? byFile(), signDoubtful: false };
}

function rawColumns(
  table: Table,
  heads: readonly ColumnHead[],
  style: NumberStyleOfFile,
  inquiry: Inquiry,
): readonly RawColumn[] {
  const columns: RawColumn[] = [];
  const used = new Map<string, number>();
  const { rows } = table;
  const sample = rows.head(40);
  for (const [index, given] of heads.entries()) {
    const cells = sample.map((row) => row[index] ?? "");
    const empty = given.header === "" && cells.every((cell) => cell === "");
    if (empty && rows.column(index).every((cell) => cell === "")) continue;
    const bare = given.header === "" ? `column ${index + 1}` : given.header;
    // two columns of one name stay two columns
    const times = (used.get(bare) ?? 0) + 1;
    used.set(bare, times);
    const head = { ...given, header: times === 1 ? bare : `${bare} (${times})` };
    const { numbers, signDoubtful } = numbersBySign(table, index, head.header, cells, style, inquiry);
    const meaning = meaningOf(given, cells, numbers);
    const moments =
      meaning.kind === "time" || (meaning.kind === "elapsed" && numbers === null)
        ? readMoments(rows.column(index))
        : null;
    columns.push({ index, head, meaning, numbers, signDoubtful, moments });
  }
  return columns;
}

/** Row groups by a column that names the cast, or else the station; one group of all rows if there is none. */
function groupsByCast(
  table: Table,
  heads: readonly ColumnHead[],
  style: NumberStyleOfFile,
): readonly { readonly name: string | null; readonly rows: readonly number[] | null }[] {
  const whole = [{ name: null, rows: null }];
  const byMeaning = (kind: "cast" | "station") =>
    heads.findIndex((head, index) => {
      if (roleOfName(head.name)?.role !== kind) return false;
      const cells = table.rows.head(40).map((row) => row[index] ?? "");
      return meaningOf(head, cells, numbersOf(table, index, style)).kind === kind;
    });
  const castColumn = byMeaning("cast");
  const column = castColumn >= 0 ? castColumn : byMeaning("station");
  if (column < 0) return whole;
  const groups = new Map<string, number[]>();
  for (const [row, name] of table.rows.column(column).entries()) {
    const group = groups.get(name);
    if (group) group.push(row);
    else groups.set(name, [row]);
  }
  // a name for nearly every row is a counter, not a cast
  if (groups.size > 1 && groups.size > table.rows.length / 2) return whole;
  if (castColumn < 0 && groups.size === 1) return whole;
  return [...groups].map(([name, rows]) => ({ name: castColumn < 0 ? null : name, rows }));
}
