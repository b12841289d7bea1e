import { describe, expect, test } from "vitest";
import { readSheet } from "./read-sheet.ts";

const read = (title: string) =>
  readSheet(`version: 1\nsurvey:\n  id: s\n  title: ${JSON.stringify(title)}\n`, "s.yaml");

describe("texts of a sheet", () => {
  test.each(["a\u0000b", "\u001b[31mred", "a\u007fb", "a\u0085b", "half \ud800", "no \uffff"])(
    "%j is refused at its place",
    (title) => {
      const result = read(title);
      expect(result.ok).toBe(false);
      if (result.ok) return;
      expect(result.problems.map(({ code, where }) => `${code} ${where.line}:${where.column}`)).toEqual([
        "sheet/control-character 4:10",
      ]);
    },
  );

  test.each(["<b>bold</b>", "line\nline", "tab\tstop", "עברית", "🐟", "x".repeat(1_000_000)])(
    "%.20j is taken as it is",
    (title) => {
      const result = read(title);
      expect(result.ok && result.value.survey.title).toBe(title);
      expect(result.ok && result.warnings).toEqual([]);
    },
  );

  test("a turn of direction is told", () => {
    const result = read("invoice\u202etxt.exe");
    expect(result.ok && result.warnings.map(({ code }) => code)).toEqual(["sheet/direction"]);
  });
});
