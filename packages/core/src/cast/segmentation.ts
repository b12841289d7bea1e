import { Flag } from "../quality/flag.ts";
import { type AirParameters, airDefaults, findAir } from "./air.ts";
import type { Cast, Segment, SegmentKind, StepRecord } from "./cast.ts";
import { valuesOf, withColumns, withStep, withTest } from "./change.ts";
import { type Descent, findDescent, type SegmentationParameters } from "./descent.ts";
import { pressureNoise } from "./robust.ts";
import { type RowTimes, rowTimes } from "./row-times.ts";
import { type SmoothPressure, smoothPressure } from "./smooth-pressure.ts";
import { pressureSpikes } from "./spikes.ts";
import { findStay } from "./stay.ts";

const step = "segmentation";

/** How a cast begins: with a stay in water, dropped through the surface, or before the record. */
export type CastStyle = "soaked" | "no soak" | "unknown";

/**
 * Cuts a cast into air, soak, downcast, bottom stop and upcast, or a series into air, stay and other.
 *
 * Levels without times, and data already averaged, are one downcast (or one upcast, where they are listed from
 * the bottom up). Records that cannot be cut are "other" throughout, and the step says why.
 */
export function segment(
  cast: Cast,
  parameters: SegmentationParameters,
  airParameters: AirParameters = airDefaults,
): Cast {
  if (cast.rows === 0) return whole(cast, "other", "the record has no rows");
  const pressure = valuesOf(cast, "pressure");
  const times = rowTimes(cast.elapsed);
  if (cast.kind === "fixed-depth") return series(cast, pressure, times, airParameters);
  if (cast.state.processing === "averaged") return levels(cast, pressure, "levels already averaged");
  if (cast.elapsed !== null && cast.rows < 3)
    return whole(cast, "other", `${cast.rows} ${cast.rows === 1 ? "row tells" : "rows tell"} no directions`);
  if (times === null) return levels(cast, pressure, "rows have no times");
  if (pressure === null) return whole(cast, "other", "the cast has no pressure");
  if (pressure.every(Number.isNaN)) return whole(cast, "other", "no pressure was recorded");

  const air = findAir(times, pressure, valuesOf(cast, "conductivity"), airParameters);
  const wetFrom = air.start === null ? 0 : air.start.lastRow + 1;
  const wetTo = air.end === null ? cast.rows - 1 : air.end.firstRow - 1;
  const smooth = smoothPressure(pressure, times, pressureSpikes(cast));
  const noise = pressureNoise(pressure);
  const descent =
    wetFrom < wetTo
      ? findDescent(smooth.s, smooth.w, times.seconds, wetFrom, wetTo, noise, parameters)
      : null;
  if (descent === null)
    return whole(cast, "other", "pressure hardly changes", [
      [0, wetFrom - 1, "air"],
      [wetTo + 1, cast.rows - 1, "air"],
    ]);

  const inWater = times.seconds[descent.downFrom]! - times.seconds[wetFrom]!;
  const { soakSeconds, soakResponses, settleResponses, responseTime } = parameters;
  const soakNeeded = Math.max(soakSeconds, soakResponses * responseTime);
  const style: CastStyle = air.start === null ? "unknown" : inWater >= soakNeeded ? "soaked" : "no soak";
  const hasDown = descent.bottomFrom > descent.downFrom;
  const downFrom = style === "no soak" && hasDown ? wetFrom : descent.downFrom;
  const before: SegmentKind = style === "soaked" || inWater >= soakNeeded ? "soak" : "other";
  const segments = cut(cast.rows, [
    [0, wetFrom - 1, "air"],
    [wetFrom, downFrom - 1, before],
    [downFrom, descent.bottomFrom - 1, "down"],
    [descent.bottomFrom, descent.upFrom - 1, "bottom"],
    [descent.upFrom, wetTo, "up"],
    [wetTo + 1, cast.rows - 1, "air"],
  ]);
  let unsettled = 0;
  if (style === "no soak" && hasDown)
    for (let k = wetFrom; k < descent.bottomFrom; k++)
      if (times.seconds[k]! - times.seconds[wetFrom]! <= settleResponses * responseTime) unsettled++;
  const reached = largestPressure(smooth, descent.largest, noise);
  const flagged = flagUnsettled({ ...cast, segments }, wetFrom, unsettled);
  return withStep(flagged, recordFor(segments, descent, style, reached, unsettled, times, parameters));
}

