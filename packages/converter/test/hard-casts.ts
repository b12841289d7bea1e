import { readdirSync, readFileSync } from "node:fs";
import { type Cast, deepestOf, layerMeans, styleOf } from "@wherry/core";
import { castOf, testData } from "@wherry/testkit";
import { processCast } from "../src/recipe/process-cast.ts";
import { defaultSettings, type RecipeSettings } from "../src/recipe/settings.ts";

/** What is true of a hard cast; made by tools/make_hard_casts.py. */
export interface HardTruth {
  readonly story: string;
  readonly rate_hz: number;
  readonly pressure_offset_dbar: number;
  readonly air: boolean;
  readonly segments: readonly {
    readonly kind: string;
    readonly firstRow: number;
    readonly lastRow: number;
  }[];
  readonly down: readonly [number, number] | null;
  readonly down_start_sea_pressure: number | null;
  readonly rows_before_profile: number;
  readonly deepest_row: number;
  readonly max_sea_pressure: number;
  readonly spikes: readonly { readonly row: number; readonly column: string }[];
  readonly sensor: {
    readonly tau_temperature_s: number;
    readonly tau_conductivity_s: number;
    readonly delay_temperature_s: number;
    readonly cell: { readonly size: number; readonly relaxation_time_s: number } | null;
  };
  readonly comparison: string | null;
  readonly profile_1dbar: {
    readonly pressure: number[];
    readonly temperature: number[];
    readonly salinity: number[];
  };
}

export const hardCasts = readdirSync(testData("hard-casts"))
  .filter((file) => file.endsWith(".csv"))
  .map((file) => file.slice(0, -4))
  .sort();

export const hardTruth = (name: string): HardTruth =>
  JSON.parse(readFileSync(testData("hard-casts", `${name}.truth.json`), "utf8")) as HardTruth;

export function readHard(name: string): Cast {
  const [, ...lines] = readFileSync(testData("hard-casts", `${name}.csv`), "utf8")
    .trim()
    .split("\n");
  const rows = lines.map((line) => line.split(",").map(Number));
  const column = (at: number) => Float64Array.from(rows, (row) => row[at]!);
  return castOf({ pressure: column(1), temperature: column(2), conductivity: column(3) }, column(0), {
    id: name,
  });
}

/** Settings of a person who knows when sensors settle, and those of one who knows the sensors well. */
export function settingsFor(truth: HardTruth, matched: boolean): RecipeSettings {
  const { tau_temperature_s: T, tau_conductivity_s: C, delay_temperature_s: delay, cell } = truth.sensor;
  const settled = { ...defaultSettings.segmentation, responseTime: T };
  if (!matched) return { ...defaultSettings, segmentation: settled };
  return {
    ...defaultSettings,
    segmentation: settled,
    response: {
      ...defaultSettings.response,
      temperature: { time: T, delay },
      conductivity: { time: C, delay: null },
    },
    cell: { size: cell?.size ?? null, relaxationTime: cell?.relaxation_time_s ?? null },
  };
}

export interface HardMeasures {
  readonly style: string;
  readonly sign: string;
  readonly measures: Readonly<Record<string, number>>;
}

/** What processing reaches on a hard cast. */
export function measureHard(name: string): HardMeasures {
  const truth = hardTruth(name);
  const left = processCast(readHard(name), settingsFor(truth, false));
  const matched = processCast(readHard(name), settingsFor(truth, true));
  const down = left.segments.find(({ kind }) => kind === "down");
  const pressure = readHard(name).columns.get("pressure")!.values;
  const late =
    down === undefined || truth.down === null || down.firstRow <= truth.down[0]
      ? 0
      : Math.max(0, pressure[down.firstRow]! - truth.pressure_offset_dbar - truth.down_start_sea_pressure!);
  const bottom = truth.segments.find(({ kind }) => kind === "bottom");
  const from = left.segments.find(({ kind }) => kind === "bottom")?.firstRow ?? Number.NaN;
  const inside = bottom !== undefined && from >= bottom.firstRow && from <= truth.deepest_row;
  const spiky = (column: string, k: number) =>
    truth.spikes.some((each) => each.column === column && each.row === k);
  let falsely = 0;
  let missed = 0;
  for (const name_ of ["pressure", "temperature", "conductivity"]) {
    const column = left.columns.get(name_)!;
    const flags = column.tests.get("spike_return");
    for (let k = 0; k < left.rows; k++) {
      const caught = flags?.[k] === 3 || flags?.[k] === 4;
      if (caught && !spiky(name_, k)) falsely++;
    }
  }
  for (const { row, column } of truth.spikes)
    if (![3, 4].includes(left.columns.get(column)!.tests.get("spike_return")![row]!)) missed++;
  return {
    style: styleOf(left) ?? "none",
    sign: String(
      left.steps.find(({ step }) => step === "comparison of downcast and upcast")?.parameters.sign ?? "none",
    ),
    measures: {
      offset: truth.air ? Math.abs(left.pressureOffset - truth.pressure_offset_dbar) : 0,
      late,
      earlyRowsInLayers: down === undefined ? 0 : Math.max(0, earlyRows(left, truth.rows_before_profile)),
      bottom: bottom === undefined || inside ? 0 : Math.abs(from - bottom.firstRow) / truth.rate_hz,
      maxPressure: Math.abs((deepestOf(left)?.pressure ?? Number.NaN) - truth.max_sea_pressure),
      spikesMissed: missed,
      spikesFalse: (100 * falsely) / left.rows,
      salinityRms: rms(left, truth, "salinity"),
      salinityRmsMatched: rms(matched, truth, "salinity"),
      temperatureRms: rms(left, truth, "temperature"),
      temperatureRmsMatched: rms(matched, truth, "temperature"),
      emptyLayers: empty(left, truth),
    },
  };
}

/** Rows before the profile that reach a layer of the downcast. */
function earlyRows(cast: Cast, before: number): number {
  const layers = (columns: Cast["columns"]) =>
    layerMeans({ ...cast, columns }, { width: 1, coordinate: "pressure", direction: "down" }).columns.get(
      "pressure",
    )!;
  const pressure = cast.columns.get("pressure")!;
  const flags = pressure.flags.slice();
  flags.fill(4, 0, before);
  const all = layers(cast.columns).count.reduce((a, b) => a + b, 0);
  const without = layers(new Map(cast.columns).set("pressure", { ...pressure, flags })).count;
  return all - without.reduce((a, b) => a + b, 0);
}

function errors(cast: Cast, truth: HardTruth, column: "salinity" | "temperature"): readonly number[] {
  const direction = truth.down === null ? "up" : "down";
  const layers = layerMeans(cast, { width: 1, coordinate: "pressure", direction });
  const { mean } = layers.columns.get(column)!;
  const { pressure } = truth.profile_1dbar;
  return pressure.map(
    (centre, k) => (mean[layers.centres.indexOf(centre)] ?? Number.NaN) - truth.profile_1dbar[column][k]!,
  );
}

function rms(cast: Cast, truth: HardTruth, column: "salinity" | "temperature"): number {
  const known = errors(cast, truth, column).filter((each) => !Number.isNaN(each));
  return Math.sqrt(known.reduce((sum, each) => sum + each * each, 0) / known.length);
}

const empty = (cast: Cast, truth: HardTruth): number =>
  errors(cast, truth, "salinity").filter(Number.isNaN).length;
