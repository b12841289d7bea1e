import { readdirSync, readFileSync } from "node:fs";
import { testData } from "@wherry/testkit";
import { expect, test } from "vitest";
import { lookDocument } from "../src/understand/report/look-document.ts";
import { lookText } from "../src/understand/report/look-text.ts";
import { attempt } from "./understand-samples.ts";

/** A small generator with a seed (Park and Miller 1988, minimal standard). */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

const folder = testData("samples");
const samples = ["messy", "openformats"].flatMap((name) =>
  readdirSync(`${folder}/${name}`)
    .filter((file) => !file.endsWith(".json"))
    .map((file) => ({ file, bytes: readFileSync(`${folder}/${name}/${file}`) })),
);

/** One to eight changes: a byte, a cut, a doubled stretch, a swap of two stretches. */
function mutate(source: Uint8Array, random: () => number): Uint8Array {
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

test("500 damaged files: never an exception, and always casts of equal columns or a problem", () => {
  const random = generator(20_250_513);
  let read = 0;
  for (let i = 0; i < 500; i++) {
    const { file, bytes } = samples[Math.floor(random() * samples.length)]!;
    const result = attempt(mutate(bytes, random), file);
    if (!result.ok) {
      expect(result.problems[0].message.length).toBeGreaterThan(10);
      continue;
    }
    read++;
    lookText([result.value], { explain: true });
    JSON.stringify(lookDocument([result.value]));
    for (const cast of result.value.casts) {
      expect(cast.id).toMatch(/^[A-Za-z0-9._-]+$/);
      expect(cast.lines.length).toBe(cast.rows);
      expect(cast.elapsed?.length ?? cast.rows).toBe(cast.rows);
      for (const { values, flags } of cast.columns.values())
        expect([values.length, flags.length]).toEqual([cast.rows, cast.rows]);
      for (const cells of cast.texts.values()) expect(cells.length).toBe(cast.rows);
      if (cast.start)
        expect(Math.abs(cast.start.latitude) <= 90 && Math.abs(cast.start.longitude) <= 180).toBe(true);
    }
    expect(new Set(result.value.casts.map(({ id }) => id)).size).toBe(result.value.casts.length);
  }
  expect(read).toBeGreaterThan(100);
});
