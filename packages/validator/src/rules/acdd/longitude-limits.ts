import { defineRule } from "../../engine/rule.ts";
import { spanOf } from "../../engine/span.ts";
import { acddTier } from "./attribute-rule.ts";
import { coordinatesOfKind, statedNumber, toleranceOf, validValues } from "./coverage.ts";
import { castCdl } from "./limits-example.ts";

/** The longitude that differs by whole turns and lies in `start` to `start` + 360. */
const turn = (longitude: number, start: number): number =>
  longitude - 360 * Math.floor((longitude - start) / 360);

/** How far apart two longitudes are, whole turns aside. */
const apart = (a: number, b: number): number => Math.min(turn(a - b, 0), turn(b - a, 0));

export const longitudeLimits = defineRule({
  id: "acdd/longitude-limits",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "reading",
  citation: acddTier("recommended"),
  covers: ["ACDD geospatial_lon_min", "ACDD geospatial_lon_max"],
  title: "The limits of longitude are those of the data",
  why: "Catalogues search by the limits and never open the data; a lost sign puts the survey on the wrong side of the meridian.",
  remedy: "Set {attribute} to {expected}, or correct the longitudes.",
  messages: { other: "{attribute} is {found}, the {end} longitude in the data is {expected}" },
  passing: [
    castCdl(":geospatial_lon_min = -3.25 ; :geospatial_lon_max = -3.25 ;"),
    castCdl(":geospatial_lon_min = 356.75 ; :geospatial_lon_max = 356.75 ;"),
  ],
  failing: [
    {
      cdl: castCdl(":geospatial_lon_min = 3.25 ; :geospatial_lon_max = -3.25 ;"),
      where: { attribute: "geospatial_lon_min" },
      message: "other",
    },
  ],
  async check(dataset, report) {
    const variables = coordinatesOfKind(dataset, "X");
    const values = (await Promise.all(variables.map((variable) => validValues(dataset, variable)))).flatMap(
      (each) => [...each],
    );
    const [min, max] = [
      statedNumber(dataset, "geospatial_lon_min"),
      statedNumber(dataset, "geospatial_lon_max"),
    ];
    if (values.length === 0) return;
    // a smallest value above the largest means a box across the meridian at which the longitudes wrap
    const crosses = min !== null && max !== null && min > max + 1e-6 && spanOf(values)[1] > min - 1e-4;
    const turned = crosses ? values.map((value) => turn(value, min - 1e-4)) : values;
    const [west, east] = spanOf(turned);
    const step = variables.some(({ type }) => type === "float") ? 360 * 2 ** -24 : 0;
    const judge = (attribute: string, found: number | null, data: number, end: string) => {
      const tolerance = toleranceOf(dataset, attribute, { min: west, max: east, step });
      if (found !== null && apart(found, data) > tolerance)
        report({ attribute }, "other", { found, expected: data, fill: { end } });
    };
    judge("geospatial_lon_min", min, west, "westernmost");
    judge("geospatial_lon_max", max, east, "easternmost");
  },
});
