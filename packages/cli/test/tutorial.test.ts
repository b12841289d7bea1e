import { existsSync } from "node:fs";
import { join } from "node:path";
import { inTemporaryFolder } from "@wherry/testkit";
import { expect, test } from "vitest";
import { follow, readPage } from "./follow-page.ts";

const page = readPage("tutorial", "one-cast.md");

test("the page has its commands, its sheet and what they show", () =>
  expect(["sh", "yaml", "text"].map(page.count)).toEqual([9, 1, 8]));

test(
  "followed literally, it ends with a package that is whole",
  () =>
    inTemporaryFolder((folder) => {
      follow(page, folder, join("first-deposit", "survey.yaml"), { "sheet first-deposit/exports": 2 });
      expect(existsSync(join(folder, "first-deposit", "marsh-quay-2025.zip"))).toBe(true);
    }),
  120_000,
);
