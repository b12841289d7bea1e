import { line } from "d3-shape";
import type { Point } from "./cast-rows.ts";

const path = line<Point>().digits(1);

/** Path of several runs; a run of one point is a dot: a line of no length, for round ends. */
export const pathOf = (runs: readonly (readonly Point[])[]): string =>
  runs.map((run) => (run.length === 1 ? `${path(run)!.replace("Z", "")}h0.1` : path(run)!)).join("");
