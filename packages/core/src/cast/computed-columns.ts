import { conservativeTemperatureColumn } from "../seawater/conservative-temperature.ts";
import { densityColumn } from "../seawater/density.ts";
import { practicalSalinityColumn } from "../seawater/practical-salinity.ts";
import { soundSpeedColumn } from "../seawater/sound-speed.ts";
import type { Cast, Column } from "./cast.ts";
import { skipped, valuesOf, withStep } from "./change.ts";
import { computedColumn, putComputed } from "./computed-column.ts";
import { addDepth, type DepthMethod } from "./depth.ts";
import { salinityForDensity } from "./salinity-for-density.ts";

const step = "computed quantities";

/**
 * Adds salinity, density, sound speed and depth, row by row from the values of the row. What a row lacks an input
 * for is missing. Received columns of these names are kept under `<name>_received`; a salinity without a
 * conductivity beside it is the measured one and stays.
 *
 * Sound speed and depth are not for navigation or diving: local authority and licensed practice decide.
 */
export function addComputed(cast: Cast, depthMethod: DepthMethod): Cast {
  let result = addSalinity(cast);
  result = addDensityAndSound(result);
  result = addDepth(result, depthMethod);
  const added = [...result.columns.values()].filter(
    (column) => column.method !== null && cast.columns.get(column.name) !== column,
  );
  if (added.length === 0) return withStep(cast, skipped(step, "the inputs are not there"));
  const missing = ({ values }: Column) => {
    let count = 0;
    for (let k = 0; k < values.length; k++) if (Number.isNaN(values[k]!)) count++;
    return count;
  };
  return withStep(result, {
    step,
    parameters: Object.fromEntries(added.map((column) => [column.name, column.method!.equation])),
    counts: Object.fromEntries(added.map((column) => [`${column.name}.missing`, missing(column)])),
    words: `computed ${added.map((column) => column.name).join(", ")}`,
  });
}

function addSalinity(cast: Cast): Cast {
  const [C, t, p] = ["conductivity", "temperature", "pressure"].map((name) => valuesOf(cast, name));
  if (C == null || t == null || p == null) return cast;
  const values = new Float64Array(cast.rows);
  practicalSalinityColumn(C, t, p, values);
  return putComputed(
    cast,
    computedColumn({
      name: "salinity",
      standardName: "sea_water_practical_salinity",
      longName: "Practical Salinity, PSS-78",
      units: "1",
      values,
      method: {
        from: ["conductivity", "temperature", "pressure"],
        equation: "PSS-78; below 2 the extension of Hill et al. (1986) in its TEOS-10 form",
        references: "UNESCO Technical Papers in Marine Science 44 (1983); Hill et al. (1986) below 2",
      },
    }),
  );
}

function addDensityAndSound(cast: Cast): Cast {
  const [SP, t, p] = ["salinity", "temperature", "pressure"].map((name) => valuesOf(cast, name));
  if (SP == null || t == null || p == null) return cast;
  const { SA, words, references } = salinityForDensity(cast, SP, p);
  const CT = new Float64Array(cast.rows);
  conservativeTemperatureColumn(SA, t, p, CT);
  const rho = new Float64Array(cast.rows);
  densityColumn(SA, CT, p, rho);
  const c = new Float64Array(cast.rows);
  soundSpeedColumn(SA, CT, p, c);
  const from = ["salinity", "temperature", "pressure"];
  const teos = "TEOS-10: IOC Manuals and Guides 56 (2010); Roquet et al. (2015), 75 terms";
  const withDensity = putComputed(
    cast,
    computedColumn({
      name: "density",
      standardName: "sea_water_density",
      longName: "in-situ density",
      units: "kg m-3",
      values: rho,
      method: { from, equation: `TEOS-10, 75 terms; ${words}`, references: `${teos}${references}` },
    }),
  );
  return putComputed(
    withDensity,
    computedColumn({
      name: "sound_speed",
      standardName: "speed_of_sound_in_sea_water",
      longName: "speed of sound",
      units: "m s-1",
      values: c,
      method: { from, equation: `TEOS-10, 75 terms; ${words}`, references: `${teos}${references}` },
    }),
  );
}
