import type { DatasetView } from "../../engine/dataset-view.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";
import { spanOf } from "../../engine/span.ts";
import { castsCdl } from "./sampling-example.ts";

const INTEGERS = ["byte", "short", "int", "ubyte", "ushort", "uint", "int64", "uint64"];

/** Pairs of dimensions that data and their coordinates have without a link: [of the samples, of the features]. */
function unlinked(dataset: DatasetView): [string, string][] {
  const pairs = new Map<string, [string, string]>();
  for (const variable of dataset.sampled) {
    const [samples] = variable.dimensions;
    if (samples === undefined || variable.dimensions.length !== 1) continue;
    const reach = dataset.reach(variable);
    for (const { dimensions } of dataset.listed(variable, "coordinates"))
      for (const features of dimensions)
        if (!reach.has(features)) pairs.set(`${samples}/${features}`, [samples, features]);
  }
  return [...pairs.values()];
}

export const raggedLink = defineRule({
  id: "cf/ragged-link",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("9.3"),
  editions: { since: "1.6" },
  covers: ["CF-9.3.3-T27", "CF-9.3.4-T28"],
  title: "The count or index of a ragged array says which dimension it links",
  why: "Without the attribute a program does not know that the numbers divide the rows into casts.",
  remedy: 'Add {attribute} = "{expected}" to {variable}.',
  messages: {
    count: "{variable} counts the rows of {expected} for each feature, but has no sample_dimension",
    index: "{variable} gives for each row its place on {expected}, but has no instance_dimension",
  },
  passing: [castsCdl()],
  failing: [
    {
      cdl: castsCdl({ count: "int rows(cast) ;" }),
      where: { variable: "rows", attribute: "sample_dimension" },
      message: "count",
    },
    {
      cdl: castsCdl({ count: "int which(obs) ;", rows: "which = 0, 1, 1 ;" }),
      where: { variable: "which", attribute: "instance_dimension" },
      message: "index",
    },
  ],
  async check(dataset, report) {
    if (dataset.layout.featureType === null) return;
    for (const [samples, features] of unlinked(dataset)) {
      const rows = dataset.dimensions.get(samples)?.length ?? 0;
      const count = dataset.dimensions.get(features)?.length ?? 0;
      for (const { name, type, allDimensions, role } of dataset.all) {
        if (!INTEGERS.includes(type) || allDimensions.length !== 1 || role !== "data") continue;
        const values = [...((await dataset.data.numbers(name)) ?? [])];
        const [own] = allDimensions;
        const where = { variable: name };
        // the numbers themselves show what the variable is: counts add up, indices cover the features in order
        if (
          own === features &&
          values.every((value) => value >= 0) &&
          values.reduce((a, b) => a + b, 0) === rows
        )
          report({ ...where, attribute: "sample_dimension" }, "count", { expected: samples });
        else if (own === samples && spanOf(values)[1] === count - 1 && new Set(values).size === count)
          report({ ...where, attribute: "instance_dimension" }, "index", { expected: features });
      }
    }
  },
});