/** Largest pressure reported: the largest row near the largest smoothed one, less twice the noise. */
function largestPressure({ s, bridged }: SmoothPressure, largest: number, noise: number): number {
  let reached = largest;
  for (let k = 0; k < s.length; k++)
    if (s[k]! >= largest - 0.3 && bridged[k]! - 2 * noise > reached) reached = bridged[k]! - 2 * noise;
  return reached;
}

/** Rows of sensors that have not settled after being dropped through the surface: 3 on T and C. */
function flagUnsettled(cast: Cast, from: number, count: number): Cast {
  if (count === 0) return cast;
  const result = new Uint8Array(cast.rows).fill(Flag.good);
  result.fill(Flag.questionable, from, from + count);
  const columns = ["temperature", "conductivity", "salinity"]
    .map((name) => cast.columns.get(name))
    .filter((column) => column !== undefined);
  return withColumns(cast, ...columns.map((column) => withTest(column, "unsettled", result)));
}

function recordFor(
  segments: readonly Segment[],
  descent: Descent,
  style: CastStyle,
  maxPressure: number,
  unsettled: number,
  times: RowTimes,
  parameters: SegmentationParameters,
): StepRecord {
  const { shallowLimits, ...numbers } = parameters;
  const counts = countRows(segments);
  const soak =
    style === "soaked" ? "after a soak" : style === "no soak" ? "without a soak" : "start not recorded";
  const missing = [
    ...(counts.down === undefined ? ["no downcast in the record"] : []),
    ...(counts.up === undefined ? ["no upcast in the record"] : []),
    ...(unsettled > 0 ? [`${unsettled} rows flagged until the sensors had settled`] : []),
    ...(times.placed > 0 ? [`${times.placed} rows without a time of their own`] : []),
  ];
  return {
    step,
    parameters: {
      style,
      deepSoak: descent.deepSoak,
      shallowAtLeast: shallowLimits[0],
      shallowAtMost: shallowLimits[1],
      ...numbers,
    },
    counts: {
      ...counts,
      unsettled,
      placedInTime: times.placed,
      deepestRow: descent.deepestRow,
      maxPressure: Math.round(maxPressure * 1e4) / 1e4,
    },
    words: ["cast cut into its parts", soak, ...missing].join(", "),
  };
}

function series(cast: Cast, pressure: Float64Array | null, times: RowTimes | null, air: AirParameters): Cast {
  if (times === null || pressure === null || cast.rows < 3)
    return whole(cast, "stay", "a series without times or pressure");
  const found = findAir(times, pressure, valuesOf(cast, "conductivity"), air);
  const wetFrom = found.start === null ? 0 : found.start.lastRow + 1;
  const wetTo = found.end === null ? cast.rows - 1 : found.end.firstRow - 1;
  const smooth = smoothPressure(pressure, times, pressureSpikes(cast));
  const stay = findStay(smooth.s, wetFrom, wetTo, pressureNoise(pressure));
  const segments = cut(cast.rows, [
    [0, wetFrom - 1, "air"],
    [stay.firstRow, stay.lastRow, "stay"],
    [wetTo + 1, cast.rows - 1, "air"],
  ]);
  return withStep(
    { ...cast, segments },
    {
      step,
      parameters: { tolerance: stay.tolerance },
      counts: countRows(segments),
      words: "series cut into air, lowering and the stay at its depth",
    },
  );
}

