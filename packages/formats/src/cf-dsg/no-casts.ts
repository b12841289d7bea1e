import type { Problem } from "@wherry/core";
import type { Dataset } from "@wherry/netcdf";
import { textOf } from "./attributes.ts";
import { shortList } from "./layout.ts";

/** A kind of netCDF file whose casts are not arranged as CF discrete sampling geometries. */
export interface OtherKind {
  readonly format: string;
  readonly because: string;
}

/** Published arrangements that are recognised and not read. */
export function otherKindOf(dataset: Dataset): OtherKind | null {
  const conventions = textOf(dataset.attributes, "Conventions") ?? "";
  const has = (...names: string[]) => names.every((name) => dataset.dimensions.has(name));
  if (/\bArgo\b/i.test(conventions) || has("N_PROF", "N_LEVELS"))
    return {
      format: "Argo netCDF",
      because: "its profiles are arranged by the Argo manual and not by CF",
    };
  const counted = [...dataset.variables.values()].filter(({ attributes }) =>
    attributes.has("sample_dimension"),
  );
  const samples = new Set(counted.map(({ attributes }) => textOf(attributes, "sample_dimension")));
  if (samples.size > 1)
    return {
      format: "netCDF, a ragged array for each variable",
      because: `${counted.length} variables have rows of their own (${shortList([...samples].map(String))}), as in files of the World Ocean Database: values do not stand row by row beside each other, and that is not read yet`,
    };
  const units = [...dataset.variables.values()].map(({ attributes }) => textOf(attributes, "units"));
  if (units.includes("woce_flags"))
    return { format: "WOCE netCDF", because: "it is arranged as WOCE files are, which is not read yet" };
  if (/\bCOARDS\b/i.test(conventions) && textOf(dataset.attributes, "featureType") === null)
    return {
      format: "COARDS netCDF",
      because: "it follows the COARDS conventions, which tell no casts from grids",
    };
  return null;
}

/** A finding that says in plain words what a file holds, and why no casts were made of it. */
export function noCasts(
  dataset: Dataset,
  because: string,
  path: string,
  { where, remedy }: Partial<Problem> = {},
): Problem {
  const { dimensions, variables, attributes, kind } = dataset;
  const lengths = [...dimensions.values()].map(({ name, length }) => `${name} = ${length}`);
  const feature = textOf(attributes, "featureType");
  const conventions = textOf(attributes, "Conventions");
  const holds = [
    `${variables.size} ${variables.size === 1 ? "variable" : "variables"}`,
    lengths.length === 0 ? "no dimensions" : `dimensions ${shortList(lengths)}`,
    feature === null ? "no featureType" : `featureType ${feature}`,
    conventions === null ? "no Conventions" : `Conventions ${conventions}`,
  ];
  const named = variables.size === 0 ? "" : ` The variables are ${shortList([...variables.keys()])}.`;
  return {
    code: "cf-dsg/no-casts",
    message: `a ${kind} file with ${holds.join(", ")}.${named} No casts were made of it: ${because}`,
    where: { ...where, file: path },
    remedy:
      remedy ??
      "Casts are read from CF files whose featureType is profile, timeSeries, timeSeriesProfile or trajectoryProfile.",
  };
}
