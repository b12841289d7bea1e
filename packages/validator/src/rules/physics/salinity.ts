import { practicalSalinityColumn } from "@wherry/core";
import { onto } from "../../physics/onto.ts";
import { only } from "../../physics/quantity.ts";
import { claimsOf, temperatureReadings } from "../../physics/water.ts";
import { recomputedRule } from "./recomputed.ts";

/** The standard ratio: 42.914 mS cm-1 at 15 deg C (IPTS-68) and the surface is 35 (UNESCO 44, from the definition). */
const example = (salinity: string, more = "") => `dimensions: n = 3 ; variables:
  float c(n) ; c:standard_name = "sea_water_electrical_conductivity" ; c:units = "S m-1" ;
  float t(n) ; t:standard_name = "sea_water_temperature" ; t:units = "degree_C" ; t:reference_scale = "ITS-90" ;
  float p(n) ; p:standard_name = "sea_water_pressure_due_to_sea_water" ; p:units = "dbar" ;
  float s(n) ; s:standard_name = "sea_water_practical_salinity" ; s:units = "1" ; ${more}
  data: c = 4.2914, 4.2914, 4.2914 ; t = 14.9964, 14.9964, 14.9964 ; p = 0, 0, 0 ; s = ${salinity} ;`;

/** Below this the scale is extended in more than one way. */
const LOW = 2.2;
const LOW_MARGIN = 0.05;

function lowMargins(values: Float64Array): { perRow?: Float64Array } {
  return values.some((value) => value < LOW)
    ? { perRow: values.map((value) => (value < LOW ? LOW_MARGIN : 0)) }
    : {};
}

export const salinity = recomputedRule({
  id: "physics/salinity",
  kind: "salinity",
  title: "A salinity follows from conductivity, temperature and pressure",
  from: "conductivity, temperature and pressure",
  citation: {
    document: "UNESCO Technical Papers in Marine Science 44",
    edition: "1983",
    clause: "Practical Salinity Scale 1978",
  },
  margin: 5e-4,
  unnamed: 0,
  async ways(dataset, target) {
    const inputs = [
      await only(dataset, "conductivity"),
      await only(dataset, "temperature"),
      await only(dataset, "pressure"),
    ];
    const [conductivity, temperature, pressure] = inputs;
    if (!conductivity || !temperature || !pressure) return null;
    const C = await onto(dataset, conductivity, target.variable);
    const t = await onto(dataset, temperature, target.variable);
    const p = await onto(dataset, pressure, target.variable);
    if (C === null || t === null || p === null) return null;
    return {
      columns: [C, t, p],
      equation: practicalSalinityColumn,
      candidates: temperatureReadings(temperature, t).map((reading, index) => ({
        name: index === 0 ? "PSS-78" : "PSS-78 with temperatures on IPTS-68",
        fill: (from, to, out) => {
          const warm = reading();
          practicalSalinityColumn(C.subarray(from, to), warm.subarray(from, to), p.subarray(from, to), out);
        },
      })),
      inputs: [conductivity, temperature, pressure],
      named: /PSS|practical|UNESCO/i.test(claimsOf(target.variable)),
      ...lowMargins(target.values),
    };
  },
  passing: [
    example("35, 35, 35"),
    example("35, _, 35", "s:_FillValue = -9.f ;"),
    example(
      "35, 35, 33 ; q = 1, 1, 4",
      `s:ancillary_variables = "q" ; byte q(n) ; q:flag_values = 1b, 4b ; q:flag_meanings = "good bad" ;`,
    ),
  ],
  failing: [
    {
      cdl: example("35, 35, 35").replace("4.2914, 4.2914, 4.2914", "42.914, 42.914, 42.914"),
      where: { variable: "c" },
      message: "unit",
    },
    {
      cdl: example("0.035, 0.035, 0.035"),
      where: { variable: "s" },
      message: "unit",
    },
    { cdl: example("35, 35.2, 35"), where: { variable: "s" }, message: "differs" },
    { cdl: example("36, 36, 36"), where: { variable: "s" }, message: "column" },
    { cdl: example("35, 35.004, 35"), where: { variable: "s" }, message: "differs", level: "warning" },
  ],
});
