import { cfClause, defineRule } from "../../engine/rule.ts";

const NEW_INTEGERS = ["ubyte", "ushort", "uint", "int64", "uint64"];

export const dataTypesOld = defineRule({
  id: "cf/data-types-old",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("2.2"),
  editions: { until: "1.8" },
  covers: ["CF-2.2-T1"],
  title: "Types of variables are those of the edition that the file claims",
  why: "Programs written for an older edition cannot read types that came later.",
  remedy: "Use a type of that edition for {variable}, or claim a newer edition.",
  messages: {
    integer: "{variable} has the type {found}, which CF knows since 1.9",
    string: "{variable} has the type string, which CF knows since 1.8",
  },
  passing: [{ cdl: "variables: int n ;", edition: "1.6" }, "variables: uint n ;"],
  failing: [
    { cdl: "variables: uint n ;", edition: "1.8", where: { variable: "n" }, message: "integer" },
    { cdl: "variables: string name ;", edition: "1.7", where: { variable: "name" }, message: "string" },
  ],
  check(dataset, report) {
    for (const { name, type } of dataset.all) {
      if (NEW_INTEGERS.includes(type)) report({ variable: name }, "integer", { found: type });
      else if (type === "string" && dataset.until("1.7"))
        report({ variable: name }, "string", { found: type });
    }
  },
});
