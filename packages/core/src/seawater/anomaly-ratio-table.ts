import { packedTable } from "./anomaly-ratio-table.generated.ts";

/*
 * The table of the Absolute Salinity Anomaly Ratio in memory. How the text is packed stands in
 * tools/pack_anomaly_ratio.py. Longitude 0, 4 ... 360 (0 and 360 are columns of their own), latitude -86, -82 ...
 * 90.
 */

export const LONGITUDES = 91;
export const LATITUDES = 45;

/** Pressure levels of the table, dbar. */
export const LEVELS: readonly number[] = [
  0, 10, 20, 30, 40, 50, 76, 101, 126, 151, 176, 202, 252, 303, 353, 404, 505, 606, 707, 808, 909, 1010, 1111,
  1213, 1314, 1416, 1517, 1771, 2025, 2279, 2534, 2789, 3045, 3300, 3556, 3812, 4069, 4325, 4583, 4840, 5098,
  5355, 5614, 5872, 6131,
];

export interface AnomalyTable {
  /** Ratios by longitude, latitude, level; NaN where the atlas has no water. */
  readonly ratios: Float64Array;
  /** Levels used by each cell of 4 by 4 degrees, by longitude and latitude; 0 where there is no ocean. */
  readonly cellLevels: Uint8Array;
}

let table: AnomalyTable | undefined;

/** The table, unpacked on the first call. */
export function anomalyTable(): AnomalyTable {
  table ??= unpack(packedTable);
  return table;
}

const HALF = 45;
const NO_VALUE = "~".charCodeAt(0);

function unpack(text: string): AnomalyTable {
  let at = 0;
  const digit = () => {
    const code = text.charCodeAt(at++);
    return code - (code > 92 ? 36 : 35);
  };
  const number = () => {
    let folded = 0;
    let weight = 1;
    let d = digit();
    for (; d >= HALF; d = digit()) {
      folded += weight * d;
      weight *= HALF;
    }
    folded += weight * d;
    return folded % 2 === 0 ? folded / 2 : -(folded + 1) / 2;
  };

  const cellLevels = new Uint8Array((LONGITUDES - 1) * (LATITUDES - 1));
  for (let cell = 0; cell < cellLevels.length; cell++) cellLevels[cell] = digit();

  const depth = LEVELS.length;
  const nano = new Float64Array(LONGITUDES * LATITUDES * depth).fill(Number.NaN);
  for (let column = 0; column < LONGITUDES * LATITUDES; column++) {
    const start = column * depth;
    const west = start - LATITUDES * depth;
    const levels = digit();
    let last = 0;
    for (let k = 0; k < levels; k++) {
      if (text.charCodeAt(at) === NO_VALUE) {
        at++;
        continue;
      }
      const change =
        k > 0 && west >= 0 && !Number.isNaN(nano[start + k - 1]!) ? nano[west + k]! - nano[west + k - 1]! : 0;
      last += (Number.isNaN(change) ? 0 : change) + number();
      nano[start + k] = last;
    }
  }
  return { ratios: nano.map((value) => value * 1e-9), cellLevels };
}
