import type { Kind } from "./quantity.ts";

/** A way in which stored values can be in another unit than the file says. */
export interface UnitSlip {
  /** What the values look like, in words. */
  readonly name: string;
  /** From what is stored to the unit of the kind. */
  readonly mend: (value: number) => number;
}

const times = (by: number): UnitSlip => ({
  name: `values ${by < 1 ? `${Math.round(1 / by)} times too small` : `${by} times too large`} for their unit`,
  mend: (value) => value / by,
});

/** Powers of ten between S m-1, mS cm-1 and uS cm-1, between m and km, between parts and thousandths. */
const POWERS = [10, 0.1, 100, 0.01, 1000, 0.001, 10_000, 0.0001].map(times);

const named = (name: string, mend: (value: number) => number): UnitSlip => ({ name, mend });

/** Slips of units that are tried where a derived column does not follow from what it was derived from. */
export const UNIT_SLIPS: Readonly<Partial<Record<Kind, readonly UnitSlip[]>>> = {
  conductivity: POWERS,
  temperature: [
    named("degrees Fahrenheit", (value) => (value - 32) / 1.8),
    named("kelvin", (value) => value - 273.15),
    ...POWERS.slice(0, 6),
  ],
  pressure: [
    named("kPa", (value) => value / 10),
    named("bar", (value) => value * 10),
    named("MPa", (value) => value * 100),
    named("psi", (value) => value / 1.450377),
    named("hPa or cbar", (value) => value / 100),
    named("Pa", (value) => value / 10_000),
  ],
  salinity: POWERS.slice(0, 6),
  density: [
    named("sigma, density less 1000 kg m-3", (value) => value + 1000),
    named("g cm-3", (value) => value * 1000),
  ],
  soundSpeed: [named("feet per second", (value) => value * 0.3048), named("km s-1", (value) => value * 1000)],
};
