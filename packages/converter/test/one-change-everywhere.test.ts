import { readdirSync, readFileSync } from "node:fs";
import type { UnderstoodFile } from "@wherry/formats";
import { testData } from "@wherry/testkit";
import { expect, test } from "vitest";
import { lookDocument } from "../src/understand/report/look-document.ts";
import { exports, messy } from "./judge-messy.ts";
import { attempt, understood } from "./understand-samples.ts";

// One thing that matters is changed in every export that is read without a question that must be asked. Then the
// answer changes, a question appears, or the damage is told; where the change leaves a fact open, it has to be asked.

const DECODERS = {
  "utf-8": "utf-8",
  "windows-1252": "windows-1252",
  "utf-16le": "utf-16le",
  "utf-16be": "utf-16be",
};

interface Good {
  readonly name: string;
  readonly text: string;
  readonly file: UnderstoodFile;
}

const good: readonly Good[] = [
  ...[messy, exports].flatMap(({ folder, truth }) =>
    Object.keys(truth)
      .filter((name) => !truth[name]!.asks?.some(({ must }) => must))
      .map((name) => `${folder}/${name}`),
  ),
  ...readdirSync(testData("demo"))
    .filter((name) => name.startsWith("oe25"))
    .map((name) => `${testData("demo")}/${name}`),
].map((path) => {
  const bytes = readFileSync(path);
  const name = path.split("/").at(-1)!;
  const { encoding } = understood(bytes, name);
  const text = new TextDecoder(DECODERS[encoding as keyof typeof DECODERS]).decode(bytes);
  // as UTF-8 with plain line ends, so that a change is a change of words
  const plain = text.replace(/\r\n?/g, "\n");
  return { name, text: plain, file: understood(plain, name) };
});

/** What a person is told: facts, questions and damage. */
function tells(file: UnderstoodFile): string {
  const [looked] = lookDocument([file]).files;
  const casts = looked?.casts.map(({ columns, ...cast }) => ({
    ...cast,
    columns: columns.map(({ standardName, units, first, last, sourceFirst, sourceLast, missing }) => [
      standardName,
      units,
      first,
      last,
      sourceFirst,
      sourceLast,
      missing,
    ]),
  }));
  const others = file.casts.map(({ start, end, instrument }) => [start, end, instrument]);
  const questions = file.questions.map(({ about }) => about);
  return JSON.stringify([
    casts,
    others,
    questions,
    file.findings.map(({ code, message }) => [code, message]),
  ]);
}

const asksAbout = (file: UnderstoodFile, pattern: RegExp) =>
  file.questions.some(({ about }) => pattern.test(about));

interface Change {
  readonly what: string;
  readonly text: string;
  /** Whether the changed file may be read so; by default anything but the answer as it was. */
  fits?(file: UnderstoodFile): boolean;
}

const lineOf = (text: string, number: number) => text.split("\n")[number - 1] ?? "";
function withLine(text: string, number: number, line: string | null): string {
  const lines = text.split("\n");
  if (line === null) lines.splice(number - 1, 1);
  else lines[number - 1] = line;
  return lines.join("\n");
}

const ZONES =
  /(?:(?<![A-Za-z])(?:UTC|GMT|TU|UT)(?:\s?[+-]\d{1,2}(?::\d\d)?)?(?![A-Za-z])|(?<=\d)Z(?![A-Za-z\d])|(?<![A-Za-z])(?:CES?T|MES?Z|PDT|HST)(?![A-Za-z])|(?<=:\d\d(?:\.\d+)?)[+-]\d\d:\d\d)/g;

function withoutZone({ text }: Good): Change[] {
  const changed = text.replace(ZONES, "");
  if (changed === text) return [];
  const open = (file: UnderstoodFile) =>
    file.casts.every(({ time }) => Number.isNaN(time)) &&
    asksAbout(file, /^(?:timeZone|time|dateOrder|units)/);
  return [{ what: "zone removed", text: changed, fits: open }];
}

/** Columns whose unit stands in the file, with the line and the words. */
function unitsOf({ file, text }: Good) {
  const [cast] = file.casts;
  const found: { header: string; unit: string; line: number; quantity: string }[] = [];
  for (const { source, name } of cast?.columns.values() ?? []) {
    if (!source?.units) continue;
    const line = cast!.evidence.find(({ fact }) => fact === `column:${source.header}`)?.where.line;
    if (line === undefined) continue;
    const at = [line, line + 1, line + 2, line - 1].find((n) => lineOf(text, n).includes(source.units!));
    if (at !== undefined) found.push({ header: source.header, unit: source.units, line: at, quantity: name });
  }
  return found;
}

