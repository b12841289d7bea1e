import { readFileSync } from "node:fs";
import { testData } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { buoyancyFrequencySquared } from "./buoyancy-frequency.ts";
import { conductivityFromSalinity } from "./conductivity-from-salinity.ts";
import { conservativeTemperature, temperatureFromConservative } from "./conservative-temperature.ts";
import { density, sigma0 } from "./density.ts";
import { densityEos80 } from "./density-eos80.ts";
import { depthFromPressure, pressureFromDepth } from "./depth.ts";
import { depthFromPressureUnesco } from "./depth-unesco.ts";
import { freezingConservativeTemperature, freezingTemperature } from "./freezing-temperature.ts";
import { freezingTemperatureEos80 } from "./freezing-temperature-eos80.ts";
import { halineContraction } from "./haline-contraction.ts";
import { oxygenSolubility } from "./oxygen-solubility.ts";
import { potentialTemperature0 } from "./potential-temperature.ts";
import { adiabaticLapseRateEos80, potentialTemperatureEos80 } from "./potential-temperature-eos80.ts";
import { practicalSalinity } from "./practical-salinity.ts";
import {
  pressureDenominator,
  pressureDenominatorSlope,
  pressureNumerator,
  temperatureRatio,
} from "./practical-salinity-scale.ts";
import { pressureFromDepthSaunders } from "./pressure-saunders.ts";
import { referenceSalinity } from "./reference-salinity.ts";
import { soundSpeed } from "./sound-speed.ts";
import { soundSpeedChenMillero } from "./sound-speed-chen-millero.ts";
import { soundSpeedDelGrosso } from "./sound-speed-del-grosso.ts";
import { specificConductance25, specificConductance25Pss78 } from "./specific-conductance.ts";
import { spiciness0 } from "./spiciness.ts";
import { temperatureFrom68, temperatureTo68 } from "./temperature-scale.ts";
import { thermalExpansion } from "./thermal-expansion.ts";

type Entry = {
  quantity: string;
  inputs: Record<string, number>;
  expected: number;
  tolerance: number;
  source: string;
  polynomial?: { value: number; tolerance: number };
};

const readJson = (name: string) => JSON.parse(readFileSync(testData("reference", name), "utf8"));
const { entries } = readJson("check-values.json") as { entries: Entry[] };

type Equation = (inputs: (name: string) => number) => number;

/** Rp of UNESCO 44, in the parts that the function is made of. */
const pressureRatio = (R: number, t68: number, p: number) =>
  1 + pressureNumerator(p) / (pressureDenominator(t68) + pressureDenominatorSlope(t68) * R);

const equations: Record<string, Equation> = {
  rt: (i) => temperatureRatio(i("t68_degC")),
  Rp: (i) => pressureRatio(i("R"), i("t68_degC"), i("p_dbar")),
  Rt: (i) => i("R") / (pressureRatio(i("R"), i("t68_degC"), i("p_dbar")) * temperatureRatio(i("t68_degC"))),
  practical_salinity_PSS78: (i) =>
    practicalSalinity(i("R") * 42.914, temperatureFrom68(i("t68_degC")), i("p_dbar")),
  practical_salinity_from_C: (i) => practicalSalinity(i("C_mS_cm"), i("t90_degC"), i("p_dbar")),
  conductivity_ratio_from_S: (i) =>
    conductivityFromSalinity(i("S"), temperatureFrom68(i("t68_degC")), i("p_dbar")) / 42.914,
  conductivity_from_SP_mS_cm: (i) => conductivityFromSalinity(i("SP"), i("t90_degC"), i("p_dbar")),
  depth_UNESCO1983_m: (i) => depthFromPressureUnesco(i("p_dbar"), i("lat_degN")),
  conservative_temperature_degC: (i) => conservativeTemperature(i("SA_g_kg"), i("t90_degC"), i("p_dbar")),
  potential_temperature_TEOS10_degC: (i) => potentialTemperature0(i("SA_g_kg"), i("t90_degC"), i("p_dbar")),
  density_EOS80_kg_m3: (i) => densityEos80(i("S"), temperatureFrom68(i("t68_degC")), i("p_dbar")),
  density_anomaly_EOS80_kg_m3: (i) =>
    densityEos80(i("S"), temperatureFrom68(i("t68_degC")), i("p_dbar")) - 1000,
  "specific_volume_anomaly_1e-8_m3_kg": (i) =>
    1e8 / densityEos80(i("S"), temperatureFrom68(i("t68_degC")), i("p_dbar")) -
    1e8 / densityEos80(35, 0, i("p_dbar")),
  "specific_volume_EOS80_1e-3_m3_kg": (i) =>
    1000 / densityEos80(i("S"), temperatureFrom68(i("t68_degC")), i("p_dbar")),
  adiabatic_lapse_rate_degC_dbar: (i) =>
    temperatureTo68(adiabaticLapseRateEos80(i("S"), temperatureFrom68(i("t68_degC")), i("p_dbar"))),
  potential_temperature_EOS80_t68_degC: (i) =>
    temperatureTo68(potentialTemperatureEos80(i("S"), temperatureFrom68(i("t68_degC")), i("p_dbar"))),
  freezing_point_EOS80_t68_degC: (i) => temperatureTo68(freezingTemperatureEos80(i("S"), i("p_dbar"))),
  pressure_saunders1981_dbar: (i) => pressureFromDepthSaunders(i("depth_m"), i("lat_degN")),
  sound_speed_chen_millero_1977_m_s: (i) =>
    soundSpeedChenMillero(i("S"), temperatureFrom68(i("t68_degC")), i("p_dbar")),
  density_TEOS10_kg_m3: (i) => density(i("SA_g_kg"), i("CT_degC"), i("p_dbar")),
  sigma0_TEOS10_kg_m3: (i) => sigma0(i("SA_g_kg"), i("CT_degC")),
  sound_speed_TEOS10_m_s: (i) => soundSpeed(i("SA_g_kg"), i("CT_degC"), i("p_dbar")),
  height_z_m: (i) => -depthFromPressure(i("p_dbar"), i("lat_degN")),
  t_freezing_exact_degC: (i) => freezingTemperature(i("SA_g_kg"), i("p_dbar"), i("saturation_fraction")),
  CT_freezing_poly_degC: (i) =>
    freezingConservativeTemperature(i("SA_g_kg"), i("p_dbar"), i("saturation_fraction")),
  oxygen_solubility_umol_kg: (i) => oxygenSolubility(i("S"), temperatureFrom68(i("t_degC"))),
  specific_conductance25_mS_cm: (i) => specificConductance25(i("C_mS_cm"), i("t90_degC")),
  specific_conductance25_pss78_mS_cm: (i) =>
    specificConductance25Pss78(i("C_mS_cm"), i("t90_degC"), i("p_dbar")),
};

