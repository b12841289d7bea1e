import { convertUnits } from "@wherry/core";
import { defineRule } from "../../engine/rule.ts";
import { unitOf } from "../../engine/unit-kinds.ts";
import type { VariableView } from "../../engine/variable-view.ts";
import { acddTier } from "./attribute-rule.ts";
import { coordinatesOfKind, extentOf, statedNumber, toleranceOf } from "./coverage.ts";
import { castCdl } from "./limits-example.ts";

export const verticalLimits = defineRule({
  id: "acdd/vertical-limits",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "reading",
  citation: acddTier("recommended"),
  covers: [
    "ACDD geospatial_vertical_min",
    "ACDD geospatial_vertical_max",
    "ACDD geospatial_vertical_positive",
  ],
  title: "The vertical limits and their sense are those of the data",
  why: "Catalogues search by the limits and never open the data; a wrong sense turns depths into heights.",
  remedy: "Set {attribute} to {expected}, or correct the vertical coordinate.",
  messages: {
    other: "{attribute} is {found}, the {end} value of the vertical coordinate is {expected}",
    positive: "{attribute} is {found}, but positive of the vertical coordinate {other} is {expected}",
  },
  passing: [
    castCdl(
      ':geospatial_vertical_min = 1. ; :geospatial_vertical_max = 9. ; :geospatial_vertical_positive = "down" ;',
    ),
    castCdl(':geospatial_vertical_max = 0.009 ; :geospatial_vertical_units = "km" ;'),
  ],
  failing: [
    {
      cdl: castCdl(":geospatial_vertical_max = 10. ;"),
      where: { attribute: "geospatial_vertical_max" },
      message: "other",
    },
    {
      cdl: castCdl(':geospatial_vertical_positive = "up" ;'),
      where: { attribute: "geospatial_vertical_positive" },
      message: "positive",
    },
  ],
  async check(dataset, report) {
    const vertical = coordinatesOfKind(dataset, "Z");
    const units = dataset.text("geospatial_vertical_units");
    const convert = (value: number, variable: VariableView) =>
      units === undefined ? value : convertUnits(value, variable.text("units") ?? "", units);
    // a code of a reference system in place of a unit leaves nothing to convert to
    const comparable = units === undefined ? vertical.slice(0, 1) : unitOf(units) === null ? [] : vertical;
    const stated =
      dataset.attributes.has("geospatial_vertical_min") || dataset.attributes.has("geospatial_vertical_max");
    const extent = !stated
      ? null
      : await extentOf(
          dataset,
          comparable.filter((variable) => !Number.isNaN(convert(0, variable))),
          convert,
        );
    for (const end of ["min", "max"] as const) {
      const attribute = `geospatial_vertical_${end}`;
      const found = statedNumber(dataset, attribute);
      if (found === null || extent === null) continue;
      if (Math.abs(found - extent[end]) > toleranceOf(dataset, attribute, extent))
        report({ attribute }, "other", {
          found,
          expected: extent[end],
          fill: { end: end === "min" ? "smallest" : "largest" },
        });
    }
    const attribute = "geospatial_vertical_positive";
    const found = dataset.text(attribute)?.trim().toLowerCase();
    if (found !== "up" && found !== "down") return;
    const senses = vertical.map((variable) => ({
      name: variable.name,
      sense: variable.text("positive")?.toLowerCase(),
    }));
    const [against] = senses.filter(({ sense }) => sense === "up" || sense === "down");
    if (against !== undefined && !senses.some(({ sense }) => sense === found))
      report({ attribute }, "positive", {
        found,
        expected: against.sense ?? "",
        fill: { other: against.name },
      });
  },
});
