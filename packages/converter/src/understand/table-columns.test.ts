import { parseDecimal, parseNumber, printedPrecision } from "@wherry/core";
import fc from "fast-check";
import { expect, test } from "vitest";
import { type Delimiter, isRowLike, kindOfCell, splitCells } from "./cells.ts";
import type { RowLayout } from "./delimiter.ts";
import { type ByteSource, openText, whole } from "./encoding.ts";
import { TextLines } from "./lines.ts";
import { TableColumns } from "./table-columns.ts";

const layoutOf = (delimiter: Delimiter, width: number): RowLayout => ({
  delimiter,
  width,
  edges: [],
  because: "",
});

const linesOf = (source: Uint8Array | ByteSource) => new TextLines(openText(source).bytes);

/** Reads a text as a table, plain rows by the bytes and the others by their cells; lines that are no rows by number. */
function read(lines: TextLines, layout: RowLayout, decimal: "." | ",") {
  const columns = new TableColumns(layout, { decimal, markers: [] });
  const others: number[] = [];
  let plain = 0;
  for (;;) {
    plain += columns.readPlain(lines);
    const i = lines.count;
    if (!lines.add()) return { columns, others, plain };
    const cells = splitCells(lines.text(i), layout.delimiter);
    if (cells.length === layout.width && isRowLike(cells)) columns.addCells(cells, true);
    else {
      columns.passOver();
      others.push(i);
    }
  }
}

const number = (sign: string) =>
  fc.oneof(
    { weight: 6, arbitrary: fc.stringMatching(new RegExp(`^[+-]?\\d{1,4}[${sign}]\\d{1,5}$`)) },
    fc.stringMatching(/^-?\d{1,18}$/),
    fc.stringMatching(new RegExp(`^\\d[${sign}]\\d{10,20}$`)),
    fc.stringMatching(new RegExp(`^-?\\d[${sign}]\\d{1,4}[eE][+-]?\\d{1,3}$`)),
  );
const cell = (sign: string) =>
  fc.oneof(
    { weight: 8, arbitrary: number(sign) },
    fc.constantFrom(
      "",
      "***",
      "NaN",
      "-",
      "2024-05-01",
      "12:30:05",
      "2024-05-01T12:30:05Z",
      "x y",
      "ü",
      '"1.5"',
    ),
  );

for (const [delimiter, decimal] of [
  [",", "."],
  [";", ","],
  ["\t", "."],
  ["whitespace", "."],
  ["whitespace", ","],
] as const)
  test(`cells parted by ${JSON.stringify(delimiter)} with a decimal ${decimal} give what reading each by itself gives`, () => {
    const parse = (text: string) =>
      decimal === "." ? parseNumber(text) : parseDecimal(text, { decimal: ",", thousands: "." });
    const part = delimiter === "whitespace" ? " " : delimiter;
    const usable = (text: string) => delimiter !== "whitespace" || (text !== "" && !text.includes(" "));
    fc.assert(
      fc.property(
        fc.array(fc.array(cell(decimal).filter(usable), { minLength: 3, maxLength: 3 }), { maxLength: 30 }),
        fc.constantFrom("\n", "\r\n", "\r"),
        (table, end) => {
          const text = table.map((cells) => cells.join(part)).join(end) + end;
          const { columns, others } = read(
            linesOf(new TextEncoder().encode(text)),
            layoutOf(delimiter, 3),
            decimal,
          );
          const rows = text
            .split(end)
            .slice(0, -1)
            .filter((_, i) => !others.includes(i))
            .map((line) => splitCells(line, delimiter));
          expect(rows.every((cells) => cells.length === 3 && isRowLike(cells))).toBe(true);
          expect(columns.rows).toBe(rows.length);
          for (let c = 0; c < 3; c++) {
            const texts = rows.map((cells) => cells[c]!);
            expect(Array.from(columns.values[c]!.subarray(0, rows.length))).toEqual(texts.map(parse));
            const record = columns.records[c]!;
            const numbers = texts.filter((each) => !Number.isNaN(parse(each)));
            const odd = texts
              .map((each, row) => ({ each, row }))
              .filter(
                ({ each }) => each !== "" && kindOfCell(each) !== "missing" && Number.isNaN(parse(each)),
              );
            expect(record.gaps).toBe(texts.length - numbers.length);
            expect(record.oddRows).toEqual(odd.map(({ row }) => row));
            expect([...record.markers].sort()).toEqual(
              [...new Set(texts.filter((each) => each === "" || kindOfCell(each) === "missing"))].sort(),
            );
            if (columns.tainted) continue;
            const printed = numbers.map((each) =>
              printedPrecision(each, { decimal, thousands: decimal === "," ? "." : null }),
            );
            expect(columns.decimals[c]).toBe(Math.max(0, ...printed.map(({ decimals }) => decimals)));
            if (numbers.length > 0)
              expect(Math.max(record.digits, String(columns.mantissas[c]).length)).toBe(
                Math.max(...printed.map(({ significantDigits }) => significantDigits)),
              );
          }
        },
      ),
      { numRuns: 300 },
    );
  });

