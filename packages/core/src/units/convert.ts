import { addFactors, asFraction, factorValue, invertFactor, multiplyFactors } from "./factor.ts";
import { parseUnits } from "./parse.ts";
import { ratio, sameKind, type Unit, ZERO } from "./unit.ts";

const parsed = new Map<string, Unit | null>();
const REMEMBERED = 500;

function asUnit(unit: Unit | string): Unit | null {
  if (typeof unit !== "string") return unit;
  let found = parsed.get(unit);
  if (found === undefined) {
    const result = parseUnits(unit);
    found = result.ok ? result.value : null;
    if (parsed.size >= REMEMBERED) parsed.clear();
    parsed.set(unit, found);
  }
  return found;
}

type Conversion = (value: number) => number;

/** value × up / down + add; whole numbers up and down keep decimal factors exact. */
function linear(from: Unit, to: Unit): Conversion {
  const { up, down } = asFraction(ratio(from, to));
  const offset = addFactors(from.offset, multiplyFactors(to.offset, { ...ZERO, numerator: -1 }));
  const seconds = from.since && to.since ? from.since.moment.epochSeconds - to.since.moment.epochSeconds : 0;
  const add =
    factorValue(multiplyFactors(offset, invertFactor(to.factor))) + seconds / factorValue(to.factor);
  // factors beyond what a double holds ("m255" of a light year) give no wrong number
  if (![up, down, add].every(Number.isFinite) || up === 0 || down === 0) return () => NaN;
  if (up === 1 && down === 1 && add === 0) return (value) => value;
  if (add === 0) return (value) => (value * up) / down;
  return (value) => (value * up) / down + add;
}

/** Conversions between units given as text: there are few of them, and single values are converted often. */
const known = new Map<string, Conversion | null>();
const MOST_KNOWN = 1000;

function conversion(from: Unit | string, to: Unit | string): Conversion | null {
  if (typeof from !== "string" || typeof to !== "string") return findConversion(from, to);
  const key = `${from}\0${to}`;
  let found = known.get(key);
  if (found === undefined) {
    found = findConversion(from, to);
    if (known.size >= MOST_KNOWN) known.clear();
    known.set(key, found);
  }
  return found;
}

function findConversion(from: Unit | string, to: Unit | string): Conversion | null {
  const [a, b] = [asUnit(from), asUnit(to)];
  if (!a || !b || !a.dimensions.every((power, i) => power === b.dimensions[i])) return null;
  if ((a.since === null) !== (b.since === null)) return null;
  if (!a.logarithm && !b.logarithm) return linear(a, b);
  const { logarithm: fromLog } = a;
  const { logarithm: toLog } = b;
  if (fromLog && toLog && fromLog.base === toLog.base) {
    const sameReference = factorValue(ratio(fromLog.reference, toLog.reference)) === 1;
    if (sameReference) return linear({ ...a, logarithm: null }, { ...b, logarithm: null });
  }
  // by way of the plain quantity in base units
  const plain = { ...a, factor: { ...ZERO, numerator: 1 }, offset: ZERO, logarithm: null };
  const exponentOf = { up: factorValue(a.factor), add: factorValue(a.offset) };
  const toPlain: Conversion = fromLog
    ? (value) =>
        fromLog.base ** (value * exponentOf.up + exponentOf.add) * factorValue(fromLog.reference.factor)
    : linear(a, plain);
  const scale = factorValue(b.factor);
  const fromPlain: Conversion = toLog
    ? (value) =>
        (Math.log(value / factorValue(toLog.reference.factor)) / Math.log(toLog.base) -
          factorValue(b.offset)) /
        scale
    : linear(plain, b);
  return (value) => fromPlain(toPlain(value));
}

/**
 * A value in another unit.
 *
 * @param from unit of the value, parsed or as text
 * @param to   unit wanted
 * @returns    the converted value; NaN if either text is no unit, if the units measure different things, or if the
 *             value is NaN. Times since a moment convert in the standard (mixed Gregorian and Julian) calendar.
 *             Unlike the UDUNITS library, a unit is never converted to its inverse (s to Hz).
 */
export function convertUnits(value: number, from: Unit | string, to: Unit | string): number {
  return conversion(from, to)?.(value) ?? NaN;
}

/** Column twin: fills `out`, which has the length of `values`; all NaN if the units are not convertible. */
export function convertUnitsColumn(
  values: Float64Array,
  from: Unit | string,
  to: Unit | string,
  out: Float64Array,
): void {
  if (out.length !== values.length)
    throw new RangeError(`out has ${out.length} rows, values has ${values.length}`);
  const convert = conversion(from, to);
  if (!convert) out.fill(NaN);
  else for (let i = 0; i < values.length; i++) out[i] = convert(values[i]!);
}

/**
 * Whether two units measure the same kind of quantity: equal powers of the base units (an angle counts as 1), and
 * both or neither count time from a moment. False if a text is no unit.
 */
export function sameDimension(a: Unit | string, b: Unit | string): boolean {
  const [first, second] = [asUnit(a), asUnit(b)];
  return first !== null && second !== null && sameKind(first, second);
}