/** Quantities of the file that this package does not compute. */
const elsewhere = ["absolute_salinity_from_SP_g_kg"];

test("every quantity of the check values is computed here or named as not computed", () => {
  const found = [...new Set(entries.map((entry) => entry.quantity))].sort();
  expect([...Object.keys(equations), ...elsewhere].sort()).toEqual(found);
});

describe.each(Object.entries(equations))("check values of %s", (quantity, equation) => {
  const cases = entries.filter((entry) => entry.quantity === quantity);
  test.each(cases)("$inputs gives $expected ($source)", (entry) => {
    const value = equation((name) => {
      const input = entry.inputs[name];
      if (input === undefined) throw new Error(`${quantity} has no input ${name}`);
      return input;
    });
    // an exact form stands beside the polynomial that is used here
    const { expected, tolerance } = entry.polynomial
      ? { expected: entry.polynomial.value, tolerance: entry.polynomial.tolerance }
      : entry;
    expect(Math.abs(value - expected)).toBeLessThanOrEqual(tolerance);
    if (entry.polynomial) expect(Math.abs(value - entry.expected)).toBeLessThanOrEqual(2.5e-4);
  });
});

type Point = {
  kind: string;
  C: number;
  t: number;
  p: number;
  lon: number;
  lat: number;
  out: Record<string, number | null>;
};

/**
 * Outputs of the TEOS-10 library 3.6.16 at 300 points. SA and CT are taken from the file, so that each equation is
 * judged alone. Double precision gives 1e-11 relative; the tolerances leave it a hundred times that.
 */
const gridEquations: Record<
  string,
  { within: number; at: (point: Point, SA: number, CT: number) => number }
> = {
  SP: { within: 1e-9, at: ({ C, t, p }) => practicalSalinity(C, t, p) },
  C_back: { within: 1e-9, at: ({ t, p, out }) => conductivityFromSalinity(out.SP!, t, p) },
  SR: { within: 1e-9, at: ({ out }) => referenceSalinity(out.SP!) },
  CT: { within: 1e-9, at: ({ t, p }, SA) => conservativeTemperature(SA, t, p) },
  pt0: { within: 1e-9, at: ({ t, p }, SA) => potentialTemperature0(SA, t, p) },
  t_from_CT: { within: 1e-9, at: ({ p }, SA, CT) => temperatureFromConservative(SA, CT, p) },
  rho: { within: 1e-9, at: ({ p }, SA, CT) => density(SA, CT, p) },
  sigma0: { within: 1e-9, at: (_, SA, CT) => sigma0(SA, CT) },
  sound_speed: { within: 1e-8, at: ({ p }, SA, CT) => soundSpeed(SA, CT, p) },
  alpha: { within: 1e-15, at: ({ p }, SA, CT) => thermalExpansion(SA, CT, p) },
  beta: { within: 1e-15, at: ({ p }, SA, CT) => halineContraction(SA, CT, p) },
  spiciness0: { within: 1e-9, at: (_, SA, CT) => spiciness0(SA, CT) },
  depth: { within: 1e-8, at: ({ p, lat }) => depthFromPressure(p, lat) },
  t_freezing_poly: { within: 1e-9, at: ({ p }, SA) => freezingTemperature(SA, p, 1) },
  // the exact form, which the polynomial used here approaches
  t_freezing: { within: 3e-4, at: ({ p }, SA) => freezingTemperature(SA, p, 1) },
  CT_freezing_poly: { within: 1e-9, at: ({ p }, SA) => freezingConservativeTemperature(SA, p, 1) },
  specific_conductance25: { within: 1e-9, at: ({ C, t }) => specificConductance25(C, t) },
  O2sol_umol_kg: { within: 1e-9, at: ({ out }) => oxygenSolubility(out.SP!, out.pt0!) },
  specific_conductance25_pss78: { within: 1e-9, at: ({ C, t, p }) => specificConductance25Pss78(C, t, p) },
};

