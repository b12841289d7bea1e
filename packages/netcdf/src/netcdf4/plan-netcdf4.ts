import type { Dataset, Variable } from "../dataset.ts";
import { failOr, type Result } from "../problem.ts";
import { sizeOf } from "../slab.ts";
import { bytesPerValue } from "../types.ts";
import { type Netcdf4Model, netcdf4Problems, netcdf4Warnings } from "./check-netcdf4.ts";
import { groupOf, storedPath } from "./group-path.ts";
import type { Hdf5Layout } from "./hdf5-writer.ts";

export interface PlannedDimension {
  readonly name: string;
  /** The number that fixes its place among the dimensions. */
  readonly id: number;
  /** Path of its scale. */
  readonly path: string;
  readonly length: number;
  readonly unlimited: boolean;
  /** Whether the scale holds no variable. */
  readonly bare: boolean;
}

export interface PlannedDataset {
  readonly variable: Variable;
  readonly path: string;
  readonly layout: Hdf5Layout;
  /** The dimension whose coordinate variable it is, or null. */
  readonly scaleOf: PlannedDimension | null;
}

export interface Netcdf4Plan {
  /** Groups, outer ones first. */
  readonly groups: readonly string[];
  readonly dimensions: ReadonlyMap<string, PlannedDimension>;
  readonly datasets: readonly PlannedDataset[];
}

/** Put before the name of a variable that has the name of a dimension but isn't its coordinate variable. */
const NOT_A_COORDINATE = "_nc4_non_coord_";
const CHUNK = 1 << 20;
/** Bytes below which the index of a packed variable is larger than what packing saves. */
const WORTH_PACKING = 1 << 13;
/** So that a variable that begins empty doesn't grow by chunks of a few bytes. */
const SMALLEST_CHUNK = 1 << 12;

/** Where everything of a dataset goes in a netCDF-4 file, or all reasons why it can't be said in one. */
export function planNetcdf4(dataset: Dataset, deflate: number, model: Netcdf4Model): Result<Netcdf4Plan> {
  const dimensions = new Map<string, PlannedDimension>();
  for (const { name, length, unlimited } of dataset.dimensions.values()) {
    const variable = dataset.variables.get(name);
    const bare = variable === undefined || !isCoordinate(variable);
    dimensions.set(name, { name, id: dimensions.size, path: storedPath(name), length, unlimited, bare });
  }
  const datasets = [...dataset.variables.values()].map((variable): PlannedDataset => {
    const { name } = variable;
    const sameName = dimensions.get(name);
    const scaleOf = sameName && !sameName.bare ? sameName : null;
    const path = sameName?.bare ? hiddenFrom(name) : storedPath(name);
    return { variable, path, scaleOf, layout: layoutOf(variable, dimensions, deflate) };
  });
  return failOr(
    netcdf4Problems(dataset, model),
    () => ({ groups: groupsOf(dataset), dimensions, datasets }),
    netcdf4Warnings(dataset),
  );
}

/** A variable of a dimension's name along this dimension (and maybe others behind it). */
const isCoordinate = ({ name, dimensions }: Variable): boolean => dimensions[0] === name;

function hiddenFrom(name: string): string {
  const path = storedPath(name);
  const cut = path.lastIndexOf("/") + 1;
  return path.slice(0, cut) + NOT_A_COORDINATE + path.slice(cut);
}

function groupsOf(dataset: Dataset): string[] {
  const groups = new Set<string>();
  for (const names of [dataset.variables, dataset.dimensions, dataset.attributes])
    for (const name of names.keys()) {
      const steps = groupOf(name).split("/").slice(0, -1);
      for (let depth = 1; depth <= steps.length; depth++)
        groups.add(storedPath(steps.slice(0, depth).join("/")));
    }
  return [...groups];
}

function layoutOf(
  { type, shape, dimensions: names }: Variable,
  dimensions: ReadonlyMap<string, PlannedDimension>,
  deflate: number,
): Hdf5Layout {
  const growing = names.map((name) => dimensions.get(name)?.unlimited ?? false);
  const bytes = bytesPerValue(type) || 16;
  // texts are kept apart from their places, which are not worth packing
  const packs = deflate > 0 && type !== "string" && sizeOf(shape) * bytes >= WORTH_PACKING;
  const inChunks = growing.includes(true) || packs;
  return {
    shape,
    growing,
    chunks: inChunks ? chunksOf(shape, growing, bytes) : null,
    deflate: inChunks && type !== "string" ? deflate : 0,
  };
}

/** Whole inner axes as far as a chunk of 1 MiB holds them. */
function chunksOf(shape: readonly number[], growing: readonly boolean[], bytes: number): number[] {
  let left = Math.floor(CHUNK / bytes);
  let filled = bytes;
  const chunks = [...shape];
  for (let axis = shape.length - 1; axis >= 0; axis--) {
    const wanted = growing[axis] ? Math.max(shape[axis]!, Math.floor(SMALLEST_CHUNK / filled)) : shape[axis]!;
    const length = Math.max(1, Math.min(wanted, left));
    chunks[axis] = length;
    left = Math.max(1, Math.floor(left / length));
    filled *= length;
  }
  return chunks;
}
