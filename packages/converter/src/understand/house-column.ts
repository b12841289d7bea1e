import { type Column, convertUnitsColumn, Flag, temperatureFrom68Column } from "@wherry/core";
import type { Settled } from "./column-context.ts";
import type { NumberColumn } from "./number-column.ts";
import type { RawColumn } from "./raw-cast.ts";
import { DISSOLVED, QUANTITIES, type Quantity } from "./vocabulary/quantities.ts";
import { plainWords } from "./words.ts";

function convert(values: Float64Array, from: string, to: string): Float64Array {
  if (from === to) return values;
  const out = new Float64Array(values.length);
  convertUnitsColumn(values, from, to, out);
  return out;
}

function flagsOf(values: Float64Array, count: number): Uint8Array {
  const flags = new Uint8Array(values.length).fill(Flag.notEvaluated);
  if (count === values.length) return flags;
  for (let row = 0; row < values.length; row++) if (Number.isNaN(values[row]!)) flags[row] = Flag.missing;
  return flags;
}

function sourceOf({ head, index }: RawColumn, numbers: NumberColumn): Column["source"] {
  return {
    header: head.header,
    units: head.unitText,
    index,
    decimals: numbers.decimals,
    significantDigits: numbers.significantDigits,
    first: numbers.first,
    last: numbers.last,
  };
}

/** A known quantity in house units, temperatures on ITS-90. */
export function quantityColumn(
  { column, quantity: id, unit, numbers }: Settled,
  scale: "ITS-90" | "IPTS-68" | null,
): Column {
  const quantity: Quantity = QUANTITIES[id];
  const dissolved = unit ? DISSOLVED[id]?.[unit.kind] : undefined;
  const units = dissolved?.units ?? quantity.houseUnits ?? (unit && unit.kind !== "none" ? unit.units : null);
  let { values } = numbers;
  if (unit && units && unit.kind !== "none" && unit.kind !== "turbidity") {
    // per mille and dimensionless salinities are numbers as they stand
    values = unit.kind === "salinity" && id === "salinity" ? values : convert(values, unit.units, units);
  }
  if (scale === "IPTS-68") {
    const t68 = values;
    values = new Float64Array(t68.length);
    temperatureFrom68Column(t68, values);
  }
  return {
    name: quantity.name,
    standardName: dissolved?.standardName ?? quantity.standardName,
    longName: quantity.longName,
    units,
    values,
    flags: flagsOf(values, numbers.count),
    source: sourceOf(column, numbers),
    sourceFlags: null,
    tests: new Map(),
    method: null,
  };
}

/** A column that means nothing to us: kept under a name made from its head. */
export function otherColumn(column: RawColumn, numbers: NumberColumn): Column {
  const { head } = column;
  const name = plainWords(head.name || head.header)
    .replaceAll(" ", "_")
    .replace(/^(?=\d|$)/, "column_");
  const { values } = numbers;
  return {
    name: RESERVED.has(name) ? `${name}_as_received` : name,
    standardName: null,
    longName: head.header,
    units: head.unit && head.unit.kind !== "none" ? head.unit.units : null,
    values,
    flags: flagsOf(values, numbers.count),
    source: sourceOf(column, numbers),
    sourceFlags: null,
    tests: new Map(),
    method: null,
  };
}

// names with a meaning in products; a column that was not understood must not take one
const RESERVED = new Set([
  ...Object.values(QUANTITIES).map(({ name }) => name as string),
  "time",
  "latitude",
  "longitude",
  "profile",
  "station",
  "elapsed",
  "crs",
  "platform",
  "instrument",
]);
