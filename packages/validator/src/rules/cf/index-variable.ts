import { cfClause, defineRule } from "../../engine/rule.ts";

const INTEGERS = ["byte", "short", "int", "ubyte", "ushort", "uint", "int64", "uint64"];

const indexed = (index: string, data: string) => `:featureType = "profile" ;
dimensions: cast = 2 ; obs = 3 ; n = 2 ;
variables: ${index}
data: ${data}`;

export const indexVariable = defineRule({
  id: "cf/index-variable",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("9.3.4"),
  editions: { since: "1.6" },
  covers: ["CF-9.3.4-T28", "CF-H.6-T38"],
  title: "The index of an indexed ragged array is a whole number for each sample, counted from 0",
  why: "It alone says which row belongs to which cast.",
  remedy:
    "Correct {variable}: whole numbers from 0 on the dimension of the rows, instance_dimension with that of the features.",
  messages: {
    type: "the index {variable} has the type {found}, not a whole-number type",
    rank: "the index {variable} has {found} dimensions instead of one, that of the samples",
    dimension: "instance_dimension of {variable} names {found}, which is no dimension of the file",
    range: "the index {variable} has values outside 0 to {expected}",
  },
  passing: [
    indexed('int which(obs) ; which:instance_dimension = "cast" ;', "which = 0, 1, 0 ;"),
    indexed(
      'int which(obs) ; which:instance_dimension = "cast" ; which:_FillValue = -1 ;',
      "which = 0, 1, -1 ;",
    ),
  ],
  failing: [
    {
      cdl: indexed('float which(obs) ; which:instance_dimension = "cast" ;', "which = 0, 1, 0 ;"),
      where: { variable: "which" },
      message: "type",
    },
    {
      cdl: indexed('int which(obs, n) ; which:instance_dimension = "cast" ;', ""),
      where: { variable: "which" },
      message: "rank",
    },
    {
      cdl: indexed('int which(obs) ; which:instance_dimension = "profile" ;', "which = 0, 1, 0 ;"),
      where: { variable: "which", attribute: "instance_dimension" },
      message: "dimension",
    },
    {
      cdl: indexed('int which(obs) ; which:instance_dimension = "cast" ;', "which = 1, 2, 1 ;"),
      where: { variable: "which" },
      message: "range",
    },
  ],
  async check(dataset, report) {
    for (const variable of dataset.all) {
      if (!variable.has("instance_dimension") || variable.isText) continue;
      const { name, type, allDimensions } = variable;
      const features = variable.text("instance_dimension") ?? "";
      const length = dataset.dimensions.get(features)?.length;
      if (!INTEGERS.includes(type)) report({ variable: name }, "type", { found: type });
      else if (allDimensions.length > 1) report({ variable: name }, "rank", { found: allDimensions.length });
      else if (length === undefined)
        report({ variable: name, attribute: "instance_dimension" }, "dimension", { found: features });
      else {
        const values = (await dataset.data.numbers(name)) ?? new Float64Array();
        const places = [...values.keys()].filter((index) => values[index]! < 0 || values[index]! >= length);
        if (places.length > 0) report({ variable: name }, "range", { places, expected: length - 1 });
      }
    }
  },
});
