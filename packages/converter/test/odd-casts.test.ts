import { type Cast, deepestOf, layerMeans, presets, pressureQuestion, styleOf } from "@wherry/core";
import { castOf, inventCast, type KitCast } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { processCast } from "../src/recipe/process-cast.ts";
import { defaultSettings, type RecipeSettings } from "../src/recipe/settings.ts";

const numbers = (...values: number[]) => Float64Array.from(values);
const rowsOf = (cast: Cast, kind: string) =>
  cast.segments
    .filter((segment) => segment.kind === kind)
    .reduce((sum, { firstRow, lastRow }) => sum + lastRow - firstRow + 1, 0);
const kinds = (cast: Cast) => cast.segments.map(({ kind }) => kind);
const words = (cast: Cast, step: string) =>
  cast.steps
    .filter((each) => each.step === step)
    .map((each) => each.words)
    .join("; ");

/** Rows from, to (not included) of a cast: a record cut off, or begun late. */
function part(cast: KitCast, from: number, to: number): KitCast {
  const columns = Object.fromEntries(
    [...cast.columns].map(([name, column]) => [name, column.values.slice(from, to)]),
  );
  const elapsed = cast.elapsed!.slice(from, to).map((time) => time - cast.elapsed![from]!);
  return castOf(columns, elapsed);
}

function withPressure(cast: KitCast, change: (p: number, k: number) => number): KitCast {
  const values = (name: string) => cast.columns.get(name)!.values;
  return castOf(
    {
      pressure: values("pressure").map(change),
      temperature: values("temperature"),
      conductivity: values("conductivity"),
    },
    cast.elapsed,
  );
}

const process = (cast: Cast, settings: RecipeSettings = defaultSettings) => {
  const processed = processCast(cast, settings);
  // whatever came in: segments cover the rows, flags are 9 exactly where a value is missing, layers can be made
  let next = 0;
  for (const { firstRow, lastRow } of processed.segments) {
    expect(firstRow).toBe(next);
    next = lastRow + 1;
  }
  expect(next).toBe(cast.rows);
  for (const { flags, values } of processed.columns.values())
    for (let k = 0; k < cast.rows; k++) expect(flags[k] === 9).toBe(Number.isNaN(values[k]!));
  for (const direction of ["down", "up"] as const)
    for (const coordinate of ["depth", "pressure"] as const)
      layerMeans(processed, { width: null, coordinate, direction });
  return processed;
};

