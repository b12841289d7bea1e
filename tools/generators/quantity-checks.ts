import { readFileSync } from "node:fs";
import { join } from "node:path";

interface Entry {
  readonly quantity: string;
  readonly inputs: Readonly<Record<string, number>>;
  readonly expected: number;
  readonly source: string;
}

/** Names in check-values.json by function. */
const published: Readonly<Record<string, string>> = {
  practicalSalinity: "practical_salinity_PSS78",
  conductivityFromSalinity: "conductivity_ratio_from_S",
  specificConductance25: "specific_conductance25_mS_cm",
  specificConductance25Pss78: "specific_conductance25_pss78_mS_cm",
  absoluteSalinity: "absolute_salinity_from_SP_g_kg",
  potentialTemperature0: "potential_temperature_TEOS10_degC",
  conservativeTemperature: "conservative_temperature_degC",
  density: "density_TEOS10_kg_m3",
  sigma0: "sigma0_TEOS10_kg_m3",
  densityEos80: "density_EOS80_kg_m3",
  soundSpeed: "sound_speed_TEOS10_m_s",
  soundSpeedChenMillero: "sound_speed_chen_millero_1977_m_s",
  depthFromPressure: "height_z_m",
  depthFromPressureUnesco: "depth_UNESCO1983_m",
  pressureFromDepthSaunders: "pressure_saunders1981_dbar",
  adiabaticLapseRateEos80: "adiabatic_lapse_rate_degC_dbar",
  potentialTemperatureEos80: "potential_temperature_EOS80_t68_degC",
  freezingTemperatureEos80: "freezing_point_EOS80_t68_degC",
  freezingTemperature: "t_freezing_exact_degC",
  oxygenSolubility: "oxygen_solubility_umol_kg",
};

/** Inputs and column in gsw-grid.json by function, where no check value is published. */
const computed: Readonly<Record<string, readonly [column: string, ...inputs: string[]]>> = {
  anomalyRatio: ["SAAR", "p", "lon", "lat"],
  salinityFromAbsolute: ["SP_from_SA", "SA", "p", "lon", "lat"],
  temperatureFromConservative: ["t_from_CT", "SA", "CT", "p"],
  thermalExpansion: ["alpha", "SA", "CT", "p"],
  halineContraction: ["beta", "SA", "CT", "p"],
  spiciness0: ["spiciness0", "SA", "CT"],
};

const inputWords = (inputs: Readonly<Record<string, number>>): string =>
  Object.entries(inputs)
    .map(([name, value]) => `${name} ${value}`)
    .join(", ");

/** The first entry at the highest pressure: it tells most. */
function deepest(entries: readonly Entry[]): Entry | undefined {
  const pressure = ({ inputs }: Entry) => inputs.p_dbar ?? 0;
  return [...entries].sort((a, b) => pressure(b) - pressure(a))[0];
}

/** A check value of each function, in words, from the reference files that the tests use. */
export function readQuantityChecks(root: string): ReadonlyMap<string, string> {
  const read = (name: string) =>
    JSON.parse(readFileSync(join(root, "test-data", "reference", name), "utf8")) as never;
  const { entries } = read("check-values.json") as { entries: Entry[] };
  const { points, gsw_version } = read("gsw-grid.json") as {
    gsw_version: string;
    points: ({ out: Record<string, number> } & Record<string, number>)[];
  };
  const checks = new Map<string, string>();
  for (const [name, quantity] of Object.entries(published)) {
    const entry = deepest(entries.filter((each) => each.quantity === quantity));
    if (entry === undefined) throw new Error(`check-values.json has no ${quantity}`);
    checks.set(name, `${inputWords(entry.inputs)} gives ${quantity} ${entry.expected} (${entry.source})`);
  }
  const { out, ...point } = points[0]!;
  for (const [name, [column, ...inputs]] of Object.entries(computed)) {
    const values = Object.fromEntries(inputs.map((each) => [each, out[each] ?? point[each]!]));
    checks.set(name, `${inputWords(values)} gives ${out[column]} (TEOS-10 library ${gsw_version})`);
  }
  return checks;
}
