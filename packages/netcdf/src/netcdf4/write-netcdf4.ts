import type { Sink } from "../classic/write-classic.ts";
import type { Attribute, Dataset, Variable } from "../dataset.ts";
import { fail, type Result, succeed } from "../problem.ts";
import { contiguousSlabs, sizeOf, wholeSlab } from "../slab.ts";
import { encodeText } from "../text.ts";
import { bytesPerValue, isArrayOf } from "../types.ts";
import { type Netcdf4Model, textProblems } from "./check-netcdf4.ts";
import { groupOf, ownName, storedPath } from "./group-path.ts";
import { Hdf5Error, hdf5Library } from "./hdf5-library.ts";
import { Hdf5Writer } from "./hdf5-writer.ts";
import { type Netcdf4Plan, type PlannedDataset, type PlannedDimension, planNetcdf4 } from "./plan-netcdf4.ts";

export interface Netcdf4Options {
  /** 1 (fast) to 9 (small) for variables of 8 KiB and more; 0, which is the default, leaves values unpacked. */
  readonly deflate?: number;
  /**
   * "classic" marks the file as one that holds only what classic files can hold, and refuses what they can't.
   * The default is the model of the dataset: "classic" if it was read from a file so marked.
   */
  readonly model?: Netcdf4Model;
}

/** Bytes of a dataset in chunks that are read and handed over at once. */
const PIECE = 1 << 23;
/** Bytes that the sink gets at once. */
const CHUNK = 1 << 20;
const NO_VARIABLE = "This is a netCDF dimension but not a netCDF variable.";

/**
 * Writes a dataset as a netCDF-4 file. The same dataset gives the same bytes always; names of groups
 * ("group/name") become groups again, with the order kept inside each.
 *
 * What the format can't say (a NUL inside a string, names that it reserves, types that its classic model
 * doesn't have) is a problem; none of the file is given out then. The HDF5 fill value is not set: `_FillValue`
 * tells it, and what is never written by anybody reads as 0 (decision 0003). The file is held whole until it is
 * done, and a variable whose values lie together too.
 *
 * @throws RangeError if `deflate` is not a whole number from 0 to 9
 * @source Unidata netCDF documentation, "NetCDF-4 Format" (appendix File Format Specifications): dimension
 *         scales, creation order, _Netcdf4Dimid, _Netcdf4Coordinates, _nc3_strict, _nc4_non_coord_
 */
export async function writeNetcdf4(
  dataset: Dataset,
  options: Netcdf4Options,
  sink: Sink,
): Promise<Result<void>> {
  const written = await netcdf4Bytes(dataset, options);
  if (!written.ok) return written;
  for (let at = 0; at < written.value.length; at += CHUNK)
    await sink(written.value.subarray(at, Math.min(at + CHUNK, written.value.length)));
  return succeed(undefined, written.warnings);
}

/** The file as one array of bytes; see `writeNetcdf4`. */
export async function netcdf4Bytes(
  dataset: Dataset,
  { deflate = 0, model = dataset.kind === "netCDF-4 classic model" ? "classic" : "netCDF-4" }: Netcdf4Options,
): Promise<Result<Uint8Array>> {
  if (!Number.isInteger(deflate) || deflate < 0 || deflate > 9)
    throw new RangeError(`deflate must be a whole number from 0 to 9, got ${deflate}`);
  const planned = planNetcdf4(dataset, deflate, model);
  if (!planned.ok) return planned;
  const library = await hdf5Library();
  const file = new Hdf5Writer(library);
  try {
    const content = await writeContent(file, dataset, planned.value, model);
    return content.ok ? succeed(file.finish(), planned.warnings) : content;
  } catch (error) {
    if (!(error instanceof Hdf5Error)) throw error;
    return fail({
      code: "netcdf/hdf5-write",
      message: `the netCDF-4 file can't be made: ${error.message}`,
      where: {},
      remedy: "Write a classic file, which needs less memory, or split the dataset.",
    });
  } finally {
    file.release();
  }
}

