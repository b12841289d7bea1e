import type { ListedCast } from "@wherry/contracts";
import type { Answer } from "@wherry/formats";
import { type Document, isMap, isSeq, parseDocument } from "yaml";
import type { CompletedSheet } from "./cast-ids.ts";

/** What a run knew beside the sheet, for the copy of the sheet in its result. */
export interface KnownBeside {
  /** Answers that went before those of the sheet. */
  readonly answers: readonly Answer[];
  /** Paths of the notes files from the copy. */
  readonly notes: readonly string[];
}

const NOTHING: KnownBeside = { answers: [], notes: [] };

/**
 * The text of a sheet as it was used, so that it stands alone: lines for further casts at the end of its list, in the
 * lines what a field log told of their casts, answers that went before its own; everything else, comments too, stays.
 *
 * @param text a sheet that `readSheet` accepts
 */
export function completeSheetText(
  text: string,
  { sheet, added }: Pick<CompletedSheet, "sheet" | "added">,
  { answers, notes }: KnownBeside = NOTHING,
): string {
  const document = parseDocument(text, { stringKeys: true });
  const before = String(document.get("field_log") ?? "");
  const isChanged = [
    fillCasts(document, sheet.casts ?? [], added),
    notes.length > 0 && put(document, "notes", notes),
    before !== "" && document.delete("field_log"),
    answers.length > 0 && putAnswers(document, answers),
  ].some(Boolean);
  return isChanged ? document.toString({ lineWidth: 0 }) : text;
}

function fillCasts(document: Document, casts: readonly ListedCast[], added: readonly ListedCast[]): boolean {
  const list = document.get("casts");
  if (!isSeq(list)) return added.length > 0 && put(document, "casts", added);
  let changed = added.length > 0;
  for (const [index, line] of list.items.entries())
    for (const [key, value] of Object.entries(casts[index] ?? {}))
      if (isMap(line) && !line.has(key)) {
        line.set(key, value);
        changed = true;
      }
  if (added.length > 0) list.flow = false;
  for (const line of added) list.add(document.createNode(line));
  return changed;
}

function putAnswers(document: Document, answers: readonly Answer[]): boolean {
  const nodes = answers.map(({ about, where, value }) => document.createNode({ about, where, value }));
  const list = document.get("answers");
  if (!isSeq(list)) return put(document, "answers", nodes);
  list.items.unshift(...nodes);
  return true;
}

function put(document: Document, key: string, value: unknown): boolean {
  document.set(key, document.createNode(value));
  return true;
}