// without a unit these are told by their size, or have none to tell
const UNIT_NEEDED = new Set(["pressure", "depth", "temperature", "conductivity", "specific_conductance"]);

function withoutUnit(each: Good): Change[] {
  return unitsOf(each)
    .filter(({ quantity }) => UNIT_NEEDED.has(quantity))
    .map(({ header, unit, line }) => {
      const own = lineOf(each.text, line);
      const changed = own.includes(header)
        ? own.replace(header, header.replace(unit, ""))
        : own.replace(unit, "?");
      return {
        what: `unit of ${header} removed`,
        text: withLine(each.text, line, changed),
        fits: (file: UnderstoodFile) => asksAbout(file, /^(?:units|quantity|conductivityKind)/),
      };
    });
}

function swappedUnits(each: Good): Change[] {
  const units = unitsOf(each);
  return units.flatMap((a, i) =>
    units.slice(i + 1).flatMap((b): Change[] => {
      if (a.unit === b.unit || a.line !== b.line || a.header === b.header) return [];
      const own = lineOf(each.text, a.line);
      const both = own.includes(a.header) && own.includes(b.header) && a.header !== a.unit;
      const [first, second] = both ? [a.header, b.header] : [a.unit, b.unit];
      const [newFirst, newSecond] = both
        ? [a.header.replace(a.unit, b.unit), b.header.replace(b.unit, a.unit)]
        : [b.unit, a.unit];
      const changed = own
        .replace(first, "\u0001")
        .replace(second, "\u0002")
        .replace("\u0001", newFirst)
        .replace("\u0002", newSecond);
      return changed === own
        ? []
        : [
            {
              what: `units of ${a.header} and ${b.header} swapped`,
              text: withLine(each.text, a.line, changed),
            },
          ];
    }),
  );
}

/** Names one column further: the first one is lost, or the last one comes first. */
function shiftedHead(each: Good): Change[] {
  const [cast] = each.file.casts;
  const { delimiter } = each.file;
  const line = cast?.evidence.find(({ fact }) => fact.startsWith("column:"))?.where.line;
  if (line === undefined || delimiter === null || delimiter.length > 1) return [];
  const names = lineOf(each.text, line).split(delimiter);
  if (names.length < 2 || names[0] === "") return [];
  const turned = [names.at(-1)!, ...names.slice(0, -1)].join(delimiter);
  return [
    { what: "names turned by one column", text: withLine(each.text, line, turned) },
    {
      what: "names behind one delimiter more",
      text: withLine(each.text, line, delimiter + names.join(delimiter)),
    },
    { what: "first name lost", text: withLine(each.text, line, names.slice(1).join(delimiter)) },
    { what: "names lost", text: withLine(each.text, line, null) },
  ];
}

function cut({ text, file }: Good): Change[] {
  return [0.6, 0.85, 0.97].map((part) => ({
    what: `cut behind ${part * 100} % of its rows`,
    // in the middle of a line of the last table
    text: (() => {
      const { lines } = file.casts.at(-1)!;
      const number = lines[Math.floor(lines.length * part)]!;
      const start =
        text
          .split("\n")
          .slice(0, number - 1)
          .join("\n").length + 1;
      return text.slice(0, start + Math.floor(lineOf(text, number).length / 2));
    })(),
  }));
}

/** Cells of one row moved by one, or one of them lost. */
function shiftedRow({ text, file }: Good): Change[] {
  const { delimiter } = file;
  const { lines } = file.casts[0]!;
  const number = lines[Math.floor(lines.length / 2)]!;
  if (delimiter === null || delimiter.length > 1 || lineOf(text, number).includes('"')) return [];
  const cells = lineOf(text, number).split(delimiter);
  if (cells.length < 3) return [];
  const [first = "", ...others] = cells;
  return [
    { what: "a row moved by one cell", text: withLine(text, number, ["", ...cells].join(delimiter)) },
    {
      what: "a cell of a row lost",
      text: withLine(text, number, [first, ...others.slice(1)].join(delimiter)),
    },
    { what: "a row lost", text: withLine(text, number, null) },
  ];
}

const FACTS =
  /^(?:time|timeZone|endTime|latitude|longitude|position|endPosition|fixedDepth|pressureZeroed|lagCorrected|serialNumber)$/;
