import { addFactors, type Factor, invertFactor, multiplyFactors, ONE, raiseFactor } from "./factor.ts";
import type { Timestamp } from "./timestamp.ts";

/** A name or number as it stands in a unit's text. */
export type UnitPart =
  | { readonly kind: "number"; readonly text: string }
  | {
      readonly kind: "name";
      readonly text: string;
      /** Prefix as typed ("k", "kilo"), "" if none. */
      readonly prefix: string;
      /** First name of the unit in the database ("meter", "day", "year"). */
      readonly entry: string;
    };

/**
 * A unit of measurement. In terms of the base units: quantity = factor × value + offset; for a logarithmic unit that
 * is the exponent, and quantity = base ^ (factor × value + offset) × reference; for a time since a moment it is
 * seconds after that moment.
 */
export interface Unit {
  /** As it was written. */
  readonly text: string;
  readonly factor: Factor;
  /** Zero but for temperatures on a scale and shifted units. */
  readonly offset: Factor;
  /** Powers of metre, kilogram, second, ampere, kelvin, mole, candela. The radian counts as 1. */
  readonly dimensions: readonly number[];
  readonly logarithm: { readonly base: number; readonly reference: Unit } | null;
  /** The moment from which time is counted, and the word that introduced it ("since", "@" …). */
  readonly since: { readonly moment: Timestamp; readonly word: string } | null;
  /** Names and numbers of the text, in order, those of a reference moment left out. */
  readonly parts: readonly UnitPart[];
}

export const ZERO: Factor = { numerator: 0, denominator: 1, exponent: 0 };
const NO_DIMENSIONS = [0, 0, 0, 0, 0, 0, 0];

export const numberUnit = (factor: Factor): Unit => ({
  text: "",
  factor,
  offset: ZERO,
  dimensions: NO_DIMENSIONS,
  logarithm: null,
  since: null,
  parts: [],
});

export const UNITY = numberUnit(ONE);

/** The base unit at that place of `dimensions`. */
export const baseUnit = (place: number): Unit => ({
  ...UNITY,
  dimensions: NO_DIMENSIONS.map((_, i) => (i === place ? 1 : 0)),
});

export const isDimensionless = (unit: Unit): boolean =>
  unit.dimensions.every((power) => power === 0) && unit.logarithm === null && unit.since === null;

/** A unit with a prefix: offsets stay (0 m°C is 273.15 K). */
export const scaleUnit = (unit: Unit, by: Factor): Unit => ({
  ...unit,
  factor: multiplyFactors(unit.factor, by),
});

/** Product of two units: offsets and moments fall away, since a product is of differences. Null if there is none. */
export function multiplyUnits(a: Unit, b: Unit): Unit | null {
  if (a.logarithm && b.logarithm) return null;
  if (a.logarithm || b.logarithm) {
    const [logarithmic, other] = a.logarithm ? [a, b] : [b, a];
    if (!isDimensionless(other)) return null; // only a multiple such as a tenth of it makes sense
    return { ...logarithmic, factor: multiplyFactors(a.factor, b.factor), offset: ZERO };
  }
  return {
    ...UNITY,
    factor: multiplyFactors(a.factor, b.factor),
    dimensions: a.dimensions.map((power, i) => power + b.dimensions[i]!),
  };
}

/** Power of a unit, -255 to 255; null if there is none. */
export function raiseUnit(unit: Unit, power: number): Unit | null {
  if (power === 1) return unit;
  if (unit.logarithm || Math.abs(power) > 255) return null;
  return {
    ...UNITY,
    factor: raiseFactor(unit.factor, power),
    dimensions: unit.dimensions.map((each) => (power === 0 ? 0 : each * power)),
  };
}

export function divideUnits(a: Unit, b: Unit): Unit | null {
  const inverse = raiseUnit(b, -1);
  return inverse && multiplyUnits(a, inverse);
}

/** A unit whose zero lies at `origin` of the given unit. */
export const shiftUnit = (unit: Unit, origin: Factor): Unit => ({
  ...unit,
  offset: addFactors(unit.offset, multiplyFactors(unit.factor, origin)),
});

/** Logarithm of the ratio to a reference; null if the reference is itself logarithmic or a moment. */
export function logarithmicUnit(base: number, reference: Unit): Unit | null {
  if (reference.logarithm || reference.since) return null;
  return { ...UNITY, dimensions: reference.dimensions, logarithm: { base, reference } };
}

/** Units measure the same kind of quantity: the same powers of base units, and both or neither are moments or logarithms. */
export function sameKind(a: Unit, b: Unit): boolean {
  return (
    a.dimensions.every((power, i) => power === b.dimensions[i]) &&
    (a.since === null) === (b.since === null) &&
    (a.logarithm === null) === (b.logarithm === null)
  );
}

export const ratio = (a: Unit, b: Unit): Factor => multiplyFactors(a.factor, invertFactor(b.factor));
