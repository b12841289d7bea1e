import {
  absoluteSalinity,
  type Cast,
  type Column,
  conservativeTemperature,
  density,
  densityEos80,
  type Evidence,
  median,
  type Problem,
  practicalSalinity,
  pressureFromDepth,
  referenceSalinity,
  soundSpeed,
} from "@wherry/core";
import { evidence } from "./file-facts.ts";

interface Comparison {
  readonly name: string;
  readonly unit: string;
  /** Median difference above which the file contradicts itself: far more than equations and rounding differ by. */
  readonly most: number;
  readonly equation: string;
  ours(row: Row): number;
}

/** A row in house units, NaN where a quantity is missing; sea pressure in dbar. */
interface Row {
  readonly C: number;
  readonly t: number;
  readonly p: number;
  readonly SP: number;
  readonly SA: number;
}

const COMPARISONS: readonly Comparison[] = [
  {
    name: "salinity",
    unit: "",
    most: 0.1,
    equation: "PSS-78 of its conductivity, temperature and pressure",
    ours: ({ C, t, p }) => practicalSalinity(C, t, p),
  },
  {
    name: "density",
    unit: " kg m-3",
    most: 0.5,
    equation: "TEOS-10 of its salinity, temperature and pressure",
    ours: ({ SA, t, p }) => density(SA, conservativeTemperature(SA, t, p), p),
  },
  {
    name: "sigma_t",
    unit: " kg m-3",
    most: 0.5,
    equation: "EOS-80 of its salinity and temperature",
    ours: ({ SP, t }) => densityEos80(SP, t, 0) - 1000,
  },
  {
    name: "sound_speed",
    unit: " m s-1",
    most: 1.5,
    equation: "TEOS-10 of its salinity, temperature and pressure",
    ours: ({ SA, t, p }) => soundSpeed(SA, conservativeTemperature(SA, t, p), p),
  },
];

/** Rows that are compared. */
const SAMPLE = 400;
/** Weight of the standard atmosphere, dbar. */
const ATMOSPHERE = 10.1325;

/**
 * The file's own salinity, density and sound speed beside ours from its measured columns. They stay as received; how
 * far they differ is said, and a finding where they do not belong to the other columns.
 */
export function compareOwnDerived(cast: Cast): {
  readonly evidence: readonly Evidence[];
  readonly findings: readonly Problem[];
} {
  const found: Evidence[] = [];
  const findings: Problem[] = [];
  const rowOf = rowReader(cast);
  const step = Math.max(1, Math.floor(cast.rows / SAMPLE));
  for (const { name, unit, most, equation, ours } of COMPARISONS) {
    const own = cast.columns.get(name);
    if (!own?.source) continue;
    const differences: number[] = [];
    for (let row = 0; row < cast.rows; row += step) {
      const difference = own.values[row]! - ours(rowOf(row));
      if (!Number.isNaN(difference)) differences.push(difference);
    }
    if (differences.length < 3) continue;
    const size = Math.max(...differences.map(Math.abs));
    const middle = median(Float64Array.from(differences));
    const because = `kept as received; it differs from ${equation} by ${rounded(middle)}${unit} in the middle, ${rounded(size)}${unit} at most`;
    const where = { file: cast.source.path, ...(cast.lines[0] === undefined ? {} : { line: cast.lines[0] }) };
    found.push(evidence(`comparison:${own.source.header}`, "implied", because, where));
    if (Math.abs(middle) > most)
      findings.push({
        code: "understand/own-derived",
        message: `"${own.source.header}" of cast ${cast.id} is ${because}`,
        where,
        remedy:
          "Look which of the columns is wrong, or was computed or corrected by other rules; ours is computed anew.",
      });
  }
  return { evidence: found, findings };
}

function rowReader(cast: Cast): (row: number) => Row {
  const at = (column: Column | undefined, row: number) => column?.values[row] ?? NaN;
  const column = (name: string) => cast.columns.get(name);
  const pressure = column("pressure");
  const air = pressure?.standardName === "sea_water_pressure" ? ATMOSPHERE : 0;
  const { latitude, longitude } = cast.start ?? { latitude: 45, longitude: NaN };
  return (row) => {
    const depth = at(column("depth"), row);
    const p = pressure ? at(pressure, row) - air : pressureFromDepth(depth, latitude);
    const C = at(column("conductivity"), row);
    const t = at(column("temperature"), row);
    const own = at(column("salinity"), row);
    const SP = Number.isNaN(own) ? practicalSalinity(C, t, p) : own;
    const SA = cast.start ? absoluteSalinity(SP, p, longitude, latitude) : referenceSalinity(SP);
    return { C, t, p, SP, SA };
  };
}

const rounded = (value: number) => (Math.abs(value) < 0.0005 ? "less than 0.001" : value.toFixed(3));
