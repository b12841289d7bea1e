import { describe, expect, test } from "vitest";
import { unwrap } from "../../test/content.ts";
import { parseCdl } from "./parse-cdl.ts";

const attribute = (text: string, name = "a") =>
  unwrap(parseCdl(`int v ; ${text} ;`))
    .variables.get("v")
    ?.attributes.get(name);

const values = async (text: string, name = "a") => {
  const data = unwrap(await unwrap(parseCdl(text)).read(name));
  return data instanceof Uint8Array ? Buffer.from(data).toString("latin1") : [...data];
};

const problemsOf = (text: string) => {
  const read = parseCdl(text);
  return read.ok ? [] : read.problems;
};

describe("types of attributes by suffix (netCDF utilities 4.9.0, manual page of ncgen, CDL Constants)", () => {
  test.each([
    { text: "v:a = 0b", type: "byte", value: [0] },
    { text: "v:a = -1B", type: "byte", value: [-1] },
    { text: "v:a = 255b", type: "byte", value: [-1] },
    { text: "v:a = -2s", type: "short", value: [-2] },
    { text: "v:a = 0123s", type: "short", value: [0o123] },
    { text: "v:a = 0x7ffs", type: "short", value: [0x7ff] },
    { text: "v:a = -2", type: "int", value: [-2] },
    { text: "v:a = 1234567890L", type: "int", value: [1234567890] },
    { text: "v:a = 0123", type: "int", value: [0o123] },
    { text: "v:a = 0x7ff", type: "int", value: [0x7ff] },
    { text: "v:a = -2ll", type: "int64", value: [-2n] },
    { text: "v:a = 0123LL", type: "int64", value: [0o123n] },
    { text: "v:a = 0x7ffLL", type: "int64", value: [0x7ffn] },
    { text: "v:a = 10U", type: "uint", value: [10] },
    { text: "v:a = 200ub", type: "ubyte", value: [200] },
    { text: "v:a = 100su", type: "ushort", value: [100] },
    { text: "v:a = 100000ul", type: "uint", value: [100000] },
    { text: "v:a = 18446744073709551615ull", type: "uint64", value: [18446744073709551615n] },
    { text: "v:a = 3000000000", type: "uint", value: [3000000000] },
    { text: "v:a = -3000000000", type: "int64", value: [-3000000000n] },
    { text: "v:a = -2.0f", type: "float", value: [-2] },
    { text: "v:a = 3.14159265358979f", type: "float", value: [Math.fround(Math.PI)] },
    { text: "v:a = 1.f", type: "float", value: [1] },
    { text: "v:a = -2.0", type: "double", value: [-2] },
    { text: "v:a = 1.0e-20", type: "double", value: [1e-20] },
    { text: "v:a = 1.d, .5", type: "double", value: [1, 0.5] },
    { text: "v:a = NaN, -Infinity", type: "double", value: [Number.NaN, Number.NEGATIVE_INFINITY] },
    { text: "v:a = NaNf, Infinityf", type: "float", value: [Number.NaN, Number.POSITIVE_INFINITY] },
    { text: "v:a = 1b, 2s, 3.f", type: "float", value: [1, 2, 3] },
    { text: "v:a = 'a', '\\n'", type: "byte", value: [97, 10] },
    { text: "double v:a = 1, 2", type: "double", value: [1, 2] },
    { text: "long v:a = 1", type: "int", value: [1] },
    { text: "real v:a = 1", type: "float", value: [1] },
    { text: "double v:a = ", type: "double", value: [] },
    { text: 'string v:a = "x", "", NIL', type: "string", value: ["x", "", ""] },
  ])("$text", ({ text, type, value }) => {
    const read = attribute(text);
    expect(read?.type).toBe(type);
    expect([...(read?.value ?? [])]).toEqual(value);
  });

  test.each([
    { text: 'v:a = "Two\\nlines\\n"', value: "Two\nlines\n" },
    { text: 'v:a = "a bell:\\007"', value: "a bell:\x07" },
    { text: 'v:a = "one ", "two"', value: "one two" },
    { text: 'v:a = "x // no comment" // a comment', value: "x // no comment" },
    { text: 'v:a = "\\303\\251, \\xc3\\xA9, é, \\"\\\\\\t"', value: 'é, é, é, "\\\t' },
    { text: 'char v:a = "q"', value: "q" },
    { text: "v:a = ", value: "" },
  ])("$text", ({ text, value }) => {
    expect(attribute(`${text}\n`)).toEqual({ name: "a", type: "char", value });
  });

  test("bytes that are no UTF-8 are kept", () => {
    expect(attribute('v:a = "22 \\260C"')).toEqual({
      name: "a",
      type: "char",
      value: "22 °C",
      bytes: Uint8Array.from([0x32, 0x32, 0x20, 0xb0, 0x43]),
    });
  });

  test("a fill value takes the type of its variable", () => {
    expect(attribute("v:_FillValue = -1s", "_FillValue")).toEqual({
      name: "_FillValue",
      type: "int",
      value: Int32Array.of(-1),
    });
  });

  test("attributes that say how a file is stored are left out", () => {
    expect(attribute('v:_Storage = "chunked" ; v:_DeflateLevel = 4 ; v:a = 1')?.value).toEqual(
      Int32Array.of(1),
    );
    expect(attribute("v:_DeflateLevel = 4", "_DeflateLevel")).toBeUndefined();
  });
});

