import type { JudgedQuantity, Preset, PresetRange, PresetSpike, Threshold } from "./presets.ts";

type ByQuantity<T> = Partial<Readonly<Record<JudgedQuantity, T>>>;

/** A user's own limits instead of a preset's; what is left out stays. House units. */
export interface OwnLimits {
  readonly expectedRanges: ByQuantity<readonly [number, number]>;
  readonly spikeReturn: ByQuantity<{
    readonly floor: number;
    readonly floorPart?: number;
    readonly badAbove?: number;
  }>;
  /** kg m-3. */
  readonly densityInversion: number | null;
  /** deg C. */
  readonly freezingTolerance: number | null;
}

const own = <T>(value: T, unit: string): Threshold<T> => ({ value, unit, status: "user" });

/** A preset with a user's own limits in it, marked as such: the record tells them from the preset's. */
export function presetWith(preset: Preset, limits: OwnLimits): Preset {
  const ranges: Record<string, PresetRange> = { ...preset.ranges };
  const spikeReturn: Record<string, PresetSpike> = { ...preset.spikeReturn };
  for (const name of Object.keys(preset.ranges) as JudgedQuantity[]) {
    const { unit } = preset.ranges[name].sensor;
    const range = limits.expectedRanges[name];
    if (range !== undefined) ranges[name] = { ...preset.ranges[name], expected: own(range, unit) };
    const spike = limits.spikeReturn[name];
    if (spike !== undefined)
      spikeReturn[name] = {
        floor: own(spike.floor, unit),
        floorPart: own(spike.floorPart ?? 0, "1"),
        badAbove: spike.badAbove === undefined ? null : own(spike.badAbove, unit),
      };
  }
  const { densityInversion, freezingTolerance } = limits;
  return {
    ...preset,
    ranges: ranges as Preset["ranges"],
    spikeReturn,
    ...(densityInversion === null
      ? {}
      : {
          densityInversion: { ...preset.densityInversion, tolerance: own(densityInversion, "kg m-3") },
        }),
    ...(freezingTolerance === null ? {} : { freezingTolerance: own(freezingTolerance, "degree_C") }),
  };
}
