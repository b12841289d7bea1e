import type { Attribute, Dataset, Source, Variable } from "../dataset.ts";
import { fillValue } from "../fill-value.ts";
import { noVariable } from "../memory.ts";
import { fail, type Result, succeed } from "../problem.ts";
import { checkSlab } from "../slab.ts";
import { readExactly } from "../source.ts";
import { findDimensions } from "./dimensions.ts";
import { type FoundDataset, type FoundGroup, findObjects } from "./found-objects.ts";
import { strikeOutBrokenHeaps } from "./global-heaps.ts";
import { Hdf5File } from "./hdf5-file.ts";
import { Hdf5Error, hdf5Library } from "./hdf5-library.ts";
import { memberText, type Notes, readAttributes } from "./read-attribute.ts";
import { readBlock, type StoredVariable } from "./read-block.ts";
import { storedType } from "./stored-type.ts";

/** Bytes of a source that are read at once. */
const PIECE = 1 << 23;

/** Frees the bytes of files that nobody closed. */
const forgotten = new FinalizationRegistry<Hdf5File>((file) => file.close());

/**
 * Opens a netCDF-4 file, or another HDF5 file as the netCDF library sees it.
 *
 * Dimensions are named by dimension scales, or else phony_dim_N; names in groups are prefixed with the group's
 * path. Values are as stored: filters undone, nothing masked or scaled, what was never written is the fill
 * value. Enumerations are read as their numbers, with a warning. Types that have no place in a dataset are
 * problems of that variable or attribute.
 *
 * The HDF5 library needs the whole file in memory: `size` bytes from opening until `close()`, beside about
 * 20 MB for the library, and twice the bytes of what is read at once.
 *
 * @source Unidata netCDF documentation, "NetCDF-4 Format" (appendix File Format Specifications): dimension
 *         scales, _Netcdf4Dimid, _Netcdf4Coordinates, _nc3_strict, _nc4_non_coord_
 */
export async function openNetcdf4(source: Source): Promise<Result<Dataset>> {
  const bytes = await wholeFile(source);
  if (!bytes.ok) return bytes;
  strikeOutBrokenHeaps(bytes.value);
  const library = await hdf5Library();
  const file = new Hdf5File(library, bytes.value);
  const notes: Notes = { problems: [], warnings: [] };
  try {
    const root = findObjects(file, notes.problems);
    const dataset = describe(file, root, notes);
    forgotten.register(dataset, file);
    return succeed(dataset, notes.warnings);
  } catch (error) {
    file.close();
    if (!(error instanceof Hdf5Error)) throw error;
    return fail({
      code: "netcdf/damaged-hdf5",
      message: `the file has the HDF5 signature but can't be opened: ${error.message}`,
      where: {},
      remedy: "It is damaged or cut short: fetch it again, or go back to a sound copy.",
    });
  }
}

async function wholeFile(source: Source): Promise<Result<Uint8Array>> {
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(source.size);
  } catch {
    return fail({
      code: "netcdf/memory",
      message: `there is no memory for a netCDF-4 file of ${source.size} bytes, which has to be held whole`,
      where: {},
      remedy: "Split the file, or convert it to a classic one: nccopy -k 64-bit-data.",
    });
  }
  for (let at = 0; at < source.size; at += PIECE) {
    const piece = await readExactly(source, at, Math.min(PIECE, source.size - at));
    if (!piece.ok) return piece;
    bytes.set(piece.value, at);
  }
  return succeed(bytes);
}

function describe(file: Hdf5File, root: FoundGroup, notes: Notes): Dataset {
  const { dimensions, axes } = findDimensions(file, root, notes.problems);
  const attributes = new Map<string, Attribute>();
  const variables = new Map<string, Variable>();
  const stored = new Map<string, StoredVariable>();

  const addVariable = (dataset: FoundDataset): void => {
    if (dataset.isBareDimension) return;
    const name = dataset.group + dataset.name;
    const type = typeOf(dataset, name, notes);
    if (type === null) return;
    const own = safeAttributes(
      file,
      dataset.path,
      { prefix: "", variable: name, isScale: dataset.isScale },
      notes,
    );
    const names = axes.get(dataset.path) ?? [];
    const shape = names.map((dimension) => dimensions.get(dimension)?.length ?? 0);
    variables.set(name, { name, type, dimensions: names, shape, attributes: own });
    stored.set(name, {
      name,
      path: dataset.path,
      type,
      description: dataset.description,
      fill: fillValue(type, own),
    });
  };
  const addGroup = (group: FoundGroup): void => {
    const own = safeAttributes(file, group.path, { prefix: group.prefix }, notes);
    for (const [name, attribute] of own) attributes.set(name, attribute);
    group.datasets.forEach(addVariable);
    group.groups.forEach(addGroup);
  };
  addGroup(root);

  let closed = false;
  return {
    kind: isClassicModel(file) ? "netCDF-4 classic model" : "netCDF-4",
    dimensions,
    attributes,
    variables,
    problems: notes.problems,
    async read(name, slab) {
      const variable = variables.get(name);
      const place = stored.get(name);
      if (!variable || !place) return noVariable(name);
      if (closed)
        return fail({
          code: "netcdf/closed",
          message: `${name} was asked for after the file was closed`,
          where: { variable: name },
          remedy: "Open the file again.",
        });
      const inside = checkSlab(variable, slab);
      return inside.ok ? readBlock(file, place, inside.value) : inside;
    },
    close() {
      closed = true;
      file.close();
    },
  };
}

function typeOf(dataset: FoundDataset, variable: string, notes: Notes) {
  const type = storedType(dataset.description);
  const where = { variable };
  if ("unsupported" in type || dataset.description.shape === null) {
    const what = "unsupported" in type ? `of ${type.unsupported}` : "a dataset without any extent";
    notes.problems.push({
      code: "netcdf/unsupported-type",
      message: `variable ${variable} is ${what}, which is not read`,
      where,
      remedy: "The rest of the file is read; store the variable as text or numbers if it matters.",
    });
    return null;
  }
  if (type.members)
    notes.warnings.push({
      code: "netcdf/enumeration",
      message: `variable ${variable} is an enumeration (${memberText(type.members)}); its numbers are read`,
      where,
    });
  return type.type;
}

function safeAttributes(
  file: Hdf5File,
  path: string,
  options: Parameters<typeof readAttributes>[2],
  notes: Notes,
): Map<string, Attribute> {
  try {
    return readAttributes(file, path, options, notes);
  } catch (error) {
    if (!(error instanceof Hdf5Error)) throw error;
    const { variable } = options;
    notes.problems.push({
      code: "netcdf/damaged-object",
      message: `the attributes of ${variable ?? (options.prefix || "the file")} can't be read: ${error.message}`,
      where: variable === undefined ? {} : { variable },
    });
    return new Map();
  }
}

function isClassicModel(file: Hdf5File): boolean {
  try {
    return file.attributeNames("/").includes("_nc3_strict");
  } catch (error) {
    if (!(error instanceof Hdf5Error)) throw error;
    return false;
  }
}
