import { soundSpeedChenMilleroColumn, soundSpeedColumn, soundSpeedDelGrossoColumn } from "@wherry/core";
import { byEquation } from "../../physics/compare.ts";
import { claimsOf, teosCandidate, waterOn } from "../../physics/water.ts";
import { recomputedRule } from "./recomputed.ts";

/** Chen and Millero: S = 40, 40 deg C (IPTS-68), 10 000 dbar give 1731.995 m s-1 (UNESCO 44, check value). */
const example = (speed: string, source = "Chen and Millero (1977)") => `dimensions: n = 3 ; variables:
  double s(n) ; s:standard_name = "sea_water_practical_salinity" ; s:units = "1" ;
  double t(n) ; t:standard_name = "sea_water_temperature" ; t:units = "degree_C" ; t:reference_scale = "IPTS-68" ;
  double p(n) ; p:standard_name = "sea_water_pressure_due_to_sea_water" ; p:units = "dbar" ;
  double v(n) ; v:standard_name = "speed_of_sound_in_sea_water" ; v:units = "m s-1" ; v:references = "${source}" ;
  data: s = 40, 40, 40 ; t = 40, 40, 40 ; p = 10000, 10000, 10000 ; v = ${speed} ;`;

/** Equations that are in use but not at hand here: such a column is not judged. */
const OTHER = /Mackenzie|Medwin|Leroy|Wilson|Coppens|Wong|NPL|Lovett|Frye/i;
const NAMES = [
  ["Chen and Millero", /Chen|UNESCO|EOS[- ]?80/i],
  ["Del Grosso", /Del ?Grosso/i],
  ["TEOS-10", /TEOS|GSW|Roquet|McDougall/i],
] as const;

export const soundSpeed = recomputedRule({
  id: "physics/sound-speed",
  kind: "soundSpeed",
  title: "A speed of sound follows from salinity, temperature and pressure",
  from: "salinity, temperature and pressure",
  citation: { document: "IOC Manuals and Guides 56", edition: "2010", clause: "2.17" },
  margin: 0.05,
  unnamed: 0.5,
  async ways(dataset, target) {
    const claims = claimsOf(target.variable);
    if (OTHER.test(claims)) return null;
    const water = await waterOn(dataset, target.variable);
    if (water === null) return null;
    const columns = [water.SP, water.t, water.p] as const;
    const all = [
      teosCandidate("TEOS-10", water, "soundSpeed", soundSpeedColumn),
      byEquation("Chen and Millero", soundSpeedChenMilleroColumn, columns),
      byEquation("Del Grosso", soundSpeedDelGrossoColumn, columns),
    ];
    const named = NAMES.filter(([, pattern]) => pattern.test(claims)).map(([name]): string => name);
    return {
      candidates: named.length === 0 ? all : all.filter(({ name }) => named.includes(name)),
      inputs: water.inputs,
      columns,
      equation: soundSpeedChenMilleroColumn,
      named: named.length === 1,
    };
  },
  passing: [example("1731.995, 1731.995, 1731.995"), example("1700, 1700, 1700", "Mackenzie (1981)")],
  failing: [
    { cdl: example("1731.995, 1733.5, 1731.995"), where: { variable: "v" }, message: "differs" },
    // 104 degrees Fahrenheit are 40 degrees Celsius
    {
      cdl: example("1731.995, 1731.995, 1731.995").replace("t = 40, 40, 40", "t = 104, 104, 104"),
      where: { variable: "t" },
      message: "unit",
    },
    { cdl: example("1700, 1700, 1700", "computed"), where: { variable: "v" }, message: "column" },
  ],
});