describe("records that are no ordinary cast", () => {
  test("no rows", () => {
    const none = numbers();
    const cast = process(castOf({ pressure: none, temperature: none, conductivity: none }, none));
    expect(cast.segments).toEqual([]);
    expect(words(cast, "segmentation")).toContain("no rows");
  });

  test("no columns at all", () => {
    const cast = process(castOf({}, numbers()));
    expect(cast.columns.size).toBe(0);
  });

  test.each([1, 2])("%i row", (rows) => {
    const cast = process(
      castOf(
        {
          pressure: new Float64Array(rows).fill(3),
          temperature: new Float64Array(rows).fill(10),
          conductivity: new Float64Array(rows).fill(30),
        },
        Float64Array.from({ length: rows }, (_, k) => k),
      ),
    );
    expect(kinds(cast)).toEqual(["other"]);
    expect(cast.columns.get("salinity")!.values[0]).toBeGreaterThan(20);
    expect(cast.columns.get("salinity")!.flags[0]).toBe(2);
  });

  test("pressure missing throughout", () => {
    const cast = process(withPressure(inventCast().cast, () => Number.NaN));
    expect(kinds(cast)).toEqual(["other"]);
    expect(words(cast, "segmentation")).toContain("no pressure was recorded");
    expect(cast.columns.get("depth")!.flags.every((flag) => flag === 9)).toBe(true);
    expect(cast.columns.get("temperature")!.flags.every((flag) => flag === 2)).toBe(true);
  });

  test("pressure missing in some rows: depth is interpolated in time and questionable", () => {
    const { cast: whole, downFrom } = inventCast();
    const gap = [downFrom + 40, downFrom + 41, downFrom + 42];
    const cast = process(withPressure(whole, (p, k) => (gap.includes(k) ? Number.NaN : p)));
    const depth = cast.columns.get("depth")!;
    const reference = process(whole).columns.get("depth")!;
    for (const k of gap) {
      expect(cast.columns.get("pressure")!.flags[k]).toBe(9);
      expect(cast.columns.get("salinity")!.flags[k]).toBe(9);
      expect(depth.flags[k]).toBe(3);
      // the lowering is even there: 0.6 dbar/s, noise 0.008 dbar
      expect(Math.abs(depth.values[k]! - reference.values[k]!)).toBeLessThan(0.05);
    }
    expect(depth.flags[gap[0]! - 1]).toBe(1);
  });

  test("pressure standing still is no cast", () => {
    const cast = process(withPressure(inventCast().cast, () => 2.5));
    expect(rowsOf(cast, "down")).toBe(0);
    expect(words(cast, "segmentation")).toContain("pressure hardly changes");
  });

  test("no rows in air: the offset is not determined and nothing is subtracted", () => {
    const made = inventCast({ air: 0, soak: 30, offset: 0.05 });
    const cast = process(made.cast);
    expect(cast.pressureOffset).toBeNaN();
    expect(words(cast, "atmospheric offset")).toContain("not determined");
    expect(cast.columns.get("pressure")!.values).toEqual(made.cast.columns.get("pressure")!.values);
    expect(styleOf(cast)).toBe("unknown");
    expect(rowsOf(cast, "down")).toBeGreaterThan(100);
  });

  test("upcast only: no downcast is made up", () => {
    const made = inventCast();
    const cast = process(part(made.cast, made.upFrom - 8, made.cast.rows));
    expect(rowsOf(cast, "down")).toBe(0);
    expect(rowsOf(cast, "up")).toBeGreaterThan(100);
    expect(words(cast, "segmentation")).toContain("no downcast in the record");
    const layers = layerMeans(cast, { width: 1, coordinate: "pressure", direction: "up" });
    expect(layers.centres[0]).toBe(1);
    expect(layers.columns.get("salinity")!.flags[0]).toBe(1);
  });

  test("battery dead on the way down: the rows so far are a downcast", () => {
    const made = inventCast();
    const dead = made.downFrom + 80;
    const cast = process(part(made.cast, 0, dead));
    expect(rowsOf(cast, "up")).toBe(0);
    const down = cast.segments.find(({ kind }) => kind === "down")!;
    expect(down.firstRow).toBeLessThanOrEqual(made.downFrom + 2);
    expect(down.lastRow).toBeGreaterThan(dead - 5);
    expect(words(cast, "segmentation")).toContain("no upcast in the record");
  });

  test("record begun on the way down: style unknown, nothing flagged as unsettled", () => {
    const made = inventCast();
    const cast = process(part(made.cast, made.downFrom + 60, made.cast.rows));
    expect(styleOf(cast)).toBe("unknown");
    expect(cast.segments[0]!.kind).toBe("down");
    expect(cast.columns.get("temperature")!.tests.has("unsettled")).toBe(false);
  });

  test("an ordinary cast at a buoy in 5.5 m of water has both directions and half-metre layers", () => {
    const made = inventCast({ deepest: 5.5, speed: 0.5, soak: 25, soakPressure: 0.8 });
    const cast = process(made.cast);
    expect(styleOf(cast)).toBe("soaked");
    expect(Math.abs(deepestOf(cast)!.pressure - 5.5)).toBeLessThan(0.1);
    const layers = layerMeans(cast, { width: 0.5, coordinate: "depth", direction: "down" });
    expect(layers.centres.length).toBeGreaterThanOrEqual(10);
    const salinity = layers.columns.get("salinity")!;
    expect([...salinity.count].every((count) => count > 0)).toBe(true);
    expect(rowsOf(cast, "up")).toBeGreaterThan(20);
  });

  test("an even cast without waves loses few rows to the reversal rules", () => {
    const cast = process(inventCast().cast);
    const flags = cast.columns.get("pressure")!.tests.get("pressure_increasing")!;
    expect(flags.filter((flag) => flag === 3).length).toBeLessThan(rowsOf(cast, "down") / 20);
  });
});

