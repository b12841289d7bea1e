import { inventCast } from "@wherry/testkit";
import { expect, test } from "vitest";
import { processCast } from "../src/recipe/process-cast.ts";
import { defaultSettings } from "../src/recipe/settings.ts";
import { plainExport, understood } from "./understand-samples.ts";

// Two lowerings in one file, to 12 and to 9 dbar, by a person who left the probe running.

const casts = [inventCast({ deepest: 12, seed: 5 }).cast, inventCast({ deepest: 9, seed: 6 }).cast];
const lines = casts.flatMap((cast, i) =>
  Array.from(cast.elapsed!, (time, k) =>
    [
      (i * 1000 + time).toFixed(2),
      ...["pressure", "temperature", "conductivity"].map((name) =>
        cast.columns.get(name)!.values[k]!.toFixed(3),
      ),
    ].join(","),
  ),
);
const text = plainExport({ rows: lines.join("\n") });

test("both dips are casts of their own, with their times, lines and printed ends", () => {
  const file = understood(text, "both.csv");
  expect(file.casts.map(({ id }) => id)).toEqual(["both-1", "both-2"]);
  const [first, second] = file.casts as [(typeof file.casts)[0], (typeof file.casts)[0]];
  // the record paused between both
  expect([first.rows, second.rows]).toEqual(casts.map(({ rows }) => rows));
  expect(second.lines[0]).toBe(first.lines.at(-1)! + 1);
  expect(second.time - first.time).toBe(1000);
  expect(second.elapsed![0]).toBe(0);
  const printed = lines.at(-1)!.split(",")[1]!;
  expect(second.columns.get("pressure")?.source?.last.toFixed(3)).toBe(printed);
  expect(second.evidence.find(({ fact }) => fact === "castSplitting")?.because).toContain("dip 2");
});

test("each has its own downcast to its own bottom", () => {
  const deepest = understood(text, "both.csv").casts.map((cast) => {
    const processed = processCast(cast, defaultSettings);
    expect(processed.segments.filter(({ kind }) => kind === "down")).toHaveLength(1);
    return Math.round(
      Number(processed.steps.find(({ step }) => step === "segmentation")?.counts.maxPressure),
    );
  });
  expect(deepest).toEqual([12, 9]);
});

test("a person may say that it is one", () => {
  const answers = [{ about: "castSplitting", where: "both.csv", value: "one" }];
  expect(understood(text, "both.csv", answers).casts.map(({ id }) => id)).toEqual(["both"]);
});

test("a question about the record waits for an answer in all of its dips", () => {
  const open = understood(
    plainExport({ rows: lines.join("\n"), start: "start: 02/06/2023 08:30" }),
    "both.csv",
  );
  for (const { casts: held } of open.questions)
    if (held.length > 0) expect(held).toEqual(["both-1", "both-2"]);
  expect(open.questions.length).toBeGreaterThan(0);
});
