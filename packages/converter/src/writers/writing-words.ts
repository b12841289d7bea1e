import type { Cast } from "@wherry/core";
import type { Equipment } from "./equipment.ts";

/** Comment of the reference system. */
export const DATUM_ASSUMED = "WGS 84 assumed for satellite fixes";

/** Casts by time, those without a time last, by id where times are equal. */
export const inTimeOrder = (casts: readonly Cast[]): Cast[] =>
  [...casts].sort((a, b) => {
    const [ta, tb] = [a, b].map(({ time }) => (Number.isNaN(time) ? Number.POSITIVE_INFINITY : time));
    if (ta !== tb) return ta! < tb! ? -1 : 1;
    return a.id < b.id ? -1 : a.id > b.id ? 1 : 0;
  });

/** For `source`, where the sheet does not say how the data were made. */
export const profileSource = ({ instruments }: Equipment): string =>
  `conductivity temperature depth casts with a ${instruments[0]?.name ?? "profiler"}`;

export const seriesSource = ({ instruments }: Equipment): string =>
  `${instruments[0]?.name ?? "conductivity temperature depth profiler"} at a fixed position`;
