import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseCellLine, parseCells, writeCell, writeCellLine } from "./cells.ts";

const cells = (text: string, delimiter?: string) => parseCells(text, delimiter).rows.map((row) => row.cells);

describe("parseCells", () => {
  // examples of RFC 4180 section 2, points 1 to 7
  test.each([
    [
      "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n",
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      "aaa,bbb,ccc\r\nzzz,yyy,xxx",
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ["aaa", "b\r\nbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    ['"aaa","b""bb","ccc"', [["aaa", 'b"bb', "ccc"]]],
  ])("%j", (text, want) => expect(cells(text)).toEqual(want));

  test.each([
    ["", []],
    ["\n", [[""]]],
    ["a\n\nb", [["a"], [""], ["b"]]],
    ["a,\n", [["a", ""]]],
    ["a\rb\r", [["a"], ["b"]]],
    ['""', [[""]]],
  ])("%j", (text, want) => expect(cells(text)).toEqual(want));

  test("rows know their line, also behind a cell of two lines", () => {
    const { rows } = parseCells('a\n"x\ny",1\nb\n');
    expect(rows.map((row) => row.line)).toEqual([1, 2, 4]);
  });

  test.each([
    ['a;b "c"\n', ";", [["a", 'b "c"']], { code: "cells/quote-inside", where: { line: 1, column: 5 } }],
    ['1,"a"b\n', ",", [["1", "ab"]], { code: "cells/text-after-quote", where: { line: 1, column: 6 } }],
    [
      '1,2\n3,"4\n5,6',
      ",",
      [
        ["1", "2"],
        ["3", "4\n5,6"],
      ],
      { code: "cells/quote-open", where: { line: 2, column: 3 } },
    ],
  ])("irregular: %j", (text, delimiter, want, warning) => {
    expect(cells(text, delimiter)).toEqual(want);
    expect(parseCells(text, delimiter).warnings).toMatchObject([warning]);
  });

  test("only the row that never ends is not whole", () =>
    expect(parseCells('1,2\n3,"4').rows.map((row) => row.whole)).toEqual([true, false]));

  test("a delimiter of two characters is a wrong call", () =>
    expect(() => parseCells("a", ", ")).toThrow(RangeError));
});

test.each([
  ["plain", "plain"],
  ["a,b", '"a,b"'],
  ['5"', '"5"""'],
  [" a", '" a"'],
  ["", ""],
])("writeCell %j", (text, want) => expect(writeCell(text)).toBe(want));

test("what is written is read back", () => {
  const delimiter = fc.constantFrom(",", ";", "\t");
  const text = fc.string({ unit: fc.constantFrom("a", "1", ",", ";", "\t", '"', "\r", "\n", " ", "é") });
  const table = fc.array(fc.array(text, { minLength: 1 }));
  fc.assert(
    fc.property(table, delimiter, (rows, sign) => {
      const written = rows.map((row) => `${writeCellLine(row, sign)}\r\n`).join("");
      expect(cells(written, sign)).toEqual(rows);
      expect(parseCells(written, sign).warnings).toEqual([]);
    }),
  );
});

test("one line", () => expect(parseCellLine('1,"2,3",')).toEqual(["1", "2,3", ""]));
