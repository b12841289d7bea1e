import { readFileSync } from "node:fs";
import { join } from "node:path";
import * as core from "@wherry/core";

/** One equation of sea water as the reference page shows it; the rest comes from its comment in the source. */
export interface Quantity {
  /** Name of the function. */
  readonly name: string;
  /** File of packages/core/src/seawater. */
  readonly file: string;
  readonly symbol: string;
  readonly unit: string;
  readonly range: core.ValidityRange;
  /** Differences from the reference at its points, in the unit or, for a ratio, relative; null if there is none. */
  readonly differences: ((references: References) => readonly number[]) | null;
  /** With what it was compared. */
  readonly against: string;
}

type Out = Readonly<Record<string, number>>;
export interface References {
  readonly grid: readonly { C: number; t: number; p: number; lon: number; lat: number; out: Out }[];
  readonly older: readonly { SP: number; t: number; p: number; lat: number; out: Out }[];
  readonly profiles: readonly { lat: number; p: number[]; SA: number[]; CT: number[]; N2: number[] }[];
  readonly uncertain: readonly {
    C: number;
    t: number;
    p: number;
    lat: number;
    u: [number, number, number];
    first_order: Out;
  }[];
}

export function readReferences(root: string): References {
  const read = (name: string) =>
    JSON.parse(readFileSync(join(root, "test-data", "reference", name), "utf8")) as never;
  const { points, profiles_N2 } = read("gsw-grid.json") as {
    points: References["grid"];
    profiles_N2: { profiles: References["profiles"] };
  };
  return {
    grid: points,
    older: (read("eos80-grid.json") as { points: References["older"] }).points,
    profiles: profiles_N2.profiles,
    uncertain: (read("uncertainty-points.json") as { points: References["uncertain"] }).points,
  };
}

const LIBRARY = "TEOS-10 library, 300 points";
const INDEPENDENT = "independent implementation checked against UNESCO 44, 300 points";

type GridPoint = References["grid"][number];
const grid =
  (column: string, at: (point: GridPoint, out: (name: string) => number) => number) =>
  ({ grid: points }: References) =>
    points.map((point) => at(point, (name) => point.out[name]!) - point.out[column]!);

const older =
  (column: string, at: (point: References["older"][number]) => number) =>
  ({ older: points }: References) =>
    points.map((point) => at(point) - point.out[column]!);

const ratio =
  (column: string, at: (point: References["uncertain"][number], u: core.SensorUncertainty) => number) =>
  ({ uncertain }: References) =>
    uncertain.map((point) => {
      const [C, t, p] = point.u;
      return at(point, { C, t, p }) / point.first_order[column]! - 1;
    });

const stability = ({ profiles }: References) =>
  profiles.flatMap(({ lat, p, SA, CT, N2 }) => {
    const { n2 } = core.buoyancyFrequencySquared(
      Float64Array.from(SA),
      Float64Array.from(CT),
      Float64Array.from(p),
      lat,
    );
    return N2.map((want, i) => n2[i]! - want);
  });

const DERIVATIVES = "derivatives of the TEOS-10 library, 60 points, relative";

type Row = [
  name: string,
  file: string,
  symbol: string,
  unit: string,
  range: core.ValidityRange,
  differences: Quantity["differences"],
  against?: string,
];

