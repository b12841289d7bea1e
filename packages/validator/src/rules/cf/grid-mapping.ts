import type { Edition } from "../../engine/edition.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";

/** Names of appendix F that came after 1.6, with their edition. */
const LATER: Readonly<Record<string, Edition>> = {
  geostationary: "1.7",
  oblique_mercator: "1.7",
  sinusoidal: "1.7",
  healpix: "1.13",
};

/** Names of appendix F. */
const MAPPINGS = [
  "albers_conical_equal_area",
  "azimuthal_equidistant",
  "geostationary",
  "healpix",
  "lambert_azimuthal_equal_area",
  "lambert_conformal_conic",
  "lambert_cylindrical_equal_area",
  "latitude_longitude",
  "mercator",
  "oblique_mercator",
  "orthographic",
  "polar_stereographic",
  "rotated_latitude_longitude",
  "sinusoidal",
  "stereographic",
  "transverse_mercator",
  "vertical_perspective",
];

export const gridMapping = defineRule({
  id: "cf/grid-mapping",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("5.6"),
  covers: ["CF-5.6-R1", "CF-5.6-R2", "CF-5.6-R3", "CF-5.6-R5"],
  title: "grid_mapping names a variable that tells the horizontal reference system",
  why: "Without it positions may be off by hundreds of metres.",
  remedy: 'Name a variable with grid_mapping_name = "latitude_longitude" and the figure of the earth.',
  messages: {
    unknown: "grid_mapping of {variable} names {found}, which is no variable of the file",
    long: "grid_mapping of {variable} has the form with coordinates, which CF knows since 1.7",
    name: "{variable} is a grid mapping with the grid_mapping_name {found}",
  },
  passing: [
    `variables: int crs ; crs:grid_mapping_name = "latitude_longitude" ; float t ; t:grid_mapping = "crs" ;`,
    `variables: int crs ; crs:grid_mapping_name = "latitude_longitude" ; float lat ; float t ; t:grid_mapping = "crs: lat" ;`,
  ],
  failing: [
    {
      cdl: `variables: float t ; t:grid_mapping = "crs" ;`,
      where: { variable: "t", attribute: "grid_mapping" },
      message: "unknown",
    },
    {
      cdl: `variables: int crs ; crs:grid_mapping_name = "latitude_longitude" ; float lat ; float t ; t:grid_mapping = "crs: lat" ;`,
      edition: "1.6",
      where: { variable: "t", attribute: "grid_mapping" },
      message: "long",
    },
    {
      cdl: `variables: int crs ; crs:grid_mapping_name = "wgs84" ; float t ; t:grid_mapping = "crs" ;`,
      where: { variable: "crs", attribute: "grid_mapping_name" },
      message: "name",
    },
    {
      cdl: `variables: int crs ; float t ; t:grid_mapping = "crs" ;`,
      where: { variable: "crs", attribute: "grid_mapping_name" },
      message: "name",
    },
  ],
  check(dataset, report) {
    const mappings = new Set(dataset.all.filter((variable) => variable.has("grid_mapping_name")));
    for (const variable of dataset.all) {
      const words = variable.words("grid_mapping");
      const long = words.some((word) => word.endsWith(":"));
      if (long && dataset.until("1.6"))
        report({ variable: variable.name, attribute: "grid_mapping" }, "long", { found: words.join(" ") });
      for (const word of words) {
        const name = word.endsWith(":") ? word.slice(0, -1) : word;
        const target = dataset.named(name, variable.name);
        if (target === null)
          report({ variable: variable.name, attribute: "grid_mapping" }, "unknown", { found: name });
        else if (word.endsWith(":") || !long) mappings.add(target);
      }
    }
    for (const { name, attributes } of mappings) {
      const found = attributes.get("grid_mapping_name")?.value ?? null;
      if (typeof found === "string" && MAPPINGS.includes(found) && dataset.since(LATER[found] ?? "1.0"))
        continue;
      const told = found === null ? null : String(found);
      report({ variable: name, attribute: "grid_mapping_name" }, "name", {
        found: told,
        expected: "a name of appendix F",
      });
    }
  },
});
