import { defineRule } from "../../engine/rule.ts";
import { kindOf } from "./variable-kind.ts";

export const variableLongName = defineRule({
  id: "acdd/long-name",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "reading",
  citation: { document: "ACDD", edition: "1.3", clause: "variable attributes, highly recommended" },
  covers: ["ACDD long_name"],
  title: "Every variable with data has a long_name",
  why: "The long name is what people read in lists and on the axes of plots.",
  remedy: "Add long_name to {variable}.",
  messages: { missing: "{variable} has no long_name" },
  passing: [
    `variables: float t ; t:long_name = "temperature of the water" ;`,
    'variables: float b ; float t ; t:bounds = "b" ; t:long_name = "x" ;',
  ],
  failing: [
    { cdl: "variables: float t ;", where: { variable: "t", attribute: "long_name" }, message: "missing" },
  ],
  check(dataset, report) {
    if (!dataset.holdsToAcdd) return;
    for (const variable of dataset.all) {
      const kind = kindOf(dataset, variable);
      if (kind === "serving" && variable.role !== "count" && variable.role !== "index") continue;
      if ((variable.text("long_name") ?? "").trim() === "")
        report({ variable: variable.name, attribute: "long_name" }, "missing");
    }
  },
});
