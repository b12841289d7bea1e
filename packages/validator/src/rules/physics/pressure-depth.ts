import { depthFromPressure, depthFromPressureUnesco } from "@wherry/core";
import type { DatasetView } from "../../engine/dataset-view.ts";
import { defineRule } from "../../engine/rule.ts";
import { onto } from "../../physics/onto.ts";
import { only, type Quantity, quantity, variablesOf } from "../../physics/quantity.ts";
import { claimsOf, latitudeOn } from "../../physics/water.ts";
import { houseClause, PHYSICS, rounded } from "./house.ts";

/** UNESCO 44: 10 000 dbar at 30 degrees north are 9712.653 m (check value). */
const example = (depth: string, pressure = "1000, 5000, 10000", more = "") => `dimensions: n = 3 ; variables:
  double y(n) ; y:standard_name = "latitude" ; y:units = "degrees_north" ;
  double p(n) ; p:standard_name = "sea_water_pressure_due_to_sea_water" ; p:units = "dbar" ; p:coordinates = "y z" ;
  double z(n) ; z:standard_name = "depth" ; z:units = "m" ; z:positive = "down" ; ${more}
  data: y = 30, 30, 30 ; p = ${pressure} ; z = ${depth} ;`;

const METHODS = [
  ["the UNESCO equation of 1983", /UNESCO|Fofonoff|Saunders/i, depthFromPressureUnesco],
  ["TEOS-10 for the standard ocean", /TEOS|GSW|standard ocean/i, depthFromPressure],
] as const;
const BY_DENSITY = /densit/i;

/** Metres of depth for a decibar, from the densest to the lightest water, gravity from pole to equator included. */
const LEAST = 0.965;
const MOST = 1.03;

/** How many of each unit make a decibar, with the words for it. */
const SLIPS = [
  [10, "kPa"],
  [0.1, "bar, or those of the depth like decimetres"],
  [0.01, "MPa, or those of the depth like centimetres"],
  [0.001, "thousands of decibars, or those of the depth like millimetres"],
  [1.450377, "psi"],
  [100, "hPa or cbar"],
  [1000, "thousandths of a decibar, or those of the depth like kilometres"],
  [10_000, "Pa"],
] as const;
const FOOT = 0.3048;

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

interface Pair {
  readonly depth: Quantity;
  readonly pressure: Quantity;
  /** Pressure, depth and latitude on the rows of the one with more dimensions. */
  readonly p: Float64Array;
  readonly z: Float64Array;
  readonly lat: Float64Array | null;
  readonly margin: Float64Array;
}

/** How far layers and sampling may move depth from the depth of the mean pressure: the distance to the next rows. */
function around(z: Float64Array, fixed: number): Float64Array {
  return z.map((value, i) => {
    const gaps = [value - (z[i - 1] ?? Number.NaN), value - (z[i + 1] ?? Number.NaN)].map(Math.abs);
    const near = Math.min(...gaps.map((gap) => (Number.isNaN(gap) ? Number.POSITIVE_INFINITY : gap)));
    return fixed + (Number.isFinite(near) ? near : 0);
  });
}

async function pairs(dataset: DatasetView): Promise<Pair[]> {
  const pressure = await only(dataset, "pressure");
  if (pressure === null || pressure.variable.standardName === "sea_water_pressure") return [];
  const found: Pair[] = [];
  for (const variable of variablesOf(dataset, "depth")) {
    const depth = await quantity(dataset, "depth", variable);
    if (depth === null || variable.text("positive") === "up") continue;
    // a nominal depth stands for many pressures: it says nothing of each
    if (
      variable.dimensions.length === 0 ||
      variable.dimensions.at(-1) !== pressure.variable.dimensions.at(-1)
    )
      continue;
    const wide =
      variable.dimensions.length > pressure.variable.dimensions.length ? variable : pressure.variable;
    const z = await onto(dataset, depth, wide);
    const p = await onto(dataset, pressure, wide);
    if (z === null || p === null) continue;
    const lat = await latitudeOn(dataset, wide);
    const layered = variable.has("bounds") || /mean/.test(pressure.variable.text("cell_methods") ?? "");
    const exact = depth.halfStep + pressure.halfStep * MOST + 0.05;
    const fixed = layered ? around(z, exact) : z.map(() => exact);
    found.push({ depth, pressure, p, z, lat, margin: fixed });
  }
  return found;
}