async function writeContent(
  file: Hdf5Writer,
  dataset: Dataset,
  { groups, dimensions, datasets }: Netcdf4Plan,
  model: Netcdf4Model,
): Promise<Result<void>> {
  for (const group of groups) file.createGroup(group);
  if (model === "classic") file.listAttribute("/", "_nc3_strict", "int", Int32Array.of(1), true);
  for (const attribute of dataset.attributes.values())
    writeAttribute(file, storedPath(groupOf(attribute.name).slice(0, -1)), attribute);
  for (const dimension of dimensions.values()) if (dimension.bare) writeBareScale(file, dimension);
  for (const planned of datasets) {
    const values = await writeValues(file, dataset, planned);
    if (!values.ok) return values;
    if (planned.scaleOf) writeScale(file, planned, planned.scaleOf, dimensions);
    for (const attribute of planned.variable.attributes.values())
      writeAttribute(file, planned.path, attribute);
  }
  for (const { variable, path, scaleOf } of datasets)
    if (!scaleOf)
      for (const [axis, name] of variable.dimensions.entries())
        file.attachScale(path, dimensions.get(name)!.path, axis);
  return succeed(undefined);
}

/** A scale that stands for a dimension without coordinate variable; it holds nothing. */
function writeBareScale(file: Hdf5Writer, { path, id, length, unlimited }: PlannedDimension): void {
  if (length === 0 && !unlimited) file.createWhole(path, "float", [0], new Float32Array(0));
  else {
    const chunks = [Math.min(Math.max(length, 1), 1 << 10)];
    file.createChunked(path, "float", { shape: [length], growing: [unlimited], chunks, deflate: 0 });
  }
  file.setScale(path, `${NO_VARIABLE}${String(length).padStart(10)}`);
  file.listAttribute(path, "_Netcdf4Dimid", "int", Int32Array.of(id), true);
}

function writeScale(
  file: Hdf5Writer,
  { variable, path }: PlannedDataset,
  { id }: PlannedDimension,
  dimensions: ReadonlyMap<string, PlannedDimension>,
): void {
  file.setScale(path, ownName(variable.name));
  file.listAttribute(path, "_Netcdf4Dimid", "int", Int32Array.of(id), true);
  // scales can't have scales, so their further dimensions are told by number
  if (variable.dimensions.length > 1)
    file.listAttribute(
      path,
      "_Netcdf4Coordinates",
      "int",
      Int32Array.from(variable.dimensions, (name) => dimensions.get(name)!.id),
    );
}

async function writeValues(
  file: Hdf5Writer,
  dataset: Dataset,
  { variable, path, layout }: PlannedDataset,
): Promise<Result<void>> {
  const { type, shape } = variable;
  if (layout.chunks === null) {
    const whole = await valuesOf(dataset, variable, shape);
    if (whole.ok) file.createWhole(path, type, shape, whole.value);
    return whole.ok ? succeed(undefined) : whole;
  }
  file.createChunked(path, type, layout);
  for (const { start, count } of contiguousSlabs(shape, PIECE / (bytesPerValue(type) || 64))) {
    const values = await valuesOf(dataset, variable, count, start);
    if (!values.ok) return values;
    file.writeBlock(path, start, count, values.value);
  }
  return succeed(undefined);
}

async function valuesOf(
  dataset: Dataset,
  { name, type }: Variable,
  count: readonly number[],
  start: readonly number[] = wholeSlab(count).start,
) {
  const read = await dataset.read(name, { start, count });
  if (!read.ok) return read;
  const wanted = sizeOf(count);
  if (!isArrayOf(type, read.value) || read.value.length !== wanted)
    throw new TypeError(
      `${name}: the dataset gave ${read.value.length} values, not ${wanted} of type ${type}`,
    );
  if (Array.isArray(read.value)) {
    const [problem] = textProblems(read.value, `variable ${name}`, { variable: name }, type);
    if (problem) return fail(problem);
  }
  return read;
}

function writeAttribute(file: Hdf5Writer, path: string, attribute: Attribute): void {
  const { type, value, bytes } = attribute;
  const name = ownName(attribute.name).normalize("NFC");
  if (typeof value === "string") file.textAttribute(path, name, bytes ?? encodeText(value));
  else file.listAttribute(path, name, type, value);
}
