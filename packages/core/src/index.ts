export * from "./cast/cast.ts";
export * from "./problem.ts";
export * from "./quality/flag.ts";
