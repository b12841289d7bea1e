/** Lines of a text. Line numbers for people are index + 1. */
export interface TextLines {
  readonly lines: readonly string[];
  readonly ending: "LF" | "CRLF" | "CR" | "mixed";
  /** False where the text stops without a line end: its last line may have been cut. */
  readonly lastLineEnded: boolean;
  /** NUL or Ctrl-Z characters that stood at the end and were left away. */
  readonly trailingControls: number;
}

/** Longest stretch of a line that is searched for words; a longer line is no header line. */
export const HEADER_LINE_LIMIT = 2000;

/** Splits at LF, CRLF and CR; form feeds at the ends of a line are left away. */
export function splitLines(whole: string): TextLines {
  let end = whole.length;
  while (end > 0 && (whole[end - 1] === "\0" || whole[end - 1] === "\x1a")) end--;
  const text = whole.slice(0, end);
  const kinds = new Set<"LF" | "CRLF" | "CR">();
  if (text.includes("\r")) {
    if (text.includes("\r\n")) kinds.add("CRLF");
    if (/\r(?!\n)/.test(text)) kinds.add("CR");
    if (/(?<!\r)\n/.test(text)) kinds.add("LF");
  } else kinds.add("LF");
  const [only = "LF", other] = kinds;
  const lines = text.includes("\r") ? text.split(/\r\n|\r|\n/) : text.split("\n");
  const lastLineEnded = lines.length > 1 && lines[lines.length - 1] === "";
  if (lastLineEnded) lines.pop();
  if (text.includes("\f")) {
    for (const [i, line] of lines.entries()) if (line.includes("\f")) lines[i] = line.replaceAll("\f", "");
  }
  return { lines, ending: other ? "mixed" : only, lastLineEnded, trailingControls: whole.length - end };
}
