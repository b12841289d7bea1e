import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { inTemporaryFolder } from "@wherry/testkit";
import { expect, test } from "vitest";
import { follow, readPage } from "./follow-page.ts";

const page = readPage("how-to", "teach-wherry-your-devices-export.md");

test("the page has its commands, its notes and what they show", () =>
  expect(["sh", "yaml", "text"].map(page.count)).toEqual([5, 1, 5]));

test(
  "followed literally, it ends with products that rest on the notes",
  () =>
    inTemporaryFolder((folder) => {
      follow(page, folder, join("own-device", "ebbe.yaml"));
      expect(readFileSync(join(folder, "own-device", "survey.yaml"), "utf8")).toContain(
        'notes: ["ebbe.yaml"]',
      );
      expect(existsSync(join(folder, "own-device", "result", "survey_full.nc"))).toBe(true);
      // each of the two records has one cell with -77
      const [head = "", ...rows] = readFileSync(
        join(folder, "own-device", "result", "survey_full.csv"),
        "utf8",
      ).split("\r\n");
      const at = head.split(",").indexOf("temperature");
      const cells = rows.map((row) => row.split(",")[at]).filter((cell) => cell !== undefined);
      expect(cells).not.toContain("-77");
      expect(cells.filter((cell) => cell === "")).toHaveLength(2);
    }),
  120_000,
);
