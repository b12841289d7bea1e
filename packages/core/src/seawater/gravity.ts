/** Relative change of gravity per metre of height in the ocean (TEOS-10 manual 2010, appendix D.4). */
const GAMMA = 2.26e-7;

/**
 * Gravity at the sea surface.
 *
 * @param lat latitude, degrees north, -90 to 90
 * @returns   acceleration, m s-2; NaN if the input is NaN
 * @source    IOC, SCOR and IAPSO (2010), TEOS-10 manual, appendix D.3; from the formula, 9.780327 at the equator
 */
export function surfaceGravity(lat: number): number {
  const s2 = Math.sin((lat * Math.PI) / 180) ** 2;
  return 9.780327 * (1 + (5.2792e-3 + 2.32e-5 * s2) * s2);
}

/** Gravity, m s-2, at a depth in m below the surface where it is `atSurface`. */
export const gravityAtDepth = (depth: number, atSurface: number): number => atSurface * (1 + GAMMA * depth);

/**
 * Depth below the surface, m, that the work `h` against gravity reaches, gravity growing with depth.
 *
 * @param h         integral of specific volume over pressure from the surface down, J kg-1
 * @param atSurface gravity at the surface, m s-2
 */
export function depthFromWork(h: number, atSurface: number): number {
  const a = -0.5 * GAMMA * atSurface;
  return (2 * h) / (atSurface + Math.sqrt(atSurface * atSurface - 4 * a * h));
}
