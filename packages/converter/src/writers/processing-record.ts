import type { FlagCounts, ProcessedCast, ProcessingDocument, Step } from "@wherry/contracts";
import { type Cast, type Column, deepestOf, type StepRecord } from "@wherry/core";
import { castFingerprint } from "./fingerprint.ts";
import { inTimeOrder } from "./writing-words.ts";

/** A cast that was not written, and what the open questions on it are about. */
export interface HeldCast {
  readonly id: string;
  readonly questions: readonly string[];
}

/**
 * What was done to every cast, as plain data; JSON of it is the processing record of a data set.
 *
 * @param casts    processed casts, profiles and series; told in time order
 * @param recipe   settings as used
 * @param software program and version
 * @param means    layer means and means of bursts by cast id, whose making is the last step of their casts
 * @param made     moment of writing, and name of the copy of the sheet
 */
export function processingRecord(
  casts: readonly Cast[],
  recipe: Readonly<Record<string, unknown>>,
  software: string,
  held: readonly HeldCast[] = [],
  means: ReadonlyMap<string, { readonly step: StepRecord }> = new Map(),
  made: Pick<ProcessingDocument, "created" | "sheet"> = {},
): ProcessingDocument {
  return {
    version: 1,
    software,
    ...made,
    recipe: { ...recipe },
    casts: inTimeOrder(casts).map((cast) => processedCast(cast, means.get(cast.id)?.step)),
    held: held.map(({ id, questions }) => ({
      id,
      questions: [...questions] as [string, ...string[]],
    })),
  };
}

/** The record as the text of its file. */
export const processingText = (record: ProcessingDocument): string => `${JSON.stringify(record, null, 2)}\n`;

function processedCast(cast: Cast, averaging: StepRecord | undefined): ProcessedCast {
  const deepest = deepestOf(cast);
  return {
    id: cast.id,
    fingerprint: castFingerprint(cast),
    source: {
      path: cast.source.path,
      sha256: cast.source.sha256,
      firstLine: cast.lines[0] ?? null,
      lastLine: cast.lines.at(-1) ?? null,
    },
    pressureOffset: Number.isNaN(cast.pressureOffset) ? null : cast.pressureOffset,
    segments: cast.segments.map(({ kind, firstRow, lastRow }) => ({ kind, firstRow, lastRow })),
    deepestRow: deepest?.row ?? null,
    maxPressure: deepest?.pressure ?? null,
    steps: [...cast.steps, ...(averaging ? [averaging] : [])].map(
      ({ step, parameters, counts }): Step => ({
        step,
        parameters: { ...parameters } as Step["parameters"],
        counts: { ...counts },
      }),
    ),
    flags: Object.fromEntries([...cast.columns].map(([name, column]) => [name, flagCounts(column)])),
  };
}

function flagCounts({ flags }: Column): FlagCounts {
  const counts: FlagCounts = { 1: 0, 2: 0, 3: 0, 4: 0, 9: 0 };
  for (const flag of flags)
    if (flag === 1 || flag === 2 || flag === 3 || flag === 4 || flag === 9) counts[flag]++;
  return counts;
}