/** All rows one segment, but for the parts given. */
function whole(cast: Cast, kind: SegmentKind, reason: string, parts: readonly Part[] = []): Cast {
  const segments = cut(cast.rows, parts, kind);
  const counted =
    kind === "other"
      ? "no part of it is judged"
      : segments.length > 1
        ? "soak and bottom cannot be told"
        : `all rows count as one ${kind === "stay" ? "stay" : `${kind}cast`}`;
  return withStep(
    { ...cast, segments },
    {
      step,
      parameters: { skipped: true, reason },
      counts: countRows(segments),
      words: `${step} skipped: ${reason}, ${counted}`,
    },
  );
}

/** Rows without times: one way as listed or, where they go down and come up again, two, cut at the deepest. */
function levels(cast: Cast, pressure: Float64Array | null, reason: string): Cast {
  const p = pressure ?? new Float64Array();
  let first = -1;
  let last = -1;
  let deepest = -1;
  let least = Number.POSITIVE_INFINITY;
  for (let k = 0; k < p.length; k++) {
    if (Number.isNaN(p[k]!)) continue;
    if (first < 0) first = k;
    last = k;
    if (deepest < 0 || p[k]! > p[deepest]!) deepest = k;
    least = Math.min(least, p[k]!);
  }
  if (first < 0 || cast.state.direction === "up-reversed") return whole(cast, "down", reason);
  const way = Math.max(1, 0.2 * (p[deepest]! - least));
  const goesDown = p[deepest]! - p[first]! > way;
  const comesUp = p[deepest]! - p[last]! > way;
  if (goesDown && comesUp)
    return whole(cast, "down", `${reason}, cut at the deepest row only`, [
      [0, deepest, "down"],
      [deepest + 1, cast.rows - 1, "up"],
    ]);
  return whole(cast, p[last]! < p[first]! ? "up" : "down", reason);
}

type Part = readonly [firstRow: number, lastRow: number, kind: SegmentKind];

/** Segments that cover all rows: the parts given, in order, and `rest` between them. Empty parts vanish. */
function cut(rows: number, parts: readonly Part[], rest: SegmentKind = "other"): readonly Segment[] {
  const segments: Segment[] = [];
  let next = 0;
  const add = (firstRow: number, lastRow: number, kind: SegmentKind) => {
    if (lastRow >= firstRow) segments.push({ kind, firstRow, lastRow });
  };
  for (const [firstRow, lastRow, kind] of parts) {
    if (lastRow < firstRow) continue;
    add(next, firstRow - 1, rest);
    add(firstRow, lastRow, kind);
    next = lastRow + 1;
  }
  add(next, rows - 1, rest);
  return segments;
}

function countRows(segments: readonly Segment[]): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const { kind, firstRow, lastRow } of segments)
    counts[kind] = (counts[kind] ?? 0) + lastRow - firstRow + 1;
  return counts;
}

/**
 * Deepest row and largest sea pressure (dbar) of a cast: as segmentation found them, which no spike or noise of a
 * single row decides; without segmentation the largest value that is not flagged bad, the first of equals. Null if
 * there is none.
 */
export function deepestOf(cast: Cast): { readonly row: number; readonly pressure: number } | null {
  const found = cast.steps.findLast((each) => each.step === step)?.counts;
  if (found?.deepestRow !== undefined && found.maxPressure !== undefined)
    return { row: found.deepestRow, pressure: found.maxPressure };
  const pressure = cast.columns.get("pressure");
  if (pressure === undefined) return null;
  const { values, flags } = pressure;
  let row = -1;
  for (let k = 0; k < values.length; k++)
    if (!Number.isNaN(values[k]!) && flags[k] !== Flag.bad && (row < 0 || values[k]! > values[row]!)) row = k;
  return row < 0 ? null : { row, pressure: values[row]! };
}

/** How the cast began, as segmentation found it; null before segmentation or where it was skipped. */
export function styleOf(cast: Cast): CastStyle | null {
  const style = cast.steps.findLast((each) => each.step === step)?.parameters.style;
  return style === "soaked" || style === "no soak" || style === "unknown" ? style : null;
}
