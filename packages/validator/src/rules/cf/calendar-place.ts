import { cfClause, defineRule } from "../../engine/rule.ts";

export const calendarPlace = defineRule({
  id: "cf/calendar-place",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("4.4.3"),
  editions: {
    clauses: [
      { until: "1.11", clause: "4.4.1" },
      { until: "1.12", clause: "4.4.2" },
    ],
  },
  covers: ["CF-4.4.3-R1"],
  title: "calendar stands on time coordinates only",
  why: "CF defines the attribute for coordinates; on other variables it has no meaning.",
  remedy: "Remove calendar from {variable}, or name {variable} in `coordinates` of the data it locates.",
  messages: { other: "{variable} has calendar but is no time coordinate" },
  passing: [
    `dimensions: t = 1 ; variables: double t(t) ; t:units = "days since 2000-01-01" ; t:calendar = "standard" ;`,
  ],
  failing: [
    {
      cdl: `dimensions: p = 1 ; variables: double e(p) ; e:units = "days since 2000-01-01" ; e:calendar = "standard" ;
     float d(p) ; d:coordinates = "lat" ; double lat(p) ;`,
      where: { variable: "e", attribute: "calendar" },
      message: "other",
    },
  ],
  check(dataset, report) {
    // where no variable names its coordinates, nothing tells which times are coordinates
    const named = dataset.all.some((variable) => variable.has("coordinates"));
    for (const variable of dataset.all) {
      if (!variable.has("calendar") || variable.role === "bounds") continue;
      if (variable.isSpaceTime ? variable.axis !== "T" : named)
        report({ variable: variable.name, attribute: "calendar" }, "other");
    }
  },
});
