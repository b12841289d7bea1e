import { writeFileSync } from "node:fs";
import {
  absoluteSalinity,
  conductivityFromSalinityColumn,
  conservativeTemperatureColumn,
  densityColumn,
  practicalSalinityColumn,
  soundSpeedColumn,
} from "@wherry/core";
import {
  type MemoryVariable,
  memoryDataset,
  numberAttribute,
  textAttribute,
  writeClassic,
} from "@wherry/netcdf";

/**
 * Writes a file of invented casts as a contiguous ragged array: pressure (double) and five float variables over all
 * levels. Everything in it is as the rules ask, so that a check has to look at every value.
 */
export async function writeCasts(path: string, casts: number, levels: number): Promise<void> {
  const rows = casts * levels;
  const column = (of: (cast: number, level: number) => number): Float64Array =>
    Float64Array.from({ length: rows }, (_, i) => of(Math.floor(i / levels), i % levels));
  const wave = (cast: number) => Math.sin(cast / 50);
  const p = column((_, level) => 0.5 + level);
  const t = Float64Array.from(
    column((cast, level) => 16 + wave(cast) - 6 / (1 + Math.exp((40 - level) / 8))),
    Math.fround,
  );
  const wanted = column((cast, level) => 34.2 + 0.1 * wave(cast) + level * 0.01);
  const C = new Float64Array(rows);
  conductivityFromSalinityColumn(wanted, t, p, C);
  const stored = Float64Array.from(C, (value) => Math.fround(value / 10));
  const back = stored.map((value) => value * 10);
  const [SP, CT, rho, c] = [1, 2, 3, 4].map(() => new Float64Array(rows)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  practicalSalinityColumn(back, t, p, SP);
  const longitude = Float64Array.from({ length: casts }, (_, cast) => -4 - (cast % 100) * 0.001);
  const latitude = Float64Array.from({ length: casts }, (_, cast) => 50 + Math.floor(cast / 100) * 0.001);
  const SA = column((cast, level) =>
    absoluteSalinity(
      SP[cast * levels + level]!,
      p[cast * levels + level]!,
      longitude[cast]!,
      latitude[cast]!,
    ),
  );
  conservativeTemperatureColumn(SA, t, p, CT);
  densityColumn(SA, CT, p, rho);
  soundSpeedColumn(SA, CT, p, c);
  const texts = (attributes: Record<string, string>) =>
    Object.entries(attributes).map(([name, text]) => textAttribute(name, text));
  const sampled = (
    name: string,
    standardName: string,
    units: string,
    values: Float64Array,
    more: Record<string, string> = {},
  ): MemoryVariable => ({
    name,
    type: "float",
    dimensions: ["sample"],
    attributes: [
      numberAttribute("_FillValue", "float", -9999),
      ...texts({
        standard_name: standardName,
        long_name: standardName.replaceAll("_", " "),
        units,
        coordinates: "time latitude longitude pressure",
        coverage_content_type: "physicalMeasurement",
        ...more,
      }),
    ],
    data: Float32Array.from(values),
  });
  const perCast = (
    name: string,
    standardName: string,
    units: string,
    data: Float64Array,
    more: Record<string, string>,
  ): MemoryVariable => ({
    name,
    type: "double",
    dimensions: ["cast"],
    attributes: texts({
      standard_name: standardName,
      long_name: standardName,
      units,
      coverage_content_type: "coordinate",
      ...more,
    }),
    data,
  });
  const dataset = memoryDataset({
    dimensions: [
      { name: "cast", length: casts },
      { name: "sample", length: rows },
    ],
    attributes: texts({
      Conventions: "CF-1.13",
      featureType: "profile",
      title: "Invented casts",
      institution: "Invented",
      source: "made for timing",
      history: "made for timing",
    }),
    variables: [
      {
        name: "cast",
        type: "int",
        dimensions: ["cast"],
        attributes: texts({ cf_role: "profile_id", long_name: "number of the cast" }),
        data: Int32Array.from({ length: casts }, (_, cast) => cast),
      },
      {
        name: "rows",
        type: "int",
        dimensions: ["cast"],
        attributes: texts({ long_name: "rows of the cast", sample_dimension: "sample" }),
        data: new Int32Array(casts).fill(levels),
      },
      perCast(
        "time",
        "time",
        "seconds since 2020-01-01 00:00:00 Z",
        Float64Array.from({ length: casts }, (_, cast) => cast * 600),
        { axis: "T", calendar: "standard" },
      ),
      perCast("latitude", "latitude", "degrees_north", latitude, { axis: "Y" }),
      perCast("longitude", "longitude", "degrees_east", longitude, { axis: "X" }),
      {
        name: "pressure",
        type: "double",
        dimensions: ["sample"],
        attributes: texts({
          standard_name: "sea_water_pressure_due_to_sea_water",
          long_name: "sea pressure",
          units: "dbar",
          axis: "Z",
          positive: "down",
          coverage_content_type: "coordinate",
        }),
        data: p,
      },
      sampled("temperature", "sea_water_temperature", "degree_C", t, {
        units_metadata: "temperature: on_scale",
      }),
      sampled("conductivity", "sea_water_electrical_conductivity", "S m-1", stored),
      sampled("salinity", "sea_water_practical_salinity", "1", SP),
      sampled("density", "sea_water_density", "kg m-3", rho),
      sampled("sound_speed", "speed_of_sound_in_sea_water", "m s-1", c),
    ],
  });
  const parts: Uint8Array[] = [];
  const written = await writeClassic(dataset, { version: 1 }, (bytes) => void parts.push(bytes.slice()));
  if (!written.ok) throw new Error(written.problems[0].message);
  writeFileSync(path, Buffer.concat(parts));
}
