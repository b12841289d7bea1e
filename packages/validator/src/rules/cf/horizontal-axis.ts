import { cfClause, defineRule } from "../../engine/rule.ts";

export const horizontalAxis = defineRule({
  id: "cf/horizontal-axis",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("5"),
  covers: ["CF-5-A2", "CF-5-A3"],
  title: "Horizontal coordinate variables have axis",
  why: "Programs find the horizontal axes by it.",
  remedy: 'Set axis of {variable} to "{expected}".',
  messages: { missing: "the {kind} coordinate variable {variable} has no axis" },
  passing: [
    `dimensions: lat = 2 ; variables: double lat(lat) ; lat:units = "degrees_north" ; lat:axis = "Y" ;`,
  ],
  failing: [
    {
      cdl: `dimensions: lat = 2 ; variables: double lat(lat) ; lat:units = "degrees_north" ;`,
      where: { variable: "lat", attribute: "axis" },
      message: "missing",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      const { name, role, axis } = variable;
      if (role !== "coordinate" || (axis !== "X" && axis !== "Y") || variable.has("axis")) continue;
      const kind = axis === "X" ? "longitude" : "latitude";
      report({ variable: name, attribute: "axis" }, "missing", { expected: axis, fill: { kind } });
    }
  },
});
