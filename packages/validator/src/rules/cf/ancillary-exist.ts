import { cfClause, defineRule } from "../../engine/rule.ts";

export const ancillaryExist = defineRule({
  id: "cf/ancillary-exist",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("3.4"),
  covers: ["CF-3.4-T4"],
  title: "ancillary_variables lists variables of the file, on dimensions of the data",
  why: "Flags that cannot be found are flags that nobody applies.",
  remedy: "Correct ancillary_variables of {variable}.",
  messages: {
    unknown: "ancillary_variables of {variable} names {found}, which is no variable of the file",
    dimension:
      "ancillary_variables of {variable} names {found}, which has the dimension {dimension} besides those of {variable}",
  },
  passing: [`dimensions: n = 2 ; variables: float t(n) ; t:ancillary_variables = "q" ; byte q(n) ;`],
  failing: [
    {
      cdl: `dimensions: n = 2 ; variables: float t(n) ; t:ancillary_variables = "q, r" ; byte r(n) ;`,
      where: { variable: "t", attribute: "ancillary_variables" },
      message: "unknown",
    },
    {
      cdl: `dimensions: n = 2 ; m = 2 ; variables: float t(n) ; t:ancillary_variables = "q" ; byte q(m) ;`,
      where: { variable: "t", attribute: "ancillary_variables", dimension: "m" },
      message: "dimension",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const where = { variable: variable.name, attribute: "ancillary_variables" };
      const unknown = variable
        .words("ancillary_variables")
        .filter((word) => !dataset.named(word, variable.name));
      if (unknown.length > 0) report(where, "unknown", { found: unknown });
      // the rule on dimensions was written down in 1.11
      if (!dataset.since("1.11")) continue;
      const reach = dataset.reach(variable);
      for (const { name, dimensions } of dataset.listed(variable, "ancillary_variables")) {
        const dimension = dimensions.find((each) => !reach.has(each));
        if (dimension !== undefined) report({ ...where, dimension }, "dimension", { found: name });
      }
    }
  },
});