describe("grid of the TEOS-10 library", () => {
  const { points } = readJson("gsw-grid.json") as { points: Point[] };
  test("has its 300 points", () => expect(points).toHaveLength(300));

  test.each(Object.entries(gridEquations))("%s", (name, { within, at }) => {
    const far = points
      .map((point) => ({ ...point, want: point.out[name]!, got: at(point, point.out.SA!, point.out.CT!) }))
      .filter(({ want, got }) => !(Math.abs(got - want) <= within));
    expect(far).toEqual([]);
  });

  test("pressure from depth returns to the pressure", () => {
    const far = points.filter(
      ({ p, lat, out }) => !(Math.abs(pressureFromDepth(out.depth!, lat) - p) <= 1e-6),
    );
    expect(far).toEqual([]);
  });
});

describe("buoyancy frequency of the TEOS-10 library's profiles", () => {
  const { profiles } = readJson("gsw-grid.json").profiles_N2 as {
    profiles: {
      name: string;
      lat: number;
      p: number[];
      SA: number[];
      CT: number[];
      p_mid: number[];
      N2: number[];
    }[];
  };
  test.each(profiles)("$name", ({ lat, p, SA, CT, p_mid, N2 }) => {
    const { n2, pMid } = buoyancyFrequencySquared(
      Float64Array.from(SA),
      Float64Array.from(CT),
      Float64Array.from(p),
      lat,
    );
    expect([...pMid]).toEqual(p_mid);
    // differences of neighbours lose digits, so the bound is relative to the largest value of the profile
    const within = 1e-11 * Math.max(...N2.map(Math.abs));
    N2.forEach((want, i) => {
      expect(Math.abs(n2[i]! - want)).toBeLessThanOrEqual(within);
    });
  });

  test("is NaN where pressure does not grow, and empty for one level", () => {
    const one = Float64Array.of(20, 20);
    expect(buoyancyFrequencySquared(one, one, Float64Array.of(5, 5), 45).n2[0]).toBeNaN();
    expect(buoyancyFrequencySquared(one.slice(1), one.slice(1), one.slice(1), 45).n2).toHaveLength(0);
    expect(() => buoyancyFrequencySquared(one, one, Float64Array.of(5), 45)).toThrow(RangeError);
  });
});

/** Independent implementation, checked against every check value of UNESCO 44; points of gsw-grid.json. */
describe("grid of the EOS-80 family", () => {
  const { points } = readJson("eos80-grid.json") as {
    points: { SP: number; t: number; p: number; lat: number; out: Record<string, number> }[];
  };
  const family: Record<string, { within: number; at: (point: (typeof points)[number]) => number }> = {
    rho: { within: 1e-9, at: ({ SP, t, p }) => densityEos80(SP, t, p) },
    depth_unesco1983: { within: 1e-8, at: ({ p, lat }) => depthFromPressureUnesco(p, lat) },
    c_chen_millero_1977_t68: { within: 1e-9, at: ({ SP, t, p }) => soundSpeedChenMillero(SP, t, p) },
    // another fit of the same data for ITS-90
    c_chen_millero_wz95_t90: { within: 0.01, at: ({ SP, t, p }) => soundSpeedChenMillero(SP, t, p) },
    c_del_grosso_1974_t68: { within: 1e-9, at: ({ SP, t, p }) => soundSpeedDelGrosso(SP, t, p) },
  };
  test("has its 300 points", () => expect(points).toHaveLength(300));
  test.each(Object.entries(family))("%s", (name, { within, at }) => {
    const far = points
      .map((point) => ({ ...point, got: at(point) }))
      .filter(({ out, got }) => !(Math.abs(got - out[name]!) <= within));
    expect(far).toEqual([]);
  });
  test("Del Grosso agrees with the fit for ITS-90 in oceanic water", () => {
    const oceanic = points.filter(({ SP, t }) => SP >= 30 && SP <= 40 && t >= 0 && t <= 30);
    expect(oceanic.length).toBeGreaterThan(20);
    const far = oceanic.filter(
      ({ SP, t, p, out }) => !(Math.abs(soundSpeedDelGrosso(SP, t, p) - out.c_del_grosso_wz95_t90!) <= 1e-3),
    );
    expect(far).toEqual([]);
  });
});
