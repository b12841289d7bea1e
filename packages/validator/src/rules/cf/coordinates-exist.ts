import { plainOf } from "../../engine/attribute-value.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";

export const coordinatesExist = defineRule({
  id: "cf/coordinates-exist",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("5"),
  covers: ["CF-5-R4"],
  title: "`coordinates` lists variables of the file, with blanks between",
  why: "A name that leads nowhere leaves the data without that coordinate.",
  remedy: "Correct the names in `coordinates` of {variable}.",
  messages: {
    text: "coordinates of {variable} is not one text but {found}",
    unknown: "coordinates of {variable} names {found}, which is no variable of the file",
  },
  passing: [`variables: double lat ; float t ; t:coordinates = "lat" ;`],
  failing: [
    {
      cdl: `variables: double lat ; float t ; t:coordinates = "lat, lon" ;`,
      where: { variable: "t", attribute: "coordinates" },
      message: "unknown",
    },
    {
      cdl: "variables: double lat ; float t ; t:coordinates = 5 ;",
      where: { variable: "t", attribute: "coordinates" },
      message: "text",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const attribute = variable.attributes.get("coordinates");
      if (attribute === undefined) continue;
      const where = { variable: variable.name, attribute: "coordinates" };
      if (variable.text("coordinates") === undefined) report(where, "text", { found: plainOf(attribute) });
      const found = variable
        .words("coordinates")
        .filter((word) => dataset.named(word, variable.name) === null);
      if (found.length > 0) report(where, "unknown", { found });
    }
  },
});
