import type { MemoryContent, MemoryVariable } from "@wherry/netcdf";
import { identityVariables, withoutAttributes } from "./arrange-parts.ts";
import { padded } from "./pad-rows.ts";
import { attributes, fillAttribute } from "./storage.ts";
import { type Layout, type Target, targetAttributes } from "./target.ts";

type Content = Required<Pick<MemoryContent, "dimensions" | "attributes" | "variables">>;

/**
 * Profiles that lie in a contiguous ragged array, arranged as a target takes them. Every value stays as it is.
 *
 * - ragged (CF 1.13 appendix H.3.4): as given.
 * - orthogonal (H.3.1): one row of an array for each cast, where all have the same levels, strictly increasing and
 *   none missing; the levels are the coordinate variable of their dimension.
 * - incomplete (H.3.2): rows padded with fill values to the length of the longest; in flags too, where a missing
 *   value of a row is 9. Bounds of layers can't be told in two dimensions: the thickness stands in the comment of
 *   the vertical coordinate, or as `layer_thickness` where it differs.
 * - single (H.3.3): one cast without a dimension for casts.
 *
 * @param content with `profile`, `obs`, `row_size` and `profile_id` as the writers of profiles make them
 * @param isAlone whether the file is one of a cast by design, one file for each cast
 */
export function arrangeProfiles(content: Content, target: Target, isAlone: boolean): MemoryContent {
  const counts = [...(rowSizes(content).data as Int32Array)];
  const wanted = isAlone ? target.layouts.profile : target.layouts.profiles;
  const vertical = verticalOf(content);
  const layout: Layout =
    wanted !== "multidimensional" ? wanted : haveCommonLevels(vertical, counts) ? "orthogonal" : "incomplete";
  const arranged =
    layout === "ragged"
      ? content
      : layout === "single"
        ? single(content, vertical)
        : layout === "orthogonal"
          ? orthogonal(content, vertical!, counts)
          : incomplete(content, vertical, counts);
  return withTargetAttributes(arranged, target, "profile", layout);
}

/** Adds the texts that a target asks for. */
export function withTargetAttributes(
  content: Content,
  target: Target,
  featureType: "profile" | "timeSeries",
  layout: Layout,
): MemoryContent {
  const own = (on: "file" | "instruments" | "platforms") => targetAttributes(target, on, featureType, layout);
  const kinds = { instrument: own("instruments"), platform: own("platforms") };
  return {
    ...content,
    attributes: [...content.attributes, ...own("file")],
    variables: content.variables.map((variable) => {
      const kind = /^(instrument|platform)\d+$/.exec(variable.name)?.[1] as keyof typeof kinds | undefined;
      if (kind === undefined || kinds[kind].length === 0) return variable;
      return { ...variable, attributes: [...(variable.attributes ?? []), ...kinds[kind]] };
    }),
  };
}

function rowSizes({ variables }: Content): MemoryVariable {
  const found = variables.find(({ name }) => name === "row_size");
  if (!found) throw new TypeError("profiles to arrange must lie in a contiguous ragged array");
  return found;
}

const isPerRow = ({ dimensions }: MemoryVariable): boolean => dimensions[0] === "obs";

/** The vertical coordinate of the rows. */
const verticalOf = ({ variables }: Content): MemoryVariable | null =>
  variables.find((variable) => isPerRow(variable) && has(variable, "axis", "Z")) ?? null;

const has = ({ attributes: own = [] }: MemoryVariable, name: string, value: string): boolean =>
  own.some((attribute) => attribute.name === name && attribute.value === value);

/** Whether the levels of every cast are the same and could be a coordinate variable. */
function haveCommonLevels(vertical: MemoryVariable | null, counts: readonly number[]): boolean {
  const [first = 0] = counts;
  if (vertical === null || first === 0 || counts.some((count) => count !== first)) return false;
  // missing levels have a fill value, and flags of the levels have no place beside a common coordinate
  if (vertical.attributes?.some(({ name }) => name === "_FillValue" || name === "ancillary_variables"))
    return false;
  const levels = vertical.data as Float32Array;
  for (let k = 0; k < levels.length; k++) {
    if (levels[k] !== levels[k % first]) return false;
    if (k % first > 0 && !(levels[k]! > levels[k - 1]!)) return false;
  }
  return true;
}

function single(content: Content, vertical: MemoryVariable | null): Content {
  const along = haveCommonLevels(vertical, [...(rowSizes(content).data as Int32Array)])
    ? vertical!.name
    : "obs";
  return {
    ...content,
    dimensions: content.dimensions
      .filter(({ name }) => name !== "profile")
      .map((dimension) => (dimension.name === "obs" ? { ...dimension, name: along } : dimension)),
    variables: content.variables
      .filter(({ name }) => name !== "row_size")
      .map((variable) => ({
        ...variable,
        dimensions: variable.dimensions
          .filter((name) => name !== "profile")
          .map((name) => (name === "obs" ? along : name)),
      })),
  };
}

