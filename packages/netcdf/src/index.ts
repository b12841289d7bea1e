export * from "./dataset.ts";
export * from "./problem.ts";
