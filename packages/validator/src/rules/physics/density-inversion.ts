import { densityColumn, potentialDensity, referenceSalinityColumn } from "@wherry/core";
import { featureRuns } from "../../engine/feature-runs.ts";
import { defineRule } from "../../engine/rule.ts";
import { PIECE } from "../../physics/compare.ts";
import { onto } from "../../physics/onto.ts";
import { only } from "../../physics/quantity.ts";
import { QUICK_ERROR, quickTemperature } from "../../physics/quick-temperature.ts";
import { errorFrom } from "../../physics/tolerance.ts";
import { PHYSICS, rounded } from "./house.ts";

/** kg m-3. The smaller is the tolerance of automatic tests; the larger no overturn of water keeps up. */
const TOLD = 0.03;
const LARGE = 1;

/** Places that a finding can show. */
const PLACES = 3;

const example = (salinity: string) => `:featureType = "profile" ; dimensions: n = 4 ; variables:
  float s(n) ; s:standard_name = "sea_water_practical_salinity" ; s:units = "1" ; s:coordinates = "p" ;
  float t(n) ; t:standard_name = "sea_water_temperature" ; t:units = "degree_C" ; t:coordinates = "p" ;
  float p(n) ; p:standard_name = "sea_water_pressure_due_to_sea_water" ; p:units = "dbar" ;
  data: s = ${salinity} ; t = 10, 10, 10, 10 ; p = 1, 2, 3, 4 ;`;

/** Potential density, kg m-3, to within what QUICK_ERROR makes of it. */
function quickPotentialDensity(SP: Float64Array, t: Float64Array, p: Float64Array): Float64Array {
  const temperature = quickTemperature({ SP, t, p });
  const out = new Float64Array(SP.length);
  const surface = new Float64Array(PIECE);
  const [SA, CT] = [new Float64Array(PIECE), new Float64Array(PIECE)];
  for (let from = 0; from < SP.length; from += PIECE) {
    const rows = Math.min(PIECE, SP.length - from);
    const part = (column: Float64Array) => column.subarray(from, from + rows);
    const [a, c] = [SA.subarray(0, rows), CT.subarray(0, rows)];
    referenceSalinityColumn(part(SP), a);
    temperature(a, part(t), part(p), c);
    densityColumn(a, c, surface.subarray(0, rows), part(out));
  }
  return out;
}

/** Levels below heavier water, and the largest fall of potential density. */
function inversions(
  runs: readonly ArrayLike<number>[],
  SP: Float64Array,
  t: Float64Array,
  p: Float64Array,
): { places: number[]; count: number; by: number } {
  const quick = quickPotentialDensity(SP, t, p);
  const suspect = TOLD - 2 * errorFrom("density", "temperature", QUICK_ERROR);
  const places: number[] = [];
  let count = 0;
  let by = 0;
  for (const run of runs) {
    const found: { row: number; fall: number }[] = [];
    let above = -1;
    let goesOn = true;
    for (let k = 0; k < run.length; k += 1) {
      const row = run[k]!;
      if (Number.isNaN(SP[row]! + t[row]! + p[row]!)) continue;
      if (above >= 0) {
        // raw rows in the order of time go up and down: levels are only those that always go on
        goesOn = p[row]! > p[above]!;
        if (!goesOn) break;
        if (quick[above]! - quick[row]! > suspect) {
          const fall =
            potentialDensity(t[above]!, SP[above]!, p[above]!) - potentialDensity(t[row]!, SP[row]!, p[row]!);
          if (fall > TOLD) found.push({ row, fall });
        }
      }
      above = row;
    }
    if (!goesOn) continue;
    for (const { row, fall } of found) {
      count += 1;
      if (places.length < PLACES) places.push(row);
      by = Math.max(by, fall);
    }
  }
  return { places, count, by };
}

export const densityInversion = defineRule({
  ...PHYSICS,
  id: "physics/density-inversion",
  level: "warning",
  citation: {
    document: "Manual for Real-Time Quality Control of In-situ Temperature and Salinity Data",
    edition: "QARTOD",
    clause: "test 13",
  },
  title: "Heavier water does not rest on lighter water",
  why: "Water that is lighter than what lies above it rises at once: an inversion that stays is most often a spike, a lag of a sensor or a mixed-up row.",
  remedy: "Look at these levels; flag what is wrong with salinity, temperature or pressure there.",
  messages: {
    inverted: "potential density falls downwards by up to {by} kg m-3 between levels that no flag doubts",
  },
  passing: [example("30, 31, 32, 33"), example("30, 30.02, 30, 33")],
  failing: [
    { cdl: example("30, 33, 31, 33"), where: { variable: "s" }, message: "inverted" },
    { cdl: example("30, 33, 32.9, 33"), where: { variable: "s" }, message: "inverted", level: "advice" },
  ],
  async check(dataset, report) {
    if (!/profile$/.test(dataset.layout.featureType ?? "")) return;
    const salinity = await only(dataset, "salinity");
    const temperature = await only(dataset, "temperature");
    const pressure = await only(dataset, "pressure");
    if (!salinity || !temperature || !pressure) return;
    const { variable, values: SP } = salinity;
    const t = await onto(dataset, temperature, variable);
    const p = await onto(dataset, pressure, variable);
    if (t === null || p === null) return;
    const { places, count, by } = inversions(await featureRuns(dataset, variable), SP, t, p);
    if (count > 0)
      report({ variable: variable.name }, "inverted", {
        places,
        count,
        fill: { by: rounded(by) },
        level: by > LARGE ? "warning" : "advice",
      });
  },
});
