import { isTextType, plainOf } from "../../engine/attribute-value.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";

/** Numbers of table F.1 that latitude and longitude use. */
const NUMBERS = [
  "earth_radius",
  "inverse_flattening",
  "longitude_of_prime_meridian",
  "semi_major_axis",
  "semi_minor_axis",
];
const NAMES = [
  "geographic_crs_name",
  "horizontal_datum_name",
  "prime_meridian_name",
  "reference_ellipsoid_name",
];

/** Texts of table F.1. */
const TEXTS = [...NAMES, "crs_wkt", "geoid_name", "geopotential_datum_name", "projected_crs_name"];

const crs = (attributes: string) =>
  `variables: int crs ; crs:grid_mapping_name = "latitude_longitude" ; ${attributes} float t ; t:grid_mapping = "crs" ;`;

export const gridMappingParts = defineRule({
  id: "cf/grid-mapping-parts",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("5.6"),
  covers: ["CF-5.6-R6", "CF-5.6-R8", "CF-5.6-A1"],
  title: "The figure of the earth is given in numbers, and the names of the reference system all or none",
  why: "Programs compute with the numbers; text in their place is passed over.",
  remedy: "Correct {attribute} of {variable}.",
  messages: {
    number: "{attribute} of {variable} is {found}, not a number",
    text: "{attribute} of {variable} is {found}, not a text",
    names: "{variable} has {found} but not {attribute}",
    scalar: "the grid mapping {variable} has dimensions, though it holds no data",
  },
  passing: [crs("crs:semi_major_axis = 6378137. ;"), "variables: float t ;"],
  failing: [
    {
      cdl: crs('crs:semi_major_axis = "6378137" ;'),
      where: { variable: "crs", attribute: "semi_major_axis" },
      message: "number",
    },
    {
      cdl: crs("crs:crs_wkt = 4326 ;"),
      where: { variable: "crs", attribute: "crs_wkt" },
      message: "text",
    },
    {
      cdl: crs('crs:geographic_crs_name = "WGS 84" ;'),
      where: { variable: "crs", attribute: "horizontal_datum_name" },
      message: "names",
    },
    {
      cdl: `dimensions: n = 2 ; ${crs("").replace("int crs", "int crs(n)")}`,
      where: { variable: "crs" },
      message: "scalar",
      level: "warning",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const { name, attributes } = variable;
      if (!variable.has("grid_mapping_name")) continue;
      for (const attribute of NUMBERS) {
        const given = attributes.get(attribute);
        if (given !== undefined && isTextType(given.type))
          report({ variable: name, attribute }, "number", { found: plainOf(given) });
      }
      for (const attribute of TEXTS) {
        const given = attributes.get(attribute);
        if (given !== undefined && !isTextType(given.type))
          report({ variable: name, attribute }, "text", { found: plainOf(given) });
      }
      const found = NAMES.filter((each) => variable.has(each));
      const missing = NAMES.find((each) => !variable.has(each));
      if (dataset.since("1.7") && found.length > 0 && missing !== undefined)
        report({ variable: name, attribute: missing }, "names", { found });
      if (variable.allDimensions.length > 0) report({ variable: name }, "scalar", { level: "warning" });
    }
  },
});
