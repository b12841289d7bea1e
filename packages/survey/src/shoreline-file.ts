import type { Shoreline } from "@wherry/charts";
import { fail, type Problem, type Result, succeed } from "@wherry/core";
import { readJson } from "./json-file.ts";

/** How deep the arrays of coordinates lie that a kind of geometry has. */
const DEPTHS: Readonly<Record<string, number>> = {
  LineString: 1,
  MultiLineString: 2,
  Polygon: 2,
  MultiPolygon: 3,
};

/**
 * A shore of the user's own: GeoJSON (RFC 7946) whose polygons are land and whose lines are shore; points are passed
 * over. Null without a path.
 */
export async function readShoreline(path: string | undefined): Promise<Result<Shoreline | null>> {
  if (path === undefined) return succeed(null);
  const read = await readJson(path);
  if (!read.ok) return read;
  const complaint = complaintAbout(read.value);
  if (complaint !== null) return fail(problem(path, complaint));
  return succeed(read.value as Shoreline);
}

const problem = (file: string, message: string): Problem => ({
  code: "shoreline/not-geojson",
  message,
  where: { file },
  remedy:
    "Give GeoJSON (RFC 7946) with polygons of land or lines of shore, positions as degrees east and north.",
});

/** What is wrong with a value as GeoJSON, or null. */
function complaintAbout(value: unknown): string | null {
  if (!isObject(value) || typeof value.type !== "string") return "the document is no GeoJSON object";
  if (value.type === "FeatureCollection") return firstComplaint(value.features, "features");
  if (value.type === "GeometryCollection") return firstComplaint(value.geometries, "geometries");
  if (value.type === "Feature") return value.geometry === null ? null : complaintAbout(value.geometry);
  if (value.type === "Point" || value.type === "MultiPoint") return null;
  const depth = DEPTHS[value.type];
  if (depth === undefined) return `${value.type.slice(0, 60)} is no kind of geometry`;
  return positionsAreDegrees(value.coordinates, depth)
    ? null
    : `a ${value.type} has positions that are not degrees east and north`;
}

function firstComplaint(members: unknown, name: string): string | null {
  if (!Array.isArray(members)) return `its ${name} are no list`;
  for (const member of members) {
    const complaint = complaintAbout(member);
    if (complaint !== null) return complaint;
  }
  return null;
}

function positionsAreDegrees(value: unknown, depth: number): boolean {
  if (!Array.isArray(value)) return false;
  if (depth > 0) return value.every((each) => positionsAreDegrees(each, depth - 1));
  const [longitude, latitude] = value as unknown[];
  return (
    typeof longitude === "number" &&
    typeof latitude === "number" &&
    Math.abs(longitude) <= 360 &&
    Math.abs(latitude) <= 90
  );
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null;
