export * from "./dataset.ts";
export * from "./memory.ts";
export * from "./problem.ts";
