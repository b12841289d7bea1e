import { fail, type Result, succeed } from "../problem.ts";
import { nearestNames } from "../text/nearest.ts";
import { parseNumber } from "../text/number.ts";
import { decimalFactor } from "./factor.ts";
import { suggestUnits } from "./suggest.ts";
import { knownUnitWords, lookupUnit } from "./table.ts";
import { readTimestamp } from "./timestamp.ts";
import {
  divideUnits,
  isDimensionless,
  logarithmicUnit,
  multiplyUnits,
  numberUnit,
  raiseUnit,
  shiftUnit,
  UNITY,
  type Unit,
  type UnitPart,
} from "./unit.ts";

/** Why a text is no unit; columns count from 0 here. */
class Misread extends Error {
  readonly at: number;
  readonly code: "grammar" | "unknown" | "impossible";
  constructor(code: Misread["code"], at: number, message: string) {
    super(message);
    this.code = code;
    this.at = at;
  }
}

const BLANK = "[ \\t\\r\\f\\v]";
const LETTER =
  "A-Za-z_\\u00A0\\u00AD\\u00B0\\u00B5\\u00C0-\\u00D6\\u00D8-\\u00F6\\u00F8-\\u00FF" +
  "\\u0391-\\u03C9\\u2032\\u2033\\u2103\\u2109\\u2126\\u212B";
