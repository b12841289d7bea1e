import { cfClause, defineRule } from "../../engine/rule.ts";

export const standardNameAlias = defineRule({
  id: "cf/standard-name-alias",
  status: "stable",
  since: "0.1.0",
  level: "advice",
  basis: "reading",
  citation: cfClause("3.3"),
  covers: ["CF-3.3-R2"],
  title: "The current standard name is used, not an alias",
  why: "Aliases stay legal, but catalogues group by the current name.",
  remedy: "Use {expected} for {variable}.",
  messages: { alias: 'standard_name of {variable}, "{found}", is an alias of "{expected}"' },
  passing: [`variables: float t ; t:standard_name = "sea_water_temperature" ;`],
  failing: [
    {
      cdl: `variables: float o ; o:standard_name = "chlorophyll_concentration_in_sea_water" ;`,
      where: { variable: "o", attribute: "standard_name" },
      message: "alias",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const name = variable.standardName;
      const current = name === undefined ? null : (dataset.vocabulary.find(name)?.aliasOf ?? null);
      if (name === undefined || current === null) continue;
      report({ variable: variable.name, attribute: "standard_name" }, "alias", {
        found: name,
        expected: current,
      });
    }
  },
});
