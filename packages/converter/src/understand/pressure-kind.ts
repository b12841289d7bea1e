import { type Cast, convertUnits, pressureQuestion } from "@wherry/core";
import type { ColumnContext, Note, Settled } from "./column-context.ts";
import { evidence, type FileFacts } from "./file-facts.ts";
import { oneOf } from "./inquiry.ts";
import { extentOf } from "./number-column.ts";
import { QUANTITIES, type QuantityId } from "./vocabulary/quantities.ts";
import { plainWords } from "./words.ts";

/** Below this an instrument at the surface of a lake or sea cannot be showing absolute pressure, dbar. */
const SURELY_SEA = 3;

/**
 * Sea or absolute pressure: by the words of head and header, else by shallow rows that show about 0, else asked.
 * Absolute pressure stays absolute here.
 */
export function pressureKind(
  settled: readonly Settled[],
  { facts, id }: ColumnContext,
  note: Note,
): ReadonlyMap<Settled, QuantityId> {
  const kinds = new Map<Settled, QuantityId>();
  for (const each of settled) {
    if (each.quantity === "absolute_pressure")
      note(each.column, "stated", `"${each.column.head.header}" says absolute`, "pressureKind");
    if (each.quantity !== "pressure" || each.unit === null) continue;
    const words = ` ${plainWords(each.column.head.header)} `;
    const lowest = convertUnits(extentOf(each.numbers.values).min, each.unit.units, "dbar");
    if (/ (?:abs|absolute|absolu|absolut\w*) /.test(words)) {
      kinds.set(each, "absolute_pressure");
      note(each.column, "stated", `"${each.column.head.header}" says absolute`, "pressureKind");
    } else if (/ (?:gauge|sea|rel|relative|relativ) /.test(words) || each.unit.says === "gauge") {
      note(
        each.column,
        "stated",
        `"${each.column.head.header}" says that the air is not counted`,
        "pressureKind",
      );
    } else if (lowest < SURELY_SEA) {
      note(
        each.column,
        "assumed",
        `sea pressure: its shallowest row shows ${Math.round(lowest * 100) / 100} dbar, about 0`,
        "pressureKind",
      );
    } else {
      const answer = facts.inquiry.settle({
        topic: "pressureKind",
        holds: [id],
        text: `Is "${each.column.head.header}" sea pressure (0 at the surface) or absolute pressure (with the air above)? Its lowest value is ${Math.round(lowest * 100) / 100} dbar.`,
        candidates: ["sea", "absolute"],
        read: oneOf("sea", "absolute"),
        form: "sea or absolute",
      });
      if (answer) note(each.column, "answered", answer.because, "pressureKind");
      if (answer?.value === "absolute") kinds.set(each, "absolute_pressure");
    }
  }
  return kinds;
}

/**
 * Asks what the whole record leaves open where words and shallow rows did not: its reading in air may be the weight
 * of the air, or neither that nor a zero error. Once answered, the cast carries the answer as evidence.
 */
export function askPressureInAir(cast: Cast, { inquiry, path }: FileFacts): Cast {
  if (inquiry.questions.some(({ about, casts }) => about === "pressureKind" && casts.includes(cast.id)))
    return cast;
  const open = pressureQuestion(cast);
  const pressure = cast.columns.get("pressure");
  if (open === null || pressure === undefined) return cast;
  const answer = inquiry.settle({
    topic: "pressureKind",
    holds: [cast.id],
    text: `${open.message}. ${open.remedy}`,
    ...(open.where.line === undefined ? {} : { line: open.where.line }),
    candidates: ["absolute", "sea"],
    read: oneOf("absolute", "sea"),
    form: "absolute or sea",
  });
  if (answer === null) return cast;
  const { standardName, longName } = QUANTITIES.absolute_pressure;
  return {
    ...cast,
    columns:
      answer.value === "sea"
        ? cast.columns
        : new Map(cast.columns).set("pressure", { ...pressure, standardName, longName }),
    evidence: [...cast.evidence, evidence("pressureKind", "answered", answer.because, { file: path })],
  };
}
