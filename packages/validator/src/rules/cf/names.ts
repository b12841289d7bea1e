import type { Place } from "@wherry/core";
import { cfClause, defineRule } from "../../engine/rule.ts";

const GOOD = /^[A-Za-z][A-Za-z0-9_]*$/;
/** Attributes of the netCDF library itself begin with an underscore. */
const GOOD_ATTRIBUTE = /^_?[A-Za-z][A-Za-z0-9_]*$/;

const ownPart = (name: string): string => name.slice(name.lastIndexOf("/") + 1);

export const names = defineRule({
  id: "cf/names",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("2.3"),
  editions: { levels: [{ until: "1.7", level: "error" }] },
  covers: ["CF-2.3-A1", "CF-OLD-3"],
  title: "Names begin with a letter and use letters, digits and underscores only",
  why: "Other characters break programs that take names for identifiers, and lists that are split at blanks.",
  remedy: "Rename it with ASCII letters, digits and underscores, beginning with a letter.",
  messages: {
    variable: "the name of the variable {variable} has other characters",
    dimension: "the name of the dimension {dimension} has other characters",
    attribute: "the name of the attribute {attribute} has other characters",
  },
  passing: ["dimensions: n_1 = 2 ; variables: float T2(n_1) ; T2:_FillValue = -1.f ;"],
  failing: [
    { cdl: "variables: float sea-temp ;", where: { variable: "sea-temp" }, message: "variable" },
    {
      cdl: "dimensions: n-1 = 2 ; variables: float t(n-1) ;",
      edition: "1.7",
      where: { dimension: "n-1" },
      message: "dimension",
    },
    { cdl: `:data-set = "any" ;`, where: { attribute: "data-set" }, message: "attribute" },
  ],
  check(dataset, report) {
    const judgeAttributes = (attributes: Iterable<string>, where: Place) => {
      for (const name of attributes)
        if (!GOOD_ATTRIBUTE.test(ownPart(name))) report({ ...where, attribute: name }, "attribute");
    };
    for (const name of dataset.dimensions.keys())
      if (!GOOD.test(ownPart(name))) report({ dimension: name }, "dimension");
    judgeAttributes(dataset.attributes.keys(), {});
    for (const { name, attributes } of dataset.all) {
      if (!GOOD.test(ownPart(name))) report({ variable: name }, "variable");
      judgeAttributes(attributes.keys(), { variable: name });
    }
  },
});
