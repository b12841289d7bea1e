import { readFileSync } from "node:fs";
import { testData } from "@wherry/testkit";
import { readSheet } from "../src/sheet/read-sheet.ts";
import type { WritingContext } from "../src/writers/writing-context.ts";

/** The sheet of the reference survey, without key words and remarks, which the reference files have not. */
export function referenceContext(): WritingContext {
  const path = testData("sheets", "complete.yaml");
  const sheet = readSheet(readFileSync(path, "utf8"), path);
  if (!sheet.ok) throw new Error(sheet.problems.map(({ message }) => message).join("\n"));
  const { keywords: _, ...survey } = sheet.value.survey;
  return {
    sheet: {
      ...sheet.value,
      survey,
      casts: (sheet.value.casts ?? []).map(({ notes: _, ...line }) => line),
    },
    created: "2024-05-20T09:00:00Z",
    software: "wherry 0.1.0",
    standardNames: "CF Standard Name Table v83",
  };
}
