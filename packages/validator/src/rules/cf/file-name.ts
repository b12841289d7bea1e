import { cfClause, defineRule } from "../../engine/rule.ts";

export const fileName = defineRule({
  id: "cf/file-name",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("2.1"),
  covers: ["CF-2.1-R1"],
  title: "The name of a netCDF file ends in .nc",
  why: "Programs and archives recognise the format by this ending.",
  remedy: "Rename the file so that it ends in .nc.",
  messages: { other: "the file is called {found}" },
  passing: [`:title = "any" ;`],
  failing: [{ cdl: `:title = "any" ;`, path: "casts.cdf", where: {}, message: "other" }],
  check(dataset, report) {
    const name = dataset.path.split(/[\\/]/).at(-1) ?? "";
    if (!name.toLowerCase().endsWith(".nc"))
      report({}, "other", { found: name, expected: "a name ending in .nc" });
  },
});
