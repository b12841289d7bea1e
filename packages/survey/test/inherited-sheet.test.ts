import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { inTemporaryFolder } from "@wherry/testkit";
import { expect, test } from "vitest";
import { readSheetFile } from "../src/sheet-file.ts";

const lay = (folder: string, files: Readonly<Record<string, string>>) => {
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
};
const read = (files: Readonly<Record<string, string>>) =>
  inTemporaryFolder(async (folder) => {
    lay(folder, files);
    return readSheetFile(join(folder, "2025", "survey.yaml"));
  });
const OWN = "version: 1\ninherit: ../gear/boat.yaml\nsurvey: { id: quay }\n";

test("bases of bases are found from their own folders, and so are the paths in them", async () => {
  const sheet = await read({
    "2025/survey.yaml": OWN,
    "gear/boat.yaml": "version: 1\ninherit: [probe.yaml, people.yaml]\nnotes: [n/logger.yaml]\n",
    "gear/probe.yaml": "version: 1\ninstruments: [{ id: p, name: probe }]\n",
    "gear/people.yaml": "version: 1\ninherit: probe.yaml\npeople: { creator: { name: Crew } }\n",
  });
  if (!sheet.ok) throw new Error(JSON.stringify(sheet.problems));
  expect(sheet.value.sheet.instruments).toEqual([{ id: "p", name: "probe" }]);
  expect(sheet.value.sheet.people?.creator?.name).toBe("Crew");
  expect(sheet.value.sheet.notes).toEqual([join("..", "gear", "n", "logger.yaml")]);
  expect(sheet.value.text).not.toMatch(/^inherit:/m);
});

test.each([
  ["each other", { "gear/boat.yaml": "version: 1\ninherit: ../2025/survey.yaml\n" }, "sheet/inherit-cycle"],
  ["themselves", { "gear/boat.yaml": "version: 1\ninherit: boat.yaml\n" }, "sheet/inherit-cycle"],
  ["nothing that is there", {}, "sheet/inherit"],
  ["a sheet with an unknown key", { "gear/boat.yaml": "version: 1\nboat: x\n" }, "sheet/unknown-key"],
])("sheets that inherit from %s are refused in words", async (_, more, code) => {
  const sheet = await read({ "2025/survey.yaml": OWN, ...more });
  expect(!sheet.ok && sheet.problems[0].code).toBe(code);
});
