import type { Cast, Column } from "../cast/cast.ts";
import { valuesOf, withColumns, withStep, withTest } from "../cast/change.ts";
import { layerMeans } from "../cast/layer-means.ts";
import { Flag } from "./flag.ts";
import { countCaught } from "./flags-of-test.ts";
import { judgedRuns, judgeRuns } from "./judged-rows.ts";
import { distanceKm } from "./location.ts";
import { MANUAL } from "./manual-flags.ts";
import { type NeighbourLayer, neighbour } from "./neighbour.ts";

export type NeighbourQuantity = "temperature" | "conductivity" | "salinity";

export interface NeighbourParameters {
  /** Largest differences by layer; a quantity without any is not judged. */
  readonly limits: Partial<Readonly<Record<NeighbourQuantity, readonly NeighbourLayer[]>>>;
  /** An earlier profile counts as a neighbour within this distance and time. */
  readonly withinKm: number;
  readonly withinHours: number;
}

export const neighbourDefaults: NeighbourParameters = { limits: {}, withinKm: 1, withinHours: 24 };

/** The latest earlier profile near a cast; null if there is none, or if place or time are not known. */
export function formerProfile(
  cast: Cast,
  casts: readonly Cast[],
  { withinKm, withinHours }: NeighbourParameters,
): Cast | null {
  const { start, time } = cast;
  if (cast.kind !== "profile" || start === null || Number.isNaN(time)) return null;
  let latest: Cast | null = null;
  for (const other of casts) {
    const age = time - other.time;
    if (other.kind !== "profile" || other.start === null || !(age > 0 && age <= withinHours * 3600)) continue;
    const away = distanceKm(start.latitude, start.longitude, other.start.latitude, other.start.longitude);
    if (!(away <= withinKm)) continue;
    if (latest === null || other.time > latest.time) latest = other;
  }
  return latest;
}

/**
 * Compares the downcast of a judged cast with the layer means of an earlier one: what differs by more than the limits
 * is questionable, and so is what was computed from it.
 */
export function judgeNeighbour(cast: Cast, former: Cast, { limits }: NeighbourParameters): Cast {
  const pressure = valuesOf(cast, "pressure");
  const names = Object.keys(limits) as NeighbourQuantity[];
  if (pressure === null || names.length === 0) return cast;
  const layers = layerMeans(former, { width: 1, coordinate: "pressure", direction: "down" });
  const down = judgedRuns(cast.segments).filter(({ kind }) => kind === "down");
  const doubted = new Map<string, Uint8Array>();
  const counts: Record<string, number> = {};
  const changed: Column[] = [];
  for (const [name, column] of cast.columns) {
    const own = limits[name as NeighbourQuantity];
    const mean = layers.columns.get(name)?.mean;
    const results: Uint8Array[] = (column.method?.from ?? []).flatMap((input) => doubted.get(input) ?? []);
    let judged = column;
    if (own !== undefined && mean !== undefined) {
      const known = [...mean.keys()].filter((k) => !Number.isNaN(mean[k]!));
      const earlier = {
        pressure: Float64Array.from(known, (k) => layers.centres[k]!),
        values: Float64Array.from(known, (k) => mean[k]!),
      };
      const result = judgeRuns(cast.rows, down, column.values, [column.values, pressure], (x, p) =>
        neighbour(x!, p!, earlier, own),
      );
      counts[name] = countCaught(result);
      judged = withTest(column, "neighbour", result);
      results.push(result);
    }
    if (results.length === 0) continue;
    const flags = judged.flags.slice();
    const doubts = new Uint8Array(cast.rows);
    const said = judged.tests.get(MANUAL);
    for (const result of results)
      for (let k = 0; k < flags.length; k++)
        // what a person judged stands, and is passed on as it stands
        if (result[k] === Flag.questionable && (said?.[k] ?? 0) === 0) {
          doubts[k] = Flag.questionable;
          if (flags[k]! < Flag.questionable) flags[k] = Flag.questionable;
        }
    doubted.set(name, doubts);
    changed.push({ ...judged, flags });
  }
  const found = Object.entries(counts).map(([name, count]) => `${count} in ${name}`);
  return withStep(withColumns(cast, ...changed), {
    step: "neighbour test",
    parameters: {
      former: former.id,
      ...Object.fromEntries(names.map((name) => [`${name}.layers`, JSON.stringify(limits[name])])),
    },
    counts,
    words: `compared with the earlier cast ${former.id}: questionable ${found.length === 0 ? "nothing" : found.join(", ")}`,
  });
}
