export * from "./shared.ts";
