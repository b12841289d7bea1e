import { feature } from "topojson-client";

type Topology = Parameters<typeof feature>[0];

/** Edges of the land, in degrees, by the whole degrees of latitude that they touch. */
interface Land {
  /** Four numbers an edge: longitude and latitude of both ends. */
  readonly edges: Float64Array;
  readonly byLatitude: ReadonlyMap<number, readonly number[]>;
}

const KM_A_DEGREE = 111.195;

/** Scales at which Natural Earth draws land: 1:110 million is read fast, 1:50 million shows bays and estuaries. */
const SCALES = {
  rough: () => import("world-atlas/land-110m.json", { with: { type: "json" } }),
  fair: () => import("world-atlas/land-50m.json", { with: { type: "json" } }),
} as const;

type Scale = keyof typeof SCALES;

const lands = new Map<Scale, Promise<Land>>();

/** The land at a scale, read when it is first asked for. */
function land(scale: Scale): Promise<Land> {
  let known = lands.get(scale);
  if (known === undefined) {
    known = SCALES[scale]().then(({ default: topology }) => landOf(topology as unknown as Topology));
    lands.set(scale, known);
  }
  return known;
}

function landOf(topology: Topology): Land {
  const drawn = feature(topology, topology.objects.land!);
  const pieces = "features" in drawn ? drawn.features : [drawn];
  const edges: number[] = [];
  const byLatitude = new Map<number, number[]>();
  for (const { geometry } of pieces) {
    const polygons =
      geometry.type === "MultiPolygon"
        ? geometry.coordinates
        : geometry.type === "Polygon"
          ? [geometry.coordinates]
          : [];
    for (const ring of polygons.flat())
      for (let i = 1; i < ring.length; i += 1) {
        const [x1 = 0, y1 = 0] = ring[i - 1] ?? [];
        const [x2 = 0, y2 = 0] = ring[i] ?? [];
        const at = edges.push(x1, y1, x2, y2) - 4;
        for (let y = Math.floor(Math.min(y1, y2)); y <= Math.max(y1, y2); y += 1) {
          const band = byLatitude.get(y);
          if (band === undefined) byLatitude.set(y, [at]);
          else band.push(at);
        }
      }
  }
  return { edges: Float64Array.from(edges), byLatitude };
}

/** Whether a place is on land: a line from it to the east meets an odd number of coasts. The map ends at 180 degrees. */
function isOnLand({ edges, byLatitude }: Land, lat: number, lon: number): boolean {
  let inside = false;
  for (const at of byLatitude.get(Math.floor(lat)) ?? []) {
    const [x1, y1, x2, y2] = [edges[at]!, edges[at + 1]!, edges[at + 2]!, edges[at + 3]!];
    if (y1 > lat !== y2 > lat && lon < x1 + ((lat - y1) / (y2 - y1)) * (x2 - x1)) inside = !inside;
  }
  return inside;
}

/** Distance to the nearest coast, km, or more than `within`; on a plane about the place; right for the distances that matter here. */
function toCoast({ edges, byLatitude }: Land, lat: number, lon: number, within: number): number {
  const scale = KM_A_DEGREE * Math.cos((lat * Math.PI) / 180);
  let least = Number.POSITIVE_INFINITY;
  const reach = Math.ceil(within / KM_A_DEGREE);
  for (let y = Math.floor(lat) - reach; y <= Math.floor(lat) + reach; y += 1)
    for (const at of byLatitude.get(y) ?? []) {
      const [x1, x2] = [(edges[at]! - lon) * scale, (edges[at + 2]! - lon) * scale];
      // most edges of a degree of latitude are far off
      if ((x1 > within && x2 > within) || (x1 < -within && x2 < -within)) continue;
      const [y1, y2] = [(edges[at + 1]! - lat) * KM_A_DEGREE, (edges[at + 3]! - lat) * KM_A_DEGREE];
      const length = (x2 - x1) ** 2 + (y2 - y1) ** 2;
      const along = length === 0 ? 0 : -(x1 * (x2 - x1) + y1 * (y2 - y1)) / length;
      const part = Math.min(1, Math.max(0, along));
      least = Math.min(least, Math.hypot(x1 + part * (x2 - x1), y1 + part * (y2 - y1)));
    }
  return least;
}

/** Distances beyond this are given as this, km. */
const TOLD = 200;

/** Places whose distance is worked out; the others are known to lie far enough. */
const MEASURED = 20;

/**
 * Distances inland by the coastline of Natural Earth, which leaves out narrow inlets, lakes and small islands.
 *
 * Places that even the roughest coastline has at sea are answered without reading the finer one.
 *
 * @param least  distance below which 0 is given, km
 * @returns      km for each place; 0 at sea, 200 for 200 and more; after the first twenty places inland `least` for
 *               those that lie at least so far
 */
export async function inland(
  places: readonly (readonly [lat: number, lon: number])[],
  least: number,
): Promise<number[]> {
  const rough = await land("rough");
  const wrapped = places.map(([lat, lon]) => [lat, ((((lon + 180) % 360) + 360) % 360) - 180] as const);
  const perhaps = wrapped.map(([lat, lon]) => isOnLand(rough, lat, lon));
  if (!perhaps.includes(true)) return places.map(() => 0);
  const fair = await land("fair");
  let measured = 0;
  return wrapped.map(([lat, lon], index) => {
    if (!perhaps[index] || !isOnLand(fair, lat, lon)) return 0;
    if (toCoast(fair, lat, lon, least) < least) return 0;
    measured += 1;
    return measured > MEASURED ? least : Math.min(TOLD, toCoast(fair, lat, lon, TOLD));
  });
}
