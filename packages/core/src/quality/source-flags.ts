import type { Column } from "../cast/cast.ts";
import { Flag } from "./flag.ts";
import { flagSchemeOf, primaryFlag } from "./flag-schemes.ts";
import { flagsFor } from "./flags-of-test.ts";

/**
 * The source's own flags of a column as a test of its own, so that what came as questionable or bad stays so: our
 * tests can make it worse, never better. A flag "missing" on a value that is there, and an unknown code, are 2.
 *
 * @returns null where the column has no flags or their scheme is not known: nothing is mapped by guess
 */
export function sourceFlagTest({ values, sourceFlags }: Column): Uint8Array | null {
  const scheme = sourceFlags === null ? null : flagSchemeOf(sourceFlags.scheme);
  if (sourceFlags === null || scheme === null) return null;
  const result = flagsFor(values, Flag.notEvaluated);
  for (let k = 0; k < result.length; k++) {
    if (result[k] === Flag.missing) continue;
    const flag = primaryFlag(scheme, sourceFlags.values[k] ?? "")?.flag ?? Flag.notEvaluated;
    result[k] = flag === Flag.missing ? Flag.notEvaluated : flag;
  }
  return result;
}