const TOKENS = {
  name: new RegExp(`[${LETTER}](?:[${LETTER}\\d]*[${LETTER}])?|[%'"]`, "y"),
  number: /[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/y,
  logarithm: new RegExp(`(log|lg|ln|lb)${BLANK}*\\(${BLANK}*[Rr][Ee](?![${LETTER}]):?${BLANK}*`, "y"),
  shift: new RegExp(`${BLANK}*(@|(?:after|from|since|ref)(?![${LETTER}]))${BLANK}*`, "iy"),
  divide: new RegExp(`${BLANK}*/${BLANK}*|${BLANK}+(?:per|PER)${BLANK}+`, "y"),
  multiply: new RegExp(`-|\\.|\\*(?!\\*)|\\u00B7|${BLANK}+`, "y"),
  integer: /[+-]?\d+/y,
  raised: /(?:\^|\*\*)([+-]?\d+)/y,
  superscript: /([\u207A\u207B])?([\u2070\u00B9\u00B2\u00B3\u2074-\u2079]+)/y,
} as const;
const SUPERSCRIPTS = "\u2070\u00B9\u00B2\u00B3\u2074\u2075\u2076\u2077\u2078\u2079";
const LOG_BASES = new Map([
  ["log", 10],
  ["lg", 10],
  ["ln", Math.E],
  ["lb", 2],
]);
const MAX_LENGTH = 2000;
const MAX_DEPTH = 50;

/** Reads one text by descent; throws Misread. */
class Reader {
  private at = 0;
  private depth = 0;
  readonly parts: UnitPart[] = [];
  private readonly text: string;
  constructor(text: string) {
    this.text = text;
  }

  whole(): Unit {
    if (this.text === "") return UNITY;
    const unit = this.shifted();
    if (this.at < this.text.length) throw this.unexpected();
    return unit;
  }

  private take(token: keyof typeof TOKENS): RegExpExecArray | null {
    const pattern = TOKENS[token];
    pattern.lastIndex = this.at;
    const found = pattern.exec(this.text);
    if (found) this.at += found[0].length;
    return found;
  }

  private unexpected(): Misread {
    const rest = this.text.slice(this.at);
    const what = rest === "" ? "the text ends" : /^\s/.test(rest) ? "there is a blank" : `"${rest}" stands`;
    return new Misread("grammar", this.at, `${what} where a unit, number or operator was expected`);
  }

  private shifted(): Unit {
    const unit = this.product();
    const start = this.at;
    const shift = this.take("shift");
    if (!shift) return unit;
    const isTime =
      unit.dimensions.every((power, i) => power === (i === 2 ? 1 : 0)) && !unit.logarithm && !unit.since;
    const reading = isTime ? readTimestamp(this.text, this.at) : null;
    if (reading) {
      if (!reading.ok) throw new Misread("impossible", this.at, reading.message);
      this.at = reading.end;
      return { ...unit, since: { moment: reading.timestamp, word: shift[1]! } };
    }
    const number = this.take("number");
    if (!number)
      throw new Misread("grammar", this.at, `"${shift[1]}" needs a number or, for a time, a date behind it`);
    if (unit.since) throw new Misread("impossible", start, "a time since a moment cannot be shifted again");
    this.parts.push({ kind: "number", text: number[0] });
    return shiftUnit(unit, decimalFactor(this.sized(number[0], start)));
  }

  private sized(number: string, start: number): string {
    const value = parseNumber(number);
    const written = /[1-9]/.test(number.replace(/[eE].*/, ""));
    if (Number.isNaN(value) || (value === 0 && written))
      throw new Misread("impossible", start, `${number} is too large or too small to compute with`);
    return number;
  }

  private product(): Unit {
    let unit = this.power();
    for (;;) {
      const start = this.at;
      if (start >= this.text.length || this.text[start] === ")" || this.ahead("shift")) return unit;
      const divided = this.take("divide") !== null;
      // "m.5" is m times 5, but ".5" behind a bracket is a number, and so is "-3" behind a blank
      const numberFollows =
        this.ahead("number") && (this.text[start] !== "." || this.text[start - 1] === ")");
      if (!divided && !numberFollows) this.take("multiply");
      const next = this.power();
      const joined = divided ? divideUnits(unit, next) : multiplyUnits(unit, next);
      if (!joined)
        throw new Misread("impossible", start, "a logarithmic unit can only be multiplied by a plain number");
      unit = joined;
    }
  }

  private ahead(token: keyof typeof TOKENS): boolean {
    const before = this.at;
    const found = this.take(token) !== null;
    this.at = before;
    return found;
  }

  private power(): Unit {
    const start = this.at;
    const basic = this.basic();
    const power = this.exponent();
    if (power === null) return basic;
    const raised = raiseUnit(basic, power);
    if (!raised) throw new Misread("impossible", start, `power ${power} of this unit does not exist`);
    return raised;
  }

  private exponent(): number | null {
    const plain = this.take("raised")?.[1] ?? this.take("integer")?.[0];
    if (plain !== undefined) return parseNumber(plain);
    const small = this.take("superscript");
    if (!small) return null;
    const digits = [...small[2]!].map((digit) => SUPERSCRIPTS.indexOf(digit)).join("");
    return small[1] === "\u207B" ? -parseNumber(digits) : parseNumber(digits);
  }

  private basic(): Unit {
    const start = this.at;
    if (this.text[start] === "(") {
      this.at++;
      return this.nested(() => this.shifted());
    }
    const logarithm = this.take("logarithm");
    if (logarithm) {
      const reference = this.nested(() => this.product());
      const unit = logarithmicUnit(LOG_BASES.get(logarithm[1]!)!, reference);
      if (!unit)
        throw new Misread("impossible", start, "the reference of a logarithm must be a plain quantity");
      return unit;
    }
    const number = this.take("number");
    if (number) {
      const factor = decimalFactor(this.sized(number[0], start));
      if (factor.numerator === 0) throw new Misread("impossible", start, "zero is not a unit");
      this.parts.push({ kind: "number", text: number[0] });
      return numberUnit(factor);
    }
    const name = this.take("name");
    if (!name) throw this.unexpected();
    const found = lookupUnit(name[0], parseDefinition);
    if (!found) throw new Misread("unknown", start, `"${name[0]}" is not a unit`);
    this.parts.push({ kind: "name", text: name[0], prefix: found.prefix, entry: found.entry });
    return found.unit;
  }

  private nested(read: () => Unit): Unit {
    if (++this.depth > MAX_DEPTH) throw new Misread("grammar", this.at, "too many brackets");
    const unit = read();
    if (this.text[this.at] !== ")") throw new Misread("grammar", this.at, "a closing bracket is missing");
    this.at++;
    this.depth--;
    return unit;
  }
}

/** A definition of the database; it is right, or the table is broken. */
function parseDefinition(text: string): Unit {
  return new Reader(text).whole();
}

/**
 * Reads a unit of measurement.
 *
 * @param text unit in the UDUNITS syntax; "" and "1" are dimensionless. Blanks around it are an error, as there.
 * @returns    the unit, or one problem (units/unknown, units/grammar, units/impossible) with its column; where a
 *             common misspelling is recognised, the remedy names what was probably meant
 * @source     UDUNITS-2 grammar and unit database, release 2.2.28
 */
export function parseUnits(text: string): Result<Unit> {
  if (text.length > MAX_LENGTH)
    return fail({
      code: "units/grammar",
      message: `a unit of ${text.length} characters is not read`,
      where: { column: MAX_LENGTH + 1 },
    });
  const reader = new Reader(text);
  try {
    const unit = reader.whole();
    return succeed({ ...unit, text, parts: reader.parts });
  } catch (misread) {
    if (!(misread instanceof Misread)) throw misread;
    const remedy = remedyFor(text, misread);
    return fail({
      code: `units/${misread.code}`,
      message: misread.message,
      where: { column: misread.at + 1 },
      ...(remedy === null ? {} : { remedy }),
    });
  }
}

function remedyFor(text: string, misread: Misread): string | null {
  const suggestion = suggestUnits(text);
  if (suggestion) return `Perhaps ${suggestion.units}: ${suggestion.because}.`;
  const word = /^[A-Za-z_]{4,}/.exec(text.slice(misread.at))?.[0];
  if (misread.code !== "unknown" || word === undefined) return null;
  const near = nearestNames(word, knownUnitWords());
  return near.length === 0 ? null : `Perhaps ${near.join(" or ")}.`;
}

/** A time counted from a moment, such as "days since 1970-01-01". */
export const isTimeReference = (unit: Unit): boolean => unit.since !== null;

/** A temperature takes part, on a scale or as a difference (K, degC, W m-2 K-1). */
export const involvesTemperature = (unit: Unit): boolean => unit.dimensions[4] !== 0;

/** A plain number, percentage or angle: dimensionless in the sense of UDUNITS. */
export const isDimensionlessUnit = isDimensionless;
