/** A word of CDL text with its place: `at` is the index of its first character. */
export type Token =
  | { readonly kind: "mark"; readonly at: number; readonly text: string }
  | { readonly kind: "name"; readonly at: number; readonly text: string; readonly plain: boolean }
  | { readonly kind: "number"; readonly at: number; readonly text: string }
  | { readonly kind: "text"; readonly at: number; readonly bytes: Uint8Array }
  | { readonly kind: "character"; readonly at: number; readonly bytes: Uint8Array }
  | { readonly kind: "wrong"; readonly at: number; readonly text: string; readonly message: string }
  | { readonly kind: "end"; readonly at: number };

const SPACE = /(?:\s+|\/\/[^\n]*)+/y;
const NAME_START = String.raw`(?:[A-Za-z_\u0080-\u{10ffff}]|\\[^\n])`;
const NAME_REST = String.raw`(?:[A-Za-z0-9_.@+\-\u0080-\u{10ffff}]|\\[^\n])`;
const NAME = new RegExp(String.raw`\/?${NAME_START}${NAME_REST}*(?:\/${NAME_START}${NAME_REST}*)*`, "uy");
const NUMBER =
  /[+-]?(?:0[xX][0-9a-fA-F]+|(?:\d+\.\d*|\.\d+|\d+)(?:[eE][+-]?\d+)?|Infinityf?|infinityf?|inff?|NaNf?|nanf?)[A-Za-z]*/y;
const BEGINS_NUMBER = /[0-9]|[+\-.][0-9]|[+-](?:\.|[Ii]nf|[Nn]a[Nn])/y;
const TEXT = /"(?:[^"\\]|\\[\s\S])*"/y;
const CHARACTER = /'(?:[^'\\\n]|\\[0-7]{1,3}|\\[xX][0-9a-fA-F]{1,2}|\\[^\n])'/uy;

/** Cuts CDL text into tokens; what can't be read becomes a token of kind "wrong". */
export function* tokens(text: string): Generator<Token, undefined> {
  let at = 0;
  const match = (pattern: RegExp): string | null => {
    pattern.lastIndex = at;
    return pattern.exec(text)?.[0] ?? null;
  };
  for (;;) {
    at += match(SPACE)?.length ?? 0;
    const first = text[at];
    if (first === undefined) {
      yield { kind: "end", at };
      return;
    }
    let found: string;
    if ("{}(),;:=*".includes(first)) {
      found = first;
      yield { kind: "mark", at, text: first };
    } else if (match(BEGINS_NUMBER) !== null && match(NUMBER) !== null) {
      found = match(NUMBER) ?? first;
      yield { kind: "number", at, text: found };
    } else if (match(NAME) !== null) {
      found = match(NAME) ?? first;
      yield {
        kind: "name",
        at,
        text: found.replaceAll(/\\([\s\S])/g, "$1"),
        plain: !found.includes("\\"),
      };
    } else if (first === '"') {
      const whole = match(TEXT);
      found = whole ?? text.slice(at);
      yield whole === null
        ? { kind: "wrong", at, text: '"', message: "this text has no closing quotation mark" }
        : { kind: "text", at, bytes: unescaped(whole.slice(1, -1)) };
    } else if (first === "'") {
      const whole = match(CHARACTER);
      found = whole ?? first;
      yield whole === null
        ? { kind: "wrong", at, text: first, message: "a character constant is one character between '…'" }
        : { kind: "character", at, bytes: unescaped(whole.slice(1, -1)) };
    } else {
      found = String.fromCodePoint(text.codePointAt(at) ?? 0);
      yield { kind: "wrong", at, text: found, message: `${JSON.stringify(found)} has no meaning here` };
    }
    at += found.length;
  }
}

const ESCAPES: Readonly<Record<string, number>> = {
  a: 7,
  b: 8,
  f: 12,
  n: 10,
  r: 13,
  t: 9,
  v: 11,
};

/** Bytes of a quoted text: UTF-8 with C escapes (\n, \", \\, \ooo octal, \xhh hexadecimal) resolved. */
function unescaped(text: string): Uint8Array {
  const encoder = new TextEncoder();
  if (!text.includes("\\")) return encoder.encode(text);
  const bytes: number[] = [];
  for (const [part] of text.matchAll(/\\(?:[0-7]{1,3}|[xX][0-9a-fA-F]{1,2}|[\s\S])|[^\\]+/g)) {
    const escaped = part.startsWith("\\") ? part.slice(1) : null;
    if (escaped === null) for (const byte of encoder.encode(part)) bytes.push(byte);
    else if (/^[0-7]/.test(escaped)) bytes.push(Number.parseInt(escaped, 8) & 255);
    else if (/^[xX]./.test(escaped)) bytes.push(Number.parseInt(escaped.slice(1), 16));
    else bytes.push(...(escaped in ESCAPES ? [ESCAPES[escaped] ?? 0] : encoder.encode(escaped)));
  }
  return Uint8Array.from(bytes);
}
