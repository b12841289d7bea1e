import type { Judgement } from "@wherry/contracts";
import { type Cast, type Column, type LayerMeans, layerMeans, valuesOf } from "@wherry/core";
import { inventCast } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { bindJudgements } from "../src/judgements/bind-judgements.ts";
import { holding, type PlacedJudgement, readJudgements } from "../src/judgements/read-judgements.ts";
import { processCast } from "../src/recipe/process-cast.ts";
import { defaultSettings } from "../src/recipe/settings.ts";

const HASH = "a".repeat(64);
const raw: Cast = { ...inventCast({ seed: 7 }).cast, id: "Q1", source: { path: "q1.csv", sha256: HASH } };

const line = (id: string, more: Partial<Judgement>): Judgement => ({
  version: 1,
  id,
  who: "Ines Invented",
  when: "2025-06-02T10:00:00Z",
  why: "weed",
  ...more,
});
const flagging = (id: string, more: Partial<Judgement> = {}) =>
  line(id, { cast: "Q1", sha256: HASH, quantity: "temperature", lines: [100, 110], flag: 4, ...more });

const entriesOf = (...judgements: readonly Judgement[]): readonly PlacedJudgement[] => {
  const read = readJudgements(judgements.map((each) => JSON.stringify(each)).join("\n"), "judgements.jsonl");
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return holding(read.value);
};

/** The cast with the judgements, and the rows in lines 100 to 110. */
function judged(...judgements: readonly Judgement[]): {
  cast: Cast;
  rows: number[];
  findings: readonly string[];
} {
  const { manual, findings } = bindJudgements([raw], entriesOf(...judgements), "judgements.jsonl");
  const cast = processCast(raw, defaultSettings, manual.get("Q1") ?? []);
  const rows = [...cast.lines.keys()].filter((k) => cast.lines[k]! >= 100 && cast.lines[k]! <= 110);
  return { cast, rows, findings: findings.map(({ code }) => code) };
}
const column = ({ columns }: Cast, name: string): Column => {
  const found = columns.get(name);
  if (!found) throw new Error(`no ${name}`);
  return found;
};
const flagsAt = (cast: Cast, name: string, rows: readonly number[]) =>
  rows.map((k) => column(cast, name).flags[k]);
const all = (rows: readonly number[], flag: number) => rows.map(() => flag);

describe("a person's flag", () => {
  const plain = judged();

  test("wins over the tests, and what is computed takes it over", () => {
    const { cast, rows } = judged(flagging("j1"));
    expect(rows.length).toBe(11);
    expect(flagsAt(plain.cast, "temperature", rows)).not.toContain(4);
    for (const name of ["temperature", "salinity", "density", "sound_speed"])
      expect(flagsAt(cast, name, rows), name).toEqual(all(rows, 4));
    expect(flagsAt(cast, "pressure", rows)).toEqual(flagsAt(plain.cast, "pressure", rows));
    expect(valuesOf(cast, "temperature")).toEqual(valuesOf(plain.cast, "temperature"));
  });

  test("can call good what the tests doubt", () => {
    const doubted = [...column(plain.cast, "temperature").flags.keys()].filter(
      (k) => column(plain.cast, "temperature").flags[k] !== 1,
    );
    const row = doubted[0]!;
    const source = raw.lines[row]!;
    const { cast } = judged(flagging("j1", { lines: [source, source], flag: 1 }));
    expect(column(cast, "temperature").flags[row]).toBe(1);
  });

  test("keeps rows out of layer means, and puts them in", () => {
    const means = (cast: Cast): LayerMeans =>
      layerMeans(cast, { width: 0.5, coordinate: "pressure", direction: "down" });
    const count = (cast: Cast) =>
      means(cast)
        .columns.get("temperature")!
        .count.reduce((sum, n) => sum + n, 0);
    const down = plain.cast.segments.find(({ kind }) => kind === "down")!;
    const lines: [number, number] = [
      plain.cast.lines[down.firstRow + 20]!,
      plain.cast.lines[down.firstRow + 29]!,
    ];
    expect(count(judged(flagging("j1", { lines, flag: 4 })).cast)).toBeLessThan(count(plain.cast));
    expect(count(judged(flagging("j1", { lines, flag: 4 }), flagging("j2", { lines, flag: 1 })).cast)).toBe(
      count(judged(flagging("j1", { lines, flag: 1 })).cast),
    );
  });

  test("holds for a range of pressure, on the way down and up", () => {
    const { cast } = judged(
      line("j1", { cast: "Q1", sha256: HASH, quantity: "temperature", pressure: [3, 2], flag: 4 }),
    );
    const p = valuesOf(cast, "pressure")!;
    const within = [...p.keys()].filter((k) => p[k]! >= 2 && p[k]! <= 3);
    expect(within.length).toBeGreaterThan(4);
    expect(flagsAt(cast, "temperature", within)).toEqual(all(within, 4));
    expect(column(cast, "temperature").flags.filter((flag) => flag === 4).length).toBe(
      within.length +
        column(plain.cast, "temperature").flags.filter((flag, k) => flag === 4 && !within.includes(k)).length,
    );
  });

  test("is recorded as a step with who, when, why and the rows", () => {
    const { cast } = judged(flagging("j1"));
    expect(cast.steps.filter(({ step }) => step === "manual judgement")).toEqual([
      {
        step: "manual judgement",
        parameters: {
          judgement: "j1",
          who: "Ines Invented",
          when: "2025-06-02T10:00:00Z",
          why: "weed",
          quantity: "temperature",
          lines: [100, 110],
          flag: 4,
        },
        counts: { rows: 11 },
        words: "temperature at lines 100 to 110 flagged 4 (bad) by Ines Invented on 2025-06-02: weed",
      },
    ]);
  });

  test("of a missing value changes nothing: it stays 9", () => {
    const row = [...raw.lines].indexOf(105);
    const temperature = column(raw, "temperature");
    const values = temperature.values.slice();
    values[row] = Number.NaN;
    const gap = { ...raw, columns: new Map(raw.columns).set("temperature", { ...temperature, values }) };
    const { manual } = bindJudgements([gap], entriesOf(flagging("j1", { flag: 1 })), "x");
    expect(column(processCast(gap, defaultSettings, manual.get("Q1")), "temperature").flags[row]).toBe(9);
  });
});

