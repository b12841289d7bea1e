import { cfClause, defineRule } from "../../engine/rule.ts";

export const coordinatesFit = defineRule({
  id: "cf/coordinates-fit",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("5"),
  covers: ["CF-5-R5"],
  title: "A coordinate lies on dimensions of the data, or on those that a ragged array links to them",
  why: "A coordinate on another dimension does not say where which value is.",
  remedy:
    "Give the coordinate dimensions of {variable}, or link them by sample_dimension or instance_dimension.",
  messages: {
    other:
      "{variable} names the coordinate {found}, whose dimension {dimension} is none of its own and not linked to them",
  },
  passing: [
    `dimensions: p = 2 ; n = 4 ; variables: char id(p, n) ; double lat(p) ; float t(p) ; t:coordinates = "lat id" ;`,
    `dimensions: p = 2 ; o = 4 ; variables: int size(p) ; size:sample_dimension = "o" ; double lat(p) ; float t(o) ; t:coordinates = "lat" ;`,
    `dimensions: p = 2 ; o = 4 ; variables: int which(o) ; which:instance_dimension = "p" ; double lat(p) ; float t(o) ; t:coordinates = "lat" ;`,
  ],
  failing: [
    {
      cdl: `dimensions: p = 2 ; o = 4 ; variables: double lat(p) ; float t(o) ; t:coordinates = "lat" ;`,
      where: { variable: "t", attribute: "coordinates", dimension: "p" },
      message: "other",
    },
  ],
  check(dataset, report) {
    const gathered = new Map(
      dataset.all.map((variable): [string, string[]] => [variable.name, variable.words("compress")]),
    );
    for (const variable of dataset.all) {
      const reach = new Set(dataset.reach(variable));
      for (const dimension of variable.dimensions)
        for (const each of gathered.get(dimension) ?? []) reach.add(each);
      const wrong = dataset.listed(variable, "coordinates").flatMap(({ name, dimensions }) => {
        const dimension = dimensions.find((each) => !reach.has(each));
        return dimension === undefined ? [] : { name, dimension };
      });
      const [first] = wrong;
      if (first === undefined) continue;
      const where = { variable: variable.name, attribute: "coordinates", dimension: first.dimension };
      report(where, "other", { found: wrong.map(({ name }) => name), expected: [...reach] });
    }
  },
});
