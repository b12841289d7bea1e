import { type Cast, Flag, formatIsoDuration, type RowTimeFlags, rowTimeFlags } from "@wherry/core";
import { type Dataset, type MemoryVariable, memoryDataset } from "@wherry/netcdf";
import { arrangeSeries } from "./arrange-series.ts";
import { type ColumnGroup, groupColumns, rowPlaces } from "./column-groups.ts";
import { coverageAttributes } from "./coverage.ts";
import type { RowLayout } from "./data-variables.ts";
import { containerVariables, type Equipment, equipmentOf } from "./equipment.ts";
import { featureVariables, TIME_UNITS } from "./feature-variables.ts";
import { flagVariable } from "./flag-variables.ts";
import { quantityVariables } from "./full-dataset.ts";
import { globalAttributes } from "./global-attributes.ts";
import { historyText } from "./history.ts";
import { rowVariables } from "./row-variables.ts";
import { attributes, fillAttribute, type Stored, store } from "./storage.ts";
import { generalTarget } from "./target.ts";
import { madeAt, type WritingContext } from "./writing-context.ts";
import { DATUM_ASSUMED, seriesSource } from "./writing-words.ts";

/**
 * Every row of a series at one fixed depth, arranged as the target of the context takes it. Rows stand along `time`
 * where every row has a later time than the one before, else along `obs` with time beside them.
 *
 * @param suffix added to the survey's id
 * @throws RangeError if the series has no row
 */
export function seriesDataset(cast: Cast, context: WritingContext, suffix = `series-${cast.id}`): Dataset {
  if (cast.rows === 0) throw new RangeError("a product needs at least one row");
  const casts = [cast];
  const places = rowPlaces([cast.rows]);
  const groups = groupColumns(casts);
  const equipment = equipmentOf(casts, context);
  const feature = featureVariables(casts, [], equipment, context);
  const times = seriesTimes(cast, cast.elapsed ?? new Float64Array(cast.rows).fill(Number.NaN));
  const rowTimes = rowTimeFlags(cast, madeAt(context));
  const { dimension, isOrdered, nominal, layout } = seriesLayout(cast, times, groups, equipment);
  const rows = quantityVariables(groups, casts, places, layout, context);
  const others = rowVariables(casts, places, layout);
  const content = {
    dimensions: [
      { name: dimension, length: cast.rows },
      ...feature.dimensions,
      ...rows.dimensions,
      ...others.dimensions,
    ],
    attributes: globalAttributes(
      casts,
      {
        featureType: "timeSeries",
        suffix,
        title: `series ${cast.id}`,
        summary: "Series at one fixed position, every row of the record with its quality flags.",
        processingLevel: "quality flagged, computed quantities added",
        history: historyText(casts, context.created, context.software, ["every row written"]),
        source: seriesSource(equipment),
      },
      rows.standardNames,
      equipment,
      context,
      coverageAttributes(
        casts,
        verticalReach(rows.vertical, nominal),
        null,
        isOrdered ? regularInterval(times) : null,
      ),
      rows.references,
    ),
    variables: [
      feature.identity,
      timeVariable(times, dimension, { longName: "time of the row", comment: repeatedWords(rowTimes) }),
      ...feature.coordinates,
      ...(nominal === null ? [] : [nominal]),
      ...feature.facts,
      flagVariable(
        "time_qc",
        "the time of the row",
        [dimension],
        Array.from(times, (time, row) => (Number.isNaN(time) ? Flag.missing : rowTimes.flags[row]!)),
        layout.coordinates,
      ),
      ...rows.variables,
      ...others.variables,
      ...containerVariables(equipment, DATUM_ASSUMED),
    ],
  };
  return memoryDataset(arrangeSeries(content, context.target ?? generalTarget));
}

function repeatedWords({ repeated, isCoarse }: RowTimeFlags): string | null {
  if (repeated === 0) return null;
  const words = `rows that have the time of an earlier row: ${repeated}`;
  return isCoarse ? `${words}; the clock of the source is coarser than the rows` : `${words}, flagged 3`;
}

