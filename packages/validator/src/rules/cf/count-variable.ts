import { cfClause, defineRule } from "../../engine/rule.ts";
import { castsCdl } from "./sampling-example.ts";

const INTEGERS = ["byte", "short", "int", "ubyte", "ushort", "uint", "int64", "uint64"];

export const countVariable = defineRule({
  id: "cf/count-variable",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("9.3.3"),
  editions: { since: "1.6" },
  covers: ["CF-9.3.3-T27", "CF-H.6-T38"],
  title:
    "The count of a contiguous ragged array is a whole number for each feature and sums up to the samples",
  why: "It alone says which rows belong to which cast.",
  remedy:
    "Correct {variable}: one whole number for each feature, sample_dimension with the name of the dimension of the rows.",
  messages: {
    type: "the count {variable} has the type {found}, not a whole-number type",
    rank: "the count {variable} has {found} dimensions instead of one, that of the features",
    dimension: "sample_dimension of {variable} names {found}, which is no dimension of the file",
    negative: "the count {variable} has negative values",
    sum: "the counts in {variable} add up to {found}, but {dimension} has {expected} rows",
  },
  passing: [castsCdl(), castsCdl({ rows: "rows = 1, 1 ;" })],
  failing: [
    {
      cdl: castsCdl({ count: 'float rows(cast) ; rows:sample_dimension = "obs" ;' }),
      where: { variable: "rows" },
      message: "type",
    },
    {
      cdl: castsCdl({ count: 'int rows(cast, id_length) ; rows:sample_dimension = "obs" ;', rows: "" }),
      where: { variable: "rows" },
      message: "rank",
    },
    {
      cdl: castsCdl({ count: 'int rows(cast) ; rows:sample_dimension = "row" ;' }),
      where: { variable: "rows", attribute: "sample_dimension" },
      message: "dimension",
    },
    { cdl: castsCdl({ rows: "rows = -1, 4 ;" }), where: { variable: "rows" }, message: "negative" },
    {
      cdl: castsCdl({ rows: "rows = 2, 2 ;" }),
      where: { variable: "rows", dimension: "obs" },
      message: "sum",
    },
  ],
  async check(dataset, report) {
    for (const variable of dataset.all) {
      if (variable.role !== "count") continue;
      const { name, type, allDimensions } = variable;
      const samples = variable.text("sample_dimension") ?? "";
      const length = dataset.dimensions.get(samples)?.length;
      if (!INTEGERS.includes(type)) report({ variable: name }, "type", { found: type });
      else if (allDimensions.length > 1) report({ variable: name }, "rank", { found: allDimensions.length });
      else if (length === undefined)
        report({ variable: name, attribute: "sample_dimension" }, "dimension", { found: samples });
      else {
        const values = (await dataset.data.numbers(name)) ?? new Float64Array();
        const negative = [...values.keys()].filter((index) => values[index]! < 0);
        const sum = values.reduce((total, value) => (value > 0 ? total + value : total), 0);
        if (negative.length > 0) report({ variable: name }, "negative", { places: negative });
        else if (sum > length)
          report({ variable: name, dimension: samples }, "sum", { found: sum, expected: length });
      }
    }
  },
});
