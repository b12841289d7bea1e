import type { ListedCast } from "@wherry/contracts";
import { isSeq, parseDocument } from "yaml";

/**
 * The text of a sheet with lines for further casts at the end of its list; everything else, comments too, stays.
 *
 * @param text a sheet that `readSheet` accepts
 */
export function completeSheetText(text: string, added: readonly ListedCast[]): string {
  if (added.length === 0) return text;
  const document = parseDocument(text, { stringKeys: true });
  const casts = document.get("casts");
  if (isSeq(casts)) {
    casts.flow = false;
    for (const line of added) casts.add(document.createNode(line));
  } else document.set("casts", document.createNode(added));
  return document.toString({ lineWidth: 0 });
}
