import { depthFromDensityColumn } from "@wherry/core";
import { featureRuns } from "../../engine/feature-runs.ts";
import { defineRule } from "../../engine/rule.ts";
import { onto } from "../../physics/onto.ts";
import { only } from "../../physics/quantity.ts";
import { claimsOf, latitudeOn } from "../../physics/water.ts";
import { houseClause, PHYSICS, rounded } from "./house.ts";

/** A depth that says it was integrated from the density measured. */
const BY_DENSITY = /(?:measured|integra)[^.;]*densit|densit[^.;]*(?:measured|integra)/i;
const OTHERWISE = /standard ocean|constant|assum|nominal/i;

/** Other choices of rows that stand for the water column move the depth; part of it. Ours. */
const CHOICE = 2e-3;
const FIXED = 0.1;

/** Fresh water of 999.7 kg m-3 throughout at 45 degrees: 50 dbar reach 50.996 m, by dp / (rho g) with g = 9.8062 m s-2. */
const example = (depth: string, source = "integral of the density measured") => `:featureType = "profile" ;
  dimensions: n = 3 ; variables:
  double y ; y:standard_name = "latitude" ; y:units = "degrees_north" ;
  double p(n) ; p:standard_name = "sea_water_pressure_due_to_sea_water" ; p:units = "dbar" ; p:coordinates = "y z" ;
  double d(n) ; d:standard_name = "sea_water_density" ; d:units = "kg m-3" ; d:coordinates = "y z" ;
  double z(n) ; z:standard_name = "depth" ; z:units = "m" ; z:positive = "down" ; z:comment = "${source}" ;
  data: y = 45 ; p = 10, 30, 50 ; d = 999.7, 999.7, 999.7 ; z = ${depth} ;`;

export const depthByDensity = defineRule({
  ...PHYSICS,
  id: "physics/depth-by-density",
  level: "error",
  citation: houseClause("depth by the measured density"),
  title: "A depth by the measured density follows from pressure and density",
  why: "Brackish water is lighter than the standard ocean: by the wrong density a depth is off by up to three percent.",
  remedy: "Compute {variable} again from pressure and density, or state in its attributes how it was made.",
  messages: {
    differs:
      "{variable} says that it comes from the measured density, but differs from what that gives, by up to {by} m: {found} where {expected} comes out",
  },
  passing: [
    example("10.2, 30.6, 51.0"),
    // the depth of the standard ocean, which says so
    example("9.92, 29.75, 49.57", "standard ocean"),
    example("9.92, 29.75, 49.57", "pressure over gravity and a constant density"),
  ],
  failing: [{ cdl: example("9.92, 29.75, 49.57"), where: { variable: "z" }, message: "differs" }],
  async check(dataset, report) {
    const depth = await only(dataset, "depth");
    const pressure = await only(dataset, "pressure");
    const density = await only(dataset, "density");
    if (depth === null || pressure === null || density === null) return;
    const { variable, values: z } = depth;
    const claims = claimsOf(variable);
    if (!BY_DENSITY.test(claims) || OTHERWISE.test(claims) || variable.text("positive") === "up") return;
    // the depth of a layer is that of its middle, whatever its mean pressure is
    if (variable.has("bounds") || /mean/.test(pressure.variable.text("cell_methods") ?? "")) return;
    const p = await onto(dataset, pressure, variable);
    const rho = await onto(dataset, density, variable);
    const lat = await latitudeOn(dataset, variable);
    if (p === null || rho === null || lat === null) return;
    const places: number[] = [];
    let worst = { by: 0, stored: 0, computed: 0 };
    for (const run of await featureRuns(dataset, variable)) {
      const of = (values: Float64Array) => Float64Array.from(run, (i) => values[i]!);
      const computed = new Float64Array(run.length);
      depthFromDensityColumn(of(p), of(rho), lat[run[0] ?? 0]!, computed);
      run.forEach((i, k) => {
        const by = Math.abs(z[i]! - computed[k]!);
        if (!(by > FIXED + depth.halfStep + pressure.halfStep + CHOICE * Math.abs(z[i]!))) return;
        places.push(i);
        if (by > worst.by) worst = { by, stored: z[i]!, computed: computed[k]! };
      });
    }
    if (places.length > 0)
      report({ variable: variable.name }, "differs", {
        found: rounded(worst.stored),
        expected: rounded(worst.computed),
        places,
        fill: { by: rounded(worst.by) },
      });
  },
});
