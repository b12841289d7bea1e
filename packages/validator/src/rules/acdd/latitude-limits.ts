import { defineRule } from "../../engine/rule.ts";
import { acddTier } from "./attribute-rule.ts";
import { coordinatesOfKind, extentOf, statedNumber, toleranceOf } from "./coverage.ts";
import { castCdl } from "./limits-example.ts";

export const latitudeLimits = defineRule({
  id: "acdd/latitude-limits",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "reading",
  citation: acddTier("recommended"),
  covers: ["ACDD geospatial_lat_min", "ACDD geospatial_lat_max"],
  title: "The limits of latitude are those of the data",
  why: "Catalogues search by the limits and never open the data, so wrong limits hide the data or lead astray.",
  remedy: "Set {attribute} to {expected}, or correct the latitudes.",
  messages: {
    other: "{attribute} is {found}, the {end} latitude in the data is {expected}",
    range: "{attribute} is {found}, which is no latitude",
  },
  passing: [castCdl(":geospatial_lat_min = 50.5 ; :geospatial_lat_max = 50.5 ;")],
  failing: [
    {
      cdl: castCdl(":geospatial_lat_min = 50.5 ; :geospatial_lat_max = 50.6 ;"),
      where: { attribute: "geospatial_lat_max" },
      message: "other",
    },
    {
      cdl: castCdl(":geospatial_lat_min = -95. ;"),
      where: { attribute: "geospatial_lat_min" },
      message: "range",
    },
  ],
  async check(dataset, report) {
    const extent = await extentOf(dataset, coordinatesOfKind(dataset, "Y"));
    for (const end of ["min", "max"] as const) {
      const attribute = `geospatial_lat_${end}`;
      const found = statedNumber(dataset, attribute);
      if (found === null) continue;
      const words = end === "min" ? "smallest" : "largest";
      if (Math.abs(found) > 90)
        report({ attribute }, "range", { found, expected: "a number from -90 to 90" });
      else if (extent !== null && Math.abs(found - extent[end]) > toleranceOf(dataset, attribute, extent))
        report({ attribute }, "other", { found, expected: extent[end], fill: { end: words } });
    }
  },
});
