import { sigma0 } from "@wherry/core";
import { describe, expect, test } from "vitest";
import { castOf, column } from "../test/known-casts.ts";
import { castPicture } from "./cast-picture.ts";
import { brokenAxisAt } from "./depth-axis.ts";
import { overlayPicture } from "./overlay-picture.ts";
import { sectionPicture } from "./section-picture.ts";
import { seriesPicture } from "./series-picture.ts";
import { temperatureSalinityPicture } from "./temperature-salinity-picture.ts";

const options = { scope: "s", title: "T", description: "D" };
const count = (svg: string, pattern: RegExp) => [...svg.matchAll(pattern)].length;

/** Pixels of the printed numbers of an axis, from which any pixel can be turned into a value. */
function axisOf(svg: string, along: "x" | "y"): (pixel: number) => number {
  const printed = [
    ...svg.matchAll(/<text x="([\d.]+)" y="([\d.]+)" text-anchor="(middle|end)" class="tick">(-?[\d.]+)</g),
  ]
    .filter(([, x, , anchor]) => (along === "x" ? anchor === "middle" : anchor === "end" && x === "53"))
    .map(([, x, y, , value]) => [along === "x" ? Number(x) : Number(y) - 4.2, Number(value)] as const);
  const [a, b] = [printed[0]!, printed.at(-1)!];
  return (pixel) => a[1] + ((pixel - a[0]) / (b[0] - a[0])) * (b[1] - a[1]);
}

describe("temperature against salinity", () => {
  const svg = temperatureSalinityPicture(
    [
      { label: "a", SA: Float64Array.of(5, 20, 33, Number.NaN), CT: Float64Array.of(17, 13, 8, 8) },
      { label: "b", SA: Float64Array.of(34, 35), CT: Float64Array.of(9, 7) },
    ],
    options,
  );

  test("every point of a density line has the density that is printed on it", () => {
    const [toSA, toCT] = [axisOf(svg, "x"), axisOf(svg, "y")];
    const lines = [...svg.matchAll(/class="density" d="([^"]+)"[^>]*\/>\s*<text[^>]*>(-?[\d.]+)</g)];
    expect(lines.length).toBeGreaterThan(4);
    for (const [, d, level] of lines)
      for (const [, x, y] of d!.matchAll(/(-?[\d.]+),(-?[\d.]+)/g)) {
        // a twentieth of a pixel of rounding, at 0.8 kg m-3 for a g/kg
        const within = 0.1 * Math.abs(toSA(1) - toSA(0)) * 0.9;
        expect(Math.abs(sigma0(toSA(Number(x)), toCT(Number(y))) - Number(level))).toBeLessThan(
          within + 0.02,
        );
      }
  });

  test("looks as it did", () => expect(svg).toMatchFileSnapshot("../test/pictures/temperature-salinity.svg"));

  test("a dot for each layer that has both, and a name for each cast", () => {
    expect(count(svg, /h0\.1/g)).toBe(5);
    for (const label of ["a", "b"]) expect(svg).toContain(`>${label}</text>`);
  });

  test("the freezing line is drawn where water is that cold", () => {
    expect(svg).not.toContain('class="freezing"');
    const cold = { label: "c", SA: Float64Array.of(33, 34), CT: Float64Array.of(-1.7, 0) };
    expect(temperatureSalinityPicture([cold], options)).toContain('class="freezing"');
  });

  test("nothing to draw", () => {
    const none = temperatureSalinityPicture(
      [{ label: "n", SA: new Float64Array(), CT: new Float64Array() }],
      options,
    );
    expect(none).not.toMatch(/NaN|Infinity|undefined/);
  });
});

describe("profiles over each other", () => {
  const levels = (label: string, ...values: number[]) => ({
    label,
    place: Float64Array.from(values, (_, k) => k + 0.5),
    values: new Map([["temperature", Float64Array.from(values)]]),
  });
  const panels = [{ quantity: "temperature", title: "Temperature / °C" }];

  test("a line for each cast, broken where a layer is missing", () => {
    const svg = overlayPicture([levels("a", 10, 9, 8), levels("b", 11, Number.NaN, 9)], {
      ...options,
      ...{ placeTitle: "Depth / m", panels },
    });
    const lines = [...svg.matchAll(/<path d="(M[^"]+)" fill="none" stroke="rgb/g)].map(([, d]) => d!);
    expect(lines.map((d) => count(d, /M/g))).toEqual([1, 2]);
    expect(svg).toContain(">Temperature / °C</text>");
  });

  test("the axis is compressed only where a few casts are much deeper than most", () => {
    expect(brokenAxisAt([5, 6, 7, 8, 9, 10])).toBeNull();
    expect(brokenAxisAt([5, 6, 7, 8, 9, 110])).toBe(10);
    expect(brokenAxisAt([])).toBeNull();
  });
});

