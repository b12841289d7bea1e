import { openClassic } from "./classic/open-classic.ts";
import type { Dataset, Source } from "./dataset.ts";
import { fail, type Result } from "./problem.ts";
import { bytesSource, readExactly } from "./source.ts";

const hdf5Signature = [0x89, 0x48, 0x44, 0x46, 0x0d, 0x0a, 0x1a, 0x0a];

/**
 * Opens a netCDF file of any kind, told by its first bytes. Values are read when they are asked for.
 *
 * Damage never throws: it is a failure, or, where the rest can still be read, one of the dataset's `problems`.
 * The library for netCDF-4 is loaded only for a file that needs it.
 *
 * @source magic of CDF-1, CDF-2, CDF-5: see classic/format.ts; signature: HDF5 File Format Specification,
 *         section II.A, "Disk Format: Level 0A - Format Signature and Superblock"
 */
export async function openDataset(file: Uint8Array | Source): Promise<Result<Dataset>> {
  const source = file instanceof Uint8Array ? bytesSource(file) : file;
  const start = await readExactly(source, 0, Math.min(8, source.size));
  if (!start.ok) return start;
  const [c, d, f, version] = start.value;
  if (c === 0x43 && d === 0x44 && f === 0x46) {
    if (version === 1 || version === 2 || version === 5) return openClassic(source, version);
    return fail({
      code: "netcdf/version",
      message: `the file starts as a classic netCDF file of version ${version ?? "(cut off)"} (byte 3), expected 1, 2 or 5`,
      where: { byte: 3 },
      remedy: "The file is damaged, or of a format that is not published.",
    });
  }
  // the signature stands at 0, or behind a user block of 512 bytes or twice that, four times that …
  for (let at = 0; at + hdf5Signature.length <= source.size; at = at === 0 ? 512 : 2 * at) {
    const bytes = await readExactly(source, at, hdf5Signature.length);
    if (!bytes.ok) return bytes;
    if (!hdf5Signature.every((byte, i) => bytes.value[i] === byte)) continue;
    const { openNetcdf4 } = await import("./netcdf4/open-netcdf4.ts");
    return openNetcdf4(source);
  }
  return fail(notNetcdf(start.value, source.size));
}

function notNetcdf(start: Uint8Array, size: number) {
  const found =
    size === 0
      ? "the file is empty"
      : `the file starts with the bytes ${[...start].map((byte) => byte.toString(16).padStart(2, "0")).join(" ")}`;
  return {
    code: size === 0 ? "netcdf/empty" : "netcdf/not-netcdf",
    message: `${found}; a netCDF file starts with "CDF" or holds the HDF5 signature`,
    where: { byte: 0 },
    remedy: "Check that this is the right file and that it was fetched whole.",
  };
}