describe("values (as ncgen 4.9.0 lays them out)", () => {
  const dimensions = "dimensions: t = UNLIMITED ; // (9 currently)\n x = 3, n = 4 ;";
  test.each([
    { text: "int a ; data: a = 5 ;", want: [5] },
    { text: "int a(x) ; data: a = 1, 2 ;", want: [1, 2, -2147483647] },
    { text: "int a(x) ; a:_FillValue = -9 ; data: a = 1, _ ;", want: [1, -9, -9] },
    { text: "int a(t, x) ; data: a = 1, 2, 3, 4 ;", want: [1, 2, 3, 4, -2147483647, -2147483647] },
    { text: "byte b(t) ; int a(t) ; data: b = 1, 2 ; a = 7 ;", want: [7, -2147483647] },
    { text: "int a(x, t) ; data: a = {1, 2}, {3} ;", want: [1, 2, 3, -2147483647, -2147483647, -2147483647] },
    {
      text: "float a(x) ; data: a = 1.5, NaN, -Infinity ;",
      want: [1.5, Number.NaN, Number.NEGATIVE_INFINITY],
    },
    {
      text: "int64 a(x) ; data: a = 1, -9223372036854775808, _ ;",
      want: [1n, -(2n ** 63n), -9223372036854775806n],
    },
    { text: "ubyte a(x) ; data: a = 200, 255UB ;", want: "\xc8\xff\xff" },
    { text: 'string a(x) ; data: a = "é", NIL ;', want: ["é", "", ""] },
    { text: 'char a(x, n) ; data: a = "ab", "cdef" ;', want: "ab\0\0cdef\0\0\0\0" },
    { text: 'char a(x, n) ; data: a = "abcdef", "" ;', want: "abcdef\0\0\0\0\0\0" },
    { text: 'char a(x, n) ; a:_FillValue = "*" ; data: a = "a" ;', want: "a***********" },
    { text: 'char a(x) ; data: a = "a", "b" ;', want: "ab\0" },
    { text: "char a(x) ; data: a = 'a', 'b' ;", want: "ab\0" },
    { text: 'char a(t) ; data: a = "abc", "de" ;', want: "abcde" },
    { text: 'char a(t, n) ; data: a = "abc", "de" ;', want: "abc\0de\0\0" },
    { text: "int a(x) ; data: a = 1 ; a = 4, 5, 6 ;", want: [4, 5, 6] },
  ])("$text", async ({ text, want }) => {
    expect(await values(`netcdf made-up.1 {\n${dimensions} variables: ${text} }`)).toEqual(want);
  });

  test("groups see the dimensions around them", async () => {
    const read = unwrap(
      parseCdl(
        "netcdf n { dimensions: x = 1 ; group: g { dimensions: x = 2, y = 3 ; variables: int a(/x), b(x) ; :c = 1 ; group: h { variables: int d(y) ; d:e = 2 ; } } }",
      ),
    );
    expect([...read.variables.values()].map(({ name, dimensions }) => [name, dimensions])).toEqual([
      ["g/a", ["x"]],
      ["g/b", ["g/x"]],
      ["g/h/d", ["g/y"]],
    ]);
    expect([...read.attributes.keys()]).toEqual(["g/c"]);
  });
});

