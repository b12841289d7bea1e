import { plainOf } from "../../engine/attribute-value.ts";
import type { DatasetView } from "../../engine/dataset-view.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";

/** Attributes that bounds take over from their coordinate, edition by edition. */
function inheritedIn(dataset: DatasetView): string[] {
  const first = ["units", "standard_name"];
  const later = ["axis", "calendar", "leap_month", "leap_year", "month_lengths", "positive"];
  return [
    ...first,
    ...(dataset.since("1.7") ? later : []),
    ...(dataset.since("1.11") ? ["long_name", "units_metadata"] : []),
  ];
}

/** Whether a name in words counts as inherited cannot be told from the text alone. */
const isCertain = (attribute: string): boolean => attribute !== "long_name";

const layers = (attributes: string) =>
  `dimensions: z = 2 ; nv = 2 ; variables: float z(z) ; z:units = "m" ; z:bounds = "b" ; float b(z, nv) ; ${attributes}`;

export const boundsAttributes = defineRule({
  id: "cf/bounds-attributes",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("7.1"),
  covers: ["CF-7.1-R6", "CF-7.1-R7", "CF-7.1-A2"],
  title: "Bounds take units and names from their coordinate",
  why: "Two statements of one thing can disagree; then nobody knows in which unit the edges are.",
  remedy: "Remove {attribute} from {variable}.",
  messages: {
    other: "{attribute} of {variable} is {found}, that of its coordinate {parent} is {expected}",
    alone: "{variable} has {attribute}, which its coordinate {parent} does not have",
    twice: "{variable} has {attribute}, which it takes from its coordinate {parent}",
  },
  passing: [layers(""), { cdl: layers('b:units = "m" ;'), edition: "1.6" }],
  failing: [
    { cdl: layers('b:units = "cm" ;'), where: { variable: "b", attribute: "units" }, message: "other" },
    {
      cdl: layers('b:standard_name = "depth" ;'),
      where: { variable: "b", attribute: "standard_name" },
      message: "alone",
    },
    {
      cdl: layers('b:units = "m" ;'),
      where: { variable: "b", attribute: "units" },
      message: "twice",
      level: "warning",
    },
  ],
  check(dataset, report) {
    for (const parent of dataset.all) {
      for (const bounds of dataset.listed(parent, "bounds")) {
        for (const attribute of inheritedIn(dataset)) {
          const own = bounds.attributes.get(attribute);
          const its = parent.attributes.get(attribute);
          if (own === undefined) continue;
          const where = { variable: bounds.name, attribute };
          const [found, expected] = [plainOf(own), plainOf(its)];
          const fill = { parent: parent.name };
          const level = isCertain(attribute) ? ("error" as const) : ("warning" as const);
          if (its === undefined) {
            // up to 1.10 only a disagreement counted
            if (dataset.since("1.11")) report(where, "alone", { found, fill, level });
          } else if (
            JSON.stringify(found) !== JSON.stringify(expected) ||
            (dataset.since("1.11") && own.type !== its.type)
          )
            report(where, "other", { found, expected, fill, level });
          else if (dataset.since("1.7")) report(where, "twice", { found, fill, level: "warning" });
        }
      }
    }
  },
});
