export { readArgoProfile, recogniseArgoProfile } from "./argo-profile/read-argo-profile.ts";
export type { Answered, AskedMatter, AskedTopic, Asking, ReadContext, Recognition } from "./asking.ts";
export { type CfDsgContext, readCfDsg } from "./cf-dsg/read-cf-dsg.ts";
export { readNetcdfCasts } from "./read-netcdf-casts.ts";
export { readTesacBathy, recogniseTesacBathy } from "./tesac-bathy/read-tesac-bathy.ts";
export * from "./understood.ts";
export { readWhpExchange, type TimeRole } from "./whp-exchange/read-whp-exchange.ts";
export { iodeFromWoceCtd, WOCE_CTD, WOCE_CTD_FLAGS } from "./whp-exchange/woce-flags.ts";
export { readWodAscii, recogniseWodAscii } from "./wod-ascii/read-wod-ascii.ts";
