import { featureRuns } from "../../engine/feature-runs.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";

/** Types whose elements follow each other in time. */
const IN_TIME = ["timeseries", "trajectory", "timeseriesprofile"];

const series = (times: string) => `:featureType = "timeSeries" ; dimensions: time = 3 ; variables:
  double time(time) ; time:units = "s since 2000-01-01" ; float t(time) ; data: time = ${times} ;`;
const stations = (
  times: string,
) => `:featureType = "timeSeries" ; dimensions: station = 2 ; o = 4 ; variables:
  int n(station) ; n:sample_dimension = "o" ; double time(o) ; time:units = "s since 2000-01-01" ;
  float t(o) ; t:coordinates = "time" ; data: n = 2, 2 ; time = ${times} ;`;

export const featureTimes = defineRule({
  id: "cf/feature-times",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("9.1"),
  editions: { since: "1.6" },
  covers: ["CF-9.1-T22"],
  title: "Time always grows along a series or a track",
  why: "Times that stand still or go back usually come from a clock that was set, or from two records run together.",
  remedy: "Sort the records in time and clear up double ones; split the series where the clock was changed.",
  messages: {
    back: "{variable} goes back in time",
    equal: "{variable} has equal times next to each other",
  },
  passing: [
    series("1, 2, 3"),
    stations("5, 6, 1, 2"),
    `:featureType = "profile" ; dimensions: p = 2 ; variables: double time(p) ; time:units = "s since 2000-01-01" ;
     float t(p) ; t:coordinates = "time" ; data: time = 2, 1 ;`,
  ],
  failing: [
    { cdl: stations("5, 6, 2, 1"), where: { variable: "time" }, message: "back" },
    { cdl: stations("5, 5, 1, 2"), where: { variable: "time" }, message: "equal" },
    {
      cdl: stations("5, 5, 1, 2"),
      edition: "1.8",
      where: { variable: "time" },
      message: "equal",
      level: "warning",
    },
  ],
  async check(dataset, report) {
    if (!IN_TIME.includes(dataset.layout.featureType ?? "")) return;
    for (const variable of dataset.coordinates) {
      // coordinate variables have a rule of their own; bare scalars have no order
      if (variable.axis !== "T" || variable.dimensions.length === 0) continue;
      const values = await dataset.data.numbers(variable.name);
      if (values === null) continue;
      const back: number[] = [];
      const equal: number[] = [];
      for (const run of await featureRuns(dataset, variable)) {
        const known = run.filter((index) => !Number.isNaN(values[index]!));
        for (let i = 1; i < known.length; i += 1) {
          const step = values[known[i]!]! - values[known[i - 1]!]!;
          if (step < 0) back.push(known[i]!);
          else if (step === 0) equal.push(known[i]!);
        }
      }
      if (back.length > 0) report({ variable: variable.name }, "back", { places: back });
      // before 1.11 the text asked for growth without the word strictly
      const level = dataset.since("1.11") ? {} : { level: "warning" as const };
      if (equal.length > 0) report({ variable: variable.name }, "equal", { places: equal, ...level });
    }
  },
});
