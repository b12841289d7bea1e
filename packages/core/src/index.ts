export * from "./cast/cast.ts";
export * from "./problem.ts";
export * from "./quality/flag.ts";
export * from "./text/cells.ts";
export * from "./text/number.ts";
