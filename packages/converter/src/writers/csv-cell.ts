/** Beginnings by which spreadsheets take a text for a formula (common practice, no source). */
const FORMULA = /^(?:[=@\t\r]|[+-].)/s;

/**
 * A text as a cell: in quotes where RFC 4180 asks for them; control characters, which it does not have, become the
 * replacement character; a text that a spreadsheet would run gets an apostrophe before it, which `CELL_WORDS` tells.
 */
export function textCell(text: string): string {
  const plain = text.replace(/[^\P{Cc}\t\n\r]/gu, "\ufffd");
  const cell = FORMULA.test(plain) ? `'${plain}` : plain;
  return /[",\r\n]/.test(cell) || cell !== cell.trim() ? `"${cell.replaceAll('"', '""')}"` : cell;
}

/** What readers of a table should know of its texts. */
export const CELL_WORDS =
  "A text that begins like a formula (=, @, or + or - and more) has an apostrophe before it, for spreadsheets.";
