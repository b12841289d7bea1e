import { convertUnitsColumn } from "@wherry/core";
import type { DatasetView } from "../../engine/dataset-view.ts";
import { featureRuns } from "../../engine/feature-runs.ts";
import { defineRule } from "../../engine/rule.ts";
import { unitOf } from "../../engine/unit-kinds.ts";
import type { VariableView } from "../../engine/variable-view.ts";
import { storedStep } from "../../physics/quantity.ts";
import { houseClause, PHYSICS, rounded } from "./house.ts";

const product = (data: string, values: string, more = "") => `:featureType = "profile" ;
  dimensions: cast = 1 ; obs = ${values.split(",").length} ; nv = 2 ; n = 2 ; variables:
  char id(cast, n) ; id:cf_role = "profile_id" ; int rows(cast) ; rows:sample_dimension = "obs" ;
  float depth(obs) ; depth:standard_name = "depth" ; depth:units = "m" ; depth:positive = "down" ; depth:axis = "Z" ; ${more}
  float t(obs) ; t:standard_name = "sea_water_temperature" ; t:units = "degree_C" ; t:coordinates = "depth id" ; ${data}
    t = ${values} ; rows = ${values.split(",").length} ;`;
const LAYERS = 'depth:bounds = "edges" ; float edges(obs, nv) ;';
const binned = (values: string) =>
  `${product('t:cell_methods = "depth: mean" ; data:', values, LAYERS)} id = "a1" ; depth = 1, 2 ;
  edges = 0.5, 1.5, 1.5, 2.5 ;`;
const TWO = binned("10.2, 9.6")
  .replace("cast = 1", "cast = 2")
  .replace("rows = 2", "rows = 1, 1")
  .replace('id = "a1"', 'id = "a1", "b7"');
const full = `${product("data:", "10.1, 10.3, 9.8, 9.4")} id = "a1" ; depth = 0.8, 1.2, 1.8, 2.2 ;`;

/** Rows of each cast along a variable, by each way in which the casts are told apart: the identity first. */
async function waysToTell(dataset: DatasetView, along: VariableView): Promise<Map<string, Int32Array>[]> {
  const runs = await featureRuns(dataset, along);
  const isIdentity = (variable: VariableView) => variable.text("cf_role") === "profile_id";
  const ways = [
    ...dataset.all.filter(isIdentity),
    ...dataset.all.filter((variable) => variable.isText && !isIdentity(variable)),
  ];
  const told: Map<string, Int32Array>[] = [];
  for (const { name, isText } of ways) {
    const texts = isText ? await dataset.data.texts(name) : await dataset.data.numbers(name);
    const names = Array.from<string | number>(texts ?? []);
    if (names.length !== runs.length || new Set(names).size !== runs.length) continue;
    told.push(new Map(runs.map((run, cast) => [String(names[cast]), run])));
  }
  return told;
}

/** Rows of the layers and of the full data, cast by cast; null if the casts of the files cannot be told to be the same. */
async function castsOf(dataset: DatasetView, layers: VariableView, file: DatasetView, source: VariableView) {
  const [identity] = await waysToTell(file, source);
  if (identity === undefined) return null;
  const binned = (await waysToTell(dataset, layers)).find((way) =>
    [...way.keys()].some((id) => identity.has(id)),
  );
  return binned === undefined ? null : { binned, full: identity };
}

/** Values with their packing undone, whatever their flags say. */
async function unpacked(dataset: DatasetView, variable: VariableView): Promise<Float64Array | null> {
  const stored = await dataset.data.numbers(variable.name);
  const scale = variable.numbers("scale_factor")?.[0] ?? 1;
  const offset = variable.numbers("add_offset")?.[0] ?? 0;
  return stored === null || (scale === 1 && offset === 0) ? stored : stored.map((v) => v * scale + offset);
}

/** The same in the units of another variable; null if they cannot be converted. */
async function inUnitsOf(other: VariableView, dataset: DatasetView, variable: VariableView) {
  const values = await unpacked(dataset, variable);
  const [from, to] = [unitOf(variable.text("units")), unitOf(other.text("units"))];
  if (values === null || from === null || to === null) return null;
  const out = new Float64Array(values.length);
  convertUnitsColumn(values, from, to, out);
  return out.every(Number.isNaN) ? null : out;
}

/** The variable of the full file from which layer means were made: by its name, else the only one of its standard name. */
function sourceOf(file: DatasetView, variable: VariableView): VariableView | null {
  const alike = file.all.filter(
    ({ standardName, role }) => standardName === variable.standardName && role !== "bounds",
  );
  const named = alike.find(({ name }) => name === variable.name);
  return named ?? (alike.length === 1 ? (alike[0] ?? null) : null);
}