describe("atmospheric offset", () => {
  test("a reading of the weight of the air is a question, never a guess", () => {
    const made = inventCast({ offset: 10.1 });
    expect(pressureQuestion(made.cast)?.code).toBe("cast/absolute-pressure");
    const cast = process(made.cast);
    expect(cast.pressureOffset).toBeNaN();
    expect(words(cast, "atmospheric offset")).toContain("needs an answer");
    expect(cast.columns.get("pressure")!.values).toEqual(made.cast.columns.get("pressure")!.values);
  });

  test("once answered, the reading in air is subtracted", () => {
    const atmosphericOffset = { ...defaultSettings.atmosphericOffset, reference: "absolute" } as const;
    const made = inventCast({ offset: 10.1 });
    expect(pressureQuestion(made.cast, atmosphericOffset)).toBeNull();
    const cast = process(made.cast, { ...defaultSettings, atmosphericOffset });
    expect(Math.abs(cast.pressureOffset - 10.1)).toBeLessThan(0.01);
    expect(cast.columns.get("pressure")!.standardName).toBe("sea_water_pressure_due_to_sea_water");
    expect(Math.abs(deepestOf(cast)!.pressure - 20)).toBeLessThan(0.1);
  });

  const reads = (kind: "answered" | "assumed", standardName: string) => {
    const { cast } = inventCast({ offset: 10.1 });
    const pressure = { ...cast.columns.get("pressure")!, standardName };
    return {
      ...cast,
      columns: new Map(cast.columns).set("pressure", pressure),
      evidence: [{ fact: "pressureKind", certainty: kind, because: "answered", where: {} }],
    };
  };

  test("a column that says absolute is believed where it never reads less than air weighs", () => {
    const cast = reads("assumed", "sea_water_pressure");
    expect(pressureQuestion(cast)).toBeNull();
    expect(Math.abs(process(cast).pressureOffset - 10.1)).toBeLessThan(0.01);
  });

  test("an answer that it is sea pressure is obeyed", () => {
    const cast = reads("answered", "sea_water_pressure_due_to_sea_water");
    expect(pressureQuestion(cast)).toBeNull();
    expect(Math.abs(process(cast).pressureOffset - 10.1)).toBeLessThan(0.01);
  });

  test("a reading in between is another question", () =>
    expect(pressureQuestion(inventCast({ offset: 3 }).cast)?.code).toBe("cast/pressure-in-air"));

  test("a record that never comes near the surface is a question unless the source tells", () => {
    const made = inventCast({ air: 0, offset: 0 });
    const deep = part(made.cast, made.downFrom + 100, made.upFrom);
    expect(pressureQuestion(deep)?.code).toBe("cast/pressure-reference");
    expect(pressureQuestion({ ...deep, state: { ...deep.state, pressureZeroed: true } })).toBeNull();
  });

  test("a zero error is no question", () => expect(pressureQuestion(inventCast().cast)).toBeNull());

  test("data that came zeroed keep their pressure", () => {
    const made = inventCast({ offset: 0.3 });
    const cast = process({ ...made.cast, state: { ...made.cast.state, pressureZeroed: true } });
    expect(cast.columns.get("pressure")!.values).toEqual(made.cast.columns.get("pressure")!.values);
    expect(cast.pressureOffset).toBe(0);
  });

  test("an offset borrowed by name is recorded with its origin", () => {
    const given = { value: 0.21, from: "median of 4 casts of the day, spread 0.01" };
    const cast = process(inventCast({ air: 0 }).cast, {
      ...defaultSettings,
      atmosphericOffset: { ...defaultSettings.atmosphericOffset, given },
    });
    expect(cast.pressureOffset).toBe(0.21);
    expect(words(cast, "atmospheric offset")).toContain("median of 4 casts");
  });

  test("a drift of the reading in air is said", () => {
    const made = inventCast();
    const drifting = withPressure(made.cast, (p, k) => p + (0.4 * k) / made.cast.rows);
    expect(words(process(drifting), "atmospheric offset")).toContain("the reading in air changed by");
  });
});

