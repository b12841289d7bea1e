import { defineRule } from "../../engine/rule.ts";
import { KINDS, type Kind, quantity, variablesOf } from "../../physics/quantity.ts";
import { houseClause, PHYSICS, rounded } from "./house.ts";

/** Beyond these no water of sea, estuary or lake has been met; unit of the kind. Ours, no source. */
const LIMITS: Readonly<Partial<Record<Kind, readonly [number, number]>>> = {
  temperature: [-3, 50],
  conductivity: [-0.1, 100],
  pressure: [-11, 11_600],
  salinity: [-0.1, 60],
  density: [980, 1100],
  soundSpeed: [1350, 1750],
  depth: [-100, 11_600],
};

/** Ordinary water: where all values come to lie after one change of unit, that unit is offered. */
const ORDINARY: Readonly<Partial<Record<Kind, readonly [number, number]>>> = {
  temperature: [-2, 36],
  conductivity: [-0.1, 75],
  salinity: [0, 42],
  density: [990, 1075],
  soundSpeed: [1390, 1640],
};

type Slip = readonly [unit: string, change: (value: number) => number];

const factor = (by: number, unit: string): Slip => [unit, (value) => value / by];
const SLIPS: Readonly<Partial<Record<Kind, readonly Slip[]>>> = {
  temperature: [
    ["degrees Fahrenheit", (value) => (value - 32) / 1.8],
    ["kelvin", (value) => value - 273.15],
    factor(10, "tenths of a degree"),
    factor(100, "hundredths of a degree"),
    factor(1000, "thousandths of a degree"),
  ],
  conductivity: [
    factor(10, "mS cm-1 with a unit of S m-1"),
    factor(100, "hundredfold values"),
    factor(1000, "uS cm-1 with a unit of mS cm-1"),
    factor(10_000, "uS cm-1 with a unit of S m-1"),
  ],
  salinity: [
    factor(10, "tenths"),
    factor(100, "hundredths"),
    factor(1000, "thousandths"),
    factor(1e-3, "kg/kg"),
  ],
  density: [
    ["sigma, density less 1000 kg m-3", (value) => value + 1000],
    ["g cm-3", (value) => value * 1000],
  ],
  soundSpeed: [
    ["feet per second", (value) => value * 0.3048],
    ["km s-1", (value) => value * 1000],
  ],
};

const example = (name: string, units: string, data: string) =>
  `dimensions: n = 3 ; variables: float t(n) ; t:standard_name = "${name}" ; t:units = "${units}" ; data: t = ${data} ;`;

function indicesBeyond(values: Float64Array, low: number, high: number): number[] {
  const places: number[] = [];
  for (let i = 0; i < values.length; i += 1) if (values[i]! < low || values[i]! > high) places.push(i);
  return places;
}

export const range = defineRule({
  ...PHYSICS,
  id: "physics/range",
  level: "error",
  citation: houseClause("possible values"),
  title: "Values are such as water can have",
  why: "A value that no water has is a fault of the sensor, of the unit or of the reading, and spoils every mean.",
  remedy: "Correct the values of {variable} or their unit, or flag them as bad.",
  messages: {
    unit: "values of {variable} run to {found} {units}, beyond {expected}: they look like {unit}",
    outside: "{variable} has values such as {found} {units}, beyond {expected}",
  },
  passing: [
    example("sea_water_temperature", "degree_C", "-1.9, 4, 31"),
    example("sea_water_temperature", "K", "271, 280, 300"),
  ],
  failing: [
    {
      cdl: example("sea_water_temperature", "degree_C", "50, 60, 70"),
      where: { variable: "t" },
      message: "unit",
    },
    {
      cdl: example("sea_water_temperature", "degree_C", "5, 6, 1000000"),
      where: { variable: "t" },
      message: "outside",
    },
  ],
  async check(dataset, report) {
    for (const [name, limits] of Object.entries(LIMITS)) {
      const kind = name as Kind;
      const [low, high] = limits;
      for (const variable of variablesOf(dataset, kind)) {
        const read = await quantity(dataset, kind, variable);
        if (read === null) continue;
        const { values } = read;
        const places = indicesBeyond(values, low, high);
        const [first] = places;
        if (first === undefined) continue;
        const ordinary = ORDINARY[kind];
        const slip = SLIPS[kind]?.find(([, change]) =>
          values.every((value) => {
            const changed = change(value);
            return !(ordinary !== undefined && (changed < ordinary[0] || changed > ordinary[1]));
          }),
        );
        report({ variable: variable.name }, slip === undefined ? "outside" : "unit", {
          found: rounded(values[first]!),
          expected: `${low} to ${high}`,
          places,
          fill: { units: KINDS[kind].unit, unit: slip?.[0] ?? "" },
        });
      }
    }
  },
});
