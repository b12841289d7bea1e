import { cfClause, defineRule } from "../../engine/rule.ts";

const BY_VOLUME = ["ppv", "ppmv", "ppbv", "pptv", "ppqv"];

export const unitsPartsPer = defineRule({
  id: "cf/units-parts-per",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("3.1"),
  editions: { since: "1.11" },
  covers: ["CF-3.1-R3"],
  title: "ppmv and its relatives are not used together with a standard name",
  why: "The standard name already says what the fraction is of; the unit is the bare number.",
  remedy: "Write 1e-6 and so on for the unit of {variable}.",
  messages: { volume: 'units of {variable} is "{found}" beside a standard name' },
  passing: [
    `variables: float x ; x:units = "1e-6" ; x:standard_name = "mole_fraction_of_carbon_dioxide_in_air" ;`,
    `variables: float x ; x:units = "ppmv" ;`,
    { cdl: `variables: float x ; x:units = "ppmv" ; x:standard_name = "any" ;`, edition: "1.10" },
  ],
  failing: [
    {
      cdl: `variables: float x ; x:units = "ppmv" ; x:standard_name = "mole_fraction_of_carbon_dioxide_in_air" ;`,
      where: { variable: "x", attribute: "units" },
      message: "volume",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const found = variable.text("units");
      if (found === undefined || !variable.has("standard_name")) continue;
      if (found.split(/[\s/*.]+/).some((word) => BY_VOLUME.includes(word)))
        report({ variable: variable.name, attribute: "units" }, "volume", { found });
    }
  },
});