describe("names", () => {
  test.each([
    { text: "int \\1a ;", name: "1a" },
    { text: "int a\\ b\\;c ;", name: "a b;c" },
    { text: "int a.b-c+d@e ;", name: "a.b-c+d@e" },
    { text: "int é水 ;", name: "é水" },
    { text: "int data ; data :u = 1 ; data:w = 1 ; data: data = 3 ;", name: "data" },
    { text: "int \\double ;", name: "double" },
  ])("$text", ({ text, name }) => {
    expect([...unwrap(parseCdl(text)).variables.keys()]).toEqual([name]);
  });
});

describe("fragments", () => {
  test.each([
    'double lat ; lat:standard_name = "latitude" ;',
    ':Conventions = "CF-1.13" ;',
    "x = 3 ; float a(x) ; a = 1, 2, 3 ;",
    "dimensions: x = 3 ; float a(x) ; a = 1, 2, 3 ;",
    "dimensions: x = 3 ; variables: float a(x) ; data: a = 1, 2, 3 ;",
    "",
  ])("%s", (text) => {
    expect(problemsOf(text)).toEqual([]);
  });
});

describe("what is wrong is said with its place", () => {
  test.each([
    { text: "int v ;\n v:a = 300b ;", code: "cdl/value", line: 2, column: 8 },
    { text: "int v ;\n v:a = 1f ;", code: "cdl/value", line: 2, column: 8 },
    { text: "int v ;\n v:a = 089 ;", code: "cdl/value", line: 2, column: 8 },
    { text: "int v ; v:a = 40000s ;", code: "cdl/value", line: 1, column: 15 },
    { text: "int v ; int v:a = 2.5 ;", code: "cdl/value", line: 1, column: 19 },
    { text: 'int v ; v:a = "x", 1 ;', code: "cdl/value", line: 1, column: 20 },
    { text: "int v ; data: v = 2.5 ;", code: "cdl/value", line: 1, column: 19 },
    { text: "int v ; data: v = 1, 2 ;", code: "cdl/value", line: 1, column: 22 },
    { text: 'int v ; data: v = "x" ;', code: "cdl/value", line: 1, column: 19 },
    { text: "x = 2 ; int v(x, x) ; data: v = {1, 2} ;", code: "cdl/value", line: 1, column: 33 },
    { text: "float v ; data: v = 1e39 ;", code: "cdl/value", line: 1, column: 21 },
    { text: "int v(x) ;", code: "cdl/name", line: 1, column: 7 },
    { text: "lat:units = 1 ;", code: "cdl/name", line: 1, column: 1 },
    { text: "data: a = 1 ;", code: "cdl/name", line: 1, column: 7 },
    { text: "int v ; int v ;", code: "cdl/name", line: 1, column: 13 },
    { text: "x = 1 ; dimensions: x = 2 ;", code: "cdl/name", line: 1, column: 21 },
    { text: "integer4 v ;", code: "cdl/unsupported", line: 1, column: 1 },
    { text: "types: opaque(11) o ; variables: int v ;", code: "cdl/unsupported", line: 1, column: 1 },
    { text: 'int v ; v:a = "x', code: "cdl/syntax", line: 1, column: 15 },
    { text: "int v ; v:a = 1", code: "cdl/syntax", line: 1, column: 16 },
    { text: "netcdf n { int v ;", code: "cdl/syntax", line: 1, column: 19 },
    { text: "int v ; }", code: "cdl/syntax", line: 1, column: 9 },
    { text: "x = -1 ;", code: "cdl/syntax", line: 1, column: 5 },
    { text: `int v ; v:a = ${"{".repeat(100_000)}`, code: "cdl/syntax", line: 1, column: 79 },
    { text: "x = 4000000000 ; y = 4000000000 ; double v(x, y) ;", code: "cdl/value", line: 1, column: 42 },
  ])("$text", ({ text, code, line, column }) => {
    expect(problemsOf(text)).toMatchObject([{ code, where: { line, column } }]);
  });

  test("all problems of a text are told at once", () => {
    expect(problemsOf("int v ; v:a = ! ; v:b = ? ; float ; w:c = 1 ;").map(({ code }) => code)).toEqual([
      "cdl/syntax",
      "cdl/syntax",
      "cdl/syntax",
      "cdl/name",
    ]);
  });
});
