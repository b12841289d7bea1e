import { readFileSync } from "node:fs";
import type { Cast, Column, Position, SegmentKind } from "@wherry/core";
import { type Dataset, parseCdl } from "@wherry/netcdf";
import { testData } from "@wherry/testkit";

/** One of the reference files of test-data/reference-products, read as a data set. */
export function referenceProduct(name: "full" | "binned" | "binned_incomplete" | "series"): Dataset {
  const result = parseCdl(readFileSync(testData("reference-products", `${name}.cdl`), "utf8"));
  if (!result.ok) throw new Error(result.problems[0].message);
  return result.value;
}

/** All values of a variable as numbers, NaN where they equal its fill value. */
export async function numbers(dataset: Dataset, name: string): Promise<number[]> {
  const variable = dataset.variables.get(name);
  const result = await dataset.read(name);
  if (!variable || !result.ok) throw new Error(`no variable ${name}`);
  const fill = variable.attributes.get("_FillValue")?.value;
  const missing = typeof fill === "object" ? Number(fill[0]) : null;
  return Array.from(result.value as ArrayLike<number>, (value) =>
    Number(value) === missing ? Number.NaN : Number(value),
  );
}

/** All texts of a char variable. */
export async function texts(dataset: Dataset, name: string): Promise<string[]> {
  const variable = dataset.variables.get(name);
  const result = await dataset.read(name);
  if (!variable || !result.ok) throw new Error(`no variable ${name}`);
  const length = variable.shape.at(-1)!;
  const bytes = result.value as Uint8Array;
  return Array.from({ length: bytes.length / length }, (_, index) =>
    new TextDecoder().decode(bytes.subarray(index * length, (index + 1) * length)).replace(/\0+$/, ""),
  );
}

const KINDS: readonly SegmentKind[] = ["air", "soak", "down", "bottom", "up", "other", "stay"];

/** Printed decimals of the reference's measured quantities, conductivity in mS cm-1. */
const DECIMALS: Readonly<Record<string, number>> = { pressure: 2, temperature: 3, conductivity: 3 };

const COMPUTED: Readonly<Record<string, { from: string[]; equation: string; references: string }>> = {
  depth: {
    from: ["pressure"],
    equation:
      "computed from sea pressure by integrating the density measured in the downcast (mean salinity below 30), gravity by latitude",
    references: "",
  },
  salinity: {
    from: ["conductivity", "temperature", "pressure"],
    equation: "PSS-78",
    references: "UNESCO Technical Papers in Marine Science 44 (1983); Hill et al. (1986) below 2",
  },
  density: {
    from: ["salinity", "temperature", "pressure", "position"],
    equation: "75 terms",
    references:
      "TEOS-10: IOC Manuals and Guides 56 (2010); Roquet et al. (2015), 75 terms; McDougall et al. (2012) for Absolute Salinity",
  },
  sound_speed: {
    from: ["salinity", "temperature", "pressure", "position"],
    equation: "75 terms",
    references: "TEOS-10: IOC Manuals and Guides 56 (2010); Roquet et al. (2015), 75 terms",
  },
};

