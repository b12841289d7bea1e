import { fail, type Problem, type Result, succeed } from "@wherry/core";
import type { Dataset, Variable } from "@wherry/netcdf";
import { textOf, wordsOf } from "./attributes.ts";
import { type FeatureType, rolesOf } from "./feature-type.ts";
import { cellsOf, isNumeric, readRaw } from "./stored-numbers.ts";

/** Where the rows of a cast lie along the dimension of rows: a stretch, or places one by one. */
export type RowPlaces = { readonly start: number; readonly count: number } | Uint32Array;

export const rowCount = (rows: RowPlaces): number => (rows instanceof Uint32Array ? rows.length : rows.count);

export const placeOfRow = (rows: RowPlaces, row: number): number =>
  rows instanceof Uint32Array ? rows[row]! : rows.start + row;

/** One cast in the arrays of a file. */
export interface CastPlace {
  /** Index along each dimension of features. */
  readonly fixed: ReadonlyMap<string, number>;
  readonly rows: RowPlaces;
}

export interface Layout {
  readonly words: string;
  /** Dimension along which rows lie. */
  readonly along: string;
  /** Dimensions of features: stations, trajectories, profiles. */
  readonly features: ReadonlySet<string>;
  /** Variables that say only how the arrays are laid out. */
  readonly counting: ReadonlySet<string>;
  /** Ends of arrays may be padding. */
  readonly padded: boolean;
  readonly places: readonly CastPlace[];
}

/** More casts than any survey has: a file that claims them is not what it seems. */
const MOST_CASTS = 100_000;

/**
 * Finds the casts in the arrays of a discrete sampling geometry. Counts and indices of the file are held against the
 * real length of its dimensions before anything is made of them.
 *
 * @returns problems cf-dsg/… if the arrays follow none of the layouts, or their counts do not fit
 * @source  CF Conventions 1.13, section 9.3 and appendix H
 */
export async function findLayout(dataset: Dataset, type: FeatureType): Promise<Result<Layout>> {
  const variables = [...dataset.variables.values()];
  const counts = variables.filter(({ attributes }) => textOf(attributes, "sample_dimension") !== null);
  const indices = variables.filter(({ attributes }) => textOf(attributes, "instance_dimension") !== null);
  if (counts.length > 1)
    return fail(
      unfit(
        `${counts.length} variables count rows (${shortList(counts.map(({ name }) => name))}), one was expected`,
        counts[1],
      ),
    );
  const [count] = counts;
  if (count) return contiguous(dataset, count, indices);
  const [index, second] = indices;
  if (index && !second) {
    if (type === "timeSeriesProfile" || type === "trajectoryProfile")
      return fail(
        unfit(
          `${index.name} says what each ${index.dimensions[0] ?? "row"} belongs to, and no variable counts the rows of each profile (an attribute sample_dimension was expected)`,
          index,
        ),
      );
    return indexed(dataset, index);
  }
  if (index) return fail(unfit("rows belong to features by two index variables; one was expected", second));
  return multidimensional(dataset, type);
}

export const shortList = (names: readonly string[]): string =>
  names.length > 8 ? `${names.slice(0, 8).join(", ")} and ${names.length - 8} more` : names.join(", ");

const unfit = (message: string, variable?: Variable): Problem => ({
  code: "cf-dsg/layout",
  message,
  where: variable ? { variable: variable.name } : {},
  remedy: "CF Conventions, appendix H, shows the layouts that can be read.",
});

