export * from "./casts.ts";
export * from "./invented-cast.ts";
export * from "./program.ts";
export * from "./shared.ts";
