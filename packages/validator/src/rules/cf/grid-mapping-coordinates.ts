import { cfClause, defineRule } from "../../engine/rule.ts";

const mapped = (long: string, more = "") => `dimensions: n = 1 ; variables:
  int crs ; crs:grid_mapping_name = "latitude_longitude" ; float lat(n) ; float t(n) ; ${more}
  t:grid_mapping = "${long}" ;`;
const where = { variable: "t", attribute: "grid_mapping" };

export const gridMappingCoordinates = defineRule({
  id: "cf/grid-mapping-coordinates",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("5.6"),
  editions: { since: "1.7" },
  covers: ["CF-5.6-R4"],
  title: "Coordinates named in the long form of grid_mapping exist and belong to the data",
  why: "The reference system would be given to coordinates that the data do not have.",
  remedy: "Correct grid_mapping of {variable}, or list the coordinate in `coordinates`.",
  messages: {
    unknown: "grid_mapping of {variable} names the coordinate {found}, which is no variable of the file",
    unlisted: "grid_mapping of {variable} names the coordinate {found}, which its `coordinates` do not list",
  },
  passing: [mapped("crs: lat", 't:coordinates = "lat" ;'), mapped("crs")],
  failing: [
    { cdl: mapped("crs: lat lon", 't:coordinates = "lat" ;'), where, message: "unknown" },
    { cdl: mapped("crs: lat"), where, message: "unlisted" },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const words = variable.words("grid_mapping");
      if (!words.some((word) => word.endsWith(":"))) continue;
      const place = { variable: variable.name, attribute: "grid_mapping" };
      const own = dataset.coordinatesOf(variable);
      for (const word of words.filter((each) => !each.endsWith(":"))) {
        const target = dataset.named(word, variable.name);
        // a mapping that does not exist has a rule of its own
        if (target === null) report(place, "unknown", { found: word });
        else if (!own.includes(target)) report(place, "unlisted", { found: word });
      }
    }
  },
});
