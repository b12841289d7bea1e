import {
  type ExtendedFeature,
  type ExtendedFeatureCollection,
  type GeoGeometryObjects,
  type GeoProjection,
  geoArea,
  geoPath,
} from "d3-geo";
import { feature } from "topojson-client";
import fine from "world-atlas/land-50m.json" with { type: "json" };
import coarse from "world-atlas/land-110m.json" with { type: "json" };
import { look } from "./look.ts";
import { element } from "./svg.ts";

/** A shoreline of the user's: polygons are land, lines are shore. */
export type Shoreline = ExtendedFeatureCollection | ExtendedFeature | GeoGeometryObjects;

/** Natural Earth's land at 1:110 million (a globe) or 1:50 million (a map of several hundred kilometres). */
export function naturalEarthLand(scale: "coarse" | "fine"): Shoreline {
  const topology = (scale === "coarse" ? coarse : fine) as unknown as Parameters<typeof feature>[0];
  return feature(topology, topology.objects.land!);
}

export function drawLand(shoreline: Shoreline, projection: GeoProjection): string {
  const path = geoPath(projection).digits(1);
  const d = (object: GeoGeometryObjects) => path(object) ?? "";
  const pieces = piecesOf(shoreline);
  const areas = pieces
    .filter(({ type }) => type === "Polygon")
    .map(asSmallerPart)
    .map(d)
    .join("");
  const lines = pieces
    .filter(({ type }) => type === "LineString")
    .map(d)
    .join("");
  return element("g", { class: "land" }, [
    element("path", { d: areas, fill: look.land, stroke: look.coast, "stroke-width": "0.8" }),
    element("path", { d: lines, fill: "none", stroke: look.coast, "stroke-width": "0.8" }),
  ]);
}

/** Polygons and lines of any GeoJSON, one by one. */
function piecesOf(object: Shoreline): GeoGeometryObjects[] {
  if ("features" in object) return object.features.flatMap(piecesOf);
  if ("geometry" in object) return object.geometry ? piecesOf(object.geometry) : [];
  if ("geometries" in object) return object.geometries.flatMap(piecesOf);
  if (object.type === "MultiPolygon")
    return object.coordinates.map((coordinates) => ({ type: "Polygon", coordinates }));
  if (object.type === "MultiLineString")
    return object.coordinates.map((coordinates) => ({ type: "LineString", coordinates }));
  return [object];
}

/** On a sphere a ring has two sides: files differ in which they mean by their order, and nobody's land is half the Earth. */
function asSmallerPart(polygon: GeoGeometryObjects): GeoGeometryObjects {
  if (polygon.type !== "Polygon" || geoArea(polygon) <= 2 * Math.PI) return polygon;
  return { type: "Polygon", coordinates: polygon.coordinates.map((ring) => [...ring].reverse()) };
}