describe("levels without times", () => {
  const levels = {
    pressure: numbers(2, 4, 6, 8, 10, 12, 14),
    temperature: numbers(15, 14.8, 14.1, 12, 10.5, 10.2, 10.1),
    conductivity: numbers(38, 38, 37.6, 36, 35, 34.8, 34.8),
  };
  const averaged = castOf(levels, null, {
    state: { processing: "averaged", pressureZeroed: true, lagCorrected: true, direction: "down" },
  });

  test("count as one downcast, with every skipped step in the record", () => {
    const cast = process(averaged);
    expect(kinds(cast)).toEqual(["down"]);
    const left = cast.steps.filter(({ parameters }) => parameters.skipped === true).map(({ step }) => step);
    expect(left).toEqual([
      "atmospheric offset",
      "segmentation",
      "despiking",
      "response matching",
      "pressure reversals",
    ]);
    expect([...cast.columns.get("temperature")!.flags]).toEqual([2, 1, 1, 1, 1, 1, 2]);
  });

  test("keep their own levels", () => {
    const layers = layerMeans(process(averaged), { width: null, coordinate: "pressure", direction: "down" });
    expect(layers.ownLevels).toBe(true);
    expect([...layers.centres]).toEqual([...levels.pressure]);
    expect([...layers.columns.get("temperature")!.mean]).toEqual([...levels.temperature]);
  });

  test("listed from the bottom up they are one upcast", () => {
    const turned = Object.fromEntries(
      Object.entries(levels).map(([name, values]) => [name, values.slice().reverse()]),
    );
    expect(kinds(process(castOf(turned, null, { state: averaged.state })))).toEqual(["up"]);
  });

  test("that go down and come up again are cut at the deepest, and the record says that nothing else is known", () => {
    const { cast: timed } = inventCast({ air: 0 });
    const columns = Object.fromEntries([...timed.columns].map(([name, { values }]) => [name, values]));
    const state = { ...averaged.state, processing: "unknown", direction: "both" } as const;
    const cast = process(castOf(columns, null, { state }));
    expect(kinds(cast)).toEqual(["down", "up"]);
    expect(words(cast, "segmentation")).toContain("soak and bottom cannot be told");
  });

  test("are processed once only", () =>
    expect(() => processCast(processCast(averaged, defaultSettings), defaultSettings)).toThrow(RangeError));
});

describe("an inversion between layers", () => {
  const { cast: stable } = inventCast();
  const values = (name: string) => stable.columns.get(name)!.values;
  const pressure = values("pressure");
  // three metres of water about a unit fresher, hence lighter, than the water above
  const upset = castOf(
    {
      pressure,
      temperature: values("temperature"),
      conductivity: values("conductivity").map((C, k) =>
        pressure[k]! > 14 && pressure[k]! < 17 ? C - 1.5 : C,
      ),
    },
    stable.elapsed,
  );
  const cast = process(upset);
  const layers = layerMeans(cast, { width: 1, coordinate: "pressure", direction: "down" });

  test("makes salinity and what is computed from it questionable in the layers on both sides", () => {
    for (const name of ["salinity", "density", "sound_speed"]) {
      const layer = (centre: number) => layers.columns.get(name)!.flags[layers.centres.indexOf(centre)];
      expect([13, 14].map(layer), name).toContain(3);
      expect(layer(5), name).toBe(1);
      expect(layer(18), name).toBe(1);
    }
    expect(layers.columns.get("temperature")!.flags.every((flag) => flag === 1)).toBe(true);
  });

  test("empties no layer", () => {
    const salinity = layers.columns.get("salinity")!;
    expect([...salinity.count].every((count) => count > 0)).toBe(true);
  });
});

