import { cfClause, defineRule } from "../../engine/rule.ts";

const padded = (z: string) => `:featureType = "profile" ; dimensions: p = 1 ; o = 3 ; variables:
  float z(p, o) ; z:units = "m" ; z:positive = "down" ; z:_FillValue = -9.f ;
  float t(p, o) ; t:_FillValue = -9.f ; t:coordinates = "z" ; data: z = ${z} ; t = 5, 6, -9 ;`;

/** Indices of values whose place is missing. */
function withoutPlace(values: Float64Array, places: Float64Array): number[] {
  const found: number[] = [];
  for (let i = 0; i < values.length; i += 1)
    if (Number.isNaN(places[i]!) && !Number.isNaN(values[i]!)) found.push(i);
  return found;
}

export const missingPlaces = defineRule({
  id: "cf/missing-places",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("9.6"),
  editions: { since: "1.6", until: "1.6" },
  covers: ["CF-9.6-T34"],
  title: "Up to CF 1.6, data have a place wherever they have a value",
  why: "A value without depth or time belongs nowhere; since CF 1.7 it is allowed, but many readers drop it.",
  remedy: "Fill the missing values of the coordinate, remove the data there, or claim CF-1.7 or newer.",
  messages: { data: "{variable} has values where its coordinate {other} is missing" },
  passing: [
    { cdl: padded("1, 2, -9"), edition: "1.6" },
    { cdl: padded("1, -9, -9"), edition: "1.7" },
  ],
  failing: [{ cdl: padded("1, -9, -9"), edition: "1.6", where: { variable: "t" }, message: "data" }],
  async check(dataset, report) {
    if (dataset.layout.featureType === null) return;
    for (const variable of dataset.sampled) {
      if (variable.role !== "data" || variable.isText) continue;
      for (const coordinate of dataset.listed(variable, "coordinates")) {
        const same = coordinate.dimensions.join() === variable.dimensions.join();
        if (coordinate.role !== "auxiliary" || !same || coordinate === variable) continue;
        const places = await dataset.data.numbers(coordinate.name);
        const values = await dataset.data.numbers(variable.name);
        if (places === null || values === null) continue;
        const found = withoutPlace(values, places);
        if (found.length > 0)
          report({ variable: variable.name }, "data", { places: found, fill: { other: coordinate.name } });
      }
    }
  },
});
