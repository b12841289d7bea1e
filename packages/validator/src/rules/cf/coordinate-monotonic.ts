import { cfClause, defineRule } from "../../engine/rule.ts";

/** Indices of values that do not go on in the sense of the first step; values are not missing. */
function breaks(values: Float64Array): number[] {
  const up = values.length > 1 && values[1]! > values[0]!;
  const found: number[] = [];
  for (let i = 1; i < values.length; i += 1) {
    const step = values[i]! - values[i - 1]!;
    if (!(up ? step > 0 : step < 0)) found.push(i);
  }
  return found;
}

export const coordinateMonotonic = defineRule({
  id: "cf/coordinate-monotonic",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("5"),
  covers: ["CF-5-R2"],
  title: "A coordinate variable always grows or always falls, without gaps",
  why: "Programs look values up by halving; with equal, missing or disordered values they find the wrong place.",
  remedy: "Sort the data along {variable}, or give the variable another name and list it in `coordinates`.",
  messages: {
    missing: "the coordinate variable {variable} has missing values",
    order: "the coordinate variable {variable} does not always grow or always fall",
  },
  passing: ["dimensions: z = 3 ; variables: float z(z) ; data: z = 3, 2, 1 ;"],
  failing: [
    {
      cdl: "dimensions: z = 3 ; variables: float z(z) ; data: z = 1, 2, 2 ;",
      where: { variable: "z" },
      message: "order",
    },
    {
      cdl: "dimensions: z = 3 ; variables: float z(z) ; data: z = 1, NaNf, 2 ;",
      where: { variable: "z" },
      message: "missing",
    },
  ],
  async check(dataset, report) {
    for (const variable of dataset.all) {
      if (!variable.isCoordinate || (variable.shape[0] ?? 0) < 2) continue;
      const values = await dataset.data.numbers(variable.name);
      if (values === null) continue;
      const missing: number[] = [];
      values.forEach((value, index) => {
        if (Number.isNaN(value)) missing.push(index);
      });
      const order = missing.length > 0 ? [] : breaks(values);
      if (missing.length > 0) report({ variable: variable.name }, "missing", { places: missing });
      if (order.length > 0) report({ variable: variable.name }, "order", { places: order });
    }
  },
});