test("rows of fixed columns are taken only where each number ends at its column", () => {
  const layout: RowLayout = { delimiter: "fixed", width: 3, edges: [5, 10], because: "" };
  const columns = new TableColumns(layout, { decimal: ".", markers: [] });
  const lines = linesOf(new TextEncoder().encode(" 1.00 2.00 3.00\n 4.00 5.00 6.00\n 7.00      8.00\n"));
  expect(columns.readPlain(lines)).toBe(2);
  expect(columns.values.map((values) => [...values.subarray(0, 2)])).toEqual([
    [1, 4],
    [2, 5],
    [3, 6],
  ]);
});

test("a row that turns out to be none leaves no gaps, and taints the records", () => {
  const columns = new TableColumns(layoutOf(",", 3), { decimal: ".", markers: [] });
  const lines = linesOf(new TextEncoder().encode("1,2,3\n***,1.2345,words\n4,5,6\n"));
  columns.addCells(["***", "1", "2"], true);
  expect(columns.readPlain(lines)).toBe(1);
  expect(lines.add()).toBe(true);
  columns.passOver();
  expect(columns.tainted).toBe(true);
  expect(columns.records[0]!.gaps).toBe(1);
  expect(columns.readPlain(lines)).toBe(1);
});

test("numbers that mark missing values are no numbers", () => {
  const columns = new TableColumns(layoutOf(",", 2), { decimal: ".", markers: [-999.99] });
  columns.readPlain(linesOf(new TextEncoder().encode("1.5,-999.99\n2.5,3\n")));
  expect([...columns.values[1]!.subarray(0, 2)]).toEqual([Number.NaN, 3]);
  expect(columns.records[1]).toMatchObject({ gaps: 1, odd: 0 });
  expect(columns.decimals[1]).toBe(0);
  expect(columns.records[1]!.markers).toEqual(new Set(["-999.99"]));
});

test("a text that is not held whole is read as one that is", () => {
  const rows = Array.from(
    { length: 500_000 },
    (_, i) => `${i},${i % 97}.${i % 10},-${i % 7}.25${i % 1000 === 0 ? ",x" : ""}`,
  );
  const bytes = new TextEncoder().encode(`time,a,b\r\n${rows.join("\r\n")}`);
  let longest = 0;
  const source: ByteSource = {
    size: bytes.length,
    held: null,
    read(offset, out) {
      longest = Math.max(longest, out.length);
      out.set(bytes.subarray(offset, offset + out.length));
    },
  };
  const [held, apart] = [whole(bytes), source].map((each) => read(linesOf(each), layoutOf(",", 3), "."));
  expect(apart!.columns.rows).toBe(499_500);
  expect(apart!.others).toEqual(held!.others);
  const bytesOf = ({ columns }: { columns: TableColumns }, c: number) =>
    new Uint8Array(columns.values[c]!.buffer, 0, 8 * columns.rows);
  for (let c = 0; c < 3; c++) expect(Buffer.compare(bytesOf(apart!, c), bytesOf(held!, c))).toBe(0);
  expect(longest).toBeLessThan(bytes.length);
  expect(apart!.plain).toBeGreaterThan(499_000);
});