describe("undoing", () => {
  test("a later line undoes an earlier one, and an undoing can be undone", () => {
    const undo = (id: string, what: string) => line(id, { undo: what });
    expect(
      entriesOf(flagging("j1"), flagging("j2"), undo("j3", "j1")).map(({ judgement }) => judgement.id),
    ).toEqual(["j2"]);
    expect(
      entriesOf(flagging("j1"), undo("j2", "j1"), undo("j3", "j2")).map(({ judgement }) => judgement.id),
    ).toEqual(["j1"]);
  });
});

describe("not applied, and told", () => {
  test.each([
    [{ sha256: "0".repeat(64) }, "judgements/source-changed"],
    [{ cast: "Q2" }, "judgements/no-cast"],
    [{ quantity: "temperatur" }, "judgements/no-quantity"],
    [{ lines: [90_000, 90_001] as [number, number] }, "judgements/no-rows"],
  ])("%j: %s", (more, code) => {
    const { cast, findings } = judged(flagging("j1", more));
    expect(findings).toEqual([code]);
    expect(cast.steps.some(({ step }) => step === "manual judgement")).toBe(false);
  });
});

describe("a file that is wrong", () => {
  test.each([
    ["no JSON", "{", "judgements/json"],
    ["a flag that is none", JSON.stringify({ ...flagging("j1"), flag: 9 }), "judgements/form"],
    ["no reason", JSON.stringify({ ...flagging("j1"), why: " " }), "judgements/form"],
    ["no place", JSON.stringify({ ...flagging("j1"), lines: undefined }), "judgements/form"],
    ["two places", JSON.stringify({ ...flagging("j1"), pressure: [1, 2] }), "judgements/form"],
    ["an unknown key", JSON.stringify({ ...flagging("j1"), reason: "x" }), "judgements/form"],
    ["an undoing that flags", JSON.stringify({ ...flagging("j1"), undo: "j0" }), "judgements/form"],
    [
      "the same id twice",
      `${JSON.stringify(flagging("j1"))}\n${JSON.stringify(flagging("j1"))}`,
      "judgements/repeated-id",
    ],
    ["an undoing of nothing", JSON.stringify(line("j1", { undo: "j9" })), "judgements/undo"],
  ])("%s is a problem at its line", (_, text, code) => {
    const read = readJudgements(`\n${text}\n`, "judgements.jsonl");
    expect(read.ok).toBe(false);
    if (read.ok) return;
    expect(read.problems.map((problem) => problem.code)).toEqual([code]);
    expect(read.problems[0].where).toEqual({
      file: "judgements.jsonl",
      line: code === "judgements/repeated-id" ? 3 : 2,
    });
  });
});
