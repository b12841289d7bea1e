/**
 * Computes every equation of sea water for the columns of a JSON file, by the column twins:
 *
 *   npx tsx --conditions=wherry-source tools/seawater/values-at-points.ts IN.json OUT.json
 *
 * IN holds arrays of equal length by name; positions are one per row. OUT holds the results by name. Numbers go as
 * JSON prints them, without loss; null is not a number. Called by tools/crosscheck_seawater.py.
 */
import { readFile, writeFile } from "node:fs/promises";
import * as core from "@wherry/core";

const [inPath, outPath] = process.argv.slice(2);
if (inPath === undefined || outPath === undefined)
  throw new Error("usage: values-at-points.ts IN.json OUT.json");
const given = JSON.parse(await readFile(inPath, "utf8")) as Record<string, number[]>;
const column = (name: string): Float64Array => Float64Array.from(given[name]!);
const { C, t, p, lon, lat, SP, SA, CT, pt0, depth } = Object.fromEntries(
  Object.keys(given).map((name) => [name, column(name)]),
) as Record<string, Float64Array> & Record<"C" | "t" | "p" | "lon" | "lat", Float64Array>;
const rows = p.length;

type Columns = readonly (Float64Array | undefined)[];
type Twin = (...columns: never[]) => void;

/** A twin that takes columns alone. */
function whole(twin: Twin, ...columns: Columns): Float64Array {
  const out = new Float64Array(rows);
  (twin as (...all: unknown[]) => void)(...columns, out);
  return out;
}

/** A twin with scalars (position, air saturation) behind its columns, row by row. */
function byPlace(twin: Twin, columns: Columns, places: readonly Float64Array[]): Float64Array {
  const one = new Float64Array(1);
  return Float64Array.from({ length: rows }, (_, i) => {
    const cells = columns.map((each) => Float64Array.of(each![i]!));
    (twin as (...all: unknown[]) => void)(...cells, ...places.map((each) => each[i]!), one);
    return one[0]!;
  });
}

/** Casts of 100 rows each, one below the other. */
function stability(): Float64Array {
  const casts: number[] = [];
  for (let start = 0; start < rows; start += 100) {
    const piece = (each: Float64Array | undefined) => each!.slice(start, start + 100);
    const { n2 } = core.buoyancyFrequencySquared(piece(SA), piece(CT), piece(p), lat[start]!);
    casts.push(...n2);
  }
  return Float64Array.from(casts);
}

const ownSP = whole(core.practicalSalinityColumn, C, t, p);
const ownSA = byPlace(core.absoluteSalinityColumn, [ownSP, p], [lon, lat]);
const ownCT = whole(core.conservativeTemperatureColumn, ownSA, t, p);

const results: Record<string, Float64Array> = {
  practicalSalinity: ownSP,
  conductivityFromSalinity: whole(core.conductivityFromSalinityColumn, SP, t, p),
  referenceSalinity: whole(core.referenceSalinityColumn, SP),
  anomalyRatio: Float64Array.from(p, (each, i) => core.anomalyRatio(each, lon[i]!, lat[i]!)),
  absoluteSalinity: byPlace(core.absoluteSalinityColumn, [SP, p], [lon, lat]),
  salinityFromAbsolute: byPlace(core.salinityFromAbsoluteColumn, [SA, p], [lon, lat]),
  potentialTemperature0: whole(core.potentialTemperature0Column, SA, t, p),
  conservativeTemperature: whole(core.conservativeTemperatureColumn, SA, t, p),
  temperatureFromConservative: whole(core.temperatureFromConservativeColumn, SA, CT, p),
  density: whole(core.densityColumn, SA, CT, p),
  sigma0: whole(core.sigma0Column, SA, CT),
  soundSpeed: whole(core.soundSpeedColumn, SA, CT, p),
  thermalExpansion: whole(core.thermalExpansionColumn, SA, CT, p),
  halineContraction: whole(core.halineContractionColumn, SA, CT, p),
  spiciness0: whole(core.spiciness0Column, SA, CT),
  freezingTemperature: byPlace(core.freezingTemperatureColumn, [SA, p], [new Float64Array(rows).fill(1)]),
  oxygenSolubility: whole(core.oxygenSolubilityColumn, SP, pt0),
  depthFromPressure: byPlace(core.depthFromPressureColumn, [p], [lat]),
  pressureFromDepth: byPlace(core.pressureFromDepthColumn, [depth], [lat]),
  specificConductance25: whole(core.specificConductance25Column, C, t),
  specificConductance25Pss78: whole(core.specificConductance25Pss78Column, C, t, p),
  temperatureTo68: whole(core.temperatureTo68Column, t),
  temperatureFrom68: whole(core.temperatureFrom68Column, t),
  buoyancyFrequencySquared: stability(),
  densityFromSensors: whole(core.densityColumn, ownSA, ownCT, p),
  densityEos80: whole(core.densityEos80Column, SP, t, p),
  depthFromPressureUnesco: byPlace(core.depthFromPressureUnescoColumn, [p], [lat]),
  pressureFromDepthSaunders: byPlace(core.pressureFromDepthSaundersColumn, [depth], [lat]),
  adiabaticLapseRateEos80: whole(core.adiabaticLapseRateEos80Column, SP, t, p),
  potentialTemperatureEos80: whole(core.potentialTemperatureEos80Column, SP, t, p),
  freezingTemperatureEos80: whole(core.freezingTemperatureEos80Column, SP, p),
  soundSpeedChenMillero: whole(core.soundSpeedChenMilleroColumn, SP, t, p),
  soundSpeedDelGrosso: whole(core.soundSpeedDelGrossoColumn, SP, t, p),
};

const text = Object.fromEntries(Object.entries(results).map(([name, values]) => [name, [...values]]));
await writeFile(outPath, JSON.stringify(text));
