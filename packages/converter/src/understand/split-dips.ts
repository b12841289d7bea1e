import { type Cast, type Column, findDips } from "@wherry/core";
import type { Parting } from "./cast-gaps.ts";
import { evidence, type FileFacts } from "./file-facts.ts";
import { oneOf } from "./inquiry.ts";
import type { RawCast } from "./raw-cast.ts";

/**
 * A cast for each dip of a record that was left running between them; the answer "one" to castSplitting keeps it
 * whole. Ids get -1, -2 …; the fixes at start and end of the record serve each of its dips.
 */
export function splitDips(read: Cast, raw: RawCast, facts: FileFacts): readonly Cast[] {
  const { inquiry, path } = facts;
  const cast = raw.parting === null ? read : asParted(read, raw.parting, facts);
  const dips = cast.state.processing === "raw" ? findDips(cast) : [];
  if (dips.length < 2) return [cast];
  const chosen = inquiry.given({ topic: "castSplitting", cast: cast.id, read: oneOf("one", "each") });
  if (chosen?.value === "one")
    return [
      {
        ...cast,
        evidence: [...cast.evidence, evidence("castSplitting", "answered", chosen.because, { file: path })],
      },
    ];
  return dips.map(({ firstRow, lastRow }, i) => {
    const part = <T extends { slice(from: number, to: number): T }>(values: T) =>
      values.slice(firstRow, lastRow + 1);
    const began = cast.elapsed?.[firstRow] ?? Number.NaN;
    const ended = cast.elapsed?.[lastRow] ?? Number.NaN;
    const because = `the record goes down ${dips.length} times; this is dip ${i + 1}, lines ${cast.lines[firstRow]} to ${cast.lines[lastRow]}; the fixes of the record serve each dip`;
    const column = (each: Column): Column => ({
      ...each,
      values: part(each.values),
      flags: part(each.flags),
      source: each.source && { ...each.source, ...ends(raw, each.source.index, firstRow, lastRow) },
      sourceFlags: each.sourceFlags && {
        ...each.sourceFlags,
        values: each.sourceFlags.values.slice(firstRow, lastRow + 1),
      },
    });
    return {
      ...cast,
      id: `${cast.id}-${i + 1}`,
      rows: lastRow - firstRow + 1,
      time: cast.time + began,
      endTime: i === dips.length - 1 ? cast.endTime : cast.time + ended,
      elapsed: cast.elapsed && part(cast.elapsed).map((time) => time - began),
      columns: new Map([...cast.columns].map(([name, each]) => [name, column(each)])),
      texts: new Map([...cast.texts].map(([name, texts]) => [name, texts.slice(firstRow, lastRow + 1)])),
      ...(cast.timeColumns && { timeColumns: timeEnds(cast.timeColumns, raw, firstRow, lastRow) }),
      lines: part(cast.lines),
      evidence: [...cast.evidence, evidence("castSplitting", "implied", because, { file: path })],
    };
  });
}

function timeEnds(
  columns: NonNullable<Cast["timeColumns"]>,
  { columns: stood, rows }: RawCast,
  firstRow: number,
  lastRow: number,
): NonNullable<Cast["timeColumns"]> {
  const index = (header: string) => stood.find(({ head }) => head.header === header)!.index;
  const at = (row: number, header: string) => rows.cell(row, index(header));
  return new Map(
    [...columns.keys()].map((header) => [header, { first: at(firstRow, header), last: at(lastRow, header) }]),
  );
}

/** Says that blank lines part casts, or asks. */
function asParted(cast: Cast, parting: Parting, { inquiry, path }: FileFacts): Cast {
  if (!parting.open)
    return parting.firstRows.length === 1
      ? cast
      : {
          ...cast,
          evidence: [
            ...cast.evidence,
            evidence("castSplitting", "implied", parting.because, { file: path, line: cast.lines[0] ?? 1 }),
          ],
        };
  inquiry.settle({
    topic: "castSplitting",
    holds: [cast.id],
    text: "Are the rows between the blank lines one cast, or is each stretch that begins anew a cast of its own? Pressure or depth does not tell clearly.",
    line: cast.lines[0] ?? 1,
    candidates: ["each", "one"],
    read: oneOf("one", "each"),
    form: "one or each",
  });
  return cast;
}

/** First and last printed value of some rows of a column. */
function ends(raw: RawCast, index: number, firstRow: number, lastRow: number) {
  const printed = raw.columns.find((column) => column.index === index)?.numbers?.values;
  const known = printed?.slice(firstRow, lastRow + 1).filter((value) => !Number.isNaN(value));
  return { first: known?.[0] ?? Number.NaN, last: known?.at(-1) ?? Number.NaN };
}
