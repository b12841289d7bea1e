import type { Segment, SegmentKind } from "@wherry/core";

const KINDS: readonly SegmentKind[] = ["air", "soak", "down", "bottom", "up", "stay", "other"];

/**
 * Segments of a cast from one word for each row; none unless every row has one.
 *
 * @param words meaning of the segment flag of each row
 */
export function segmentsOf(words: readonly (string | undefined)[]): readonly Segment[] {
  const segments: { kind: SegmentKind; firstRow: number; lastRow: number }[] = [];
  for (const [row, word] of words.entries()) {
    const kind = KINDS.find((each) => each === word);
    if (!kind) return [];
    const last = segments.at(-1);
    if (last?.kind === kind) last.lastRow = row;
    else segments.push({ kind, firstRow: row, lastRow: row });
  }
  return segments;
}

/** Whether the meanings of a flag variable are those of segments. */
export const areSegments = (meanings: Iterable<string>): boolean => {
  const all = [...meanings];
  return all.length > 0 && all.includes("down") && all.every((word) => KINDS.some((kind) => kind === word));
};
