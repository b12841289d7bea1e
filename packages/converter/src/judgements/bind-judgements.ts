import type { Judgement } from "@wherry/contracts";
import { type Cast, type ManualFlag, nearestNames, type Problem, rowsInRange } from "@wherry/core";
import type { PlacedJudgement } from "./read-judgements.ts";

/** Judgements with the casts that they are about. */
export interface BoundJudgements {
  /** By cast id, in the order of the file. */
  readonly manual: ReadonlyMap<string, readonly ManualFlag[]>;
  /** Judgements that are not applied, with the reason. */
  readonly findings: readonly Problem[];
}

/**
 * Gives judgements to their casts. One whose source file has changed since, or that means nothing in its cast, is not
 * applied and told.
 *
 * @param casts   all casts of the survey under their ids, before processing
 * @param entries judgements that hold
 * @param file    name by which findings call their file
 */
export function bindJudgements(
  casts: readonly Cast[],
  entries: readonly PlacedJudgement[],
  file: string,
): BoundJudgements {
  const manual = new Map<string, ManualFlag[]>();
  const findings: Problem[] = [];
  const byId = new Map(casts.map((cast) => [cast.id, cast]));
  for (const { line, judgement } of entries) {
    const flag = manualFlag(judgement);
    const cast = byId.get(judgement.cast ?? "");
    const fault = faultOf(judgement, flag, cast, [...byId.keys()]);
    if (fault !== null || cast === undefined) {
      if (fault !== null) findings.push({ ...fault, where: { file, line } });
      continue;
    }
    manual.set(cast.id, [...(manual.get(cast.id) ?? []), flag]);
  }
  return { manual, findings };
}

/** @throws TypeError for a judgement that undoes another: it says no flag */
function manualFlag({ id, who, when, why, quantity, flag, lines, pressure }: Judgement): ManualFlag {
  const range = lines ?? pressure;
  if (flag === undefined || quantity === undefined || range === undefined)
    throw new TypeError(`judgement ${id} says no flag`);
  const [a, b] = range;
  const of = lines === undefined ? "pressure" : "lines";
  return { id, who, when, why, quantity, flag, range: { of, from: Math.min(a, b), to: Math.max(a, b) } };
}

function faultOf(
  { id, cast: name = "", sha256 }: Judgement,
  { quantity, range }: ManualFlag,
  cast: Cast | undefined,
  ids: readonly string[],
): Omit<Problem, "where"> | null {
  if (cast === undefined)
    return {
      code: "judgements/no-cast",
      message: `judgement ${id} is about the cast ${name}, which the survey does not have: it is not applied`,
      remedy: suggestion(name, ids, "Correct the id, or undo the judgement."),
    };
  if (cast.source.sha256 !== sha256)
    return {
      code: "judgements/source-changed",
      message: `judgement ${id} was made on another state of the source file of ${name}: it is not applied`,
      remedy: "Look at the cast again; undo the judgement, and judge anew if it still holds.",
    };
  // what is computed later is no column yet
  if (!cast.columns.has(quantity) && !COMPUTED.includes(quantity))
    return {
      code: "judgements/no-quantity",
      message: `judgement ${id} is about ${quantity}, which ${name} does not have: it is not applied`,
      remedy: suggestion(
        quantity,
        [...cast.columns.keys(), ...COMPUTED],
        "Correct the quantity, or undo the judgement.",
      ),
    };
  if (range.of === "lines" && !rowsInRange(cast, range).includes(1))
    return {
      code: "judgements/no-rows",
      message: `judgement ${id} is about lines ${range.from} to ${range.to}, in which ${name} has no rows: it is not applied`,
      remedy: `Rows of ${name} stand in lines ${cast.lines[0]} to ${cast.lines.at(-1)} of its file.`,
    };
  return null;
}

const COMPUTED = ["pressure", "depth", "salinity", "density", "sound_speed"];

const suggestion = (name: string, known: readonly string[], otherwise: string): string => {
  const near = nearestNames(name, known);
  return near.length > 0 ? `Did you mean ${near.join(" or ")}?` : otherwise;
};
