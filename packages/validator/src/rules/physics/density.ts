import { densityColumn, densityEos80Column } from "@wherry/core";
import { byEquation } from "../../physics/compare.ts";
import { claimsOf, teosCandidate, waterOn } from "../../physics/water.ts";
import { recomputedRule } from "./recomputed.ts";

/** EOS-80: S = 35, 25 deg C (IPTS-68), 10 000 dbar give 1062.53817 (UNESCO 44, check value). */
const example = (density: string, source = "EOS-80") => `dimensions: n = 3 ; variables:
  double s(n) ; s:standard_name = "sea_water_practical_salinity" ; s:units = "1" ;
  double t(n) ; t:standard_name = "sea_water_temperature" ; t:units = "degree_C" ; t:reference_scale = "IPTS-68" ;
  double p(n) ; p:standard_name = "sea_water_pressure_due_to_sea_water" ; p:units = "dbar" ;
  double d(n) ; d:standard_name = "sea_water_density" ; d:units = "kg m-3" ; d:references = "${source}" ;
  data: s = 35, 35, 35 ; t = 25, 25, 25 ; p = 10000, 10000, 10000 ; d = ${density} ;`;

const isOld = /EOS[- ]?(?:19)?80|UNESCO|Millero|Poisson|Fofonoff/i;
const isNew = /TEOS|GSW|EOS[- ]?2010|Roquet|McDougall/i;

export const density = recomputedRule({
  id: "physics/density",
  kind: "density",
  title: "A density follows from salinity, temperature and pressure",
  from: "salinity, temperature and pressure",
  citation: { document: "IOC Manuals and Guides 56", edition: "2010", clause: "2.8" },
  margin: 1e-2,
  unnamed: 0.1,
  async ways(dataset, target) {
    const water = await waterOn(dataset, target.variable);
    if (water === null) return null;
    const claims = claimsOf(target.variable);
    const [old, present] = [isOld.test(claims), isNew.test(claims)];
    const named = old !== present;
    const columns = [water.SP, water.t, water.p] as const;
    const atlas = teosCandidate("TEOS-10", water, "density", densityColumn);
    const reference = teosCandidate(
      "TEOS-10 with Reference Salinity",
      { ...water, positions: null },
      "density",
      densityColumn,
    );
    const eos80 = byEquation("EOS-80", densityEos80Column, columns);
    return {
      candidates: [
        ...(named && old ? [] : water.positions === null ? [reference] : [atlas, reference]),
        ...(named && present ? [] : [eos80]),
      ],
      inputs: water.inputs,
      columns,
      equation: densityEos80Column,
      named,
    };
  },
  passing: [example("1062.538, 1062.538, 1062.538"), example("1062.538, 1062.538, 1062.538", "computed")],
  failing: [
    { cdl: example("1062.538, 1063.538, 1062.538"), where: { variable: "d" }, message: "differs" },
    { cdl: example("1.062538, 1.062538, 1.062538"), where: { variable: "d" }, message: "unit" },
    {
      // the density at the surface, in place of the one at this pressure
      cdl: example("1023.343, 1023.343, 1023.343", "computed"),
      where: { variable: "d" },
      message: "column",
    },
  ],
});
