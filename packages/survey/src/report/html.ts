import { escapeText } from "@wherry/charts";

/** Markup that is ready to stand in a page; made by {@link html}, which escapes every text. */
export interface Markup {
  readonly markup: string;
}

type Part = Markup | string | number | readonly Markup[];

/** Longest text of a person's that is printed in full, characters. */
const LONGEST = 1500;

/**
 * A piece of a page. Texts are escaped, cut where nobody would read on, and kept apart from what stands about them, so
 * that marks for writing direction in them turn nothing else round.
 */
export function html(pieces: TemplateStringsArray, ...parts: readonly Part[]): Markup {
  const markup = pieces.reduce((sum, piece, k) => sum + print(parts[k - 1]!) + piece);
  return { markup };
}

function print(part: Part): string {
  if (typeof part === "number") return String(part);
  if (typeof part === "string") return printText(part);
  return "markup" in part ? part.markup : part.map(({ markup }) => markup).join("\n");
}

/** Marks and letters of scripts that run from right to left, and other marks of direction. */
const TURNING = /[\u0590-\u08ff\u200e\u200f\u202a-\u202e\u2066-\u2069\ufb1d-\ufdff\ufe70-\ufeff]/;

function printText(text: string): string {
  const shown =
    text.length > LONGEST ? `${text.slice(0, LONGEST)} … (${text.length} characters, not all shown)` : text;
  return TURNING.test(shown) ? `<bdi>${escapeText(shown)}</bdi>` : escapeText(shown);
}

/** A picture or style of our own making, which is markup already. */
export const asMarkup = (markup: string): Markup => ({ markup });

export const nothing: Markup = { markup: "" };

/** "1 cast", "3 casts", "no cast". */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  count === 0 ? `no ${one}` : `${count} ${count === 1 ? one : many}`;

/** "a", "a and b", "a, b and c". */
export const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;

/** The words as a sentence: with a capital letter and a full stop. */
export const sentence = (words: string): string =>
  `${words.charAt(0).toUpperCase()}${words.slice(1)}${/[.?!]$/.test(words) ? "" : "."}`;
