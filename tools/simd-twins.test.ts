import { describe, expect, test } from "vitest";
import { graphOf } from "./generators/simd/equation.ts";
import { moduleOf } from "./generators/simd/module.ts";

interface Host {
  readonly WebAssembly: {
    readonly Module: new (bytes: Uint8Array) => object;
    readonly Instance: new (module: object) => { readonly exports: object };
  };
}

/** Runs the module made from a text over two rows of three inputs. */
function run(name: string, source: string, rows: readonly (readonly number[])[]): number[] {
  const { WebAssembly } = globalThis as unknown as Host;
  const bytes = moduleOf(graphOf(name, [source]), 3);
  const { m, f } = new WebAssembly.Instance(new WebAssembly.Module(bytes)).exports as {
    m: { buffer: ArrayBuffer };
    f: (...addresses: number[]) => void;
  };
  const memory = new Float64Array(m.buffer);
  for (const [i, row] of rows.entries()) {
    for (const [k, value] of row.entries()) memory[2 * k + i] = value;
  }
  f(0, 16, 32, 48, 64);
  return [...memory.slice(6, 8)];
}

describe("text to module", () => {
  test("keeps the order of operations, precedence and signs", () => {
    const source = `
const SCALE = 1_000.5;
const half = (x: number): number => x / 2;
export function f(a: number, b: number, c: number): number {
  // a comment; with a semicolon
  const root = Math.sqrt(c);
  return -a * b - half(root) - (a - b - c) / SCALE + 2e-3 * root;
}
`;
    const f = (a: number, b: number, c: number) => {
      const root = Math.sqrt(c);
      return -a * b - root / 2 - (a - b - c) / 1000.5 + 2e-3 * root;
    };
    const rows = [
      [0.1, 0.7, 3],
      [-5, 1e9, 0.3],
    ] as const;
    expect(run("f", source, rows)).toEqual(rows.map(([a, b, c]) => f(a, b, c)));
  });

  test("follows an array that a call fills", () => {
    const source = `
const w = new Float64Array(2);
function fill(a: number, b: number, out: Float64Array): void {
  out[0] = a + b;
  out[1] = a - b;
}
function f(a: number, b: number, c: number): number {
  fill(a, b, w);
  return w[0]! * c + w[1]!;
}
`;
    const rows = [
      [3, 4, 5],
      [0.1, 0.2, 0.3],
    ] as const;
    expect(run("f", source, rows)).toEqual(rows.map(([a, b, c]) => (a + b) * c + (a - b)));
  });

  test.each([
    ["a branch", "return a > 0 ? a : b;"],
    ["another function of Math", "return Math.log(a);"],
    ["an unknown call", "return other(a);"],
    ["a power", "return a ** 2;"],
    ["an element that nobody filled", "return w[3]! + a;"],
  ])("refuses %s", (_, statement) => {
    const source = `function f(a: number, b: number, c: number): number {\n  ${statement}\n}\n`;
    expect(() => graphOf("f", [source])).toThrow(/^f: /);
  });
});
