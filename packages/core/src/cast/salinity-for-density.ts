import { absoluteSalinityColumn, absoluteSalinityRule } from "../seawater/absolute-salinity.ts";
import { referenceSalinityColumn } from "../seawater/reference-salinity.ts";
import type { Cast } from "./cast.ts";

/**
 * Absolute Salinity of a cast's rows for density and sound speed: by position, or Reference Salinity where no
 * position is known or the atlas has no sea. The words say which.
 *
 * @param SP Practical Salinity; p sea pressure, dbar; one per row
 */
export function salinityForDensity(
  cast: Cast,
  SP: Float64Array,
  p: Float64Array,
): { readonly SA: Float64Array; readonly words: string; readonly references: string } {
  const SA = new Float64Array(SP.length);
  const position = cast.start ?? cast.end;
  const rule = position === null ? null : absoluteSalinityRule(position.longitude, position.latitude);
  if (position === null || rule === null || rule === "reference") {
    referenceSalinityColumn(SP, SA);
    const why = position === null ? "position not known" : "the atlas has no sea here";
    return { SA, words: `Reference Salinity (${why})`, references: "" };
  }
  absoluteSalinityColumn(SP, p, position.longitude, position.latitude, SA);
  return rule === "baltic"
    ? {
        SA,
        words: "Absolute Salinity of the Baltic Sea",
        references: "; Feistel et al. (2010) for Absolute Salinity",
      }
    : {
        SA,
        words: "Absolute Salinity by position",
        references: "; McDougall et al. (2012) for Absolute Salinity",
      };
}
