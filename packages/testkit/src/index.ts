export * from "./program.ts";
export * from "./shared.ts";
