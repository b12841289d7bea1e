import { isTextType, textOf } from "./attribute-value.ts";
import type { Axis } from "./axis.ts";
import type { VariableView } from "./variable-view.ts";

/** The six kinds of discrete sampling geometry (CF table 9.1), in small letters as they are compared. */
export const FEATURE_TYPES = [
  "point",
  "timeseries",
  "trajectory",
  "profile",
  "timeseriesprofile",
  "trajectoryprofile",
] as const;

export type FeatureType = (typeof FEATURE_TYPES)[number];

/** A ragged array's link from the dimension of the samples to that of the features that they belong to. */
export interface Link {
  readonly kind: "count" | "index";
  readonly variable: string;
  /** The finer dimension: samples. */
  readonly from: string;
  /** The coarser dimension: features. */
  readonly to: string;
}

/** How the features of the file are laid out (CF 9.3). */
export type Form =
  | "contiguous"
  | "indexed"
  | "two-level" // counts and an index, one above the other (H.5.3, H.6.3)
  | "multidimensional" // orthogonal: the elements share their coordinates
  | "incomplete" // multidimensional, padded: every feature has coordinates of its own
  | "single" // one feature without instance dimension
  | "point"
  | "none"; // no featureType

export interface Layout {
  /** The text of the attribute as it stands. */
  readonly claimed: string | undefined;
  readonly featureType: FeatureType | null;
  readonly form: Form;
  readonly links: readonly Link[];
  /** Dimension that counts the features; null for a single one. */
  readonly instance: string | null;
}

/** Coordinate that runs along the elements of one feature. */
const ELEMENT_AXIS: Readonly<Record<FeatureType, Axis>> = {
  point: "T",
  timeseries: "T",
  trajectory: "T",
  profile: "Z",
  timeseriesprofile: "Z",
  trajectoryprofile: "Z",
};

export const CF_ROLES: Readonly<Record<FeatureType, readonly string[]>> = {
  point: [],
  timeseries: ["timeseries_id"],
  trajectory: ["trajectory_id"],
  profile: ["profile_id"],
  timeseriesprofile: ["timeseries_id", "profile_id"],
  trajectoryprofile: ["trajectory_id", "profile_id"],
};

export function readLayout(claimed: string | undefined, variables: readonly VariableView[]): Layout {
  const lower = claimed?.trim().toLowerCase();
  const featureType = FEATURE_TYPES.find((type) => type === lower) ?? null;
  const links = linksOf(variables);
  const instance = instanceDimension(featureType, variables, links);
  return { claimed, featureType, form: formOf(featureType, variables, links, instance), links, instance };
}

function linksOf(variables: readonly VariableView[]): Link[] {
  const links: Link[] = [];
  for (const { name, attributes, allDimensions, type } of variables) {
    const [own] = allDimensions;
    if (own === undefined || isTextType(type)) continue;
    const samples = textOf(attributes.get("sample_dimension"));
    if (samples !== undefined) links.push({ kind: "count", variable: name, from: samples, to: own });
    const features = textOf(attributes.get("instance_dimension"));
    if (features !== undefined) links.push({ kind: "index", variable: name, from: own, to: features });
  }
  return links;
}

/** The dimensions given and all those of the features that they belong to, by way of the links. */
export function withFeatures(dimensions: readonly string[], links: readonly Link[]): Set<string> {
  const reached = new Set(dimensions);
  for (let before = -1; before < reached.size; ) {
    before = reached.size;
    for (const link of links) if (reached.has(link.from)) reached.add(link.to);
  }
  return reached;
}

function instanceDimension(
  featureType: FeatureType | null,
  variables: readonly VariableView[],
  links: readonly Link[],
): string | null {
  const coarsest = links.find(({ to }) => !links.some(({ from }) => from === to));
  if (coarsest !== undefined) return coarsest.to;
  if (featureType === null || featureType === "point") return null;
  const [role] = CF_ROLES[featureType];
  const identity = variables.find((variable) => variable.text("cf_role") === role);
  if (identity !== undefined) return identity.dimensions[0] ?? null;
  if (featureType === "trajectory" || featureType === "trajectoryprofile") return null;
  const position = variables.find(({ axis }) => axis === "Y" || axis === "X");
  return position?.dimensions[0] ?? null;
}

function formOf(
  featureType: FeatureType | null,
  variables: readonly VariableView[],
  links: readonly Link[],
  instance: string | null,
): Form {
  const counts = links.some(({ kind }) => kind === "count");
  const indexes = links.some(({ kind }) => kind === "index");
  if (counts && indexes) return "two-level";
  if (counts) return "contiguous";
  if (indexes) return "indexed";
  if (featureType === null) return "none";
  if (featureType === "point") return "point";
  const along = variables.filter(({ axis }) => axis === ELEMENT_AXIS[featureType]);
  const rank = Math.max(0, ...along.map(({ dimensions }) => dimensions.length));
  if (instance === null) return "single";
  return rank > 1 ? "incomplete" : "multidimensional";
}
