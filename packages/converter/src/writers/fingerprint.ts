import { createHash } from "node:crypto";
import type { Cast, Position } from "@wherry/core";

/**
 * SHA-256 over what a cast says: kind, times, positions, segments, and per column its name, unit, values and
 * flags. Names of files, notes and the cast's own id do not enter, so that the same data under another name
 * have the same fingerprint.
 *
 * @returns 64 hexadecimal digits
 */
export function castFingerprint(cast: Cast): string {
  const hash = createHash("sha256");
  const words = (...parts: readonly (string | number | null)[]) =>
    hash.update(`${JSON.stringify(parts.map((part) => (Number.isNaN(part) ? "NaN" : part)))}\n`);
  const position = (at: Position | null) =>
    at === null
      ? words("position", null)
      : words("position", at.latitude, at.longitude, at.satellites, at.quality);
  words("cast", 1, cast.kind, cast.rows, cast.time, cast.timeRole, cast.endTime, cast.pressureOffset);
  position(cast.start);
  position(cast.end);
  words("fixedDepth", cast.fixedDepth?.depth ?? null, cast.fixedDepth?.reference ?? null);
  for (const { kind, firstRow, lastRow } of cast.segments) words("segment", kind, firstRow, lastRow);
  if (cast.elapsed !== null) {
    words("elapsed");
    hash.update(littleEndian(cast.elapsed));
  }
  for (const name of [...cast.columns.keys()].sort()) {
    const column = cast.columns.get(name)!;
    words("column", name, column.standardName, column.units);
    hash.update(littleEndian(column.values)).update(column.flags);
  }
  return hash.digest("hex");
}

/** The same for several casts, in the given order, with their ids. */
export function dataSetFingerprint(casts: readonly Cast[]): string {
  const hash = createHash("sha256");
  for (const cast of casts) hash.update(`${cast.id} ${castFingerprint(cast)}\n`);
  return hash.digest("hex");
}

/** Bytes in a stated order, and one NaN for all. */
function littleEndian(values: Float64Array): Uint8Array {
  const bytes = new Uint8Array(values.length * 8);
  const view = new DataView(bytes.buffer);
  for (let k = 0; k < values.length; k++) {
    const value = values[k]!;
    view.setFloat64(8 * k, Number.isNaN(value) ? Number.NaN : value, true);
  }
  return bytes;
}
