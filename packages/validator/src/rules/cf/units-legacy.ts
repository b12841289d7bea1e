import { cfClause, defineRule } from "../../engine/rule.ts";

export const unitsLegacy = defineRule({
  id: "cf/units-legacy",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("3.1"),
  covers: ["CF-3.1-A1"],
  title: "level, layer and sigma_level are no longer used as units",
  why: "They come from an older convention and name no unit.",
  remedy: 'Use "1" for numbers of levels, or give the depth itself.',
  messages: { legacy: 'units of {variable} is "{found}"' },
  passing: [`variables: float z ; z:units = "1" ;`],
  failing: [
    {
      cdl: `variables: float z ; z:units = "level" ;`,
      where: { variable: "z", attribute: "units" },
      message: "legacy",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const found = variable.text("units");
      if (found !== undefined && ["level", "layer", "sigma_level"].includes(found))
        report({ variable: variable.name, attribute: "units" }, "legacy", { found });
    }
  },
});
