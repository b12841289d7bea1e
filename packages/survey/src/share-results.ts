import type { Cast } from "@wherry/core";

/**
 * The cast with flags and results of tests that are alike held once: most tests find the same of all columns, and a
 * survey holds the results of all its casts.
 */
export function sharingResults(cast: Cast): Cast {
  const known = new Map<string, Uint8Array>();
  const shared = (result: Uint8Array): Uint8Array => {
    const key = Buffer.from(result.buffer, result.byteOffset, result.byteLength).toString("latin1");
    const same = known.get(key);
    if (same === undefined) known.set(key, result);
    return same ?? result;
  };
  const columns = [...cast.columns].map(([name, column]) => {
    const tests = new Map([...column.tests].map(([test, result]) => [test, shared(result)]));
    return [name, { ...column, flags: shared(column.flags), tests }] as const;
  });
  return { ...cast, columns: new Map(columns) };
}