describe("presets", () => {
  test.each(["shelf", "estuary", "fresh", "ocean"] as const)(
    "%s runs every test that it requires",
    (preset) => {
      const cast = process(inventCast().cast, { ...defaultSettings, preset });
      const { firstRow } = cast.segments.find(({ kind }) => kind === "down")!;
      const quantities = ["temperature", "conductivity", "salinity", "pressure"] as const;
      for (const name of quantities)
        for (const test of presets[preset].required[name])
          expect(cast.columns.get(name)!.tests.has(test), `${name}: ${test}`).toBe(true);
      // salinity is about 10 here, which a lake never has
      const expected = preset === "fresh" ? 3 : 1;
      expect(cast.columns.get("salinity")!.flags[firstRow + 20]).toBe(expected);
      expect(cast.columns.get("temperature")!.flags[firstRow + 20]).toBe(1);
      const { parameters } = cast.steps.findLast(({ step }) => step === "quality tests")!;
      expect(parameters.preset).toBe(preset);
      expect(parameters["gross_range.temperature.expectedRange.status"]).toBeTypeOf("string");
    },
  );
});

describe("received columns", () => {
  const made = inventCast().cast;
  const values = (name: string) => made.columns.get(name)!.values;
  const flat = (value: number) => new Float64Array(made.rows).fill(value);

  test("are kept under another name where ours is computed", () => {
    const columns = Object.fromEntries([...made.columns].map(([name, column]) => [name, column.values]));
    const cast = process(castOf({ ...columns, salinity: flat(20), depth: flat(1) }, made.elapsed));
    expect(cast.columns.get("salinity_received")!.values[10]).toBe(20);
    expect(cast.columns.get("salinity_received")!.source).not.toBeNull();
    expect(cast.columns.get("salinity")!.method).not.toBeNull();
    expect(cast.columns.get("depth_received")!.values[10]).toBe(1);
    expect(cast.columns.has("density_received")).toBe(false);
  });

  test("a salinity without conductivity stays the measured one", () => {
    const cast = process(
      castOf(
        { pressure: values("pressure"), temperature: values("temperature"), salinity: flat(20) },
        made.elapsed,
      ),
    );
    expect(cast.columns.get("salinity")!.method).toBeNull();
    expect(cast.columns.has("conductivity")).toBe(false);
    expect(cast.columns.get("density")!.values[10]).toBeGreaterThan(1000);
  });

  test("a raw cast with depth in place of pressure is cut and judged like any other", () => {
    const depth = values("pressure").map((p) => 0.992 * p);
    const cast = process(
      castOf(
        { depth, temperature: values("temperature"), conductivity: values("conductivity") },
        made.elapsed,
      ),
    );
    expect(kinds(cast)).toEqual(["air", "soak", "down", "bottom", "up", "air"]);
    const { firstRow } = cast.segments.find(({ kind }) => kind === "down")!;
    expect(cast.columns.get("salinity")!.flags[firstRow + 30]).toBe(1);
    expect(cast.columns.get("depth")!.flags[firstRow + 30]).toBe(1);
    expect(cast.columns.get("depth")!.values).toBe(depth);
    expect(cast.columns.has("depth_received")).toBe(false);
  });

  test("depth without pressure gives a computed pressure and stays", () => {
    const depth = numbers(1, 2, 3, 4, 5);
    const cast = process(
      castOf({ depth, temperature: numbers(9, 9, 8, 8, 8), salinity: numbers(30, 31, 31, 32, 32) }, null),
    );
    expect(cast.columns.get("depth")!.values).toBe(depth);
    // UNESCO 44: about 1 % more metres than decibars are lost near the surface
    expect(Math.abs(cast.columns.get("pressure")!.values[4]! - 5.04)).toBeLessThan(0.02);
  });
});

