export { readArgoProfile, recogniseArgoProfile } from "./argo-profile/read-argo-profile.ts";
export type { Answered, AskedMatter, AskedTopic, Asking, ReadContext, Recognition } from "./asking.ts";
export { type BagDigests, bagDigests, isKnownAlgorithm } from "./bagit/digests.ts";
export { type Bag, holdsBag, isPayload, openBag } from "./bagit/open-bag.ts";
export { type CfDsgContext, readCfDsg } from "./cf-dsg/read-cf-dsg.ts";
export { metadataName } from "./csvw/metadata-name.ts";
export { readCsvw } from "./csvw/read-csvw.ts";
export {
  type ContainedFile,
  type Container,
  contentOf,
  dangerOf,
  eachPiece,
  sift,
} from "./package/container.ts";
export { openArchive } from "./package/open-archive.ts";
export { readNetcdfCasts } from "./read-netcdf-casts.ts";
export { readTesacBathy, recogniseTesacBathy } from "./tesac-bathy/read-tesac-bathy.ts";
export * from "./understood.ts";
export { readWhpExchangeFile } from "./whp-exchange/read-settled.ts";
export { readWhpExchange, type TimeRole } from "./whp-exchange/read-whp-exchange.ts";
export { readWhpExchangeZip, recogniseZip } from "./whp-exchange/read-whp-exchange-zip.ts";
export { iodeFromWoceCtd, WOCE_CTD, WOCE_CTD_FLAGS } from "./whp-exchange/woce-flags.ts";
export { readWodAscii, recogniseWodAscii } from "./wod-ascii/read-wod-ascii.ts";
