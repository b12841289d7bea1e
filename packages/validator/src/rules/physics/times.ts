import { featureRuns } from "../../engine/feature-runs.ts";
import { momentInWords } from "../../engine/moment-words.ts";
import { defineRule } from "../../engine/rule.ts";
import { epochSeconds, timeVariables } from "../cf/time-variable.ts";
import { houseClause, PHYSICS } from "./house.ts";

const DAY = 86_400;
/** Clocks and time zones: half a day and a little. */
const SLACK = DAY;
/** No electronic profile is older. Ours. */
const OLDEST = Date.UTC(1860, 0, 1) / 1000;

const example = (
  data: string,
  units = "days since 2000-01-01",
) => `:featureType = "timeSeries" ; dimensions: n = 3 ;
  variables: double t(n) ; t:standard_name = "time" ; t:units = "${units}" ; t:calendar = "standard" ;
  double v(n) ; v:coordinates = "t" ; v:standard_name = "sea_water_temperature" ; v:units = "degree_C" ;
  data: t = ${data} ; v = 1, 2, 3 ;`;

export const times = defineRule({
  ...PHYSICS,
  id: "physics/times",
  level: "error",
  citation: houseClause("times"),
  title: "Times of sampling lie in the past, and rows of one cast follow each other",
  why: "A time that cannot be points to a wrong reference time, a wrong unit or a clock that was not set.",
  remedy: "Correct the values or the unit of {variable}.",
  messages: {
    future: "{variable} has times after the moment of checking, such as {found}",
    old: "{variable} has times such as {found}, before any instrument of this kind",
    back: "{variable} goes back within a cast or series, by up to {by} s",
  },
  passing: [example("1, 2, 3"), example("1, 2, 3", "days since 1950-01-01")],
  failing: [
    { cdl: example("1, 2, 30000"), where: { variable: "t" }, message: "future" },
    {
      cdl: example("1, 2, 3", "days since 1800-01-01"),
      where: { variable: "t" },
      message: "old",
      level: "warning",
    },
    {
      cdl: example("1, 3, 2").replace("timeSeries", "profile"),
      where: { variable: "t" },
      message: "back",
      level: "warning",
    },
  ],
  async check(dataset, report) {
    if (dataset.layout.featureType === null) return;
    for (const time of timeVariables(dataset)) {
      const { variable } = time;
      if (!time.isCoordinate || variable.standardName !== "time") continue;
      const seconds = await epochSeconds(dataset, time);
      if (seconds === null) continue;
      const future: number[] = [];
      const old: number[] = [];
      seconds.forEach((second, i) => {
        if (second > dataset.now + SLACK) future.push(i);
        if (second < OLDEST) old.push(i);
      });
      const where = { variable: variable.name };
      if (future.length > 0)
        report(where, "future", { found: momentInWords(seconds[future[0]!]!), places: future });
      if (old.length > 0)
        report(where, "old", { found: momentInWords(seconds[old[0]!]!), places: old, level: "warning" });
      // series have a rule of CF; where casts have one time each, they may stand in any order
      if (!/profile$/.test(dataset.layout.featureType) || !dataset.isSampled(variable)) continue;
      const back: number[] = [];
      let by = 0;
      for (const run of await featureRuns(dataset, variable))
        for (let k = 1; k < run.length; k += 1) {
          const step = seconds[run[k]!]! - seconds[run[k - 1]!]!;
          if (!(step < -1e-3)) continue;
          back.push(run[k]!);
          by = Math.max(by, -step);
        }
      if (back.length > 0)
        report(where, "back", { places: back, level: "warning", fill: { by: Math.round(by * 1000) / 1000 } });
    }
  },
});
