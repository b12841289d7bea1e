import { parseUnits, sameDimension, type Unit } from "@wherry/core";

/** A unit as UDUNITS reads it; null if it does not. */
export function unitOf(text: string | undefined): Unit | null {
  if (text === undefined) return null;
  const parsed = parseUnits(text);
  return parsed.ok ? parsed.value : null;
}

const sameAs = (text: string | undefined, other: string): boolean => {
  const unit = unitOf(text);
  return unit !== null && sameDimension(unit, other);
};

/** Words by which UDUNITS shifts an origin; CF allows them for times only. */
const SHIFT = /\s(?:since|after|from|ref)\s|\s*@/i;

/** The unit before the word of a shift, that word, and what follows; null if there is no shift. */
export function splitShift(text: string): { unit: string; word: string; origin: string } | null {
  const found = SHIFT.exec(text);
  if (found === null) return null;
  const [word] = found;
  const end = found.index + word.length;
  return { unit: text.slice(0, found.index).trim(), word: word.trim(), origin: text.slice(end).trim() };
}

/** A unit with a reference time, whatever the form of the time: "days since 1950-01-01". */
export function isTimeReference(text: string | undefined): boolean {
  const shift = text === undefined ? null : splitShift(text);
  return shift !== null && shift.unit !== "" && sameAs(shift.unit, "s");
}

export const isTime = (text: string | undefined): boolean => sameAs(text, "s");
export const isPressure = (text: string | undefined): boolean => sameAs(text, "Pa");
export const isLength = (text: string | undefined): boolean => sameAs(text, "m");

/** Place of the kelvin among the base units. */
const KELVIN = 4;

/** Whether temperature is part of the unit: K, degC, W m-2 K-1. */
export const involvesTemperature = (text: string | undefined): boolean => {
  const unit = unitOf(text);
  return unit !== null && unit.dimensions[KELVIN] !== 0 && unit.since === null;
};

const NORTH = /^(?:degrees?_north|degrees?_N|degrees?N)$/;
const EAST = /^(?:degrees?_east|degrees?_E|degrees?E)$/;

/** One of the six spellings of CF 4.1, compared as text. */
export const isNorthUnit = (text: string | undefined): boolean => text !== undefined && NORTH.test(text);

/** One of the six spellings of CF 4.2, compared as text. */
export const isEastUnit = (text: string | undefined): boolean => text !== undefined && EAST.test(text);
