import { cfClause, defineRule } from "../../engine/rule.ts";

/** First words of a coordinate reference system in either edition of the notation (ISO 19162, OGC 01-009). */
const FIRST =
  /^(?:BOUNDCRS|COMPOUNDCRS|COMPD_CS|GEODCRS|GEODETICCRS|GEOGCRS|GEOGRAPHICCRS|GEOGCS|GEOCCS|PROJCRS|PROJECTEDCRS|PROJCS|VERTCRS|VERTICALCRS|VERT_CS|ENGCRS|ENGINEERINGCRS|LOCAL_CS|DERIVEDPROJCRS)\s*[[(]/i;

/** Whether brackets close in the order in which they open, quotes apart. */
function balanced(text: string): boolean {
  const open: string[] = [];
  for (const sign of text.replace(/"(?:[^"]|"")*"/g, "")) {
    if (sign === '"') return false;
    if (sign === "[" || sign === "(") open.push(sign);
    if (sign === "]" && open.pop() !== "[") return false;
    if (sign === ")" && open.pop() !== "(") return false;
  }
  return open.length === 0;
}

const crs = (text: string) =>
  `variables: int c ; c:grid_mapping_name = "latitude_longitude" ; c:crs_wkt = "${text}" ;`;

export const crsWkt = defineRule({
  id: "cf/crs-wkt",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "reading",
  citation: cfClause("5.6"),
  editions: { since: "1.7" },
  covers: ["CF-5.6-R7"],
  title: "crs_wkt is a reference system in well-known text",
  why: "A text that no program can read leaves the positions without a reference system.",
  remedy:
    "Copy the well-known text again from its source, or remove crs_wkt. Only its frame is examined here.",
  messages: {
    first: "crs_wkt of {variable} begins with none of the words for a reference system",
    brackets: "brackets or quotes of crs_wkt of {variable} do not match",
  },
  passing: [crs('GEOGCRS[\\"WGS 84\\",DATUM[\\"World Geodetic System 1984\\"]]')],
  failing: [
    { cdl: crs("EPSG:4326"), where: { variable: "c", attribute: "crs_wkt" }, message: "first" },
    { cdl: crs("GEOGCRS[1,(2]"), where: { variable: "c", attribute: "crs_wkt" }, message: "brackets" },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const text = variable.text("crs_wkt");
      if (text === undefined) continue;
      const where = { variable: variable.name, attribute: "crs_wkt" };
      if (!FIRST.test(text.trim())) report(where, "first");
      else if (!balanced(text)) report(where, "brackets");
    }
  },
});
