import { convertUnits, type Timestamp, type Unit } from "@wherry/core";
import type { DatasetView } from "../../engine/dataset-view.ts";
import { isTime, splitShift, unitOf } from "../../engine/unit-kinds.ts";
import type { VariableView } from "../../engine/variable-view.ts";

/** A variable whose units count from a moment, taken apart. */
export interface TimeVariable {
  readonly variable: VariableView;
  /** Requirements on time are for coordinates; on other times the same remark is a recommendation. */
  readonly isCoordinate: boolean;
  readonly units: string;
  /** "days" of "days since 1970-01-01"; null if it cannot be read. */
  readonly unit: Unit | null;
  /** The word between unit and moment: "since", "from" … */
  readonly word: string;
  /** The moment as written. */
  readonly origin: string;
  /** The moment as UDUNITS reads it; null if it does not. */
  readonly moment: Timestamp | null;
  /** In small letters; "standard" if there is none. */
  readonly calendar: string;
}

export function timeVariables(dataset: DatasetView): TimeVariable[] {
  return dataset.all.flatMap((variable) => {
    const units = variable.text("units");
    const shift = units === undefined ? null : splitShift(units);
    if (units === undefined || shift === null || !isTime(shift.unit) || variable.isText) return [];
    const { unit, word, origin } = shift;
    return {
      variable,
      isCoordinate: variable.isSpaceTime,
      units,
      unit: unitOf(unit),
      word,
      origin,
      moment: unitOf(units)?.since?.moment ?? null,
      calendar: (variable.text("calendar") ?? "standard").toLowerCase(),
    };
  });
}

const CIVIL = ["standard", "gregorian", "utc", "tai", "proleptic_gregorian"];

/**
 * Epoch seconds of a time's values in the calendars whose days are those of history (leap seconds not counted); null
 * for other calendars and units that cannot be read. Missing values are NaN.
 */
export async function epochSeconds(dataset: DatasetView, time: TimeVariable): Promise<Float64Array | null> {
  const { moment, unit, calendar } = time;
  if (moment === null || unit === null || !CIVIL.includes(calendar)) return null;
  const values = await dataset.data.numbers(time.variable.name);
  const second = convertUnits(1, unit, "s");
  return values === null ? null : values.map((value) => moment.epochSeconds + value * second);
}
