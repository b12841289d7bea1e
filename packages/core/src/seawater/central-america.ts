/*
 * The line that parts the Atlantic from the Pacific in Central America, across which salinity anomalies are not
 * mixed. Points of the TEOS-10 toolbox: McDougall, Jackett, Millero, Pawlowicz and Barker (2012), Ocean Science 8,
 * 1123-1134.
 */

const LINE_LON = [260, 272.59, 276.5, 278.65, 280.73, 292];
const LINE_LAT = [19.55, 13.97, 9.6, 8.1, 9.33, 3.4];

/** Whether a point, longitude 0 to 360, lies in the box in which the line counts. */
export const nearCentralAmerica = (lon: number, lat: number): boolean =>
  lon >= 260 && lon <= 291.999 && lat >= 3.4 && lat <= 19.55;

/** Whether a point lies north of the line or on it; the end pieces of the line go on beyond it. */
export function northOfLine(lon: number, lat: number): boolean {
  let piece = 0;
  while (piece < LINE_LON.length - 2 && LINE_LON[piece + 1]! < lon) piece++;
  const part = (lon - LINE_LON[piece]!) / (LINE_LON[piece + 1]! - LINE_LON[piece]!);
  return LINE_LAT[piece]! + part * (LINE_LAT[piece + 1]! - LINE_LAT[piece]!) <= lat;
}
