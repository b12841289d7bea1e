import type { OtherLine } from "./blocks.ts";
import { HEADER_LINE_LIMIT } from "./lines.ts";
import { type HeaderTopic, headerTopics, languagesOfWord } from "./vocabulary/header-words.ts";
import { wordsOf } from "./words.ts";

/** A line outside the table, with what its words are about. */
export interface HeaderLine {
  /** From 1. */
  readonly number: number;
  /** Without comment sign and blanks at the ends. */
  readonly text: string;
  /** Words before a colon, equals sign or the header's own delimiter; null if there is none. */
  readonly key: string | null;
  readonly value: string;
  readonly tokens: readonly string[];
  /** Topics of the key, or of the whole line where there is no key. */
  readonly topics: ReadonlyMap<HeaderTopic, string>;
}

const PREFIX = /^(?:#+|%+|\*+|\/\/+|@|!|;|--|"|>|=+|-{2,})\s*/;
const SUFFIX = /\s*(?:"|=+|-{2,}|\*+|[;,\t]+)$/;

/** Takes a line outside the table apart. Lines of no words and very long lines give null. */
export function readHeaderLine({ number, text }: OtherLine): HeaderLine | null {
  if (text.length > HEADER_LINE_LIMIT) return null;
  const bare = text.trim().replace(PREFIX, "").replace(SUFFIX, "").trim();
  if (bare === "") return null;
  const [key, value] = keyAndValue(bare);
  const tokens = wordsOf(key ?? bare);
  return { number, text: bare, key, value, tokens, topics: headerTopics(tokens.slice(0, 40)) };
}

/** Topics of all words of a line, its value among them; found once, many facts look for them. */
export function topicsOfLine(line: HeaderLine): ReadonlyMap<HeaderTopic, string> {
  let topics = known.get(line);
  if (topics === undefined) {
    topics = headerTopics(wordsOf(line.text));
    known.set(line, topics);
  }
  return topics;
}

const known = new WeakMap<HeaderLine, ReadonlyMap<HeaderTopic, string>>();

function keyAndValue(text: string): [string | null, string] {
  // a colon between digits belongs to a time of day
  const sign = /^([^:=\t;,|]{1,60}?)\s*(?::(?!\d\d(?:\D|$))|=|\t|;|,(?=\S)|\|)\s*(.*)$/.exec(text);
  if (!sign) return [null, text];
  const [, key = "", value = ""] = sign;
  if (!/[A-Za-zÀ-ÿ]/.test(key) || value === "") return [null, text];
  // a key is a few words, not a value of its own
  if (/\d{4}-\d{2}|\d:\d{2}/.test(key) || key.split(/\s+/).length > 7) return [null, text];
  return [key.trim(), value.trim()];
}

const EAST_O = new Set(["de", "nl", "da", "no", "sv"]);
const WEST_O = new Set(["fr", "es", "pt", "it"]);

/** What the words of a file say about the letter O: west, east, or nothing clear. */
export function meaningOfO(
  lines: readonly HeaderLine[],
  heads: readonly (readonly string[])[],
): { readonly sign: 1 | -1; readonly words: readonly string[] } | null {
  const west: string[] = [];
  const east: string[] = [];
  const count = (word: string, languages: readonly string[]) => {
    if (languages.length === 0) return;
    if (languages.every((language) => WEST_O.has(language))) west.push(word);
    else if (languages.every((language) => EAST_O.has(language))) east.push(word);
  };
  for (const line of lines)
    for (const word of wordsOf(line.text)) if (word.length > 1) count(word, languagesOfWord(word));
  for (const [name = "", ...languages] of heads) count(name, languages);
  if (west.length > 0 && east.length === 0) return { sign: -1, words: west };
  if (east.length > 0 && west.length === 0) return { sign: 1, words: east };
  return null;
}
