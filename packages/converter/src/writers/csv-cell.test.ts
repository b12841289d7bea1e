import Papa from "papaparse";
import { describe, expect, test } from "vitest";
import { textCell } from "./csv-cell.ts";

/** What an independent parser reads of a line with the cell in its middle. */
const readBack = (text: string): string => {
  const { data, errors } = Papa.parse<string[]>(`a,${textCell(text)},b\r\n`, { delimiter: "," });
  expect(errors).toEqual([]);
  expect(data[0]).toHaveLength(3);
  return data[0]![1]!;
};

describe("a text in a cell", () => {
  test.each([
    "Old Quay",
    'say "x", y',
    " blanks ",
    "two\r\nlines",
    "<b>&amp;</b>",
    "\u202eturned",
    "1e5",
    "",
  ])("%j comes back as it was", (text) => expect(readBack(text)).toBe(text));

  test.each(["=1+1", '=HYPERLINK("http://x","y")', "+1", "-1 m", "@SUM(A1)", "\t=1", "=cmd|' /C calc'!A0"])(
    "%j is no formula any more",
    (text) => {
      expect(readBack(text)).toBe(`'${text}`);
    },
  );

  test("control characters become the replacement character", () =>
    expect(readBack("a\u0000b\u001b[31mc\u0085d")).toBe("a\ufffdb\ufffd[31mc\ufffdd"));
});
