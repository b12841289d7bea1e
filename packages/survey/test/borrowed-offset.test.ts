import type { SurveySheet } from "@wherry/contracts";
import type { Cast } from "@wherry/core";
import { inventCast } from "@wherry/testkit";
import { expect, test } from "vitest";
import { processSurvey } from "../src/process-survey.ts";
import { startWorkers } from "../src/workers.ts";

const noon = Date.UTC(2025, 4, 13, 12) / 1000;
const cast = (id: string, time: number, choice: Parameters<typeof inventCast>[0]): Cast => ({
  ...inventCast(choice).cast,
  id,
  time,
});
const casts = [
  cast("a", noon, { offset: 0.1, seed: 1 }),
  cast("b", noon + 3600, { offset: 0.14, seed: 2 }),
  cast("wet", noon + 7200, { air: 0, offset: 0.12, seed: 3 }),
  cast("next-day", noon + 86400, { offset: 0.5, seed: 4 }),
];
const offsets = async (choice: "none" | "borrowed") => {
  const sheet: SurveySheet = { version: 1, survey: { id: "s" }, processing: { offset_without_air: choice } };
  const { casts: done } = await processSurvey(sheet, casts, await startWorkers(1), {});
  return done;
};

test("a cast without air borrows the median of its day, where the sheet says so", async () => {
  const wet = (await offsets("borrowed")).find(({ id }) => id === "wet")!;
  expect(wet.pressureOffset).toBeCloseTo(0.12, 2);
  const step = wet.steps.find((each) => each.step === "atmospheric offset");
  expect(step?.parameters.method).toContain("2 other casts of the instrument on the day");
});

test("nothing is borrowed by itself", async () => {
  const done = await offsets("none");
  expect(done.find(({ id }) => id === "wet")?.pressureOffset).toBeNaN();
  expect(done.find(({ id }) => id === "a")?.pressureOffset).toBeCloseTo(0.1, 2);
});
