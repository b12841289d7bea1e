import type { Dimension } from "../dataset.ts";
import type { Problem } from "../problem.ts";
import { type FoundDataset, type FoundGroup, wholeNumbers } from "./found-objects.ts";
import type { Hdf5File } from "./hdf5-file.ts";
import { Hdf5Error } from "./hdf5-library.ts";

/** H5S_UNLIMITED as a floating-point number. */
const UNLIMITED = 2 ** 64;

interface GrowingDimension {
  readonly name: string;
  length: number;
  readonly unlimited: boolean;
  readonly id: number;
}

export interface FoundDimensions {
  readonly dimensions: ReadonlyMap<string, Dimension>;
  /** Names of the dimensions of each dataset, by its path. */
  readonly axes: ReadonlyMap<string, readonly string[]>;
}

/**
 * Gives every axis of every dataset its dimension.
 *
 * A dimension scale is a dimension; axes are tied to it by `_Netcdf4Coordinates` (numbers of dimensions) or
 * `DIMENSION_LIST` (references). Datasets without any scale get dimensions phony_dim_N, as the netCDF library
 * names them, one for each length in a group. The length of an unlimited dimension is that of the longest
 * dataset along it.
 */
export function findDimensions(file: Hdf5File, root: FoundGroup, problems: Problem[]): FoundDimensions {
  const finder = new DimensionFinder(file, problems);
  finder.collect(root);
  finder.tie(root);
  return finder.found(root);
}

class DimensionFinder {
  private readonly file: Hdf5File;
  private readonly problems: Problem[];
  private readonly byAddress = new Map<string, GrowingDimension>();
  private readonly byScale = new Map<string, GrowingDimension>();
  private readonly byId = new Map<number, GrowingDimension>();
  private readonly inGroup = new Map<string, GrowingDimension[]>();
  private readonly axes = new Map<string, GrowingDimension[]>();
  private nextId = 0;

  constructor(file: Hdf5File, problems: Problem[]) {
    this.file = file;
    this.problems = problems;
  }

  /** The scales, those of the outer groups first. */
  collect(group: FoundGroup): void {
    for (const dataset of group.datasets) {
      const { shape, maxshape } = dataset.description;
      const length = shape?.[0];
      if (!dataset.isScale || length === undefined) continue;
      const address = this.attempt(dataset, () => this.file.address(dataset.path));
      // a second name of a scale, by a link, is no second dimension
      const known = address === undefined ? undefined : this.byAddress.get(address);
      const dimension = known ?? this.newDimension(group, dataset, length, maxshape?.[0] === UNLIMITED);
      this.byScale.set(dataset.path, dimension);
      if (address !== undefined) this.byAddress.set(address, dimension);
    }
    for (const child of group.groups) this.collect(child);
  }

  private newDimension(
    group: FoundGroup,
    dataset: FoundDataset,
    length: number,
    unlimited: boolean,
  ): GrowingDimension {
    const id = dataset.dimensionId ?? this.nextId;
    this.nextId = Math.max(this.nextId, id + 1);
    const dimension = this.add(group, { name: group.prefix + dataset.name, length, unlimited, id });
    this.byId.set(id, dimension);
    return dimension;
  }

  private add(group: FoundGroup, dimension: GrowingDimension): GrowingDimension {
    const known = this.inGroup.get(group.path);
    if (known) known.push(dimension);
    else this.inGroup.set(group.path, [dimension]);
    return dimension;
  }

  /** Inner groups come first, as in the netCDF library, whose numbers of phony dimensions follow from it. */
  tie(group: FoundGroup): void {
    for (const child of group.groups) this.tie(child);
    for (const dataset of group.datasets) {
      if (dataset.isBareDimension) continue;
      const shape = dataset.description.shape ?? [];
      const named = this.named(dataset, shape.length);
      const axes = shape.map((_, axis) => named[axis] ?? null);
      if (axes.every((axis) => axis === null)) this.axes.set(dataset.path, this.phony(group, dataset, []));
      else this.axes.set(dataset.path, this.phony(group, dataset, axes));
      this.grow(dataset, shape);
    }
  }

  /** The dimensions that the file names for the axes, as far as it does. */
  private named(dataset: FoundDataset, rank: number): readonly (GrowingDimension | undefined)[] {
    const own = this.byScale.get(dataset.path);
    if (own && rank === 1) return [own];
    return (
      this.attempt(dataset, () => {
        if (dataset.attributes.has("_Netcdf4Coordinates")) {
          const ids = wholeNumbers(this.file, dataset.path, "_Netcdf4Coordinates");
          const known = ids.map((id) => this.byId.get(id));
          if (known.length === rank && known.every((dimension) => dimension !== undefined)) return known;
        }
        if (own) return [own];
        if (!dataset.attributes.has("DIMENSION_LIST")) return [];
        const lists = this.file.referenceLists(dataset.path, "DIMENSION_LIST");
        return lists.map((list) => list.map((address) => this.byAddress.get(address)).find((found) => found));
      }) ?? []
    );
  }

  /** Fills the axes that have no name. */
  private phony(
    group: FoundGroup,
    { description: { shape, maxshape } }: FoundDataset,
    named: readonly (GrowingDimension | null)[],
  ): GrowingDimension[] {
    const axes: GrowingDimension[] = [];
    for (const [axis, length] of (shape ?? []).entries()) {
      const unlimited = maxshape?.[axis] === UNLIMITED;
      const alike = this.inGroup
        .get(group.path)
        ?.find((one) => one.length === length && one.unlimited === unlimited && !axes.includes(one));
      const known = named[axis] ?? alike;
      axes.push(known ?? this.newPhony(group, length, unlimited));
    }
    return axes;
  }

  private newPhony(group: FoundGroup, length: number, unlimited: boolean): GrowingDimension {
    const id = this.nextId;
    this.nextId++;
    return this.add(group, { name: `${group.prefix}phony_dim_${id}`, length, unlimited, id });
  }

  private grow(dataset: FoundDataset, shape: readonly number[]): void {
    for (const [axis, dimension] of (this.axes.get(dataset.path) ?? []).entries()) {
      const length = shape[axis] ?? 0;
      if (length <= dimension.length) continue;
      if (dimension.unlimited) dimension.length = length;
      else {
        const variable = dataset.group + dataset.name;
        this.problems.push({
          code: "netcdf/dimension-length",
          message: `${variable} holds ${length} values along ${dimension.name}, whose length is ${dimension.length}; those beyond are not read`,
          where: { variable, dimension: dimension.name },
        });
      }
    }
  }

  private attempt<T>(dataset: FoundDataset, run: () => T): T | undefined {
    try {
      return run();
    } catch (error) {
      if (!(error instanceof Hdf5Error)) throw error;
      const variable = dataset.group + dataset.name;
      this.problems.push({
        code: "netcdf/damaged-dimensions",
        message: `the dimensions of ${variable} can't be read: ${error.message}`,
        where: { variable },
      });
      return undefined;
    }
  }

  found(root: FoundGroup): FoundDimensions {
    const dimensions = new Map<string, Dimension>();
    const gather = (group: FoundGroup): void => {
      const own = [...(this.inGroup.get(group.path) ?? [])].sort((a, b) => a.id - b.id);
      for (const { name, length, unlimited } of own) dimensions.set(name, { name, length, unlimited });
      group.groups.forEach(gather);
    };
    gather(root);
    const axes = new Map([...this.axes].map(([path, own]) => [path, own.map(({ name }) => name)]));
    return { dimensions, axes };
  }
}