/** Rows whose depth is out of all proportion to the pressure; of how many below a metre; the usual proportion. */
function disproportion({ p, z, margin }: Pair): { rows: number[]; of: number; factor: number } {
  const rows: number[] = [];
  let of = 0;
  // near the surface a small offset changes the proportion; whichever is in another unit, one is a metre or more
  const isBelow = (i: number) => Math.max(Math.abs(z[i]!), Math.abs(p[i]!)) >= 1;
  for (let i = 0; i < p.length; i += 1) {
    const [pressure, depth] = [p[i]!, z[i]!];
    if (Number.isNaN(pressure + depth)) continue;
    const low = pressure * (pressure < 0 ? MOST : LEAST);
    const high = pressure * (pressure < 0 ? LEAST : MOST);
    // the surface that depth is reckoned from may lie some decimetres off where the pressure is zero
    const slack = margin[i]! + 0.5;
    if (depth < low - slack || depth > high + slack) rows.push(i);
    if (isBelow(i)) of += 1;
  }
  const deep = rows.length * 2 > of ? rows.filter(isBelow) : [];
  return { rows, of, factor: median(deep.map((i) => p[i]! / z[i]!)) };
}

export const pressureDepth = defineRule({
  ...PHYSICS,
  id: "physics/pressure-depth",
  level: "error",
  citation: houseClause("pressure and depth"),
  title: "Pressure and depth speak of the same place",
  why: "A decibar is about a metre of water. Where they disagree, one is in another unit, was zeroed elsewhere, or belongs to other rows.",
  remedy: "Find out which of the two is right; correct the values or the unit of the other.",
  messages: {
    unit: "pressure is about {factor} times what the depth {other} asks for: the values of {variable} look like {unit}",
    feet: "depth is about {factor} times what the pressure asks for: the values of {variable} look like feet",
    differs: "{variable} is {found} where pressure {pressure} dbar gives about {expected}",
    equation:
      "{variable} differs from what {equation} gives from pressure, by up to {by}: {found} where {expected} comes out",
  },
  passing: [
    example("992, 4910, 9712.653"),
    example("992, 4910, 9712.653", "1000, 5000, 10000", `p:cell_methods = "z: mean" ;`),
    example("10, 10, 10", "5, 6, 7").replace("double z(n)", "double z").replace("z = 10, 10, 10", "z = 10"),
  ],
  failing: [
    { cdl: example("99, 495, 990", "1000, 5000, 10000"), where: { variable: "p" }, message: "unit" },
    { cdl: example("3254, 16109, 31865"), where: { variable: "z" }, message: "feet" },
    { cdl: example("992, 4910, 8000"), where: { variable: "z" }, message: "differs" },
    {
      cdl: example("9712.653, 9712.653, 9720.5", "10000, 10000, 10000", `z:references = "UNESCO 44" ;`),
      where: { variable: "z" },
      message: "equation",
    },
  ],
  async check(dataset, report) {
    for (const pair of await pairs(dataset)) {
      const { depth, pressure, p, z, lat, margin } = pair;
      const { rows, of, factor } = disproportion(pair);
      const [first] = rows;
      const most = rows.length * 2 > of;
      const slip = SLIPS.find(([size]) => Math.abs(factor / size - 1) < 0.04);
      if (most && slip !== undefined)
        report({ variable: pressure.variable.name }, "unit", {
          fill: { factor: rounded(factor), unit: slip[1], other: depth.variable.name },
          count: rows.length,
          places: rows,
        });
      else if (most && Math.abs(factor / FOOT - 1) < 0.04)
        report({ variable: depth.variable.name }, "feet", {
          fill: { factor: rounded(1 / factor) },
          places: rows,
        });
      else if (first !== undefined)
        report({ variable: depth.variable.name }, "differs", {
          found: rounded(z[first]!),
          expected: rounded(depthFromPressure(p[first]!, lat?.[first] || 45)),
          places: rows,
          fill: { pressure: rounded(p[first]!) },
        });
      else {
        const claims = claimsOf(depth.variable);
        const [method, other] = METHODS.filter(([, pattern]) => pattern.test(claims));
        if (method === undefined || other !== undefined || BY_DENSITY.test(claims) || lat === null) continue;
        const [equation, , compute] = method;
        const off = Array.from(z.keys()).filter(
          (i) => Math.abs(z[i]! - compute(p[i]!, lat[i]!)) > margin[i]! + 2e-4 * Math.abs(z[i]!),
        );
        const [worst] = off;
        if (worst !== undefined)
          report({ variable: depth.variable.name }, "equation", {
            found: rounded(z[worst]!),
            expected: rounded(compute(p[worst]!, lat[worst]!)),
            places: off,
            fill: { equation, by: rounded(Math.abs(z[worst]! - compute(p[worst]!, lat[worst]!))) },
          });
      }
    }
  },
});
