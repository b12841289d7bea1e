import type { Cast, Column } from "./cast.ts";

/**
 * Keeps a column as it was read under `<name>_received`, right behind it, before a step changes its values. Done
 * once: what a second step changes is no longer as read.
 */
export function keepReceived(cast: Cast, name: string): Cast {
  const copy = `${name}_received`;
  if (!cast.columns.has(name) || cast.columns.has(copy)) return cast;
  const columns = new Map<string, Column>();
  for (const [key, column] of cast.columns) {
    columns.set(key, column);
    if (key === name)
      columns.set(copy, {
        ...column,
        name: copy,
        longName: `${column.longName}, as received from the source`,
        tests: new Map(),
      });
  }
  return { ...cast, columns };
}
