import type { Problem } from "../problem.ts";
import { type Hdf5Description, type Hdf5File, typeClass } from "./hdf5-file.ts";
import { Hdf5Error } from "./hdf5-library.ts";
import { fixedTexts, numbersOfBytes } from "./numbers-of-bytes.ts";

export interface FoundDataset {
  /** Path in the file. */
  readonly path: string;
  /** Name of the group as a prefix of names ("" or "group/"), and the name in it. */
  readonly group: string;
  readonly name: string;
  readonly description: Hdf5Description;
  readonly isScale: boolean;
  /** A scale that stands for a dimension only. */
  readonly isBareDimension: boolean;
  readonly attributes: ReadonlySet<string>;
  /** The number that netCDF-4 gave the dimension of this scale. */
  readonly dimensionId: number | null;
}

export interface FoundGroup {
  readonly path: string;
  readonly prefix: string;
  readonly datasets: readonly FoundDataset[];
  readonly groups: readonly FoundGroup[];
}

const BARE_DIMENSION = "This is a netCDF dimension but not a netCDF variable";
/** netCDF-4 puts this before a variable that has the name of a dimension that isn't its first. */
const NOT_A_COORDINATE = "_nc4_non_coord_";
const DEEPEST_GROUP = 100;

/** Groups and datasets of a file, each once, in the order of the file; a damaged one is a problem. */
export function findObjects(file: Hdf5File, problems: Problem[]): FoundGroup {
  return findGroup(file, "/", "", 0, new Set([file.address("/")]), problems);
}

function findGroup(
  file: Hdf5File,
  path: string,
  prefix: string,
  depth: number,
  seen: Set<string>,
  problems: Problem[],
): FoundGroup {
  const datasets: FoundDataset[] = [];
  const groups: FoundGroup[] = [];
  const children: (readonly [path: string, prefix: string])[] = [];
  for (const own of attempt(() => file.names(path), prefix || "the root group", problems) ?? []) {
    const below = `${path === "/" ? "" : path}/${own}`;
    const name = prefix + own;
    attempt(
      () => {
        const kind = file.kind(below);
        if (kind === "dataset") datasets.push(findDataset(file, below, prefix, own));
        else if (kind === "group") {
          const address = file.address(below);
          if (seen.has(address) || depth >= DEEPEST_GROUP)
            problems.push(
              lost(name, "is a second name of a group that stands elsewhere; it is read there only"),
            );
          else {
            seen.add(address);
            children.push([below, `${name}/`]);
          }
        } else if (kind !== "type") problems.push(lost(name, "is a link that leads to nothing in this file"));
      },
      name,
      problems,
    );
  }
  for (const [below, childPrefix] of children)
    groups.push(findGroup(file, below, childPrefix, depth + 1, seen, problems));
  return { path, prefix, datasets, groups };
}

const lost = (variable: string, message: string): Problem => ({
  code: "netcdf/link",
  message: `${variable} ${message}`,
  where: { variable },
});

/** What the library can't read is a problem of that object only. */
function attempt<T>(run: () => T, name: string, problems: Problem[]): T | undefined {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof Hdf5Error)) throw error;
    problems.push({
      code: "netcdf/damaged-object",
      message: `${name} can't be read: ${error.message}`,
      where: { variable: name },
      remedy: "The file is damaged here: fetch it again, or go back to a sound copy.",
    });
    return undefined;
  }
}

function findDataset(file: Hdf5File, path: string, group: string, own: string): FoundDataset {
  const description = file.describe(path);
  const attributes = new Set(file.attributeNames(path));
  const isScale = attributes.has("CLASS") && text(file, path, "CLASS") === "DIMENSION_SCALE";
  const name = own.startsWith(NOT_A_COORDINATE) ? own.slice(NOT_A_COORDINATE.length) : own;
  return {
    path,
    group,
    name,
    description,
    isScale,
    isBareDimension: isScale && attributes.has("NAME") && text(file, path, "NAME").startsWith(BARE_DIMENSION),
    attributes,
    dimensionId:
      isScale && attributes.has("_Netcdf4Dimid")
        ? (wholeNumbers(file, path, "_Netcdf4Dimid")[0] ?? null)
        : null,
  };
}

function text(file: Hdf5File, path: string, name: string): string {
  const description = file.describeAttribute(path, name);
  if (description.type !== typeClass.string) return "";
  const raw = file.attributeValues(path, name, description);
  const [first] = "texts" in raw ? raw.texts : fixedTexts(raw.bytes, description.size);
  return String.fromCharCode(...(first ?? []).slice(0, 200));
}

/** Values of a bookkeeping attribute of 32-bit whole numbers. */
export function wholeNumbers(file: Hdf5File, path: string, name: string): number[] {
  const description = file.describeAttribute(path, name);
  if (description.type !== typeClass.integer || description.size !== 4) return [];
  const raw = file.attributeValues(path, name, description);
  return "bytes" in raw ? Array.from(numbersOfBytes("int", raw.bytes), Number) : [];
}
