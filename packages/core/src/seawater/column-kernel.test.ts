import { afterEach, describe, expect, test, vi } from "vitest";
import { columnKernel } from "./column-kernel.ts";
import { density, densityColumn } from "./density.ts";
import { practicalSalinity, practicalSalinityColumn } from "./practical-salinity.ts";
import { simdTwins } from "./simd-twins.generated.ts";
import { soundSpeed, soundSpeedColumn } from "./sound-speed.ts";

/** Numbers without a pattern, the same in every run. */
function column(rows: number, from: number, to: number, seed: number): Float64Array {
  let state = seed;
  return Float64Array.from({ length: rows }, () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return from + (to - from) * (state / 2 ** 32);
  });
}

const equations = {
  // much wider than the ranges, on purpose: there are rows without a number
  density: { scalar: density, twin: densityColumn, from: [-30, -10, -50], to: [120, 90, 12_000] },
  soundSpeed: { scalar: soundSpeed, twin: soundSpeedColumn, from: [-30, -10, -50], to: [120, 90, 12_000] },
  // a fifth of the rows have a low salinity, some none
  practicalSalinity: {
    scalar: practicalSalinity,
    twin: practicalSalinityColumn,
    from: [-1, -5, -50],
    to: [15, 45, 12_000],
  },
};

// one row, an odd number, just about a piece of 2048, several pieces
const lengths = [0, 1, 63, 64, 65, 2047, 2048, 2049, 10_001];

describe.each(Object.entries(equations))("%s", (_, { scalar, twin, from, to }) => {
  const inputs = (rows: number) =>
    [0, 1, 2].map((k) => column(rows, from[k]!, to[k]!, k + 1)) as [Float64Array, Float64Array, Float64Array];

  test.each(lengths)("%i rows have the bits of the plain equation", (rows) => {
    const [a, b, c] = inputs(rows);
    const out = new Float64Array(rows);
    twin(a, b, c, out);
    expect(out).toEqual(a.map((_, i) => scalar(a[i]!, b[i]!, c[i]!)));
  });

  test("odd numbers have them too", () => {
    const odd = [
      Number.NaN,
      Number.POSITIVE_INFINITY,
      Number.NEGATIVE_INFINITY,
      -0,
      0,
      1e308,
      -1e308,
      5e-324,
    ];
    const all = odd.flatMap((a) => odd.flatMap((b) => odd.map((c) => [a, b, c] as const)));
    const [a, b, c] = [0, 1, 2].map((k) => Float64Array.from(all, (each) => each[k]!)) as [
      Float64Array,
      Float64Array,
      Float64Array,
    ];
    const out = new Float64Array(all.length);
    twin(a, b, c, out);
    expect(out).toEqual(a.map((_, i) => scalar(a[i]!, b[i]!, c[i]!)));
  });

  test("a column may be its own out", () => {
    const [a, b, c] = inputs(5000);
    const want = a.map((_, i) => scalar(a[i]!, b[i]!, c[i]!));
    twin(a, b, c, a);
    expect(a).toEqual(want);
  });
});

test.each(Object.entries(simdTwins))(
  "the twin of %s runs here, so that the tests above are about it",
  (_, base64) => {
    const rows = [column(100, 0, 40, 7), column(100, 0, 30, 8), column(100, 0, 500, 9)] as const;
    expect(columnKernel(base64)(...rows, new Float64Array(100))).toBe(true);
  },
);

describe("where WebAssembly cannot be had", () => {
  afterEach(() => {
    vi.unstubAllGlobals();
    vi.resetModules();
  });
  const rows = [column(100, 0, 40, 7), column(100, 0, 30, 8), column(100, 0, 500, 9)] as const;

  test.each([
    ["there is none", undefined],
    [
      "compiling is forbidden",
      {
        Module: class {
          constructor() {
            throw new Error("forbidden");
          }
        },
      },
    ],
  ])("the plain loop gives the numbers: %s", async (_, host) => {
    vi.stubGlobal("WebAssembly", host);
    vi.resetModules();
    const plain = await import("./density.ts");
    const out = new Float64Array(100);
    plain.densityColumn(...rows, out);
    expect(out).toEqual(rows[0].map((_, i) => density(rows[0][i]!, rows[1][i]!, rows[2][i]!)));
  });

  test("a kernel says that it did nothing", () => {
    const out = new Float64Array(100).fill(-1);
    expect(columnKernel("AGFzbQ==")(...rows, out)).toBe(false);
    expect(out).toEqual(new Float64Array(100).fill(-1));
  });
});
