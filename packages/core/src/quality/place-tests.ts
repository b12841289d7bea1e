import type { Cast, Column } from "../cast/cast.ts";
import { type JudgedRun, judgeRuns } from "./judged-rows.ts";
import { regionAt, regionalRange } from "./regional-range.ts";
import { surfaceLayer } from "./surface-layer.ts";

/** Published tests that go by where a value was measured; off unless a user asks for them. */
export interface PlaceTests {
  /** Judge temperature and salinity by what is known to occur in the region of the sea. */
  readonly regionalRange: boolean;
  /** dbar above which the surface is taken to be stirred; null: not judged. */
  readonly surfaceLayer: number | null;
}

export const noPlaceTests: PlaceTests = { regionalRange: false, surfaceLayer: null };

/** The region by which a cast is judged; null where its position is not known or the test is not asked for. */
export function judgedRegion(cast: Cast, { regionalRange: asked }: PlaceTests) {
  const position = cast.start ?? cast.end;
  if (!asked || position === null || Number.isNaN(position.latitude + position.longitude)) return null;
  return regionAt(position.longitude, position.latitude);
}

/**
 * Runs the tests asked for on one column.
 *
 * @param pressure dbar, spikes left out; undefined where the cast has none
 * @returns results by test name
 */
export function judgeByPlace(
  cast: Cast,
  name: string,
  { values }: Column,
  pressure: Float64Array | undefined,
  runs: readonly JudgedRun[],
  tests: PlaceTests,
): ReadonlyMap<string, Uint8Array> {
  const results = new Map<string, Uint8Array>();
  const region = judgedRegion(cast, tests);
  if (region !== null && (name === "temperature" || name === "salinity"))
    results.set(
      "regional_range",
      judgeRuns(values.length, runs, values, [values], (x) => regionalRange(x!, region[name].value)),
    );
  const limit = tests.surfaceLayer;
  if (limit !== null && name !== "pressure" && pressure !== undefined && cast.kind === "profile")
    results.set(
      "surface_layer",
      judgeRuns(values.length, runs, values, [values, pressure], (x, p) => surfaceLayer(x!, p!, limit)),
    );
  return results;
}
