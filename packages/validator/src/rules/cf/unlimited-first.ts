import { cfClause, defineRule } from "../../engine/rule.ts";

export const unlimitedFirst = defineRule({
  id: "cf/unlimited-first",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("9.3"),
  editions: { since: "1.6" },
  covers: ["CF-9.3-T24"],
  title: "An unlimited dimension of features or elements is the outermost of the data",
  why: "The layouts of chapter 9 are defined so; software appends along the first dimension.",
  remedy: "Put {dimension} first in {variable}, or make it a fixed dimension.",
  messages: { inner: "{dimension} is unlimited but not the first dimension of {variable}" },
  passing: [
    `:featureType = "timeSeries" ; dimensions: time = UNLIMITED ; station = 2 ; variables: float t(time, station) ;`,
  ],
  failing: [
    {
      cdl: `netcdf a { dimensions: station = 2 ; time = UNLIMITED ; variables: float t(station, time) ;
     :featureType = "timeSeries" ; :_Format = "netCDF-4" ; }`,
      where: { variable: "t", dimension: "time" },
      message: "inner",
    },
  ],
  check(dataset, report) {
    if (dataset.layout.featureType === null) return;
    const isUnlimited = (name: string | undefined) => dataset.dimensions.get(name ?? "")?.unlimited === true;
    for (const { name, dimensions } of dataset.sampled) {
      // netCDF-4 may have several; only one of them can be first
      if (isUnlimited(dimensions[0])) continue;
      const inner = dimensions.find(isUnlimited);
      if (inner !== undefined) report({ variable: name, dimension: inner }, "inner");
    }
  },
});
