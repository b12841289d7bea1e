import { cfClause, defineRule } from "../../engine/rule.ts";

export const axisOnce = defineRule({
  id: "cf/axis-once",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("4"),
  covers: ["CF-4-R5", "CF-9.5-T32"],
  title: "A data variable has at most one coordinate for each axis letter",
  why: "With two, a program cannot know which of them places the data; beside a precise position only the nominal one carries axis.",
  remedy: "Remove axis from all but one of {found}.",
  messages: { several: "{variable} has several coordinates with axis {axis}: {found}" },
  passing: [
    `dimensions: t = 2 ; variables: double z ; z:axis = "Z" ; double depth(t) ; float a(t) ; a:coordinates = "z depth" ;`,
  ],
  failing: [
    {
      cdl: `dimensions: t = 2 ; variables: double z ; z:axis = "Z" ; double depth(t) ; depth:axis = "z" ; float a(t) ; a:coordinates = "z depth" ;`,
      where: { variable: "a" },
      message: "several",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      if (variable.role !== "data" && variable.role !== "flag") continue;
      const coordinates = dataset.coordinatesOf(variable).filter((each) => each !== variable);
      for (const axis of ["X", "Y", "Z", "T"]) {
        const found = coordinates
          .filter((each) => each.text("axis")?.toUpperCase() === axis)
          .map(({ name }) => name);
        if (found.length > 1) report({ variable: variable.name }, "several", { found, fill: { axis } });
      }
    }
  },
});
