import { caughtAny } from "../quality/flags-of-test.ts";
import type { Cast } from "./cast.ts";

/** Runs of rows outside air, first and last row, in which neighbouring rows may be mixed. */
export function wetRuns(cast: Cast): readonly (readonly [number, number])[] {
  const runs: [number, number][] = [];
  for (const { kind, firstRow, lastRow } of cast.segments) {
    if (kind === "air") continue;
    const last = runs.at(-1);
    if (last !== undefined && last[1] === firstRow - 1) last[1] = lastRow;
    else runs.push([firstRow, lastRow]);
  }
  return runs;
}

/** 1 for rows of a column that must not spread into their neighbours: missing, or a spike. */
export function rowsApart(cast: Cast, name: string): Uint8Array {
  const column = cast.columns.get(name);
  const apart = new Uint8Array(cast.rows);
  if (column === undefined) return apart;
  for (let k = 0; k < apart.length; k++) if (Number.isNaN(column.values[k]!)) apart[k] = 1;
  const spikes = column.tests.get("spike_return");
  if (spikes !== undefined && caughtAny(spikes))
    for (let k = 0; k < apart.length; k++) if (spikes[k] === 3 || spikes[k] === 4) apart[k] = 1;
  return apart;
}
