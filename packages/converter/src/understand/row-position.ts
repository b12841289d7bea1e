import type { Axis } from "./position.ts";
import { findCoordinates } from "./position.ts";
import type { RawCast, RawColumn } from "./raw-cast.ts";

export interface Fix {
  readonly latitude: number;
  readonly longitude: number;
  readonly line: number | null;
  readonly words: string;
}

/** Columns of one axis: degrees, and where they stand apart minutes, seconds and the hemisphere. */
interface AxisColumns {
  readonly degrees: RawColumn;
  readonly minutes: RawColumn | null;
  readonly seconds: RawColumn | null;
  readonly side: RawColumn | null;
}

/** Fixes of the rows. */
export interface RowPositions {
  /** The first row that has a fix; null if none has. */
  readonly first: Fix | null;
  /** The last one, if it is elsewhere. */
  readonly last: Fix | null;
  /** The first row with latitude and longitude exchanged, where only so they can be a position. */
  readonly exchanged: Fix | null;
}

/** Latitude and longitude columns: the first and the last row that has a fix; null without such columns. */
export function rowPositions(cast: RawCast): RowPositions | null {
  const [lat, lon] = [axisColumns(cast, "latitude"), axisColumns(cast, "longitude")];
  if (!lat || !lon) return null;
  const words = `${lat.degrees.head.header} and ${lon.degrees.head.header} of the row`;
  const at = (row: number): Fix | null => {
    const latitude = degreesAt(cast, lat, "latitude", row);
    const longitude = degreesAt(cast, lon, "longitude", row);
    if (Number.isNaN(latitude) || Number.isNaN(longitude) || (latitude === 0 && longitude === 0)) return null;
    return { latitude, longitude, line: cast.lines[row] ?? null, words };
  };
  let first: Fix | null = null;
  let last: Fix | null = null;
  for (let row = 0; row < cast.rows.length && !first; row++) first = at(row);
  for (let row = cast.rows.length - 1; row >= 0 && !last; row--) last = at(row);
  const moved = first && last && (last.latitude !== first.latitude || last.longitude !== first.longitude);
  const exchanged = exchange(lat.degrees.numbers?.first ?? NaN, lon.degrees.numbers?.first ?? NaN);
  return {
    first,
    last: moved ? last : null,
    exchanged: first || !exchanged ? null : { ...exchanged, line: cast.lines[0] ?? null, words },
  };
}

/** A position from two numbers that can only be one the other way round: no latitude is beyond 90. */
export function exchange(
  latitude: number,
  longitude: number,
): { readonly latitude: number; readonly longitude: number } | null {
  const turned = Math.abs(latitude) > 90 && Math.abs(latitude) <= 180 && Math.abs(longitude) <= 90;
  return turned ? { latitude: longitude, longitude: latitude } : null;
}

const numberAt = ({ numbers }: RawColumn, row: number) => numbers?.values[row] ?? NaN;

/** The columns of an axis; null if there is none, or several that are not degrees, minutes and seconds. */
function axisColumns(cast: RawCast, axis: Axis): AxisColumns | null {
  const own = cast.columns.filter(({ meaning }) => meaning.kind === axis);
  const part = (pattern: RegExp) => own.find(({ head }) => pattern.test(head.header)) ?? null;
  const minutes = own.length > 1 ? part(/(?<![a-z])min|['′]/i) : null;
  const seconds = own.length > 2 ? part(/(?<![a-z])sec|["″]/i) : null;
  const degrees = own.filter((column) => column !== minutes && column !== seconds);
  const [only] = degrees;
  if (!only || degrees.length > 1) return null;
  const last = [only, minutes, seconds].reduce((to, column) => Math.max(to, column?.index ?? 0), 0);
  const side = cast.columns.find(({ index }) => index === last + 1) ?? null;
  return { degrees: only, minutes, seconds, side: side && isSide(cast, side, axis) ? side : null };
}

/** A column of nothing but hemispheres. */
function isSide(cast: RawCast, column: RawColumn, axis: Axis): boolean {
  const cells = cast.rows.column(column.index).filter((cell) => cell !== "");
  return cells.length > 0 && cells.every((cell) => sideOf(cell, axis) !== undefined);
}

const sideOf = (cell: string, axis: Axis) => {
  if (!/^[A-Za-zÀ-ÿ]{1,6}$/.test(cell)) return undefined;
  const [coordinate] = findCoordinates(`1 ${cell.toUpperCase()}`);
  return coordinate?.axis === axis ? coordinate.sign : undefined;
};

function degreesAt(cast: RawCast, { degrees, minutes, seconds, side }: AxisColumns, axis: Axis, row: number) {
  // 0030.0000 may be thirty degrees or thirty minutes
  if (/^[+-]?0\d{3}/.test(cast.rows.cell(row, degrees.index))) return NaN;
  if (degrees.numbers) {
    const small = (column: RawColumn | null) => (column ? numberAt(column, row) : 0);
    const fraction = small(minutes) / 60 + small(seconds) / 3600;
    const whole = numberAt(degrees, row);
    const value = whole < 0 || Object.is(whole, -0) ? whole - fraction : whole + fraction;
    const written = side ? sideOf(cast.rows.cell(row, side.index), axis) : undefined;
    const sign = written === undefined ? sideOfHead(degrees.head.header, axis) : written;
    if (!(Math.abs(value) <= (axis === "latitude" ? 90 : 180)) || sign === null) return NaN;
    // a minus before a W or S says it twice, or takes it back
    return value < 0 && (sign < 0 || written !== undefined) ? NaN : sign * value;
  }
  const [coordinate] = findCoordinates(cast.rows.cell(row, degrees.index), axis);
  return coordinate?.sign == null ? NaN : coordinate.sign * coordinate.degrees;
}

/** "Lon (°W)": the hemisphere stands in the head; null for the letter O, which leaves it open. */
function sideOfHead(header: string, axis: Axis): 1 | -1 | null {
  const behind = header.replace(/^[^A-Za-zÀ-ÿ]*[A-Za-zÀ-ÿ]+/, "");
  if (axis === "latitude") return /(?<![A-Za-z])(?:S|south|sud|sur|sul)(?![A-Za-z])/i.test(behind) ? -1 : 1;
  if (/(?<![A-Za-z])O(?![A-Za-z])/.test(behind)) return null;
  return /(?<![A-Za-z])(?:W|west|ouest|oeste|ovest|vest)(?![A-Za-z])/i.test(behind) ? -1 : 1;
}
