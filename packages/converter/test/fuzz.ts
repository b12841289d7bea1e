import { readdirSync, readFileSync } from "node:fs";
import { testData } from "@wherry/testkit";
import fc from "fast-check";
import { lookDocument } from "../src/understand/report/look-document.ts";
import { lookText } from "../src/understand/report/look-text.ts";
import { exports, messy } from "./judge-messy.ts";
import { attempt } from "./understand-samples.ts";

// Damaged and random inputs, and what must hold for each of them. The test run takes some, the nightly script many.

/** A small generator with a seed (Park and Miller 1988, minimal standard). */
export function generator(seed: number): () => number {
  let state = (seed % 2_147_483_646) + 1;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

export interface Sample {
  readonly file: string;
  readonly bytes: Uint8Array;
}

/** All sample exports and files of open formats. */
export const samples = (): readonly Sample[] =>
  [messy.folder, exports.folder, testData("samples", "openformats")].flatMap((folder) =>
    readdirSync(folder)
      .filter((file) => !file.endsWith(".json"))
      .map((file) => ({ file, bytes: readFileSync(`${folder}/${file}`) })),
  );

/** One to eight changes: a byte, a telling character, a cut, a doubled stretch, a lost one. */
export function damaged({ bytes: source }: Sample, random: () => number): Uint8Array {
  let bytes = Uint8Array.from(source);
  const at = () => Math.floor(random() * bytes.length);
  for (let n = 1 + Math.floor(random() * 8); n > 0; n--) {
    const kind = Math.floor(random() * 5);
    const [from, to] = [at(), at()].sort((a, b) => a - b) as [number, number];
    if (kind === 0) bytes[from] = Math.floor(random() * 256);
    else if (kind === 1) bytes[from] = ',;\t"\n\r .-0:=#O'.charCodeAt(Math.floor(random() * 14));
    else if (kind === 2) bytes = bytes.slice(0, Math.max(1, to));
    else if (kind === 3) bytes = Uint8Array.from([...bytes.slice(0, to), ...bytes.slice(from)]);
    else bytes = Uint8Array.from([...bytes.slice(0, from), ...bytes.slice(to)]);
    if (bytes.length === 0) bytes = Uint8Array.of(48);
  }
  return bytes;
}

const word = fc.constantFrom(
  ..."start end time date zone clock UTC+2 CEST BST lat lon position 51.2 4,3 N W O S 2023-06-02 05/06/07 08:30 20:15:01.5 13h05 approx fast by 3 min s missing -999 averaged not cast 7 station sensor depth below surface datum ° ' \" ( ) : = [dbar] — µ".split(
    " ",
  ),
);
const head = fc.constantFrom(
  ..."pressure depth temp [degC] T C cond (mS/cm) EC sal SV density time UTC elapsed [s] date day year DOY lat lon N/S flag QC cast note Druck Temperatura salinité epoch 1e9".split(
    " ",
  ),
);
const cell = fc.oneof(
  { weight: 8, arbitrary: fc.double({ min: -100, max: 2000, noNaN: true }).map((value) => value.toFixed(2)) },
  fc.constantFrom(
    ...'-999.99 *** NaN n/a 1e20 45079.35 1685694600 08:30:00 2023-06-02 02.06.23 N W 1,5 1.234,5 1,234.5 +7 5E-3 "a b" x'.split(
      " ",
    ),
    "",
  ),
);

/** A text of header lines and rows, in any delimiter, now and then of ragged rows. */
export const anyExport: fc.Arbitrary<string> = fc
  .record({
    header: fc.array(fc.array(word, { maxLength: 8 }), { maxLength: 6 }),
    delimiter: fc.constantFrom(",", ";", "\t", "|", " ", "   "),
    names: fc.array(head, { minLength: 1, maxLength: 6 }),
    rows: fc.array(fc.array(cell, { minLength: 1, maxLength: 7 }), { maxLength: 25 }),
    square: fc.boolean(),
    between: fc.constantFrom("\n", "\r\n", "\r", "\n\n", "\n\f"),
    last: fc.boolean(),
  })
  .map(({ header, delimiter, names, rows, square, between, last }) => {
    const width = names.length;
    const whole = rows.map((row) => (square ? names.map((_, i) => row[i % row.length] ?? "") : row));
    const lines = [...header.map((words) => words.join(" ")), names.slice(0, width).join(delimiter)];
    const table = whole.map((row) => row.join(delimiter));
    return [...lines, ...table].join(between) + (last ? between : "");
  });

/** What does not hold for an input; null if all holds. */
export function fault(content: Uint8Array | string, file: string): string | null {
  const result = attempt(content, file);
  if (!result.ok) return result.problems[0].message.length > 10 ? null : "a problem without a sentence";
  lookText([result.value], { explain: true });
  JSON.stringify(lookDocument([result.value]));
  const ids = new Set<string>();
  for (const cast of result.value.casts) {
    if (!/^[A-Za-z0-9._-]+$/.test(cast.id) || ids.has(cast.id)) return `id ${cast.id}`;
    ids.add(cast.id);
    if (cast.lines.length !== cast.rows) return "lines";
    if ((cast.elapsed?.length ?? cast.rows) !== cast.rows) return "elapsed";
    for (const { values, flags, name } of cast.columns.values())
      if (values.length !== cast.rows || flags.length !== cast.rows) return `column ${name}`;
    for (const [header, cells] of cast.texts) if (cells.length !== cast.rows) return `text ${header}`;
    for (const fix of [cast.start, cast.end])
      if (fix && !(Math.abs(fix.latitude) <= 90 && Math.abs(fix.longitude) <= 180)) return "position";
  }
  for (const { about, answerWith, casts } of result.value.questions) {
    if (answerWith === "") return `no answer to copy for ${about}`;
    if (casts.some((id) => !ids.has(id))) return `${about} holds a cast that is not there`;
  }
  return null;
}