async function contiguous(
  dataset: Dataset,
  count: Variable,
  indices: readonly Variable[],
): Promise<Result<Layout>> {
  const along = textOf(count.attributes, "sample_dimension")!;
  const length = dataset.dimensions.get(along)?.length;
  const [feature] = count.dimensions;
  if (length === undefined || feature === undefined || count.dimensions.length > 1 || !isNumeric(count))
    return fail(unfit(`${count.name} should count, for each feature, its rows on ${along}`, count));
  if (cellsOf(count) > MOST_CASTS) return fail(tooMany(cellsOf(count)));
  const sizes = await readRaw(dataset, count);
  if (!sizes.ok) return sizes;
  const bad = sizes.value.findIndex((size) => !Number.isInteger(size) || size < 0);
  if (bad >= 0)
    return fail({
      code: "cf-dsg/row-size",
      message: `${count.name} counts ${sizes.value[bad]} rows`,
      where: { variable: count.name, index: bad },
      remedy: "A count is a whole number from 0.",
    });
  const total = sizes.value.reduce((sum, size) => sum + size, 0);
  if (total > length)
    return fail({
      code: "cf-dsg/row-size",
      message: `${count.name} counts ${total} rows, ${along} has ${length}`,
      where: { variable: count.name },
      remedy: "The file is damaged or was put together wrongly: the casts cannot be told apart.",
    });
  const owners = await ownersOf(dataset, feature, indices);
  if (!owners.ok) return owners;
  const warnings: Problem[] = [...owners.warnings];
  if (total < length)
    warnings.push({
      code: "cf-dsg/rows-left",
      message: `${count.name} counts ${total} rows, ${along} has ${length}: the last ${length - total} belong to no cast and are left out`,
      where: { variable: count.name },
      remedy: "Check the counts.",
    });
  let start = 0;
  const places = Array.from(sizes.value, (size, cast): CastPlace => {
    const rows = { start, count: size };
    start += size;
    return { fixed: new Map([[feature, cast], ...owners.value.map((owner) => owner(cast))]), rows };
  });
  return succeed(
    {
      words: "contiguous ragged array",
      along,
      features: new Set(places[0]?.fixed.keys() ?? [feature]),
      counting: new Set([count.name, ...indices.map(({ name }) => name)]),
      padded: false,
      places,
    },
    warnings,
  );
}

/** For each index variable over features: which feature of the upper level one belongs to. */
async function ownersOf(
  dataset: Dataset,
  feature: string,
  indices: readonly Variable[],
): Promise<Result<((cast: number) => [string, number])[]>> {
  const owners: ((cast: number) => [string, number])[] = [];
  for (const index of indices) {
    const upper = textOf(index.attributes, "instance_dimension")!;
    const length = dataset.dimensions.get(upper)?.length;
    if (length === undefined || index.dimensions.join() !== feature || !isNumeric(index))
      return fail(unfit(`${index.name} should give, for each ${feature}, its place on ${upper}`, index));
    const read = await readRaw(dataset, index);
    if (!read.ok) return read;
    const wrong = read.value.findIndex((at) => !(Number.isInteger(at) && at >= 0 && at < length));
    if (wrong >= 0)
      return fail({
        code: "cf-dsg/index",
        message: `${index.name} points to ${read.value[wrong]}, ${upper} has ${length}`,
        where: { variable: index.name, index: wrong },
        remedy: "Indices count from 0.",
      });
    owners.push((cast) => [upper, read.value[cast]!]);
  }
  return succeed(owners);
}

async function indexed(dataset: Dataset, index: Variable): Promise<Result<Layout>> {
  const feature = textOf(index.attributes, "instance_dimension")!;
  const features = dataset.dimensions.get(feature)?.length;
  const [along] = index.dimensions;
  if (features === undefined || along === undefined || index.dimensions.length > 1 || !isNumeric(index))
    return fail(unfit(`${index.name} should give, for each row, its place on ${feature}`, index));
  if (features > MOST_CASTS) return fail(tooMany(features));
  if (cellsOf(index) > MOST_CELLS) return fail(tooLarge(cellsOf(index)));
  const read = await readRaw(dataset, index);
  if (!read.ok) return read;
  const belongs = (at: number) => Number.isInteger(at) && at >= 0 && at < features;
  const sizes = new Uint32Array(features);
  const lost: number[] = [];
  for (const [row, at] of read.value.entries()) {
    if (belongs(at)) sizes[at]!++;
    else lost.push(row);
  }
  const rows = Array.from(sizes, (size) => new Uint32Array(size));
  const filled = new Uint32Array(features);
  for (const [row, at] of read.value.entries()) if (belongs(at)) rows[at]![filled[at]!++] = row;
  const warnings: Problem[] = [];
  if (lost.length > 0)
    warnings.push({
      code: "cf-dsg/index",
      message: `${lost.length} values of ${index.name} point to no ${feature}; their rows are left out`,
      where: { variable: index.name, index: lost[0]! },
      remedy: `Indices count from 0 to ${features - 1}.`,
    });
  return succeed(
    {
      words: "indexed ragged array",
      along,
      features: new Set([feature]),
      counting: new Set([index.name]),
      padded: false,
      places: rows.map((places, cast) => ({ fixed: new Map([[feature, cast]]), rows: places })),
    },
    warnings,
  );
}

/** More numbers than are held in memory at once. */
export const MOST_CELLS = 50_000_000;

export const tooLarge = (cells: number): Problem => ({
  code: "cf-dsg/too-large",
  message: `the file holds ${cells} numbers, more than are read at once (${MOST_CELLS})`,
  where: {},
  remedy: "Divide it into files of fewer casts.",
});