test("a section: tones are what was measured, blocks of one tone are one", async () => {
  const station = (label: string, distance: number, ...values: number[]) => ({
    ...{ label, distance },
    place: Float64Array.from(values, (_, k) => k + 0.5),
    values: Float64Array.from(values),
  });
  const svg = sectionPicture(
    [station("a", 0, 1, 1, 1, 1), station("b", 5, 1, 2, 3), station("c", 9, 1, Number.NaN, 5)],
    { ...options, ...{ quantityTitle: "Q", placeTitle: "Depth / m", distanceTitle: "Distance / km" } },
  );
  await expect(svg).toMatchFileSnapshot("../test/pictures/section.svg");
  const blocks = (label: string) =>
    count(svg.slice(svg.indexOf(`data-cast="${label}"`)).split("</g>")[0]!, /<rect /g);
  expect(["a", "b", "c"].map(blocks)).toEqual([1, 3, 2]);
  expect(count(svg, /class="isoline"/g)).toBeGreaterThan(3);
  expect(svg).not.toMatch(/NaN|Infinity|undefined/);
});

describe("a series", () => {
  const rows = 3000;
  const elapsed = Float64Array.from({ length: rows }, (_, k) => 10 * k);
  const temperature = column(
    "temperature",
    "degree_C",
    Float64Array.from(elapsed, (_, k) => (k === 1234 ? 19 : 15)),
    [1234],
  );
  const pressure = column(
    "pressure",
    "dbar",
    Float64Array.from(elapsed, (_, k) => 2 + (k === 2000 ? 0.5 : 0)),
  );
  const cast = castOf("P1", [temperature, pressure], {
    ...{ kind: "fixed-depth", elapsed },
    segments: [
      { kind: "air", firstRow: 0, lastRow: 9 },
      { kind: "stay", firstRow: 10, lastRow: rows - 1 },
    ],
  });
  const svg = seriesPicture(cast, { ...options, columns: [temperature, pressure] });

  test("time is UTC with its date, pressure grows downward, a bad value has its cross", () => {
    expect(svg).toContain(">2023-06-14, UTC</text>");
    expect(svg).toContain(">12:00</text>");
    expect(count(svg, /class="bad"/g)).toBe(1);
    const panel = svg.slice(svg.indexOf('data-quantity="pressure"'));
    const ticks = [...panel.matchAll(/y="([\d.]+)" text-anchor="end" class="tick">([\d.]+)</g)].map(
      ([, y, value]) => [Number(y), Number(value)],
    );
    expect(ticks.length).toBeGreaterThan(1);
    expect(Math.sign(ticks[1]![0]! - ticks[0]![0]!)).toBe(Math.sign(ticks[1]![1]! - ticks[0]![1]!));
  });

  test("looks as it did", () => expect(svg).toMatchFileSnapshot("../test/pictures/series.svg"));

  test("one row among thousands that stands out is still drawn", () => {
    const panel = svg.slice(svg.indexOf('data-quantity="pressure"'));
    const ys = [...panel.slice(panel.indexOf('class="all"')).matchAll(/[ML]?[\d.]+,([\d.]+)/g)].map(([, y]) =>
      Number(y),
    );
    expect(Math.max(...ys) - Math.min(...ys)).toBeGreaterThan(40);
    expect(ys.length).toBeLessThan(50);
  });

  test("without times rows are counted", () => {
    expect(seriesPicture({ ...cast, elapsed: null }, { ...options, columns: [pressure] })).toContain(
      ">Row</text>",
    );
  });
});

test("a cast of a page: segments by name, rows without times said so", () => {
  const depth = column("depth", "m", [0, 1, 2, 3, 2, 1]);
  const pressure = column("pressure", "dbar", [0, 1, 2, 3, 2, 1]);
  const temperature = column("temperature", "degree_C", [15, 14, 13, 12, 13, 14]);
  const cast = castOf("c", [depth, pressure, temperature], {
    elapsed: Float64Array.of(0, 10, 20, 30, 40, 50),
    segments: [
      { kind: "down", firstRow: 0, lastRow: 2 },
      { kind: "up", firstRow: 3, lastRow: 5 },
    ],
  });
  const svg = castPicture(cast, { scope: "k", columns: [temperature], description: "D" });
  expect(svg).toContain(">down</text>");
  expect(svg).toContain(">up</text>");
  expect(svg).toContain("Sea pressure / dbar");
  expect(
    castPicture({ ...cast, elapsed: null }, { scope: "k", columns: [temperature], description: "D" }),
  ).toContain("Rows have no times.");
});

test("a fourth quantity of a cast begins a second row of the same height", () => {
  const depth = column("depth", "m", [0, 1, 2]);
  const four = ["temperature", "salinity", "oxygen", "turbidity"].map((name) => column(name, "1", [1, 2, 3]));
  const cast = castOf("c", [depth, ...four]);
  const svg = castPicture(cast, { scope: "k", columns: four, description: "D" });
  const one = castPicture(cast, { scope: "k", columns: four.slice(0, 3), description: "D" });
  const height = (of: string) => Number(/height="(\d+)"/.exec(of)![1]);
  expect(height(svg)).toBe(2 * height(one));
  expect(count(svg, /data-quantity="/g)).toBe(4);
  const ids = [...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
  expect(new Set(ids).size).toBe(ids.length);
});