/** The casts that the reference file holds, as they would be in memory before writing. */
export async function referenceCasts(name: "full" | "series"): Promise<Cast[]> {
  const file = referenceProduct(name);
  const isSeries = name === "series";
  const counts = isSeries ? [file.dimensions.get("time")!.length] : await numbers(file, "row_size");
  const all = async (variable: string) =>
    file.variables.has(variable) ? await numbers(file, variable) : counts.map(() => Number.NaN);
  const [time, latitude, longitude, endTime, endLatitude, endLongitude, startSatellites, endSatellites] =
    (await Promise.all(
      [
        "time",
        "latitude",
        "longitude",
        "end_time",
        "end_latitude",
        "end_longitude",
        "start_satellites",
        "end_satellites",
      ].map(all),
    )) as [number[], number[], number[], number[], number[], number[], number[], number[]];
  const offset = await all("pressure_offset");
  const ids = await texts(file, isSeries ? "station_id" : "profile_id");
  const sources = isSeries ? ["EE24-PIER-A.csv"] : await texts(file, "source_file");
  const lines = await numbers(file, "source_line");
  const segment = await numbers(file, "segment");
  const elapsed = isSeries ? time.map((value) => value - time[0]!) : await numbers(file, "elapsed");
  const quantities = await Promise.all(
    ["depth", "pressure", "temperature", "conductivity", "salinity", "density", "sound_speed"].map(
      async (variable) => ({
        variable,
        values: await numbers(file, variable),
        flags: await numbers(file, `${variable}_qc`),
      }),
    ),
  );
  let first = 0;
  return counts.map((rows, index) => {
    const part = <T>(values: readonly T[]): T[] => values.slice(first, first + rows);
    const columns = new Map(
      quantities.map(({ variable, values, flags }) => [
        variable,
        column(file, variable, part(values), part(flags)),
      ]),
    );
    const cast: Cast = {
      id: ids[index]!,
      kind: isSeries ? "fixed-depth" : "profile",
      state: { processing: "raw", pressureZeroed: true, lagCorrected: false, direction: "both" },
      rows,
      time: time[index]!,
      timeRole: "start",
      endTime: isSeries ? time.at(-1)! : endTime[index]!,
      elapsed: Float64Array.from(part(elapsed)),
      start: position(latitude[index]!, longitude[index]!, startSatellites[index]!),
      end: position(endLatitude[index]!, endLongitude[index]!, endSatellites[index]!),
      fixedDepth: isSeries ? { depth: 2.02, reference: "the water surface at the first row" } : null,
      instrument: { model: null, serialNumber: "T-0417", ratedPressure: null },
      notes: [],
      columns,
      texts: new Map(),
      lines: Uint32Array.from(part(lines)),
      source: { path: `casts/${sources[index]}`, sha256: "0".repeat(64) },
      evidence: [{ fact: "temperatureScale", certainty: "assumed", because: "data after 1990", where: {} }],
      pressureOffset: isSeries ? 0.12 : offset[index]!,
      segments: segmentsOf(part(segment)),
      steps: [],
    };
    first += rows;
    return cast;
  });
}

function column(file: Dataset, name: string, stored: readonly number[], flags: readonly number[]): Column {
  const decimals = DECIMALS[name];
  const printed = stored.map((value) => (name === "conductivity" ? value * 10 : value));
  // a float of the file as the decimal number that it was printed as
  const values = Float64Array.from(printed, (value) => Number(value.toFixed(decimals ?? 4)));
  const known = values.filter((value) => !Number.isNaN(value));
  const standardName = String(file.variables.get(name)?.attributes.get("standard_name")?.value);
  return {
    name,
    standardName,
    longName: name,
    units:
      name === "conductivity" ? "mS cm-1" : String(file.variables.get(name)?.attributes.get("units")?.value),
    values,
    flags: Uint8Array.from(flags),
    source:
      decimals === undefined
        ? null
        : {
            header: name,
            units: null,
            index: 0,
            decimals,
            significantDigits: 6,
            first: known[0]!,
            last: known.at(-1)!,
          },
    sourceFlags: null,
    tests: new Map(),
    method: COMPUTED[name] ?? null,
  };
}

const position = (latitude: number, longitude: number, satellites: number): Position | null =>
  Number.isNaN(latitude)
    ? null
    : {
        latitude,
        longitude,
        satellites: Number.isNaN(satellites) ? null : satellites,
        quality: null,
      };

function segmentsOf(codes: readonly number[]): Cast["segments"] {
  const segments: { kind: SegmentKind; firstRow: number; lastRow: number }[] = [];
  for (const [row, code] of codes.entries()) {
    const kind = KINDS[code - 1]!;
    const last = segments.at(-1);
    if (last?.kind === kind) last.lastRow = row;
    else segments.push({ kind, firstRow: row, lastRow: row });
  }
  return segments;
}
