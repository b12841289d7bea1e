import type { Result } from "@wherry/core";
import type { CheckedFile } from "@wherry/validator";
import { type Bench, benchOf, type JudgingChoice, judgeUnit, type Unit } from "./judge-files.ts";

/** What a thread of checkers gets: all units of a run have the same choice. */
export interface ToJudge {
  readonly unit: Unit;
  readonly choice: JudgingChoice;
}

let bench: Bench | undefined;

/** What such a thread runs. */
export default async function judge({
  unit,
  choice,
}: ToJudge): Promise<Result<readonly CheckedFile[] | null>> {
  if (bench === undefined) {
    const made = await benchOf(choice);
    // the program read the same before it started the threads
    if (!made.ok) return made;
    bench = made.value;
  }
  return judgeUnit(unit, bench);
}
