import { expect, test } from "vitest";
import { codesOf, contentOf, unwrap } from "../../test/content.ts";
import type { Source } from "../dataset.ts";
import { memoryDataset } from "../memory.ts";
import { openDataset } from "../open.ts";
import { planFile } from "./plan-file.ts";
import { classicBytes } from "./write-classic.ts";

/** Bytes of a file written as hexadecimal digits, blanks between, with text in quotes. */
const file = (...parts: string[]): Uint8Array =>
  Buffer.concat(
    parts
      .flatMap((part) => part.match(/'[^']*'|[0-9a-fA-F]{2}/g) ?? [])
      .map((token) =>
        token.startsWith("'") ? Buffer.from(token.slice(1, -1), "latin1") : Buffer.from(token, "hex"),
      ),
  );

const ABSENT = "00000000 00000000";
const x5 = "0000000a 00000001 00000001 'x' 000000 00000005";
const tail = (type: string, begin: string) => `${ABSENT} ${type} 00000000 ${begin}`;
const v = "0000000b 00000001 00000001 'v' 000000 00000001 00000000";

test.each([
  { what: "an empty file", bytes: file(), code: "empty", byte: 0 },
  { what: "text", bytes: file("'# a text file'"), code: "not-netcdf", byte: 0 },
  { what: "magic alone", bytes: file("'CDF' 01"), code: "truncated-header", byte: 4 },
  { what: "magic cut", bytes: file("'CDF'"), code: "version", byte: 3 },
  { what: "version 3", bytes: file("'CDF' 03"), code: "version", byte: 3 },
  {
    what: "2^31 - 1 dimensions",
    bytes: file("'CDF' 01 00000000 0000000a 7fffffff", ABSENT, ABSENT, ABSENT, ABSENT),
    code: "count",
    byte: 12,
  },
  {
    what: "a name of 1 GiB",
    bytes: file("'CDF' 01 00000000 0000000a 00000001 40000000 'abcd' 00000001", ABSENT, ABSENT),
    code: "count",
    byte: 16,
  },
  {
    what: "an attribute of 2^31 doubles",
    bytes: file("'CDF' 02 00000000", ABSENT, "0000000c 00000001 00000001 'a' 000000 00000006 80000000"),
    code: "count",
    byte: 36,
  },
  {
    what: "2^60 dimensions in CDF-5",
    bytes: file("'CDF' 05 00000000 00000000 0000000a 1000000000000000"),
    code: "count",
    byte: 16,
  },
  {
    what: "2^33 variables in CDF-5",
    bytes: file(
      "'CDF' 05 00000000 00000000",
      ABSENT,
      "00000000",
      ABSENT,
      "00000000 0000000b 0000000200000000",
    ),
    code: "count",
    byte: 40,
  },
  {
    what: "a name of 100 kB",
    bytes: file(
      "'CDF' 01 00000000 0000000a 00000001 00019000",
      "'x'".repeat(0x19000),
      "00000005",
      ABSENT,
      ABSENT,
    ),
    code: "name",
    byte: 16,
  },
  {
    what: "a wrong tag",
    bytes: file("'CDF' 01 00000000 0000000b 00000001 00000001 'x' 000000 00000005", ABSENT, ABSENT),
    code: "tag",
    byte: 8,
  },
  {
    what: "an absent list with elements",
    bytes: file("'CDF' 01 00000000 00000000 00000001 00000001 'x' 000000 00000005", ABSENT, ABSENT),
    code: "tag",
    byte: 8,
  },
  {
    what: "two record dimensions",
    bytes: file(
      "'CDF' 01 00000000 0000000a 00000002 00000001 'x' 000000 00000000 00000001 'y' 000000 00000000",
      ABSENT,
      ABSENT,
    ),
    code: "record-dimensions",
    byte: 28,
  },
  {
    what: "a dimension id too many",
    bytes: file("'CDF' 01 00000000", x5, ABSENT, v.replace(/0$/, "1"), tail("00000001", "00000050")),
    code: "dimension-id",
    byte: 56,
  },
  {
    what: "type 0",
    bytes: file("'CDF' 01 00000000", x5, ABSENT, v, tail("00000000", "00000050")),
    code: "type",
    byte: 68,
  },
  {
    what: "int64 in CDF-1",
    bytes: file("'CDF' 01 00000000", x5, ABSENT, v, tail("0000000a", "00000050")),
    code: "type",
    byte: 68,
  },
  {
    what: "begin in the header",
    bytes: file("'CDF' 01 00000000", x5, ABSENT, v, tail("00000001", "0000004c"), "01020304 05060708"),
    code: "begin",
    byte: 76,
  },
])("$what is a problem with its place", async ({ bytes, code, byte }) => {
  const opened = await openDataset(bytes);
  expect(codesOf(opened)).toEqual([`netcdf/${code}`]);
  expect(opened).toMatchObject({ problems: [{ where: { byte } }] });
});

test("a large variable of a small file is a problem when read, not an allocation", async () => {
  const dimension = "0000000a 00000001 00000001 'x' 000000 7fffffff";
  const opened = await openDataset(
    file("'CDF' 01 00000000", dimension, ABSENT, v, tail("00000006", "00000050"), "00000000 00000000"),
  );
  const dataset = unwrap(opened);
  expect(dataset.problems).toMatchObject([
    { code: "netcdf/data-missing", where: { variable: "v", byte: 80 } },
  ]);
  expect(codesOf(await dataset.read("v"))).toEqual(["netcdf/data-missing"]);
  expect(unwrap(await dataset.read("v", { start: [0], count: [1] }))).toEqual(Float64Array.of(0));
  expect(codesOf(await dataset.read("v", { start: [1], count: [1] }))).toEqual(["netcdf/data-missing"]);
});

test.each(["fixed", "record"])(
  "a %s variable of more bytes than can be counted is a problem",
  async (kind) => {
    const rank = 40;
    const dimensions = `0000000a 00000002 00000001 't' 000000 00000000 00000001 'x' 000000 7fffffff`;
    const ids = `${kind === "record" ? "00000000" : "00000001"} ${"00000001".repeat(rank - 1)}`;
    const variable = `0000000b 00000001 00000001 'v' 000000 000000${rank.toString(16)} ${ids}`;
    const opened = await openDataset(
      file("'CDF' 02 00000001", dimensions, ABSENT, variable, tail("00000006", "00000000 00001000")),
    );
    expect(codesOf(opened)).toEqual(["netcdf/too-large"]);
    expect(JSON.stringify(opened)).not.toMatch(/Infinity|NaN|null/);
  },
);

test("garbage in the padding of the header is a warning", async () => {
  const opened = await openDataset(
    file("'CDF' 01 00000000 0000000a 00000001 00000001 'xABC' 00000005", ABSENT, ABSENT),
  );
  expect(opened).toMatchObject({ ok: true, warnings: [{ code: "netcdf/padding", where: { byte: 21 } }] });
  expect([...unwrap(opened).dimensions.keys()]).toEqual(["x"]);
});

test("old names and texts are read as windows-1252", async () => {
  const opened = await openDataset(
    file(
      "'CDF' 01 00000000",
      ABSENT,
      "0000000c 00000001 00000002 'n' b0 0000 00000002 00000003 'm' e4 'r' 00",
      ABSENT,
    ),
  );
  expect(opened).toMatchObject({ ok: true, warnings: [{ code: "netcdf/name-encoding" }] });
  const dataset = unwrap(opened);
  expect(dataset.attributes.get("n°")).toEqual({
    name: "n°",
    type: "char",
    value: "mär",
    bytes: Uint8Array.of(0x6d, 0xe4, 0x72),
  });
  // the text keeps its bytes when it is written again
  const again = unwrap(await openDataset(unwrap(await classicBytes(dataset, { version: 1 }))));
  expect(again.attributes.get("n°")).toEqual(dataset.attributes.get("n°"));
});

test("of two attributes with one name the first is used, and it is said", async () => {
  const a = (value: string) => `00000001 'a' 000000 00000002 00000001 '${value}' 000000`;
  const dataset = unwrap(
    await openDataset(file("'CDF' 01 00000000", ABSENT, "0000000c 00000002", a("1"), a("2"), ABSENT)),
  );
  expect(dataset.attributes.get("a")?.value).toBe("1");
  expect(dataset.problems).toMatchObject([{ code: "netcdf/duplicate-name", where: { attribute: "a" } }]);
});

const records = memoryDataset({
  dimensions: [
    { name: "t", length: 4, unlimited: true },
    { name: "n", length: 3 },
  ],
  variables: [
    { name: "a", type: "short", dimensions: ["t"], data: Int16Array.of(1, 2, 3, 4) },
    { name: "c", type: "char", dimensions: ["t", "n"], data: new TextEncoder().encode("abcdefghijkl") },
    { name: "f", type: "double", dimensions: ["n"], data: Float64Array.of(1, 2, 3) },
  ],
});

test.each([1, 2, 5] as const)("streaming: records are counted by the size, version %d", async (version) => {
  const bytes = unwrap(await classicBytes(records, { version }));
  const streaming = bytes.slice();
  streaming.fill(0xff, 4, version === 5 ? 12 : 8);
  const opened = await openDataset(streaming);
  expect(opened).toMatchObject({ ok: true, warnings: [], value: { problems: [] } });
  expect(await contentOf(unwrap(opened))).toEqual(await contentOf(records));
  const cut = await openDataset(streaming.subarray(0, streaming.length - 3));
  expect(cut).toMatchObject({ ok: true, warnings: [{ code: "netcdf/partial-record" }] });
  expect(unwrap(cut).dimensions.get("t")?.length).toBe(3);
});

test("a file with fewer records than it claims keeps the whole ones, and says so", async () => {
  const bytes = unwrap(await classicBytes(records, { version: 1 }));
  const dataset = unwrap(await openDataset(bytes.subarray(0, bytes.length - 8)));
  expect(dataset.problems).toMatchObject([
    { code: "netcdf/records-missing", where: { byte: bytes.length - 8 } },
  ]);
  expect(unwrap(await dataset.read("a"))).toEqual(Int16Array.of(1, 2, 3));
  expect(codesOf(await dataset.read("a", { start: [3], count: [1] }))).toEqual(["netcdf/slab"]);
});

test("variables that share bytes are a problem", async () => {
  const dataset = memoryDataset({
    dimensions: [{ name: "x", length: 2 }],
    variables: [
      { name: "p", type: "int", dimensions: ["x"], data: Int32Array.of(1, 2) },
      { name: "q", type: "int", dimensions: ["x"], data: Int32Array.of(3, 4) },
    ],
  });
  const bytes = unwrap(await classicBytes(dataset, { version: 1 }));
  const beginOfQ = bytes.length - 16 - 1; // last byte of the header
  bytes[beginOfQ]! -= 4;
  expect(await openDataset(bytes)).toMatchObject({
    ok: false,
    problems: [{ code: "netcdf/overlap", where: { variable: "q", byte: bytes.length - 20 } }],
  });
});

test("very many bad variables are a short list of problems", async () => {
  const one = "00000001 'v' 000000 00000000 00000000 00000000 00000001 00000004 00000000";
  const count = 200_000;
  const start = file("'CDF' 01 00000000", ABSENT, ABSENT, "0000000b 00030d40");
  const variable = file(one);
  const variables = Buffer.concat(Array.from({ length: count }, () => variable));
  const opened = await openDataset(Buffer.concat([start, variables]));
  const codes = codesOf(opened);
  expect(codes).toHaveLength(21);
  expect(new Set(codes)).toEqual(new Set(["netcdf/begin", "netcdf/more"]));
});

/** A source that counts what it is asked for. */
function counting(bytes: Uint8Array) {
  const reads: { offset: number; length: number }[] = [];
  const source: Source = {
    size: bytes.length,
    read(offset, length) {
      reads.push({ offset, length });
      return bytes.subarray(offset, offset + length);
    },
  };
  return { source, reads };
}

test("only the bytes needed are read, runs that lie together at once", async () => {
  const side = 1000;
  const dataset = memoryDataset({
    dimensions: [
      { name: "y", length: side },
      { name: "x", length: side },
    ],
    variables: [
      {
        name: "v",
        type: "double",
        dimensions: ["y", "x"],
        data: Float64Array.from({ length: side * side }, (_, i) => i),
      },
    ],
  });
  const bytes = unwrap(await classicBytes(dataset, { version: 5 }));
  const begin = bytes.length - 8 * side * side;
  const { source, reads } = counting(bytes);
  const opened = unwrap(await openDataset(source));
  expect(reads.reduce((sum, { length }) => sum + length, 0)).toBeLessThan(10_000);

  const ask = async (start: number[], count: number[]) => {
    reads.length = 0;
    return unwrap(await opened.read("v", { start, count }));
  };
  expect(await ask([2, 0], [2, side])).toHaveLength(2 * side);
  expect(reads).toEqual([{ offset: begin + 16 * side, length: 16 * side }]);
  expect(await ask([500, 7], [1, 2])).toEqual(Float64Array.of(500_007, 500_008));
  expect(reads).toEqual([{ offset: begin + 8 * 500_007, length: 16 }]);
  // rows are 8000 bytes apart: each is a read of its own
  expect(await ask([10, 3], [3, 1])).toEqual(Float64Array.of(10_003, 11_003, 12_003));
  expect(reads.map(({ length }) => length)).toEqual([8, 8, 8]);
  // short gaps are read over
  expect(await ask([10, 400], [3, 600])).toHaveLength(1800);
  expect(reads).toHaveLength(1);
});

test("begins beyond 4 GiB, with values made up by their offset", async () => {
  const GiB = 2 ** 30;
  const dimension = (name: string, length: number) => [name, { name, length, unlimited: false }] as const;
  const variable = (name: string) =>
    [name, { name, type: "int", dimensions: [name], shape: [GiB / 4], attributes: new Map() }] as const;
  const names = ["p", "q", "r", "s", "last"];
  const dataset = {
    ...memoryDataset({}),
    dimensions: new Map(names.map((name) => dimension(name, GiB / 4))),
    variables: new Map(names.map(variable)),
  };
  for (const version of [2, 5] as const) {
    const { header, fixed } = unwrap(planFile(dataset, version));
    const source: Source = {
      size: header.length + names.length * GiB,
      read(offset, length) {
        if (offset < header.length) return header.slice(offset, offset + length);
        const view = new DataView(new ArrayBuffer(length));
        for (let at = 0; at < length; at += 4) view.setInt32(at, (offset + at - header.length) / 4);
        return new Uint8Array(view.buffer);
      },
    };
    // the first read may reach behind the header, where the source has its own values
    const whole: Source = {
      ...source,
      read: (offset, length) =>
        offset < header.length
          ? Buffer.concat([header.subarray(offset), new Uint8Array(length)]).subarray(0, length)
          : source.read(offset, length),
    };
    const opened = unwrap(await openDataset(whole));
    expect(fixed[4]!.begin).toBeGreaterThan(2 ** 32);
    expect(unwrap(await opened.read("last", { start: [5], count: [3] }))).toEqual(
      Int32Array.of(GiB + 5, GiB + 6, GiB + 7),
    );
  }
});

test("what a source throws or cuts is a problem", async () => {
  const bytes = unwrap(await classicBytes(records, { version: 1 }));
  const failing: Source = { size: bytes.length, read: async () => Promise.reject(new Error("gone")) };
  expect(codesOf(await openDataset(failing))).toEqual(["netcdf/source"]);
  const short: Source = {
    size: bytes.length + 9,
    read: (offset, n) => bytes.subarray(offset, offset + n - 1),
  };
  expect(codesOf(await openDataset(short))).toEqual(["netcdf/source"]);
});
