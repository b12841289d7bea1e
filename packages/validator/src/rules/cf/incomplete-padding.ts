import { cfClause, defineRule } from "../../engine/rule.ts";

const padded = (z: string, t: string) => `:featureType = "profile" ; dimensions: p = 1 ; o = 3 ; variables:
  int i(p) ; i:cf_role = "profile_id" ;
  float z(p, o) ; z:units = "m" ; z:positive = "down" ; z:_FillValue = -9.f ;
  float t(p, o) ; t:_FillValue = -9.f ; t:coordinates = "z" ; data: i = 1 ; z = ${z} ; t = ${t} ;`;

export const incompletePadding = defineRule({
  id: "cf/incomplete-padding",
  status: "stable",
  since: "0.1.0",
  level: "advice",
  basis: "reading",
  citation: cfClause("9.6"),
  editions: { since: "1.7" },
  covers: ["CF-9.6-T34", "CF-9.3.2-T26"],
  title: "Unused elements of an incomplete array are missing in data and coordinates alike",
  why: "A value without a place cannot be used: generic readers take it for missing.",
  remedy: "Fill the missing places of {other}, or set the values of {variable} missing there.",
  messages: { data: "{variable} has values where its coordinate {other} is missing" },
  passing: [padded("1, 2, -9", "5, 6, -9"), padded("1, 2, 3", "5, 6, -9")],
  failing: [{ cdl: padded("1, -9, -9", "5, 6, -9"), where: { variable: "t" }, message: "data" }],
  async check(dataset, report) {
    if (dataset.layout.form !== "incomplete") return;
    for (const variable of dataset.sampled) {
      if (variable.role !== "data" || variable.isText) continue;
      for (const coordinate of dataset.listed(variable, "coordinates")) {
        if (coordinate.role !== "auxiliary" || coordinate === variable) continue;
        if (coordinate.dimensions.join() !== variable.dimensions.join()) continue;
        const places = await dataset.data.numbers(coordinate.name);
        const values = await dataset.data.numbers(variable.name);
        if (places === null || values === null) continue;
        const found = Array.from(values.keys()).filter(
          (i) => !Number.isNaN(values[i]!) && Number.isNaN(places[i]!),
        );
        if (found.length > 0)
          report({ variable: variable.name }, "data", { places: found, fill: { other: coordinate.name } });
      }
    }
  },
});
