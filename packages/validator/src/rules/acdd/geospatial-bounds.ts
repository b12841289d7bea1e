import type { DatasetView } from "../../engine/dataset-view.ts";
import { defineRule } from "../../engine/rule.ts";
import { spanOf } from "../../engine/span.ts";
import { acddTier } from "./attribute-rule.ts";
import { readFigure } from "./bounds-figure.ts";
import { coordinatesOfKind, extentOf, statedNumber } from "./coverage.ts";
import { castCdl } from "./limits-example.ts";

const box =
  ":geospatial_lat_min = 50. ; :geospatial_lat_max = 51. ; :geospatial_lon_min = 3. ; :geospatial_lon_max = 4. ;";
const where = { attribute: "geospatial_bounds" };

/** Smallest and largest of the first or second number of each pair. */
const span = (points: readonly (readonly [number, number])[], which: 0 | 1): [number, number] =>
  spanOf(points.map((point) => point[which]));

const near = (a: readonly number[], b: readonly number[]): boolean =>
  a.every((value, index) => Math.abs(value - (b[index] ?? Number.NaN)) <= 1e-5);

/** Limits of latitude and longitude of the data themselves, where the attributes do not state them. */
async function limitsOfData(dataset: DatasetView): Promise<(number | null)[]> {
  const latitude = await extentOf(dataset, coordinatesOfKind(dataset, "Y"));
  const longitude = await extentOf(dataset, coordinatesOfKind(dataset, "X"));
  const limits = [latitude, longitude].flatMap((extent) => [extent?.min ?? null, extent?.max ?? null]);
  // longitudes that wrap have limits that only a person can choose
  return (longitude?.max ?? 0) - (longitude?.min ?? 0) > 180 ? [null] : limits;
}

export const geospatialBounds = defineRule({
  id: "acdd/geospatial-bounds-figure",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "reading",
  citation: acddTier("recommended"),
  covers: ["ACDD geospatial_bounds"],
  title: "The figure in geospatial_bounds reaches as far as the limits of latitude and longitude",
  why: "Maps draw the figure, searches use the limits; the two must show one place.",
  remedy: "Write the figure as well-known text, latitude first for EPSG:4326, polygons closed.",
  messages: {
    form: "geospatial_bounds is no point, line or polygon in well-known text: {found}",
    open: "the polygon in geospatial_bounds does not end where it begins",
    other: "geospatial_bounds reaches from {found}, {limits} from {expected}",
    order: "geospatial_bounds has longitude before latitude, the other order than EPSG:4326",
  },
  passing: [
    `${box} :geospatial_bounds = "POLYGON ((50 3, 50 4, 51 4, 51 3, 50 3))" ;`,
    ':geospatial_lat_min = 50. ; :geospatial_lat_max = 50. ; :geospatial_lon_min = 3. ; :geospatial_lon_max = 3. ; :geospatial_bounds = "POINT (50 3)" ;',
  ],
  failing: [
    { cdl: ':geospatial_bounds = "50 to 51 north" ;', where, message: "form" },
    {
      cdl: castCdl(':geospatial_bounds = "POINT (10 3)" ;'),
      where,
      message: "other",
    },
    { cdl: ':geospatial_bounds = "POLYGON ((50 3, 50 4, 51 4, 51 3))" ;', where, message: "open" },
    {
      cdl: `${box} :geospatial_bounds = "POLYGON ((50 3, 50 5, 51 5, 51 3, 50 3))" ;`,
      where,
      message: "other",
    },
    {
      cdl: `${box} :geospatial_bounds = "POLYGON ((3 50, 4 50, 4 51, 3 51, 3 50))" ;`,
      where,
      message: "order",
      level: "warning",
    },
  ],
  async check(dataset, report) {
    const text = dataset.text("geospatial_bounds");
    // a collection may hold anything, also what the limits leave out
    if (text === undefined || text.trim() === "" || /^\s*GEOMETRYCOLLECTION/i.test(text)) return;
    const figure = readFigure(text);
    if (figure === null) {
      if (dataset.holdsToAcdd) report(where, "form", { found: text });
      return;
    }
    if (figure.open) report(where, "open", { found: text });
    const stated = ["lat_min", "lat_max", "lon_min", "lon_max"].map((end) =>
      statedNumber(dataset, `geospatial_${end}`),
    );
    const ofData = stated.includes(null);
    const [latMin, latMax, lonMin, lonMax] = ofData ? await limitsOfData(dataset) : stated;
    // a box across the meridian at which longitudes wrap has no simple envelope
    if (latMin == null || latMax == null || lonMin == null || lonMax == null || lonMin > lonMax) return;
    const [first, second] = [span(figure.points, 0), span(figure.points, 1)];
    const expected = [latMin, lonMin, latMax, lonMax];
    if (near([first[0], second[0], first[1], second[1]], expected)) return;
    if (near([second[0], first[0], second[1], first[1]], expected)) {
      const usual = (dataset.text("geospatial_bounds_crs") ?? "EPSG:4326").trim() === "EPSG:4326";
      if (usual) report(where, "order", { level: "warning" });
      return;
    }
    const words = ([a, b, c, d]: readonly number[]) => `${a} ${b} to ${c} ${d}`;
    report(where, "other", {
      found: words([first[0], second[0], first[1], second[1]]),
      expected: words(expected),
      fill: { limits: ofData ? "the data" : "the limits" },
    });
  },
});
