import { formatIsoTime, type Position } from "@wherry/core";

/** "2025-05-14 06:30 UTC"; "not known" without a time. */
export const momentWords = (time: number): string =>
  Number.isFinite(time) ? `${formatIsoTime(time, 0).slice(0, 16).replace("T", " ")} UTC` : "not known";

/** "46°16.87′N 004°07.58′W", as on a chart. */
export function positionWords(fix: Position | null): string {
  if (!fix) return "not known";
  return `${angleWords(fix.latitude, 2, "NS")} ${angleWords(fix.longitude, 3, "EW")}`;
}

function angleWords(degrees: number, digits: number, signs: string): string {
  const minutes = Math.round(Math.abs(degrees) * 60 * 100) / 100;
  const whole = Math.floor(minutes / 60);
  const rest = (minutes - 60 * whole).toFixed(2).padStart(5, "0");
  return `${String(whole).padStart(digits, "0")}°${rest}′${degrees < 0 ? signs[1] : signs[0]}`;
}

/** A number to so many places; a dash where there is none. */
export const numberWords = (value: number, places: number): string =>
  Number.isFinite(value) ? value.toFixed(places).replace(/^-(?=0(\.0*)?$)/, "") : "–";

export const rangeWords = (least: number, most: number, places: number): string =>
  Number.isFinite(least) ? `${numberWords(least, places)} to ${numberWords(most, places)}` : "–";

/** Places that a quantity is printed to in tables. */
export const placesOf = (quantity: string): number =>
  quantity === "temperature" || quantity === "salinity" ? 2 : quantity === "density" ? 2 : 3;

/** A count with its thousands apart: "27 715", with narrow blanks that do not break. */
export const countWords = (count: number): string =>
  count < 10_000 ? String(count) : String(count).replace(/\B(?=(\d{3})+$)/g, "\u202f");
