import { densityColumn } from "@wherry/core";
import { featureRuns } from "../../engine/feature-runs.ts";
import { defineRule } from "../../engine/rule.ts";
import { onto } from "../../physics/onto.ts";
import { only } from "../../physics/quantity.ts";
import { teos } from "../../physics/water.ts";
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
    const { SA, CT } = teos({ SP, t, p }, null);
    // at the surface: what matters is what the water would do when it is moved there
    const surface = new Float64Array(SP.length);
    const potential = new Float64Array(SP.length);
    densityColumn(SA, CT, surface, potential);
    const places: number[] = [];
    let count = 0;
    let by = 0;
    for (const run of await featureRuns(dataset, variable)) {
      const rows = run.filter((i) => !Number.isNaN(potential[i]!));
      // raw rows in the order of time go up and down: levels are only those that always go on
      if (!rows.every((row, k) => k === 0 || p[row]! > p[rows[k - 1]!]!)) continue;
      for (let k = 1; k < rows.length; k += 1) {
        const falls = potential[rows[k - 1]!]! - potential[rows[k]!]!;
        if (falls <= TOLD) continue;
        count += 1;
        if (places.length < PLACES) places.push(rows[k]!);
        by = Math.max(by, falls);
      }
    }
    if (count > 0)
      report({ variable: variable.name }, "inverted", {
        places,
        count,
        fill: { by: rounded(by) },
        level: by > LARGE ? "warning" : "advice",
      });
  },
});
