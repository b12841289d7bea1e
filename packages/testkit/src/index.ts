export * from "./casts.ts";
export * from "./program.ts";
export * from "./shared.ts";
