import { afterEach, describe, expect, test, vi } from "vitest";
import { columnKernel } from "./column-kernel.ts";
import { density, densityColumn } from "./density.ts";
import { densityModule, soundSpeedModule } from "./simd-twins.generated.ts";
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
  density: { scalar: density, twin: densityColumn },
  soundSpeed: { scalar: soundSpeed, twin: soundSpeedColumn },
};

// one row, an odd number, just about a piece of 2048, several pieces
const lengths = [0, 1, 63, 64, 65, 2047, 2048, 2049, 10_001];

describe.each(Object.entries(equations))("%s", (_, { scalar, twin }) => {
  test.each(lengths)("%i rows have the bits of the plain equation", (rows) => {
    // wider than the range, on purpose: below -24 g kg-1 there is no number
    const SA = column(rows, -30, 120, 1);
    const CT = column(rows, -10, 90, 2);
    const p = column(rows, -50, 12_000, 3);
    const out = new Float64Array(rows);
    twin(SA, CT, p, out);
    expect(out).toEqual(SA.map((_, i) => scalar(SA[i]!, CT[i]!, p[i]!)));
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
    const [SA, CT, p] = [0, 1, 2].map((k) => Float64Array.from(all, (each) => each[k]!)) as [
      Float64Array,
      Float64Array,
      Float64Array,
    ];
    const out = new Float64Array(all.length);
    twin(SA, CT, p, out);
    expect(out).toEqual(SA.map((_, i) => scalar(SA[i]!, CT[i]!, p[i]!)));
  });

  test("a column may be its own out", () => {
    const [SA, CT, p] = [column(5000, 0, 40, 4), column(5000, 0, 30, 5), column(5000, 0, 500, 6)];
    const want = SA.map((_, i) => scalar(SA[i]!, CT[i]!, p[i]!));
    twin(SA, CT, p, SA);
    expect(SA).toEqual(want);
  });
});

test.each([densityModule, soundSpeedModule])(
  "the twins run here, so that the tests above are about them",
  (base64) => {
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
