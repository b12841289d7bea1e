import { type Cast, type Column, type Evidence, median, type Problem } from "@wherry/core";
import { attachFlags } from "./attach-flags.ts";
import type { ColumnContext, Note, Settled } from "./column-context.ts";
import type { ColumnMeaning } from "./column-meaning.ts";
import { conductivityKind } from "./conductivity-kind.ts";
import { namedByPerson } from "./extra-names.ts";
import { evidence } from "./file-facts.ts";
import { otherColumn, quantityColumn } from "./house-column.ts";
import { oneOf } from "./inquiry.ts";
import { suspectMarkers } from "./missing-markers.ts";
import { extentOf, type NumberColumn, withoutMarkers } from "./number-column.ts";
import { pressureKind } from "./pressure-kind.ts";
import type { RawCast, RawColumn } from "./raw-cast.ts";
import { salinityScale, temperatureScale } from "./scales.ts";
import { readQuantity, settleColumn, usualUnits } from "./settle-column.ts";
import type { TableRows } from "./table-rows.ts";
import { askContradictions } from "./unit-contradictions.ts";
import { roleOfName } from "./vocabulary/quantity-words.ts";
import { plainWords } from "./words.ts";

export interface BuiltColumns {
  readonly columns: ReadonlyMap<string, Column>;
  readonly texts: ReadonlyMap<string, readonly string[]>;
  readonly timeColumns: NonNullable<Cast["timeColumns"]>;
  readonly evidence: readonly Evidence[];
  readonly findings: readonly Problem[];
  readonly markers: readonly string[];
}

/** Turns the columns of a cast into quantities in house units; what is not understood passes through. */
export function buildColumns(cast: RawCast, context: ColumnContext): BuiltColumns {
  const { facts } = context;
  const found: Evidence[] = [];
  const findings: Problem[] = [];
  const texts = new Map<string, readonly string[]>();
  const timeColumns = new Map<string, { first: string; last: string }>();
  const markers = new Set<string>();
  const settled: Settled[] = [];
  const others: { column: RawColumn; numbers: NumberColumn }[] = [];
  const flagColumns: RawColumn[] = [];
  const place = cast.headLine === null ? { file: facts.path } : { file: facts.path, line: cast.headLine };
  const note: Note = (column, certainty, because, fact) =>
    found.push(evidence(`${fact ?? "column"}:${column.head.header}`, certainty, because, place));
  const cells = (column: RawColumn) => cast.rows.column(column.index);
  const bad = suspectMarkers(cast, context);

  for (const column of cast.columns) {
    const { meaning, head } = column;
    const timeRole = context.timeColumns.get(head.header);
    if (timeRole) {
      if (context.rowsTimed && (column.numbers?.count ?? cast.rows.length) === cast.rows.length)
        timeColumns.set(head.header, endsOf(cast.rows, column.index));
      else texts.set(head.header, cells(column));
      const fact = timeRole === "absolute" ? "timeColumn" : "elapsedColumn";
      found.push(
        evidence(
          `${fact}:${head.header}`,
          "stated",
          timeRole === "absolute" ? "its cells are dates or times" : "it counts time from the start",
          place,
        ),
      );
      continue;
    }
    if (column.signDoubtful) askSign(column, context);
    if (meaning.kind === "flag") {
      flagColumns.push(column);
      continue;
    }
    if (column.numbers === null) {
      texts.set(head.header, cells(column));
      continue;
    }
    const numbers =
      bad.length > 0
        ? withoutMarkers(
            column.numbers,
            bad.map(({ value }) => value),
            bad.filter(({ text }) => cells(column).includes(text)).map(({ text }) => text),
          )
        : column.numbers;
    for (const marker of numbers.markers) markers.add(marker);
    if (numbers.unread.length > 0) findings.push(unreadFinding(column, numbers, cast, facts.path));
    const final = answeredQuantity(column, context, note) ?? namedByPerson(column, facts.names) ?? meaning;
    const known = settleColumn(column, final, numbers, context, note);
    if (known) settled.push(known.quantity === "depth" ? downward(known, context, note) : known);
    else others.push({ column, numbers });
  }

  for (const { column } of others) askMeaning(column, cast, settled, context);
  const columns = new Map<string, Column>();
  const add = (column: Column) => {
    let name = column.name;
    for (let n = 2; columns.has(name); n++) name = `${column.name}_${n}`;
    columns.set(
      name,
      name === column.name
        ? column
        : { ...column, name, longName: `${column.longName} (${name.slice(column.name.length + 1)})` },
    );
  };
  const sure = askContradictions(settled, cast, context, note);
  const pressure = pressureKind(sure, context, note);
  const conductivity = conductivityKind(sure, cast, context, note);
  const built: { index: number; column: Column }[] = [];
  for (const each of sure) {
    const quantity = pressure.get(each) ?? conductivity.get(each) ?? each.quantity;
    const scale = quantity === "temperature" ? temperatureScale(each, context, note) : null;
    const salt = quantity === "salinity" ? salinityScale(each, context, note) : quantity;
    built.push({ index: each.column.index, column: quantityColumn({ ...each, quantity: salt }, scale) });
  }
  for (const { column, numbers } of others)
    built.push({ index: column.index, column: otherColumn(column, numbers) });
  built.sort((a, b) => a.index - b.index);
  for (const { column } of built) add(column);
  attachFlags(flagColumns, columns, texts, cast, context, note);
  return { columns, texts, timeColumns, evidence: found, findings, markers: [...markers] };
}

