import { readFileSync } from "node:fs";
import { testData } from "./shared.ts";

// The types below have the shape of core's Cast and Column. They stand here because core's own tests use this kit.

export interface KitColumn {
  readonly name: string;
  readonly standardName: string | null;
  readonly longName: string;
  readonly units: string | null;
  readonly values: Float64Array;
  readonly flags: Uint8Array;
  readonly source: {
    readonly header: string;
    readonly units: string | null;
    readonly index: number;
    readonly decimals: number;
    readonly significantDigits: number;
    readonly first: number;
    readonly last: number;
  } | null;
  readonly sourceFlags: null;
  readonly tests: ReadonlyMap<string, Uint8Array>;
  readonly method: null;
}

export interface KitPosition {
  readonly latitude: number;
  readonly longitude: number;
  readonly satellites: number | null;
  readonly quality: string | null;
}

export interface KitCast {
  readonly id: string;
  readonly kind: "profile" | "fixed-depth";
  readonly state: {
    readonly processing: "raw" | "averaged" | "unknown";
    readonly pressureZeroed: boolean;
    readonly lagCorrected: boolean;
    readonly direction: "both" | "down" | "up" | "up-reversed" | "unknown";
  };
  readonly rows: number;
  readonly time: number;
  readonly timeRole: "start" | "bottom" | "end" | "unknown";
  readonly endTime: number;
  readonly elapsed: Float64Array | null;
  readonly start: KitPosition | null;
  readonly end: KitPosition | null;
  readonly fixedDepth: { readonly depth: number; readonly reference: string } | null;
  readonly instrument: {
    readonly model: string | null;
    readonly serialNumber: string | null;
    readonly ratedPressure: number | null;
  };
  readonly notes: readonly string[];
  readonly columns: ReadonlyMap<string, KitColumn>;
  readonly texts: ReadonlyMap<string, readonly string[]>;
  readonly lines: Uint32Array;
  readonly source: { readonly path: string; readonly sha256: string };
  readonly evidence: readonly never[];
  readonly pressureOffset: number;
  readonly segments: readonly never[];
  readonly steps: readonly never[];
}

export const simulated = ["dev-a-estuary", "dev-b-shelf", "dev-c-fjord", "dev-d-freefall"] as const;

export type Pair = readonly [number, number];

/** What is true of a simulated cast. See test-data/casts/README.md. */
export interface Truth {
  readonly segments: Readonly<Record<string, Pair>>;
  readonly pressure_offset_dbar: number;
  readonly down_start_sea_pressure: number;
  readonly rows_before_profile: Pair | null;
  readonly unsettled_rows: Pair | null;
  readonly deepest_row: number;
  readonly max_sea_pressure: number;
  readonly wet_rows: Pair;
  readonly reversal_rows_in_down: readonly number[];
  readonly halocline_rows: readonly Pair[];
  readonly thermocline_rows: readonly Pair[];
  readonly spikes: readonly { readonly index: number; readonly column: string }[];
  readonly rate_hz: number;
  readonly latitude: number;
  readonly longitude: number;
  readonly rated_pressure_dbar: number;
  readonly sensor: {
    readonly tau_temperature_s: number;
    readonly tau_conductivity_s: number;
    readonly temperature_delay_samples?: number;
    readonly cell_thermal_mass?: { readonly alpha: number; readonly tau_s: number } | null;
  };
  readonly profile_1dbar: {
    readonly pressure: number[];
    readonly temperature_t90: number[];
    readonly practical_salinity: number[];
  };
  readonly attainable_1dbar: Record<string, Record<string, number>>;
}

export const readTruth = (name: string): Truth =>
  JSON.parse(readFileSync(testData("casts", `${name}.truth.json`), "utf8")) as Truth;

const standardNames: Record<string, string> = {
  pressure: "sea_water_pressure_due_to_sea_water",
  temperature: "sea_water_temperature",
  conductivity: "sea_water_electrical_conductivity",
  salinity: "sea_water_practical_salinity",
};

/** A column in house units, as a reader would make it. */
export function column(name: string, values: Float64Array, decimals = 4): KitColumn {
  const known = values.filter((value) => !Number.isNaN(value));
  return {
    name,
    standardName: standardNames[name] ?? null,
    longName: name,
    units: null,
    values,
    flags: Uint8Array.from(values, (value) => (Number.isNaN(value) ? 9 : 2)),
    source: {
      header: name,
      units: null,
      index: 0,
      decimals,
      significantDigits: 6,
      first: known[0] ?? Number.NaN,
      last: known.at(-1) ?? Number.NaN,
    },
    sourceFlags: null,
    tests: new Map(),
    method: null,
  };
}

/** A cast from columns in house units; everything else as little as a source may tell. */
export function castOf(
  columns: Readonly<Record<string, Float64Array>>,
  elapsed: Float64Array | null,
  other: Partial<KitCast> = {},
): KitCast {
  const rows = Object.values(columns)[0]?.length ?? 0;
  return {
    id: "simulated",
    kind: "profile",
    state: { processing: "raw", pressureZeroed: false, lagCorrected: false, direction: "unknown" },
    rows,
    time: 1686734e3,
    timeRole: "start",
    endTime: Number.NaN,
    elapsed,
    start: { latitude: 52, longitude: 4, satellites: 9, quality: null },
    end: null,
    fixedDepth: null,
    instrument: { model: null, serialNumber: null, ratedPressure: null },
    notes: [],
    columns: new Map(Object.entries(columns).map(([name, values]) => [name, column(name, values)])),
    texts: new Map(),
    lines: Uint32Array.from({ length: rows }, (_, k) => k + 2),
    source: { path: "simulated.csv", sha256: "" },
    evidence: [],
    pressureOffset: Number.NaN,
    segments: [],
    steps: [],
    ...other,
  };
}

/** One of the simulated casts. A small reader of its own, for these four files only. */
export function readSimulated(name: string): KitCast {
  const truth = readTruth(name);
  const [header, ...lines] = readFileSync(testData("casts", `${name}.csv`), "utf8")
    .trim()
    .split("\n");
  const names = header!.split(",");
  const rows = lines.map((line) => line.split(","));
  const at = (word: RegExp) => names.findIndex((each) => word.test(each));
  const numbers = (word: RegExp, factor = 1) =>
    Float64Array.from(rows, (cells) => Number(cells[at(word)]) * factor);
  const seconds = names.some((each) => each.includes("UTC"))
    ? Float64Array.from(rows, (cells) => Date.parse(cells[at(/time/)]!) / 1000)
    : numbers(/time|elapsed/);
  const perSiemens = /S\/m/.test(header!.replace("mS/", "")) ? 10 : 1;
  return castOf(
    {
      pressure: numbers(/pressure/),
      temperature: numbers(/temperature/),
      conductivity: numbers(/conductivity/, perSiemens),
    },
    seconds.map((time) => time - seconds[0]!),
    {
      id: name,
      start: { latitude: truth.latitude, longitude: truth.longitude, satellites: 9, quality: null },
      instrument: { model: null, serialNumber: null, ratedPressure: truth.rated_pressure_dbar },
    },
  );
}
