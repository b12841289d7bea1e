import { cfClause, defineRule } from "../../engine/rule.ts";

const ORDER = "TZYX";

export const dimensionOrder = defineRule({
  id: "cf/dimension-order",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "clause",
  citation: cfClause("2.4"),
  covers: ["CF-2.4-A1"],
  title: "Dimensions of space and time stand in the order time, vertical, latitude, longitude",
  why: "Many programs take the axes in this order without looking.",
  remedy: "Write the dimensions of {variable} in the order {expected}.",
  messages: { other: "the dimensions of {variable} stand in the order {found}" },
  passing: [
    `dimensions: time = 1 ; depth = 1 ; variables:
     double time(time) ; time:units = "days since 2000-01-01" ;
     double depth(depth) ; depth:units = "m" ; depth:positive = "down" ; float t(time, depth) ;`,
  ],
  failing: [
    {
      cdl: `dimensions: time = 1 ; depth = 1 ; variables:
     double time(time) ; time:units = "days since 2000-01-01" ;
     double depth(depth) ; depth:units = "m" ; depth:positive = "down" ; float t(depth, time) ;`,
      where: { variable: "t" },
      message: "other",
    },
  ],
  check(dataset, report) {
    for (const variable of dataset.all) {
      if (variable.role === "bounds") continue;
      const known = variable.dimensions.flatMap((dimension) => {
        const axis = dataset.named(dimension, variable.name);
        return axis?.isCoordinate && axis.axis !== null
          ? [{ dimension, rank: ORDER.indexOf(axis.axis) }]
          : [];
      });
      const ranks = known.map(({ rank }) => rank);
      // two dimensions of one kind have no order between them
      if (new Set(ranks).size !== ranks.length) continue;
      const wanted = [...known].sort((a, b) => a.rank - b.rank);
      if (wanted.some(({ rank }, index) => rank !== ranks[index]))
        report({ variable: variable.name }, "other", {
          found: known.map(({ dimension }) => dimension),
          expected: wanted.map(({ dimension }) => dimension),
        });
    }
  },
});