const OTHER_SIDE: Readonly<Record<string, string>> = {
  N: "S",
  S: "N",
  E: "W",
  W: "E",
  O: "E",
  Ö: "W",
  Ø: "V",
};

/** Each line of the header that a fact rests on: lost, one digit different, another hemisphere, another sign. */
function headerLines({ text, file }: Good): Change[] {
  const changes: Change[] = [];
  const numbers = new Map<number, Set<string>>();
  for (const cast of file.casts)
    for (const { fact, where, certainty } of cast.evidence) {
      const isRow = where.line !== undefined && cast.lines.includes(where.line);
      if (where.line === undefined || isRow || !FACTS.test(fact) || certainty === "assumed") continue;
      numbers.set(where.line, (numbers.get(where.line) ?? new Set()).add(fact));
    }
  for (const [number, facts] of numbers) {
    const line = lineOf(text, number);
    const change = (what: string, to: string | null) => {
      if (to !== line)
        changes.push({ what: `${what}: ${line.slice(0, 60)}`, text: withLine(text, number, to) });
    };
    change("line lost", null);
    const isPosition = facts.has("latitude") || facts.has("endPosition");
    if (isPosition) {
      const digit = /\d(?=\D*$)/;
      change(
        "last digit",
        line.replace(digit, (d) => (d === "7" ? "4" : "7")),
      );
      for (const letter of Object.keys(OTHER_SIDE))
        change(
          `hemisphere ${letter}`,
          line.replace(
            new RegExp(`(?<=[\\d°'"″′,;]\\s?|^)${letter}(?=\\s|$|[,;.]|\\d)`),
            OTHER_SIDE[letter]!,
          ),
        );
      change("sign", line.replace(/(?<=[\s:;,/=])-(?=\d)/, ""));
    }
    if (facts.has("time")) {
      change(
        "minute",
        line.replace(/(?<=\d[:h.])(\d)(\d)/, (_, a: string, b: string) => (a + b === "41" ? "42" : "41")),
      );
      change(
        "year",
        line.replace(/(19|20)\d\d/, (year) => (year === "2011" ? "2012" : "2011")),
      );
    }
  }
  return changes;
}

/** Words that take something back. */
function reservations({ name, text, file }: Good): Change[] {
  const added: Change[] = [
    {
      what: "a clock that was fast",
      text: `clock 5 min fast\n${text}`,
      fits: (read) => asksAbout(read, /^clockCorrection/),
    },
  ];
  // behind a line of values a word belongs to the last of them
  if (name.startsWith("small-table") || name.startsWith("list-of-casts")) return added;
  for (const cast of file.casts) {
    const from = (fact: string) =>
      cast.evidence.find((each) => each.fact === fact && each.certainty !== "assumed")?.where.line ?? -1;
    const near = (line: number) => withLine(text, line, `${lineOf(text, line)} (approx.)`);
    const inHeader = (line: number) => line > 0 && !cast.lines.includes(line);
    if (inHeader(from("time")) && /\d:\d\d|\dh\d\d/.test(lineOf(text, from("time"))) && noRowTimes(cast))
      added.push({
        what: `an approximate time: ${lineOf(text, from("time"))}`,
        text: near(from("time")),
        fits: (read) => asksAbout(read, /^time/),
      });
    if (inHeader(from("latitude")))
      added.push({
        what: `an approximate position: ${lineOf(text, from("latitude"))}`,
        text: near(from("latitude")),
        fits: (read) => asksAbout(read, /^(?:position|hemisphere)/),
      });
  }
  return added;
}

const noRowTimes = ({ evidence }: UnderstoodFile["casts"][number]) =>
  !evidence.some(({ fact }) => fact.startsWith("timeColumn:"));

const changes = good.flatMap((each) =>
  [withoutZone, withoutUnit, swappedUnits, shiftedHead, cut, shiftedRow, headerLines, reservations]
    .flatMap((make) => make(each))
    .filter(({ text }) => text !== each.text)
    .map((change) => ({ each, change })),
);

test("one change in each good export: no answer stays silently as it was", () => {
  const silent: string[] = [];
  for (const { each, change } of changes) {
    const result = attempt(change.text, each.name);
    if (!result.ok) continue;
    const told = change.fits?.(result.value) ?? tells(result.value) !== tells(each.file);
    if (!told) silent.push(`${each.name}: ${change.what}`);
  }
  expect(silent).toEqual([]);
  // so that a change which no longer applies is missed
  expect(changes.length).toBeGreaterThan(3900);
});
