import type { SurveySheet } from "@wherry/contracts";
import { longitudeRange } from "../writers/coverage.ts";
import { type CastFacts, earliest, type ProductFacts } from "./product-facts.ts";

/** What records, read-me and position list are made of: the sheet, and what the products themselves say. */
export interface DataSetFacts {
  readonly sheet: SurveySheet;
  /** Moment of writing, ISO 8601 UTC. */
  readonly created: string;
  readonly software: string;
  readonly products: readonly ProductFacts[];
  /** Every cast once, in time order. */
  readonly casts: readonly CastFacts[];
  readonly box: {
    readonly west: number;
    readonly east: number;
    readonly south: number;
    readonly north: number;
  } | null;
  readonly time: { readonly start: string; readonly end: string } | null;
  readonly vertical: { readonly least: number; readonly most: number; readonly units: string } | null;
}

/** The facts of a data set from those of its products. */
export function dataSetFacts(
  sheet: SurveySheet,
  products: readonly ProductFacts[],
  made: { readonly created: string; readonly software: string },
): DataSetFacts {
  const casts = new Map<string, CastFacts>();
  // a full product tells more of a cast than layers do
  for (const product of [...products].sort((a, b) => b.variables.length - a.variables.length))
    for (const cast of product.casts) if (!casts.has(cast.id)) casts.set(cast.id, cast);
  const order = [...casts.values()].sort((a, b) => earliest(a) - earliest(b) || (a.id < b.id ? -1 : 1));
  return {
    sheet,
    ...made,
    products,
    casts: order,
    box: boxOf(order),
    time: timeOf(products),
    vertical: verticalOf(products),
  };
}

function boxOf(casts: readonly CastFacts[]): DataSetFacts["box"] {
  const placed = casts.filter(({ latitude, longitude }) => !Number.isNaN(latitude + longitude));
  if (placed.length === 0) return null;
  const latitudes = placed.map(({ latitude }) => latitude);
  return {
    ...longitudeRange(placed.map(({ longitude }) => longitude)),
    south: Math.min(...latitudes),
    north: Math.max(...latitudes),
  };
}

/** Moments in UTC of equal form are ordered as texts are. */
function timeOf(products: readonly ProductFacts[]): DataSetFacts["time"] {
  const texts = (name: string) =>
    products
      .flatMap(({ attributes }) => attributes.get(name) ?? [])
      .map(String)
      .sort();
  const start = texts("time_coverage_start")[0];
  const end = texts("time_coverage_end").at(-1);
  return start === undefined || end === undefined ? null : { start, end };
}

function verticalOf(products: readonly ProductFacts[]): DataSetFacts["vertical"] {
  const units = products.flatMap(({ attributes }) => attributes.get("geospatial_vertical_units") ?? [])[0];
  if (typeof units !== "string") return null;
  const same = products.filter(({ attributes }) => attributes.get("geospatial_vertical_units") === units);
  const values = (name: string) =>
    same.flatMap(({ attributes }) => {
      const value = attributes.get(name);
      return typeof value === "number" ? [value] : [];
    });
  const least = values("geospatial_vertical_min");
  const most = values("geospatial_vertical_max");
  return least.length === 0 || most.length === 0
    ? null
    : { least: Math.min(...least), most: Math.max(...most), units };
}