// in the order in which a cast is computed
const rows: readonly Row[] = [
  [
    "practicalSalinity",
    "practical-salinity",
    "SP",
    "1",
    core.practicalSalinityRange,
    grid("SP", ({ C, t, p }) => core.practicalSalinity(C, t, p)),
  ],
  [
    "conductivityFromSalinity",
    "conductivity-from-salinity",
    "C",
    "mS cm-1",
    core.conductivityFromSalinityRange,
    grid("C_back", ({ t, p }, out) => core.conductivityFromSalinity(out("SP"), t, p)),
  ],
  [
    "specificConductance25",
    "specific-conductance",
    "C25",
    "mS cm-1",
    core.specificConductance25Range,
    grid("specific_conductance25", ({ C, t }) => core.specificConductance25(C, t)),
  ],
  [
    "specificConductance25Pss78",
    "specific-conductance",
    "C25",
    "mS cm-1",
    core.specificConductance25Pss78Range,
    grid("specific_conductance25_pss78", ({ C, t, p }) => core.specificConductance25Pss78(C, t, p)),
  ],
  ["temperatureFrom68", "temperature-scale", "t90", "degC", core.temperatureScaleRange, null, "definition"],
  ["temperatureTo68", "temperature-scale", "t68", "degC", core.temperatureScaleRange, null, "definition"],
  [
    "referenceSalinity",
    "reference-salinity",
    "SR",
    "g kg-1",
    core.referenceSalinityRange,
    grid("SR", (_, out) => core.referenceSalinity(out("SP"))),
  ],
  [
    "anomalyRatio",
    "anomaly-ratio",
    "",
    "1",
    core.anomalyRatioRange,
    grid("SAAR", ({ p, lon, lat }) => core.anomalyRatio(p, lon, lat)),
  ],
  [
    "absoluteSalinity",
    "absolute-salinity",
    "SA",
    "g kg-1",
    core.absoluteSalinityRange,
    grid("SA", ({ p, lon, lat }, out) => core.absoluteSalinity(out("SP"), p, lon, lat)),
  ],
  [
    "salinityFromAbsolute",
    "absolute-salinity",
    "SP",
    "1",
    core.salinityFromAbsoluteRange,
    grid("SP_from_SA", ({ p, lon, lat }, out) => core.salinityFromAbsolute(out("SA"), p, lon, lat)),
  ],
  [
    "potentialTemperature0",
    "potential-temperature",
    "pt0",
    "degC",
    core.potentialTemperature0Range,
    grid("pt0", ({ t, p }, out) => core.potentialTemperature0(out("SA"), t, p)),
  ],
  [
    "conservativeTemperature",
    "conservative-temperature",
    "CT",
    "degC",
    core.conservativeTemperatureRange,
    grid("CT", ({ t, p }, out) => core.conservativeTemperature(out("SA"), t, p)),
  ],
  [
    "temperatureFromConservative",
    "conservative-temperature",
    "t",
    "degC",
    core.temperatureFromConservativeRange,
    grid("t_from_CT", ({ p }, out) => core.temperatureFromConservative(out("SA"), out("CT"), p)),
  ],
  [
    "density",
    "density",
    "rho",
    "kg m-3",
    core.densityRange,
    grid("rho", ({ p }, out) => core.density(out("SA"), out("CT"), p)),
  ],
  [
    "sigma0",
    "density",
    "sigma0",
    "kg m-3",
    core.sigma0Range,
    grid("sigma0", (_, out) => core.sigma0(out("SA"), out("CT"))),
  ],
  [
    "densityEos80",
    "density-eos80",
    "rho",
    "kg m-3",
    core.densityEos80Range,
    older("rho", ({ SP, t, p }) => core.densityEos80(SP, t, p)),
    INDEPENDENT,
  ],
  [
    "thermalExpansion",
    "thermal-expansion",
    "alpha",
    "K-1",
    core.thermalExpansionRange,
    grid("alpha", ({ p }, out) => core.thermalExpansion(out("SA"), out("CT"), p)),
  ],
  [
    "halineContraction",
    "haline-contraction",
    "beta",
    "kg g-1",
    core.halineContractionRange,
    grid("beta", ({ p }, out) => core.halineContraction(out("SA"), out("CT"), p)),
  ],
  [
    "buoyancyFrequencySquared",
    "buoyancy-frequency",
    "N2",
    "s-2",
    core.buoyancyFrequencySquaredRange,
    stability,
    "TEOS-10 library, 5 profiles",
  ],
  [
    "spiciness0",
    "spiciness",
    "",
    "kg m-3",
    core.spiciness0Range,
    grid("spiciness0", (_, out) => core.spiciness0(out("SA"), out("CT"))),
  ],
  [
    "soundSpeed",
    "sound-speed",
    "c",
    "m s-1",
    core.soundSpeedRange,
    grid("sound_speed", ({ p }, out) => core.soundSpeed(out("SA"), out("CT"), p)),
  ],
  [
    "soundSpeedChenMillero",
    "sound-speed-chen-millero",
    "c",
    "m s-1",
    core.soundSpeedChenMilleroRange,
    older("c_chen_millero_1977_t68", ({ SP, t, p }) => core.soundSpeedChenMillero(SP, t, p)),
    INDEPENDENT,
  ],
  [
    "soundSpeedDelGrosso",
    "sound-speed-del-grosso",
    "c",
    "m s-1",
    core.soundSpeedDelGrossoRange,
    older("c_del_grosso_1974_t68", ({ SP, t, p }) => core.soundSpeedDelGrosso(SP, t, p)),
    "independent implementation, 300 points",
  ],
  [
    "depthFromPressure",
    "depth",
    "depth",
    "m",
    core.depthFromPressureRange,
    grid("depth", ({ p, lat }) => core.depthFromPressure(p, lat)),
  ],
  [
    "pressureFromDepth",
    "depth",
    "p",
    "dbar",
    core.pressureFromDepthRange,
    ({ grid: points }) => points.map(({ p, lat, out }) => core.pressureFromDepth(out.depth!, lat) - p),
  ],
  [
    "depthFromPressureUnesco",
    "depth-unesco",
    "depth",
    "m",
    core.depthFromPressureUnescoRange,
    older("depth_unesco1983", ({ p, lat }) => core.depthFromPressureUnesco(p, lat)),
    INDEPENDENT,
  ],
  [
    "depthFromDensityColumn",
    "depth-from-density",
    "depth",
    "m",
    core.depthFromDensityRange,
    null,
    "specific volume of the TEOS-10 library, in the tests",
  ],
  [
    "pressureFromDepthSaunders",
    "pressure-saunders",
    "p",
    "dbar",
    core.pressureFromDepthSaundersRange,
    null,
    "published check values alone; see the tests",
  ],
  [
    "adiabaticLapseRateEos80",
    "potential-temperature-eos80",
    "Gamma",
    "degC dbar-1",
    core.adiabaticLapseRateEos80Range,
    null,
    "published check values alone; see the tests",
  ],
  [
    "potentialTemperatureEos80",
    "potential-temperature-eos80",
    "theta",
    "degC",
    core.potentialTemperatureEos80Range,
    null,
    "published check values alone; see the tests",
  ],
  [
    "freezingTemperatureEos80",
    "freezing-temperature-eos80",
    "t",
    "degC",
    core.freezingTemperatureEos80Range,
    null,
    "published check values alone; see the tests",
  ],
  [
    "freezingTemperature",
    "freezing-temperature",
    "t",
    "degC",
    core.freezingTemperatureRange,
    grid("t_freezing", ({ p }, out) => core.freezingTemperature(out("SA"), p, 1)),
    "exact form of the TEOS-10 library, 300 points",
  ],
  [
    "oxygenSolubility",
    "oxygen-solubility",
    "",
    "umol kg-1",
    core.oxygenSolubilityRange,
    grid("O2sol_umol_kg", (_, out) => core.oxygenSolubility(out("SP"), out("pt0"))),
  ],
  [
    "practicalSalinityUncertainty",
    "standard-uncertainty",
    "u(SP)",
    "1",
    core.standardUncertaintyRange,
    ratio("SP", ({ C, t, p }, u) => core.practicalSalinityUncertainty(C, t, p, u)),
    DERIVATIVES,
  ],
  [
    "densityUncertainty",
    "standard-uncertainty",
    "u(rho)",
    "kg m-3",
    core.standardUncertaintyRange,
    ratio("rho", ({ C, t, p }, u) => core.densityUncertainty(C, t, p, u)),
    DERIVATIVES,
  ],
  [
    "soundSpeedUncertainty",
    "standard-uncertainty",
    "u(c)",
    "m s-1",
    core.standardUncertaintyRange,
    ratio("sound_speed", ({ C, t, p }, u) => core.soundSpeedUncertainty(C, t, p, u)),
    DERIVATIVES,
  ],
  [
    "depthUncertainty",
    "depth-uncertainty",
    "u(depth)",
    "m",
    core.depthUncertaintyRange,
    ratio("depth", ({ p, lat }, u) => core.depthUncertainty(p, lat, u.p)),
    DERIVATIVES,
  ],
  ["densityCompositionTerm", "composition-term", "", "kg m-3", { SP: [0, 42] }, null, "our own choice"],
  [
    "absoluteSalinityCompositionTerm",
    "composition-term",
    "",
    "g kg-1",
    { SP: [0, 42] },
    null,
    "our own choice",
  ],
];

export const quantities: readonly Quantity[] = rows.map(
  ([name, file, symbol, unit, range, differences, against = differences === null ? "" : LIBRARY]) => ({
    name,
    file: `${file}.ts`,
    symbol,
    unit,
    range,
    differences,
    against,
  }),
);
