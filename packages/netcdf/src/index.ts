export { parseCdl } from "./cdl/parse-cdl.ts";
export { type CdlOptions, toCdl } from "./cdl/to-cdl.ts";
export type { ClassicVersion } from "./classic/format.ts";
export * from "./classic/write-classic.ts";
export * from "./dataset.ts";
export * from "./memory.ts";
export * from "./open.ts";
export * from "./problem.ts";
export { bytesSource } from "./source.ts";
