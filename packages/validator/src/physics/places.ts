/** Radius of the earth as a sphere, km. */
const RADIUS = 6371;
const rad = (degrees: number) => (degrees * Math.PI) / 180;

/** Great-circle distance on a sphere, km. */
export function distance(lat1: number, lon1: number, lat2: number, lon2: number): number {
  const a =
    Math.sin(rad(lat2 - lat1) / 2) ** 2 +
    Math.cos(rad(lat1)) * Math.cos(rad(lat2)) * Math.sin(rad(lon2 - lon1) / 2) ** 2;
  return 2 * RADIUS * Math.asin(Math.min(1, Math.sqrt(a)));
}

/** A place this far from all the others, km, that comes near to them when mended, is a slip. */
export const FAR = 500;
export const NEAR = 50;

/** Slips in writing positions, each with what mends it. */
export const MENDS = [
  ["latitude and longitude exchanged", (lat: number, lon: number) => [lon, lat]],
  ["the sign of the longitude lost", (lat: number, lon: number) => [lat, -lon]],
  ["the sign of the latitude lost", (lat: number, lon: number) => [-lat, lon]],
] as const;

/** The slip by which a place far from another one would come near to it; null if there is none. */
export function slipOf(
  [lat, lon]: readonly [number, number],
  other: readonly [number, number],
): string | null {
  if (distance(lat, lon, ...other) <= FAR) return null;
  const found = MENDS.find(([, mend]) => {
    const [y = 0, x = 0] = mend(lat, lon);
    return Math.abs(y) <= 90 && distance(y, x, ...other) < NEAR;
  });
  return found?.[0] ?? null;
}
