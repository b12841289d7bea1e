import type { Result } from "@wherry/core";
import type { Dataset } from "@wherry/netcdf";
import { readArgoProfile, recogniseArgoProfile } from "./argo-profile/read-argo-profile.ts";
import { type CfDsgContext, readCfDsg } from "./cf-dsg/read-cf-dsg.ts";
import type { UnderstoodFile } from "./understood.ts";
import { readWodNetcdf, recogniseWodNetcdf } from "./wod-netcdf/read-wod-netcdf.ts";

/**
 * Casts of a netCDF file in any of the published arrangements that are read: Argo profiles, the World Ocean Database, CF
 * sampling geometries.
 */
export function readNetcdfCasts(dataset: Dataset, context: CfDsgContext): Promise<Result<UnderstoodFile>> {
  if (recogniseArgoProfile(dataset)) return readArgoProfile(dataset, context);
  if (recogniseWodNetcdf(dataset)) return readWodNetcdf(dataset, context);
  return readCfDsg(dataset, context);
}
