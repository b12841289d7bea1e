import { featureRuns } from "../../engine/feature-runs.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";

const layers = (
  z: string,
  b: string,
) => `dimensions: z = 2 ; nv = 2 ; variables: float z(z) ; z:bounds = "b" ;
  float b(z, nv) ; data: z = ${z} ; b = ${b} ;`;

/** Whether values always grow (1) or always fall (-1); 0 for one value or a change of sense. */
function sense(values: readonly number[]): number {
  const steps = values.slice(1).map((value, index) => Math.sign(value - values[index]!));
  const [first = 0] = steps;
  return steps.every((step) => step === first) ? first : 0;
}

export const boundsValues = defineRule({
  id: "cf/bounds-values",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("7.1"),
  covers: ["CF-7.1-R5", "CF-7.1-A1"],
  title: "A coordinate lies within its bounds, and they stand in its order",
  why: "Edges the other way round, or a centre outside its layer, show that rows and layers were mixed up.",
  remedy: "Correct the bounds of {variable}.",
  messages: {
    order: "the bounds of {variable} stand in the order opposite to its values",
    outside: "values of {variable} lie outside their bounds",
  },
  passing: [
    layers("1, 2", "0.5, 1.5, 1.5, 2.5"),
    layers("2, 1", "2.5, 1.5, 1.5, 0.5"),
    { cdl: layers("1, 2", "1.5, 0.5, 2.5, 1.5"), edition: "1.11" },
  ],
  failing: [
    { cdl: layers("1, 2", "1.5, 0.5, 2.5, 1.5"), where: { variable: "z" }, message: "order" },
    {
      cdl: layers("1, 2", "0.5, 1.5, 2.5, 3.5"),
      where: { variable: "z" },
      message: "outside",
      level: "warning",
    },
  ],
  async check(dataset, report) {
    for (const variable of dataset.all) {
      const [bounds] = dataset.listed(variable, "bounds");
      if (
        bounds === undefined ||
        variable.shape.length !== 1 ||
        bounds.shape.length !== 2 ||
        bounds.shape[1] !== 2
      )
        continue;
      const values = await dataset.data.numbers(variable.name);
      const edges = await dataset.data.numbers(bounds.name);
      if (values === null || edges === null || edges.length !== 2 * values.length) continue;
      const order: number[] = [];
      const outside: number[] = [];
      for (const run of await featureRuns(dataset, variable)) {
        const way = sense(Array.from(run, (index) => values[index]!));
        for (const index of run) {
          const [value, a, b] = [values[index]!, edges[2 * index]!, edges[2 * index + 1]!];
          const slack = 1e-6 * Math.max(Math.abs(a), Math.abs(b));
          if (way !== 0 && way * (b - a) < 0) order.push(index);
          if (value < Math.min(a, b) - slack || value > Math.max(a, b) + slack) outside.push(index);
        }
      }
      const where = { variable: variable.name };
      if (order.length > 0 && dataset.since("1.12")) report(where, "order", { places: order });
      if (outside.length > 0) report(where, "outside", { places: outside, level: "warning" });
    }
  },
});