const tooMany = (casts: number): Problem => ({
  code: "cf-dsg/too-large",
  message: `the file says it holds ${casts} features, more than are read at once (${MOST_CASTS})`,
  where: {},
  remedy: "Divide it into files of fewer casts.",
});

async function multidimensional(dataset: Dataset, type: FeatureType): Promise<Result<Layout>> {
  const features = featureDimensions(dataset, type);
  const along = rowDimension(dataset, features);
  if (along === null)
    return fail(unfit("no variable has a dimension along which the rows of a cast could lie"));
  features.delete(along);
  const lengths = [...features].map((name) => dataset.dimensions.get(name)?.length ?? 0);
  const casts = lengths.reduce((product, length) => product * length, 1);
  if (casts > MOST_CASTS) return fail(tooMany(casts));
  const count = dataset.dimensions.get(along)?.length ?? 0;
  const names = [...features];
  const places = Array.from({ length: casts }, (_, cast): CastPlace => {
    const fixed = new Map<string, number>();
    let rest = cast;
    for (let axis = names.length - 1; axis >= 0; axis--) {
      fixed.set(names[axis]!, rest % lengths[axis]!);
      rest = Math.floor(rest / lengths[axis]!);
    }
    return { fixed, rows: { start: 0, count } };
  });
  // rows at places of their own in each feature may be fewer than the dimension has
  const ordinates = coordinatesAlong(dataset, along);
  const shared = ordinates.every(({ dimensions }) => dimensions.length === 1);
  const words =
    features.size === 0
      ? "single feature"
      : `${shared && ordinates.length > 0 ? "orthogonal" : "incomplete"} multidimensional array`;
  return succeed({ words, along, features, counting: new Set(), padded: features.size > 0, places });
}

/** Dimensions that count stations, trajectories and profiles, in the order of the file. */
function featureDimensions(dataset: Dataset, type: FeatureType): Set<string> {
  const roles = rolesOf(dataset);
  const found = new Set<string>();
  const add = (variable: Variable | undefined) => {
    if (!variable) return;
    const { dimensions } = variable;
    for (const name of variable.type === "char" ? dimensions.slice(0, -1) : dimensions) found.add(name);
  };
  // without an id a station is told by its position, a profile by its position or else its time
  const byCoordinates = (...names: readonly string[]): boolean => {
    const coordinates = [...dataset.variables.values()].filter(({ attributes }) =>
      names.includes(textOf(attributes, "standard_name") ?? ""),
    );
    coordinates.forEach(add);
    return coordinates.length > 0;
  };
  if (type !== "profile") {
    const owner = roles.get("timeseries_id") ?? roles.get("trajectory_id");
    if (owner) add(owner);
    else if (type !== "trajectoryProfile") byCoordinates("latitude", "longitude");
  }
  if (type !== "timeSeries") {
    const profile = roles.get("profile_id");
    if (profile) add(profile);
    else if (type !== "profile" || !byCoordinates("latitude", "longitude")) byCoordinates("time");
  }
  return found;
}

/** The dimension that most variables with numbers have beside those of features; null if there is none. */
function rowDimension(dataset: Dataset, features: ReadonlySet<string>): string | null {
  const bounds = boundsOf(dataset);
  const votes = new Map<string, number>();
  for (const variable of dataset.variables.values()) {
    if (!isNumeric(variable) || bounds.has(variable.name)) continue;
    const others = variable.dimensions.filter((name) => !features.has(name));
    const long = others.filter((name) => dataset.dimensions.get(name)?.length !== 1);
    const left = long.length > 0 ? long : others;
    if (left.length === 1) votes.set(left[0]!, (votes.get(left[0]!) ?? 0) + 1);
  }
  let best: string | null = null;
  for (const [name, count] of votes) if (best === null || count > votes.get(best)!) best = name;
  return best;
}

/** Variables that hold the edges of cells. */
export function boundsOf(dataset: Dataset): ReadonlySet<string> {
  return new Set(
    [...dataset.variables.values()].flatMap(({ attributes }) => [
      ...wordsOf(attributes, "bounds"),
      ...wordsOf(attributes, "climatology"),
    ]),
  );
}

/** Times and vertical coordinates that have the dimension of rows. */
function coordinatesAlong(dataset: Dataset, along: string): readonly Variable[] {
  return [...dataset.variables.values()].filter(({ dimensions, attributes }) => {
    if (!dimensions.includes(along)) return false;
    return (
      ["Z", "T"].includes(textOf(attributes, "axis") ?? "") ||
      ["time", "depth"].includes(textOf(attributes, "standard_name") ?? "")
    );
  });
}