/** First and last cell of a column. */
const endsOf = (rows: TableRows, index: number) => ({
  first: rows.cell(0, index),
  last: rows.cell(rows.length - 1, index),
});

/** Points among commas, or commas among points, in groups that may count thousands. */
function askSign({ head, numbers }: RawColumn, { facts, id }: ColumnContext): void {
  facts.inquiry.settle({
    topic: "decimalSign",
    column: head.header,
    holds: [id],
    text: `Is the sign in the numbers under "${head.header}" a decimal sign, or does it group thousands (${numbers?.first})? Other columns have another decimal sign.`,
    candidates: ["decimal", "thousands"],
    read: oneOf("decimal", "thousands"),
    form: "decimal or thousands",
  });
}

/**
 * Asks about a column that was not understood and that matters: without a name, with a unit that measures what no other
 * column of the cast does, or with a name that begins like a quantity that the cast lacks.
 */
function askMeaning(
  { head, meaning, index }: RawColumn,
  cast: RawCast,
  settled: readonly Settled[],
  { facts, id }: ColumnContext,
): void {
  if (meaning.kind !== "other" || roleOfName(head.name) !== null) return;
  const kind = head.unit?.kind;
  const measured = cast.columns.some((other) => other.index !== index && other.head.unit?.kind === kind);
  const byUnit = MEASURED.find((each) => each === kind && !measured);
  const begins = plainWords(head.name).split(" ")[0] ?? "";
  const byName = MEASURED.find(
    (each) => roleOfName(begins)?.role === each && settled.every(({ quantity }) => quantity !== each),
  );
  const nameless = head.name === "" && head.unitText === null;
  if (!nameless && !byUnit && !byName) return;
  const unit = byUnit ? head.unitText : usualUnits(byName ?? "temperature")[0];
  facts.inquiry.settle({
    topic: "quantity",
    column: head.header,
    holds: [id],
    text: nameless
      ? `What does "${head.header}" hold? It has no name.`
      : `What does "${head.header}" hold? ${byUnit ? "Its name is not known, and its unit measures what no other column of the cast does." : `It may be a ${byName}, but not all of its words are known.`}`,
    ...(cast.headLine === null ? {} : { line: cast.headLine }),
    candidates: [`${byUnit ?? byName ?? "temperature"} [${unit}]`, "other"],
    read: (value) => value,
    form: 'a quantity with its unit, such as "temperature [degC]", or "other"',
  });
}

/** What a cast is made for: a column of these is not passed through without a word. */
const MEASURED = ["pressure", "depth", "temperature", "conductivity", "salinity"] as const;

/** Depths that are negative numbers may be heights; what they are is asked. */
function downward(each: Settled, { facts, id }: ColumnContext, note: Note): Settled {
  if (!(median(each.numbers.values) < 0) || extentOf(each.numbers.values).max > 1) return each;
  const answer = facts.inquiry.settle({
    topic: "depthSign",
    holds: [id],
    text: `The numbers under "${each.column.head.header}" are negative. Do they count upward from the surface (heights), or downward?`,
    candidates: ["upward", "downward"],
    read: oneOf("upward", "downward"),
    form: "upward or downward",
  });
  if (answer) note(each.column, "answered", answer.because);
  if (answer?.value !== "upward") return each;
  return { ...each, numbers: { ...each.numbers, values: each.numbers.values.map((value) => -value) } };
}

/** The meaning a person gave a column, whatever its head says. */
function answeredQuantity(column: RawColumn, { facts, id }: ColumnContext, note: Note): ColumnMeaning | null {
  const given = facts.inquiry.given({
    topic: "quantity",
    column: column.head.header,
    cast: id,
    read: readQuantity(column),
  });
  if (!given) return null;
  if (given.value.kind === "quantity") return { ...given.value, because: given.because, byPerson: true };
  note(column, "answered", given.because);
  return given.value;
}

function unreadFinding(column: RawColumn, numbers: NumberColumn, cast: RawCast, file: string): Problem {
  const [first] = numbers.unread;
  const lines = numbers.unread.slice(0, 5).map(({ row }) => cast.lines[row]);
  const more = numbers.unread.length > 5 ? ` and ${numbers.unread.length - 5} more` : "";
  return {
    code: "understand/not-a-number",
    message: `"${first?.text}" under "${column.head.header}" is not a number; ${numbers.unread.length === 1 ? "it becomes" : "such cells become"} missing (line ${lines.join(", ")}${more})`,
    where: { file, line: cast.lines[first?.row ?? 0] ?? 1, column: column.index + 1 },
    remedy: "If it marks missing values, answer missingMarker with it; else correct the line.",
  };
}
