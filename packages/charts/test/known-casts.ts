import { readFileSync } from "node:fs";
import {
  absoluteSalinity,
  type Cast,
  type Column,
  conservativeTemperature,
  density,
  depthFromPressure,
  Flag,
  parseCells,
  parseNumber,
  practicalSalinity,
  type Segment,
  type SegmentKind,
} from "@wherry/core";
import { testData } from "@wherry/testkit";

const KINDS: Readonly<Record<string, SegmentKind>> = {
  air_before: "air",
  air_after: "air",
  soak: "soak",
  down: "down",
  bottom_stop: "bottom",
  up: "up",
};

interface Truth {
  readonly latitude: number;
  readonly longitude: number;
  readonly pressure_offset_dbar: number;
  readonly segments: Readonly<Record<string, readonly [number, number]>>;
  readonly spikes: readonly { readonly index: number; readonly column: string }[];
}

export function column(
  name: string,
  units: string,
  values: ArrayLike<number>,
  bad: readonly number[] = [],
): Column {
  const data = Float64Array.from(values);
  const flags = Uint8Array.from(data, (value, row) =>
    Number.isNaN(value) ? Flag.missing : bad.includes(row) ? Flag.bad : Flag.good,
  );
  return {
    ...{ name, units, flags, values: data, longName: name.replaceAll("_", " ") },
    ...{ standardName: null, source: null, sourceFlags: null, tests: new Map(), method: null },
  };
}

export function castOf(id: string, columns: readonly Column[], more: Partial<Cast> = {}): Cast {
  const rows = columns[0]?.values.length ?? 0;
  return {
    ...{
      id,
      rows,
      kind: "profile",
      timeRole: "start",
      time: Date.UTC(2023, 5, 14, 9, 12, 30) / 1000,
      endTime: NaN,
    },
    state: { processing: "raw", pressureZeroed: true, lagCorrected: false, direction: "both" },
    ...{ elapsed: null, start: null, end: null, fixedDepth: null, notes: [], texts: new Map(), evidence: [] },
    instrument: { model: null, serialNumber: null, ratedPressure: null },
    columns: new Map(columns.map((each) => [each.name, each])),
    ...{
      lines: Uint32Array.from({ length: rows }, (_, i) => i + 2),
      source: { path: "cast.csv", sha256: "" },
    },
    ...{ pressureOffset: 0, segments: [], steps: [] },
    ...more,
  };
}

/**
 * A simulated cast of test-data/casts, with the segments and spikes that its truth tells. Spikes are flagged bad;
 * what is computed from them is questionable where they are small and bad where they are large.
 */
export function simulatedCast(
  name: string,
  order: readonly ["pressure" | "temperature" | "conductivity", number][],
  perMetre = false,
): Cast {
  const read = (file: string) => readFileSync(testData("casts", file), "utf8");
  const truth = JSON.parse(read(`${name}.truth.json`)) as Truth;
  const { rows } = parseCells(read(`${name}.csv`));
  const at = new Map(order);
  const values = (key: "pressure" | "temperature" | "conductivity") =>
    rows.slice(1).map((row) => parseNumber(row.cells[at.get(key)!]!));
  const pressure = values("pressure").map((p) => p - truth.pressure_offset_dbar);
  const temperature = values("temperature");
  const conductivity = values("conductivity").map((c) => (perMetre ? 10 * c : c));
  const { latitude, longitude } = truth;
  const salinity = conductivity.map((c, i) => practicalSalinity(c, temperature[i]!, pressure[i]!));
  const rho = salinity.map((sp, i) => {
    const sa = absoluteSalinity(Math.max(sp, 0), pressure[i]!, longitude, latitude);
    return density(sa, conservativeTemperature(sa, temperature[i]!, pressure[i]!), pressure[i]!);
  });
  const spikes = (key: string) =>
    truth.spikes.filter((each) => each.column === key).map((each) => each.index);
  const spiked = [...spikes("temperature"), ...spikes("conductivity")];
  const columns = [
    column(
      "depth",
      "m",
      pressure.map((p) => depthFromPressure(p, latitude)),
      spikes("pressure"),
    ),
    column("temperature", "degree_C", temperature, spikes("temperature")),
    column("salinity", "1", salinity),
    column("density", "kg m-3", rho),
  ];
  for (const row of spiked) for (const each of columns.slice(2)) each.flags[row] = Flag.questionable;
  const segments: Segment[] = Object.entries(truth.segments)
    .map(([key, [firstRow, lastRow]]) => ({ kind: KINDS[key] ?? "other", firstRow, lastRow }))
    .sort((a, b) => a.firstRow - b.firstRow);
  const fix = { latitude, longitude, satellites: 9, quality: null };
  return castOf(name, columns, { segments, start: fix });
}

export const estuaryCast = (): Cast =>
  simulatedCast("dev-a-estuary", [
    ["pressure", 1],
    ["temperature", 2],
    ["conductivity", 3],
  ]);

export const shelfCast = (): Cast =>
  simulatedCast("dev-b-shelf", [
    ["conductivity", 1],
    ["temperature", 2],
    ["pressure", 3],
  ]);

export const fjordCast = (): Cast =>
  simulatedCast(
    "dev-c-fjord",
    [
      ["temperature", 2],
      ["conductivity", 3],
      ["pressure", 4],
    ],
    true,
  );
