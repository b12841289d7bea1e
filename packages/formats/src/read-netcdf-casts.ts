import type { Result } from "@wherry/core";
import type { Dataset } from "@wherry/netcdf";
import { readArgoProfile, recogniseArgoProfile } from "./argo-profile/read-argo-profile.ts";
import { type CfDsgContext, readCfDsg } from "./cf-dsg/read-cf-dsg.ts";
import type { UnderstoodFile } from "./understood.ts";

/** Casts of a netCDF file in any of the published arrangements that are read: Argo profiles, CF sampling geometries. */
export const readNetcdfCasts = (dataset: Dataset, context: CfDsgContext): Promise<Result<UnderstoodFile>> =>
  recogniseArgoProfile(dataset) ? readArgoProfile(dataset, context) : readCfDsg(dataset, context);