/** Lower and upper edge of each layer: the bounds, else halfway to the next layers of the cast. */
async function edgesOf(dataset: DatasetView, coordinate: VariableView): Promise<Float64Array | null> {
  const [bounds] = dataset.listed(coordinate, "bounds");
  const centres = await unpacked(dataset, coordinate);
  const stored = bounds === undefined ? null : await unpacked(dataset, bounds);
  if (centres === null) return null;
  if (stored !== null && stored.length === 2 * centres.length) return stored;
  const edges = new Float64Array(2 * centres.length).fill(Number.NaN);
  for (const run of await featureRuns(dataset, coordinate))
    run.forEach((i, k) => {
      const gaps = [run[k - 1], run[k + 1]].map((j) =>
        Math.abs(centres[i]! - (centres[j ?? -1] ?? Number.NaN)),
      );
      const half = Math.max(...gaps.map((gap) => (Number.isNaN(gap) ? 0 : gap))) / 2;
      edges[2 * i] = centres[i]! - half;
      edges[2 * i + 1] = centres[i]! + half;
    });
  return edges;
}

const isMean = (variable: VariableView): boolean =>
  variable.role === "data" && /\bmean\b/.test(variable.text("cell_methods") ?? "");

export const binnedAgainstFull = defineRule({
  ...PHYSICS,
  id: "physics/binned-against-full",
  level: "error",
  citation: houseClause("binned and full data"),
  title: "Layer means lie within the values of their layer in the full data",
  why: "Where they do not, the two files were made from different data, by different rules, or in different units, and nobody knows which is right.",
  remedy: "Make both files again from the same casts.",
  messages: {
    casts: "the full file {file} does not have the casts {found}",
    empty: "layers of {variable} hold no value of the full file {file}, such as {found}",
    outside:
      "{variable} has layer means that no values of the full file {file} give, such as {found} where the layer holds {expected}",
  },
  passing: [binned("10.2, 9.6"), { cdl: binned("10.2, 9.6"), full }],
  failing: [
    { cdl: TWO, full, where: {}, message: "casts", level: "warning" },
    {
      cdl: binned("10.2, 9.6").replace("edges = 0.5, 1.5, 1.5, 2.5", "edges = 0.5, 1.5, 3, 4"),
      full,
      where: { variable: "t" },
      message: "empty",
    },
    { cdl: binned("10.2, 9.9"), full, where: { variable: "t" }, message: "outside" },
  ],
  async check(dataset, report) {
    const file = dataset.full;
    if (file === null) return;
    const fill = { file: file.path.split(/[\\/]/).at(-1) ?? file.path };
    const strange = new Set<string>();
    for (const variable of dataset.all.filter(isMean)) {
      const coordinate = dataset.coordinatesOf(variable).find(({ axis }) => axis === "Z");
      const source = sourceOf(file, variable);
      const place = coordinate === undefined ? null : sourceOf(file, coordinate);
      if (coordinate === undefined || source === null || place === null) continue;
      if (coordinate.dimensions.join() !== variable.dimensions.join()) continue;
      if (source.dimensions.join() !== place.dimensions.join()) continue;
      const means = await unpacked(dataset, variable);
      const edges = await edgesOf(dataset, coordinate);
      const values = await inUnitsOf(variable, file, source);
      const depths = await inUnitsOf(coordinate, file, place);
      if (means === null || edges === null || values === null || depths === null) continue;
      const slack = storedStep(means, true) / 2 + storedStep(values, true) / 2;
      const near = storedStep(depths, true) / 2;
      const casts = await castsOf(dataset, variable, file, source);
      if (casts === null) continue;
      const empty: number[] = [];
      const outside: number[] = [];
      let shown = "";
      for (const [id, layers] of casts.binned) {
        const rows = casts.full.get(id);
        if (rows === undefined) {
          strange.add(id);
          continue;
        }
        for (const i of layers) {
          if (Number.isNaN(means[i]! + edges[2 * i]!)) continue;
          const [a, b] = [edges[2 * i]!, edges[2 * i + 1]!];
          let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
          for (const row of rows) {
            if (depths[row]! < Math.min(a, b) - near || depths[row]! > Math.max(a, b) + near) continue;
            if (values[row]! < low) low = values[row]!;
            if (values[row]! > high) high = values[row]!;
          }
          if (low > high) empty.push(i);
          else if (means[i]! < low - slack || means[i]! > high + slack) {
            if (outside.length === 0) shown = `${rounded(low)} to ${rounded(high)}`;
            outside.push(i);
          }
        }
      }
      const where = { variable: variable.name };
      const first = (places: readonly number[]) => rounded(means[places[0] ?? -1] ?? Number.NaN);
      if (empty.length > 0) report(where, "empty", { found: first(empty), places: empty, fill });
      if (outside.length > 0)
        report(where, "outside", { found: first(outside), expected: shown, places: outside, fill });
    }
    if (strange.size > 0)
      report({}, "casts", { found: [...strange].slice(0, 3), count: strange.size, level: "warning", fill });
  },
});
