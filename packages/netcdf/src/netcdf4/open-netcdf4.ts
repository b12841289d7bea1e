import type { Dataset, Source } from "../dataset.ts";
import { fail, type Result } from "../problem.ts";

/** Opens a netCDF-4 file. */
export async function openNetcdf4(_source: Source): Promise<Result<Dataset>> {
  return fail({
    code: "netcdf/netcdf4",
    message: "netCDF-4 files can't be read yet",
    where: {},
    remedy: "Convert the file to a classic one: nccopy -k classic.",
  });
}
