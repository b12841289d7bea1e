import { nearestNames, parseNumber } from "@wherry/core";
import { parseCellMethods } from "../../engine/cell-methods.ts";
import type { DatasetView } from "../../engine/dataset-view.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";
import { unitOf } from "../../engine/unit-kinds.ts";

/** Appendix E. */
const METHODS = ["point", "sum", "maximum", "median", "mid_range", "minimum", "mean", "mode"];
METHODS.push("standard_deviation", "variance");
const LATER = ["maximum_absolute_value", "minimum_absolute_value", "mean_absolute_value", "range"];
LATER.push("mean_of_upper_decile", "root_mean_square", "sum_of_squares");

const methodsIn = (dataset: DatasetView): string[] => [...METHODS, ...(dataset.since("1.7") ? LATER : [])];

/** Whether the method is one of another construct, which is not examined here. */
const isAnomaly = (method: string): boolean => /^(?:anomaly_wrt|select)/.test(method);

/** Intervals of a remark in the standard form; null if the remark is plain words. */
function intervalsOf(remark: string): string[] | null {
  if (!/^(?:interval|comment):/.test(remark)) return null;
  return [...remark.matchAll(/\binterval:\s*(.*?)(?=\s+(?:interval|comment):|$)/g)].map(
    ([, text = ""]) => text,
  );
}

const isInterval = (text: string): boolean => {
  const [value = "", ...unit] = text.trim().split(/\s+/);
  return !Number.isNaN(parseNumber(value)) && unitOf(unit.join(" ")) !== null;
};

const means = (methods: string) =>
  `dimensions: z = 2 ; variables: float z(z) ; float t(z) ; t:cell_methods = "${methods}" ;`;
const where = { variable: "t", attribute: "cell_methods" };

export const cellMethods = defineRule({
  id: "cf/cell-methods",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("7.3"),
  covers: ["CF-7.3-R1", "CF-7.3-R2", "CF-7.3-R3"],
  title: "cell_methods says in the words of appendix E what was done along which coordinate",
  why: "A program that cannot read the method takes a mean for a single value, or a spread for a mean.",
  remedy:
    'Write cell_methods of {variable} as "name: method", several one after the other, remarks in brackets.',
  messages: {
    form: 'cell_methods of {variable} cannot be read from "{found}" on',
    method: "cell_methods of {variable} uses the method {found}, which is not in appendix E{near}",
    name: "cell_methods of {variable} names {found}: no dimension, no variable, no standard name",
    twice: "cell_methods of {variable} treats {found} more than once",
    interval: 'cell_methods of {variable} has the interval "{found}", not a number and a unit',
    intervals: "cell_methods of {variable} has {found} intervals for {expected} names",
  },
  passing: [
    means("z: mean"),
    means("time: latitude: longitude: point z: mean (layers 0.5 m thick)"),
    means("z: mean (interval: 0.1 m comment: centred)"),
    means("area: mean where sea over all_area_types"),
    means("time: maximum within days time: mean over days"),
  ],
  failing: [
    { cdl: means("mean"), where, message: "form" },
    { cdl: means("z: average"), where, message: "method" },
    { cdl: means("z: range"), where, message: "method", edition: "1.6" },
    { cdl: means("our_axis: mean"), where, message: "name" },
    { cdl: means("z: mean z: maximum"), where, message: "twice" },
    { cdl: means("z: mean (interval: some m)"), where, message: "interval" },
    { cdl: means("z: time: area: mean (interval: 1 m interval: 1 s)"), where, message: "intervals" },
  ],
  check(dataset, report) {
    const methods = methodsIn(dataset);
    for (const variable of dataset.all) {
      const text = variable.text("cell_methods");
      if (text === undefined) continue;
      const place = { variable: variable.name, attribute: "cell_methods" };
      const entries = parseCellMethods(text);
      if (!Array.isArray(entries)) {
        report(place, "form", { found: entries.at });
        continue;
      }
      const seen = new Set<string>();
      for (const { names, method, remark, climatological } of entries) {
        if (!methods.includes(method) && !isAnomaly(method)) {
          const [near] = nearestNames(method, methods, 1);
          const instead = near === undefined ? "" : `; perhaps ${near}`;
          report(place, "method", { found: method, fill: { near: instead } });
        }
        for (const name of names) {
          const known =
            name === "area" ||
            dataset.dimensions.has(name) ||
            dataset.named(name, variable.name) !== null ||
            dataset.vocabulary.find(name) !== null ||
            dataset.all.some((other) => other.standardName === name);
          if (!known) report(place, "name", { found: name });
          if (seen.has(name) && !climatological && !isAnomaly(method))
            report(place, "twice", { found: name });
          // "time: mean within days time: mean over days" is one statement
          if (!climatological) seen.add(name);
        }
        const intervals = remark === null ? null : intervalsOf(remark);
        const wrong = intervals?.find((interval) => !isInterval(interval));
        if (wrong !== undefined) report(place, "interval", { found: wrong });
        else if (intervals !== null && intervals.length > 1 && intervals.length !== names.length)
          report(place, "intervals", { found: intervals.length, expected: names.length });
      }
    }
  },
});
