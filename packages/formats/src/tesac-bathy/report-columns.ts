import { type Column, type Evidence, Flag } from "@wherry/core";
import type { Asking } from "../asking.ts";
import { onPracticalScale } from "../practical-scale.ts";
import type { DecodedReport, Level } from "./read-groups.ts";
import type { Group } from "./reports.ts";

/** 1990-01-01, when the scale began. */
const ITS_90 = Date.UTC(1990, 0, 1) / 1000;

/** Columns of a report: depth, temperature and, in TESAC, salinity. */
export function columnsOf(
  { kind, levels, salinityCode, at }: DecodedReport,
  cast: { readonly id: string; readonly time: number; readonly asking: Asking },
  say: (fact: string, certainty: Evidence["certainty"], because: string, group: Group) => void,
): ReadonlyMap<string, Column> {
  const tesac = kind === "TESAC";
  const heads = tesac ? ["2zzzz", "3TTTT", "4SSSS"] : ["zz", "TTT"];
  const depth = columnOf(levels, ({ depth: value }) => value, heads[0]!, 0, 0, {
    name: "depth",
    standardName: "depth",
    longName: "depth below the water surface",
    units: "m",
  });
  say(`column:${heads[0]}`, "stated", "the code form gives depth in whole metres", at.depths);
  const temperature = columnOf(levels, ({ temperature: value }) => value, heads[1]!, 1, tesac ? 2 : 1, {
    name: "temperature",
    standardName: "sea_water_temperature",
    longName: "temperature of sea water",
    units: "degree_C",
  });
  say(
    `column:${heads[1]}`,
    "stated",
    tesac
      ? "the code form gives hundredths of a degree Celsius, 5000 added below zero"
      : "the code form gives tenths of a degree Celsius, 500 added below zero",
    at.depths,
  );
  say(
    `column:${heads[1]}`,
    cast.time >= ITS_90 ? "assumed" : "unknown",
    cast.time >= ITS_90
      ? "ITS-90: the data are younger than 1990 and nothing says otherwise"
      : "the temperature scale is not told; the step of the values is larger than the difference between scales at sea",
    at.depths,
  );
  const columns = new Map([
    [depth.name, depth],
    [temperature.name, temperature],
  ]);
  const measured = levels.some(({ salinity }) => !Number.isNaN(salinity));
  if (!tesac || (salinityCode === 0 && !measured)) return columns;
  const salinity = columnOf(levels, ({ salinity: value }) => value, heads[2]!, 2, 2, {
    name: "salinity",
    standardName: "sea_water_practical_salinity",
    longName: "Practical Salinity",
    units: "1",
  });
  const fact = `column:${heads[2]}`;
  if (Number.isNaN(cast.time)) {
    say(
      fact,
      "unknown",
      "hundredths of a salinity; its scale follows from the year, which is not settled",
      at.depths,
    );
    return columns.set(salinity.name, salinity);
  }
  const year = new Date(cast.time * 1000).getUTCFullYear();
  const settled = onPracticalScale(salinity, { ...cast, year }, (certainty, because) =>
    say(fact, certainty, because, at.depths),
  );
  return columns.set(settled.name, settled);
}

function columnOf(
  levels: readonly Level[],
  value: (level: Level) => number,
  header: string,
  index: number,
  decimals: number,
  quantity: Pick<Column, "name" | "standardName" | "longName" | "units">,
): Column {
  const values = Float64Array.from(levels, value);
  const present = values.filter((each) => !Number.isNaN(each));
  const largest = present.reduce((most, each) => Math.max(most, Math.abs(each)), 0);
  return {
    ...quantity,
    values,
    flags: Uint8Array.from(values, (each) => (Number.isNaN(each) ? Flag.missing : Flag.notEvaluated)),
    source: {
      header,
      units: null,
      index,
      decimals,
      significantDigits: Math.max(largest.toFixed(decimals).replace(/^0\.?0*|\./g, "").length, 1),
      first: present[0] ?? Number.NaN,
      last: present.at(-1) ?? Number.NaN,
    },
    sourceFlags: null,
    tests: new Map(),
    method: null,
  };
}