function orthogonal(content: Content, vertical: MemoryVariable, counts: readonly number[]): Content {
  const levels = counts[0]!;
  const bounds = `${vertical.name}_bounds`;
  return {
    ...content,
    dimensions: content.dimensions.map((dimension) =>
      dimension.name === "obs" ? { name: vertical.name, length: levels } : dimension,
    ),
    variables: identityVariables(content, "profile").map((variable): MemoryVariable => {
      if (!isPerRow(variable)) return variable;
      const inner = variable.dimensions.slice(1);
      if (variable.name === vertical.name)
        return { ...variable, dimensions: [vertical.name], data: variable.data.slice(0, levels) };
      if (variable.name === bounds)
        return {
          ...variable,
          dimensions: [vertical.name, ...inner],
          data: variable.data.slice(0, 2 * levels),
        };
      // casts of equal length stand one behind the other already
      return { ...variable, dimensions: ["profile", vertical.name, ...inner] };
    }),
  };
}

function incomplete(content: Content, vertical: MemoryVariable | null, counts: readonly number[]): Content {
  const length = Math.max(...counts);
  const lengthOf = new Map(content.dimensions.map((dimension) => [dimension.name, dimension.length]));
  const bounds = content.variables.find(({ name }) => name === `${vertical?.name}_bounds`);
  const thickness = bounds ? thicknesses(bounds.data as Float32Array) : null;
  const common = bounds && thickness ? commonThickness(bounds.data as Float32Array, thickness) : null;
  const variables = identityVariables(content, "profile").flatMap((variable): MemoryVariable[] => {
    if (variable === bounds) return [];
    if (!isPerRow(variable)) return [variable];
    const inner = variable.dimensions.slice(1);
    const values = inner.reduce((size, name) => size * lengthOf.get(name)!, 1);
    const spread: MemoryVariable = {
      ...padded(variable, counts, length, values),
      dimensions: ["profile", "z", ...inner],
    };
    if (variable.name !== vertical?.name) return [spread];
    const described = withoutAttributes(common === null ? spread : withThickness(spread, common), ["bounds"]);
    if (thickness === null || common !== null) return [described];
    const own = padded(thicknessVariable(variable, content, thickness), counts, length, 1);
    return [described, { ...own, dimensions: ["profile", "z"] }];
  });
  return {
    ...content,
    dimensions: content.dimensions
      .filter(({ name }) => name !== "bound" || bounds === undefined)
      .map((dimension) => (dimension.name === "obs" ? { name: "z", length } : dimension)),
    variables,
  };
}

const thicknesses = (bounds: Float32Array): number[] =>
  Array.from({ length: bounds.length / 2 }, (_, k) => bounds[2 * k + 1]! - bounds[2 * k]!);

/** Thickness of all layers; null if they differ by more than single precision leaves open in the deepest. */
function commonThickness(bounds: Float32Array, thickness: readonly number[]): number | null {
  const deepest = bounds.reduce((most, edge) => Math.max(most, Math.abs(edge)), 0);
  const least = Math.min(...thickness);
  const most = Math.max(...thickness);
  return most - least <= deepest * 2 ** -22 ? Number.parseFloat(thickness[0]!.toPrecision(5)) : null;
}

function withThickness(vertical: MemoryVariable, thickness: number): MemoryVariable {
  const units = String(vertical.attributes?.find(({ name }) => name === "units")?.value);
  const half = thickness / 2;
  const told = `each layer reaches ${half} ${units} above and below its centre`;
  const before = vertical.attributes?.find(({ name }) => name === "comment")?.value;
  const comment = typeof before === "string" ? `${before}; ${told}` : told;
  const others = withoutAttributes(vertical, ["comment", "coverage_content_type"]).attributes ?? [];
  return {
    ...vertical,
    attributes: [...others, ...attributes(["comment", comment], ["coverage_content_type", "coordinate"])],
  };
}

function thicknessVariable(
  vertical: MemoryVariable,
  { variables }: Content,
  thickness: readonly number[],
): MemoryVariable {
  const units = vertical.attributes?.find(({ name }) => name === "units")?.value;
  const other = variables.find(({ name }) => name === "temperature" || name === "salinity");
  const coordinates = other?.attributes?.find(({ name }) => name === "coordinates")?.value;
  return {
    name: "layer_thickness",
    type: "float",
    dimensions: ["obs"],
    data: Float32Array.from(thickness),
    attributes: attributes(
      ["long_name", "thickness of the layer, half of it above and half below its centre"],
      ["units", String(units)],
      fillAttribute({ type: "float", fill: -9999 }),
      ["coverage_content_type", "auxiliaryInformation"],
      ["coordinates", typeof coordinates === "string" ? coordinates.replace("profile_id", "cast_id") : null],
    ),
  };
}