/** How the rows of a series, or its bursts, hang together. */
export function seriesLayout(
  cast: Cast,
  times: Float64Array,
  groups: readonly ColumnGroup[],
  equipment: Equipment,
) {
  const isOrdered = times.every((time, row) => !Number.isNaN(time) && (row === 0 || time > times[row - 1]!));
  const dimension = isOrdered ? "time" : "obs";
  const depth = groups.find(({ name }) => name === "depth");
  const nominal = nominalDepth(cast, depth);
  const atDepth = nominal === null ? "" : "nominal_depth: ";
  const layout: RowLayout = {
    dimension,
    coordinates: [
      "time latitude longitude",
      nominal === null ? null : "nominal_depth",
      depth ? "depth" : null,
      "station_id",
    ]
      .filter((name) => name !== null)
      .join(" "),
    vertical: depth ? "depth" : null,
    cellMethods: `${isOrdered ? "time: " : ""}latitude: longitude: ${atDepth}point`,
    prefix: "",
    verticalName:
      depth?.columns[0]?.source === null
        ? "depth of the sensor below the water surface at the time of the row"
        : null,
    // the nominal depth has the axis (CF section 9.5)
    verticalAxis: nominal === null,
    equipment,
  };
  return { dimension, isOrdered, nominal, layout, atDepth } as const;
}

/** What the depths of the rows reach together with the nominal depth. */
export function verticalReach(
  depths: { readonly stored: Stored; readonly units: string } | null,
  nominal: MemoryVariable | null,
): { readonly stored: Stored; readonly units: string } | null {
  if (depths === null || nominal === null || depths.stored.range === null) return depths;
  const { stored, units } = depths;
  const [low, high] = depths.stored.range;
  const [depth] = nominal.data as Float32Array;
  return { stored: { ...stored, range: [Math.min(low, depth!), Math.max(high, depth!)] }, units };
}

/** Times of rows, or of bursts, since 1970; NaN where the time of the first row is not known. */
export const seriesTimes = (cast: Cast, elapsed: Float64Array): Float64Array =>
  elapsed.map((seconds) =>
    cast.timeRole === "end" || cast.timeRole === "bottom" ? Number.NaN : cast.time + seconds,
  );

/** The times of a series, or of its bursts, which have bounds. */
export function timeVariable(
  times: Float64Array,
  dimension: "time" | "obs",
  { longName, bounds, comment }: { longName: string; bounds?: string; comment: string | null },
): MemoryVariable {
  const stored = store(times, "double");
  return {
    name: "time",
    type: "double",
    dimensions: [dimension],
    data: stored.data,
    attributes: attributes(
      ["long_name", longName],
      ["standard_name", "time"],
      ["units", TIME_UNITS],
      ["calendar", "standard"],
      ["axis", "T"],
      stored.missing > 0 ? fillAttribute(stored) : null,
      ["bounds", bounds],
      ["comment", comment],
      ["ancillary_variables", "time_qc"],
      ["coverage_content_type", "coordinate"],
    ),
  };
}

/** The stated depth, else the median depth of the rows at the fixed position; null if there is neither. */
function nominalDepth(cast: Cast, depth: ColumnGroup | undefined): MemoryVariable | null {
  const stated = cast.fixedDepth;
  const value = stated?.depth ?? medianOfStay(cast, depth);
  if (Number.isNaN(value)) return null;
  return {
    name: "nominal_depth",
    type: "float",
    dimensions: [],
    data: Float32Array.of(value),
    attributes: attributes(
      ["long_name", "nominal depth of the sensor below the water surface"],
      ["standard_name", "depth"],
      ["units", "m"],
      ["positive", "down"],
      ["axis", "Z"],
      [
        "comment",
        stated ? `reference: ${stated.reference}` : "median of the depths of the rows at the fixed position",
      ],
      ["coverage_content_type", "coordinate"],
    ),
  };
}

function medianOfStay(cast: Cast, depth: ColumnGroup | undefined): number {
  const values = depth?.columns[0]?.values;
  if (!values) return Number.NaN;
  const stays = cast.segments.filter(({ kind }) => kind === "stay");
  const rows =
    stays.length === 0
      ? [...values]
      : stays.flatMap(({ firstRow, lastRow }) => [...values.subarray(firstRow, lastRow + 1)]);
  const known = rows.filter((value) => !Number.isNaN(value)).sort((a, b) => a - b);
  return known.length === 0 ? Number.NaN : known[Math.floor((known.length - 1) / 2)]!;
}

/** The interval of the rows as a duration; null if they are not evenly spaced within a hundredth. */
export function regularInterval(times: Float64Array): string | null {
  if (times.length < 2) return null;
  const steps = Array.from(times.subarray(1), (time, row) => time - times[row]!).sort((a, b) => a - b);
  const middle = steps[Math.floor(steps.length / 2)]!;
  const isEven = steps.every((step) => Math.abs(step - middle) <= 0.01 * middle);
  return isEven ? formatIsoDuration(middle) : null;
}
