import type { Rule } from "../../engine/rule.ts";
import { binnedAgainstFull } from "./binned-against-full.ts";
import { density } from "./density.ts";
import { densityInversion } from "./density-inversion.ts";
import { depthByDensity } from "./depth-by-density.ts";
import { inlandPositions } from "./inland.ts";
import { positions } from "./positions.ts";
import { pressureDepth } from "./pressure-depth.ts";
import { range } from "./range.ts";
import { salinity } from "./salinity.ts";
import { soundSpeed } from "./sound-speed.ts";
import { times } from "./times.ts";
import { travel } from "./travel.ts";

/** Rules about the water itself, in the order in which they are run and listed. */
export const physicsRules: readonly Rule[] = [
  binnedAgainstFull,
  density,
  densityInversion,
  depthByDensity,
  inlandPositions,
  positions,
  pressureDepth,
  range,
  salinity,
  soundSpeed,
  times,
  travel,
];
