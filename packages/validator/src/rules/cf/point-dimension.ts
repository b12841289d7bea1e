import { cfClause, defineRule } from "../../engine/rule.ts";

const points = (lat: string) => `:featureType = "point" ; dimensions: obs = 2 ; other = 2 ; variables:
  double time(obs) ; time:units = "s since 2000-01-01" ; double lat(${lat}) ; lat:units = "degrees_north" ;
  float t(obs) ; t:coordinates = "time lat" ;`;

export const pointDimension = defineRule({
  id: "cf/point-dimension",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("H.1"),
  editions: { since: "1.6" },
  covers: ["CF-H.1-T36"],
  title: "Points and their coordinates share one dimension",
  why: "Each value has its own time and position, at the same index.",
  remedy: "Put {variable} on the dimension of the data.",
  messages: { other: "the coordinate {variable} lies on {found}, the data on {expected}" },
  passing: [points("obs")],
  failing: [{ cdl: points("other"), where: { variable: "lat" }, message: "other" }],
  check(dataset, report) {
    if (dataset.layout.featureType !== "point") return;
    const data = dataset.sampled.filter(({ role, dimensions }) => role === "data" && dimensions.length === 1);
    const dimensions = new Set(data.flatMap((variable) => variable.dimensions));
    const [samples] = dimensions;
    if (samples === undefined || dimensions.size !== 1) return;
    for (const { name, role, dimensions: own } of dataset.coordinates)
      if (role === "auxiliary" && own.length > 0 && own[0] !== samples)
        report({ variable: name }, "other", { found: [...own], expected: samples });
  },
});
