import type { Instrument, Platform, Sensor } from "@wherry/contracts";
import type { Cast } from "@wherry/core";
import { type MemoryVariable, numberAttribute } from "@wherry/netcdf";
import { sensorCalibrations } from "../sheet/calibration-words.ts";
import { lineOfCast } from "../sheet/line-of-cast.ts";
import { attributes } from "./storage.ts";
import type { WritingContext } from "./writing-context.ts";

/** Instruments and platforms of a data set, and which of them each cast used. */
export interface Equipment {
  readonly instruments: readonly Instrument[];
  /** Index in `instruments`, one per cast. */
  readonly instrumentOf: readonly number[];
  readonly platforms: readonly Platform[];
  /** Index in `platforms`, one per cast. */
  readonly platformOf: readonly number[];
}

const UNNAMED = "conductivity temperature depth profiler";

/**
 * The instrument that a cast was made with: the one that its line in the sheet names, else the one with the
 * serial number that its file tells, else the first of the sheet, unless that is known to be another by its
 * serial number; then what the file itself tells.
 */
export function instrumentOf(cast: Cast, { sheet }: Pick<WritingContext, "sheet">): Instrument {
  const told = cast.instrument;
  const instruments = sheet.instruments ?? [];
  const listed = lineOfCast(sheet, cast.id)?.instrument;
  const named = instruments.find(({ id }) => id !== undefined && id === listed);
  if (named) return withFacts(named, told);
  const serial = told.serialNumber;
  const same = instruments.find(({ serial_number }) => serial !== null && serial_number === serial);
  if (same) return withFacts(same, told);
  const [first] = instruments;
  if (first && (serial === null || first.serial_number === undefined)) return withFacts(first, told);
  return withFacts({ name: first?.name ?? UNNAMED }, told);
}

function withFacts(instrument: Instrument, told: Cast["instrument"]): Instrument {
  return {
    ...(told.model === null ? {} : { model: told.model }),
    ...(told.serialNumber === null ? {} : { serial_number: told.serialNumber }),
    ...(told.ratedPressure === null ? {} : { rated_pressure: told.ratedPressure }),
    ...instrument,
  };
}

/** The platform that a cast was made from: the one that its line in the sheet names, else the first. */
export function platformOf(cast: Cast, { sheet }: Pick<WritingContext, "sheet">): Platform | null {
  const listed = lineOfCast(sheet, cast.id)?.platform;
  return sheet.platforms?.find(({ id }) => id !== undefined && id === listed) ?? sheet.platforms?.[0] ?? null;
}

/** What the casts used, each instrument and platform once, in the order of first use. */
export function equipmentOf(casts: readonly Cast[], context: Pick<WritingContext, "sheet">): Equipment {
  const instruments = distinct(casts.map((cast) => instrumentOf(cast, context)));
  const platforms = distinct(casts.map((cast) => platformOf(cast, context) ?? { name: "not told" }));
  return {
    instruments: instruments.items,
    instrumentOf: instruments.indices,
    platforms: platforms.items.length === 1 && platforms.items[0]!.name === "not told" ? [] : platforms.items,
    platformOf: platforms.indices,
  };
}

function distinct<T>(all: readonly T[]): { items: T[]; indices: number[] } {
  const keys: string[] = [];
  const items: T[] = [];
  const indices = all.map((item) => {
    const key = JSON.stringify(Object.entries(item as object).sort(([a], [b]) => (a < b ? -1 : 1)));
    let index = keys.indexOf(key);
    if (index < 0) {
      index = keys.push(key) - 1;
      items.push(item);
    }
    return index;
  });
  return { items, indices };
}

/** Names of the container variables, blank-separated, as data variables refer to them; null if there are none. */
export const containerNames = (kind: "instrument" | "platform", count: number): string | null =>
  count === 0 ? null : Array.from({ length: count }, (_, index) => `${kind}${index + 1}`).join(" ");

/** The scalar variables that hold reference system, platforms and instruments in their attributes. */
export function containerVariables(equipment: Equipment, datum: string): MemoryVariable[] {
  const container = (name: string, list: ReturnType<typeof attributes>): MemoryVariable => ({
    name,
    type: "int",
    dimensions: [],
    data: new Int32Array(1),
    attributes: list,
  });
  return [
    container("crs", crsAttributes(datum)),
    ...equipment.platforms.map((platform, index) =>
      container(
        `platform${index + 1}`,
        attributes(
          ["long_name", platform.name],
          ["call_sign", platform.call_sign],
          ["platform_code", platform.code],
          ["platform_vocabulary", platform.vocabulary],
          ["comment", platform.comment],
        ),
      ),
    ),
    ...equipment.instruments.map((instrument, index) =>
      container(
        `instrument${index + 1}`,
        attributes(
          ["long_name", instrument.name],
          ["make_model", instrument.model],
          ["serial_number", instrument.serial_number],
          ["calibration_date", instrument.calibration_date],
          ["accuracy", sensorWords(instrument, "accuracy")],
          ["precision", sensorWords(instrument, "precision")],
          [
            "rated_pressure",
            instrument.rated_pressure === undefined ? null : `${instrument.rated_pressure} dbar`,
          ],
          ["rated_depth", instrument.rated_depth === undefined ? null : `${instrument.rated_depth} m`],
          ["sensor_serial_numbers", sensorFacts(instrument, "serial_number")],
          ["sensor_calibration_dates", sensorFacts(instrument, "calibration_date")],
          ["calibrations", sensorCalibrations(instrument).join("; ")],
          ["identifier", instrument.identifier],
          ["instrument_vocabulary", instrument.vocabulary],
          ["comment", instrument.comment],
        ),
      ),
    ),
  ];
}

/** WGS 84 as an ellipsoid. @source EPSG:4326 and its ellipsoid EPSG:7030 */
const crsAttributes = (datum: string) =>
  attributes(
    ["long_name", "horizontal reference system"],
    ["grid_mapping_name", "latitude_longitude"],
    ["epsg_code", "EPSG:4326"],
    numberAttribute("semi_major_axis", "double", 6378137),
    numberAttribute("inverse_flattening", "double", 298.257223563),
    numberAttribute("longitude_of_prime_meridian", "double", 0),
    ["comment", datum],
  );

const sensorsOf = ({ sensors = {} }: Instrument): [string, Sensor][] =>
  Object.entries(sensors).filter((entry): entry is [string, Sensor] => entry[1] !== undefined);

/** As `temperature 0.01 degree_C, pressure 0.05 dbar`. */
const sensorWords = (instrument: Instrument, what: "accuracy" | "precision"): string =>
  sensorsOf(instrument)
    .filter(([, sensor]) => sensor[what] !== undefined)
    .map(([name, sensor]) => `${name.replaceAll("_", " ")} ${sensor[what]} ${sensor.units}`)
    .join(", ");

const sensorFacts = (instrument: Instrument, what: "serial_number" | "calibration_date"): string =>
  sensorsOf(instrument)
    .filter(([, sensor]) => sensor[what] !== undefined)
    .map(([name, sensor]) => `${name.replaceAll("_", " ")} ${sensor[what]}`)
    .join(", ");
