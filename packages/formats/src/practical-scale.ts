import type { Column, Evidence } from "@wherry/core";
import { type Asking, oneOfWords } from "./asking.ts";

/** First year of the Practical Salinity Scale. */
const PSS_78 = 1978;

/**
 * A salinity without a unit: Practical Salinity in data younger than 1978; in older data that is asked, and what is on
 * an older scale is kept without a standard name.
 */
export function onPracticalScale(
  column: Column,
  cast: { readonly id: string; readonly year: number; readonly asking: Asking },
  say: (certainty: Evidence["certainty"], because: string) => void,
): Column {
  const { id, year, asking } = cast;
  if (year >= PSS_78) {
    say("assumed", "Practical Salinity: it has no unit, and the data are younger than 1978");
    return column;
  }
  const answer = asking.settle({
    topic: "salinityScale",
    holds: [id],
    text: `Is the salinity of ${year} on the Practical Salinity Scale, or on an older scale that is not known? The practical scale is of 1978.`,
    candidates: ["practical", "unknown"],
    read: oneOfWords("practical", "unknown"),
    form: "practical or unknown",
  });
  say(answer ? "answered" : "unknown", answer?.because ?? "the data are older than the practical scale");
  if (answer?.value !== "unknown") return column;
  return {
    ...column,
    name: "salinity_as_stored",
    standardName: null,
    longName: "salinity on an old scale",
    units: null,
  };
}