describe("density, sound speed and depth say how they came about", () => {
  const equation = (cast: Cast, name: string) => cast.columns.get(name)!.method!.equation;

  test("brackish water: depth by the measured density, deeper than the standard ocean", () => {
    const cast = process(inventCast({ deepest: 30 }).cast);
    expect(equation(cast, "depth")).toContain("density measured in the downcast");
    const standard = process(inventCast({ deepest: 30 }).cast, {
      ...defaultSettings,
      depth: { method: "standard ocean" },
    });
    const { row } = deepestOf(cast)!;
    const gain = cast.columns.get("depth")!.values[row]! / standard.columns.get("depth")!.values[row]!;
    // fresh water at 15 degrees is 2.9 % deeper than the standard ocean at 30 dbar, salinity 15 1.7 % (own reference)
    expect(gain).toBeGreaterThan(1.01);
    expect(gain).toBeLessThan(1.029);
  });

  test("without a position: Reference Salinity and the gravity of latitude 45, said in words", () => {
    const cast = process({ ...inventCast().cast, start: null });
    expect(equation(cast, "density")).toContain("Reference Salinity (position not known)");
    expect(equation(cast, "depth")).toContain("position not known");
  });
});

describe("a series at one depth", () => {
  const rows = 240;
  const elapsed = Float64Array.from({ length: rows }, (_, k) => 10 * k);
  const depthAt = (k: number) => (k < 6 || k >= rows - 6 ? 0 : 2 + 0.3 * Math.sin(k / 60));
  const series = (change: (T: number, k: number) => number = (T) => T) =>
    castOf(
      {
        pressure: Float64Array.from(elapsed, (_, k) => 0.04 + depthAt(k) + 0.005 * Math.sin(7 * k)),
        temperature: Float64Array.from(elapsed, (_, k) =>
          change(12 + 0.2 * Math.sin(k / 40) + 0.004 * Math.sin(11 * k), k),
        ),
        conductivity: Float64Array.from(elapsed, (_, k) =>
          depthAt(k) === 0 ? 0.001 : 30 + 0.5 * Math.sin(k / 40) + 0.01 * Math.sin(13 * k),
        ),
      },
      elapsed,
      { kind: "fixed-depth", fixedDepth: { depth: 2, reference: "water surface" } },
    );

  test("has air, lowering and the stay; the stay is judged along time", () => {
    const cast = process(series());
    expect(kinds(cast)[0]).toBe("air");
    expect(kinds(cast)).toContain("stay");
    expect(rowsOf(cast, "stay")).toBeGreaterThan(220);
    const T = cast.columns.get("temperature")!;
    expect([...T.tests.keys()]).toEqual(
      expect.arrayContaining(["gross_range", "spike_return", "flat_line", "rate_of_change"]),
    );
    expect(T.flags[100]).toBe(1);
    expect(cast.columns.get("depth")!.method!.equation).toContain("mean density measured at the sensor");
  });

  test("without a pressure takes that of its stated depth, and nothing computed from it is good", () => {
    const { cast: full } = { cast: series() };
    const columns = {
      temperature: full.columns.get("temperature")!.values,
      conductivity: full.columns.get("conductivity")!.values,
    };
    const bare = castOf(columns, elapsed, {
      kind: "fixed-depth",
      fixedDepth: { depth: 2, reference: "sea surface" },
    });
    const cast = process(bare);
    expect(Math.abs(cast.columns.get("pressure")!.values[50]! - 2.015)).toBeLessThan(0.01);
    expect(cast.columns.get("salinity")!.values[50]).toBeGreaterThan(20);
    expect(cast.columns.get("salinity")!.flags[50]).toBe(2);
    const datum = process({ ...bare, fixedDepth: { depth: 2, reference: "chart datum" } });
    expect(datum.columns.has("pressure")).toBe(false);
    expect(datum.columns.has("salinity")).toBe(false);
  });

  test("values that stand still for 12 rows are questionable from there on", () => {
    const cast = process(series((T, k) => (k >= 100 && k < 130 ? 12.1234 : T)));
    const flags = cast.columns.get("temperature")!.tests.get("flat_line")!;
    expect(flags[111]).toBe(1);
    expect(flags[112]).toBe(3);
    expect(flags[129]).toBe(3);
    expect(flags[131]).toBe(1);
  });
});
