import type { Dataset, Variable } from "@wherry/netcdf";
import { textOf } from "./attributes.ts";

/**
 * Feature types of discrete sampling geometries.
 *
 * @source CF Conventions 1.13, section 9.1, table 9.1
 */
export const FEATURE_TYPES = [
  "point",
  "timeSeries",
  "trajectory",
  "profile",
  "timeSeriesProfile",
  "trajectoryProfile",
] as const;
export type FeatureType = (typeof FEATURE_TYPES)[number];

/** Values in old files, from before the names were settled (drafts of CF 1.6). */
const OLD_NAMES: ReadonlyMap<string, FeatureType> = new Map([
  ["station", "timeSeries"],
  ["stationtimeseries", "timeSeries"],
  ["stationprofile", "timeSeriesProfile"],
  ["stationprofiletimeseries", "timeSeriesProfile"],
  ["section", "trajectoryProfile"],
]);

const ROLES = ["profile_id", "timeseries_id", "trajectory_id"] as const;
export type CfRole = (typeof ROLES)[number];

export interface StatedFeature {
  readonly type: FeatureType;
  /** Whether `featureType` says so; otherwise it follows from the roles of variables. */
  readonly stated: boolean;
  readonly because: string;
}

/** What the dataset is said to hold; null if neither `featureType` nor a `cf_role` tells. */
export function featureOf(dataset: Dataset): StatedFeature | null {
  const text = textOf(dataset.attributes, "featureType");
  if (text !== null) {
    const lower = text.toLowerCase();
    const type = FEATURE_TYPES.find((name) => name.toLowerCase() === lower) ?? OLD_NAMES.get(lower);
    return type ? { type, stated: true, because: `featureType says ${text}` } : null;
  }
  const roles = rolesOf(dataset);
  const [profile, station, trajectory] = ROLES.map((role) => roles.get(role));
  const type = profile
    ? station
      ? "timeSeriesProfile"
      : trajectory
        ? "trajectoryProfile"
        : "profile"
    : station
      ? "timeSeries"
      : trajectory
        ? "trajectory"
        : null;
  if (type === null) return null;
  const named = [profile, station, trajectory].filter((variable) => variable !== undefined);
  const because = named
    .map(({ name, attributes }) => `cf_role of ${name} says ${textOf(attributes, "cf_role")}`)
    .join(" and ");
  return { type, stated: false, because: `there is no featureType, but ${because}` };
}

/** Variables with a role, by role; the first of each. */
export function rolesOf({ variables }: Dataset): ReadonlyMap<CfRole, Variable> {
  const found = new Map<CfRole, Variable>();
  for (const variable of variables.values()) {
    const text = textOf(variable.attributes, "cf_role");
    const role = ROLES.find((name) => name === text);
    if (role && !found.has(role)) found.set(role, variable);
  }
  return found;
}
