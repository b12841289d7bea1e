/**
 * Compares units with the program udunits2 (Debian package udunits-bin): every name of the database, plurals,
 * prefixes, and many random products. Skipped, with the reason, where the program is not installed.
 */
import { execFileSync } from "node:child_process";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { convertUnits, parseUnits } from "../src/index.ts";
import { knownUnitWords, lookupUnit } from "../src/units/table.ts";
import type { Unit } from "../src/units/unit.ts";

const program = (() => {
  try {
    return execFileSync("sh", ["-c", "command -v udunits2"], { encoding: "utf8" }).trim();
  } catch {
    return null;
  }
})();

interface Question {
  readonly have: string;
  readonly want: string;
}

/** An amount at which a wrong factor and a wrong offset both show, and logarithms stay finite. */
const AMOUNT = 7;

/** What the amount of `have` is in `want`, by the program; null where it knows no such unit or conversion. */
function ask(questions: readonly Question[]): (number | null)[] {
  const loop = `while IFS= read -r have && IFS= read -r want; do
    "${program}" -U -H "$have" -W "$want" 2>/dev/null | head -n 1
    echo =====
  done`;
  const input = questions.map(({ have, want }) => `${AMOUNT} ${have}\n${want}\n`).join("");
  const output = execFileSync("sh", ["-c", loop], { input, encoding: "utf8", maxBuffer: 1e8 });
  return output
    .split("=====\n")
    .slice(0, questions.length)
    .map((answer) => {
      const found = / = (\S+) /.exec(answer);
      return found ? Number(found[1]!.replace("inf", "Infinity")) : null;
    });
}

const baseSymbols = ["m", "kg", "s", "A", "K", "mol", "cd"];

/** Base units of the same dimensions, as text for the program. */
function baseText(unit: Unit): string {
  if (unit.since) return "seconds since 1970-01-01";
  const text = unit.dimensions
    .map((power, i) => (power === 0 ? "" : `${baseSymbols[i]}${power}`))
    .filter((word) => word !== "")
    .join(" ");
  return text === "" ? "1" : text;
}

/** The program prints six significant digits; where an offset cancels, digits are lost before. */
const near = (got: number, want: number) =>
  got === want || Math.abs(got - want) <= 1e-5 * Math.abs(want) + 1e-300;

function compare(texts: readonly string[]): string[] {
  const questions = texts.map((have) => {
    const unit = parseUnits(have);
    return { have, want: unit.ok ? baseText(unit.value) : "1" };
  });
  const differences: string[] = [];
  for (const [i, answer] of ask(questions).entries()) {
    const { have, want } = questions[i]!;
    const ours = convertUnits(AMOUNT, have, want);
    // a text that is no unit for us must be none for the program
    if (!parseUnits(have).ok) {
      if (answer !== null) differences.push(`${have}: read by the program only`);
    } else if (answer === null) differences.push(`${have}: not read by the program as ${want}`);
    else if (!near(ours, answer)) differences.push(`${have} in ${want}: ${ours}, program ${answer}`);
  }
  return differences;
}

const known = knownUnitWords().filter((word) => !/['"%\u2032\u2033]/.test(word));
/** Release 2.2.28 takes " per" and " ref" for operators also where a name goes on ("m percent"), unlike the grammar. */
const startsWithOperator = (word: string) => /^(?:per|ref|from|after|since)/i.test(word);
const shuffled = { seed: 20261124, numRuns: 1 };
const sample = <T>(arbitrary: fc.Arbitrary<T>, count: number): T[] =>
  fc.sample(arbitrary, { ...shuffled, numRuns: count });

describe.skipIf(program === null)(
  program === null
    ? "skipped: the program udunits2 (Debian package udunits-bin) is not installed"
    : "udunits2",
  () => {
    test("every name, plural and symbol of the database", () => {
      expect(known.length).toBeGreaterThan(600);
      expect(compare(known)).toEqual([]);
    });

    test("prefixes before names and symbols, and words that only look like units", () => {
      const prefix = fc.constantFrom(
        "k",
        "d",
        "da",
        "m",
        "u",
        "µ",
        "G",
        "kilo",
        "Milli",
        "MEGA",
        "deka",
        "n",
        "h",
        "c",
        "P",
        "T",
        "E",
        "",
      );
      const ending = fc.constantFrom("", "", "", "s", "es");
      const letters = fc.string({
        unit: fc.constantFrom(..."abcdfghklmnprstuyADGHKMNPSTWZ_"),
        minLength: 1,
        maxLength: 4,
      });
      const word = fc.oneof(fc.constantFrom(...known), fc.constantFrom(...known), letters);
      const texts = sample(
        fc.tuple(prefix, word, ending).map((parts) => parts.join("")),
        500,
      );
      expect(texts.filter((text) => parseUnits(text).ok).length).toBeGreaterThan(200);
      expect(compare([...new Set(texts)])).toEqual([]);
    });

    test("random products, quotients and powers", () => {
      const common =
        "m kg g s h day A K degC mol Pa dbar bar J W N V S ohm Hz L mL degree ppm knot ft inch year".split(
          " ",
        );
      const plain = fc.constantFrom(
        ...common,
        ...known.filter((word) => isPlain(word) && !startsWithOperator(word)),
      );
      const power = fc.constantFrom("", "", "", "2", "-1", "^2", "^-2", "**3", "-3", "²", "³");
      const factor = fc.tuple(plain, power).map((parts) => parts.join(""));
      const group = fc
        .tuple(factor, fc.constantFrom(" ", "/", "."), factor)
        .map((parts) => `(${parts.join("")})`);
      const join = fc.constantFrom(" ", ".", "/", "*", " per ", "·", "/", " ");
      // no number behind a point: in "m2.5" the program sees one thing and in "m^2.5" another
      const number = fc.tuple(fc.constantFrom(" ", "/", "*"), fc.constantFrom("1e-3", "10", "2.5"));
      const term = fc.oneof(
        { weight: 5, arbitrary: fc.tuple(join, factor) },
        { weight: 1, arbitrary: fc.tuple(join, group) },
        { weight: 1, arbitrary: number },
      );
      const text = fc
        .tuple(factor, fc.array(term, { maxLength: 3 }))
        .map(([first, rest]) => first + rest.flat().join(""));
      const texts = sample(text, 400);
      expect(texts.filter((each) => parseUnits(each).ok).length).toBeGreaterThan(350);
      expect(compare(texts)).toEqual([]);
    });

    test("times since a moment", () => {
      const year = fc.oneof(fc.integer({ min: 1950, max: 2030 }), fc.integer({ min: 1, max: 2400 }));
      const date = fc
        .tuple(year, fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 30 }))
        .map(([y, m, d]) => `${y}-${m}-${d}`);
      const clock = fc.constantFrom(
        "",
        " 12:00",
        " 6:30:15",
        "T23:59:59",
        " 0:00 Z",
        " 00:00 -6:00",
        " 01:00 +05:30",
        " 12:30 UTC",
        " 12 +2",
        " 0630",
      );
      const word = fc.constantFrom(" since ", " after ", "@", " ref ", " from ", " SINCE ");
      const unit = fc.constantFrom("days", "hours", "s", "minutes", "ms", "d");
      const texts = sample(
        fc.tuple(unit, word, date, clock).map((parts) => parts.join("")),
        150,
      );
      expect(compare(texts)).toEqual([]);
    });
  },
);

function isPlain(word: string): boolean {
  const unit = parseUnits(word);
  return unit.ok && unit.value.logarithm === null && lookupUnit(word, () => unit.value) !== null;
}
