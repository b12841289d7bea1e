import type { MemoryContent, MemoryVariable } from "@wherry/netcdf";
import { identityVariables, withoutAttributes } from "./arrange-parts.ts";
import { withTargetAttributes } from "./arrange-profiles.ts";
import type { Target } from "./target.ts";

/**
 * A series at a fixed depth, arranged as a target takes it. Every value stays as it is.
 *
 * - single (CF 1.13 appendix H.2.3): as given.
 * - orthogonal (H.2.1): with a dimension `timeSeries` of length 1; time keeps a dimension of its own.
 * - incomplete (H.2.2): the same where rows have no increasing times, which then lie along both dimensions.
 *
 * @param content along `time`, or `obs` where times don't increase, as the writer of series makes it
 */
export function arrangeSeries(
  content: Required<Pick<MemoryContent, "dimensions" | "attributes" | "variables">>,
  target: Target,
): MemoryContent {
  if (target.layouts.series === "single")
    return withTargetAttributes(content, target, "timeSeries", "single");
  const isOrdered = content.dimensions.some(({ name }) => name === "time");
  const dimensions = [{ name: "timeSeries", length: 1 }, ...content.dimensions];
  const withTime = ({ name }: MemoryVariable) =>
    isOrdered && ["time", "time_qc", "time_bounds"].includes(name);
  const arranged = {
    ...content,
    dimensions,
    variables: identityVariables({ ...content, dimensions }, "timeSeries").map((variable): MemoryVariable => {
      if (variable.name === "timeSeries" || isContainer(variable)) return variable;
      // beside the common time its flags lie on no series, so no position is theirs
      if (withTime(variable)) return withoutAttributes(variable, ["coordinates"]);
      return { ...variable, dimensions: ["timeSeries", ...variable.dimensions] };
    }),
  };
  return withTargetAttributes(arranged, target, "timeSeries", isOrdered ? "orthogonal" : "incomplete");
}

const isContainer = ({ name }: MemoryVariable): boolean =>
  name === "crs" || /^(platform|instrument)\d+$/.test(name);
