import { expect, test } from "vitest";
import { readHead } from "./column-head.ts";
import { roleOfName } from "./vocabulary/quantity-words.ts";

test.each<[string, string | null, string, string | null, string | undefined]>([
  ["pressure_dbar", null, "pressure", "dbar", "dbar"],
  ["Temp[degC]", null, "Temp", "degC", "degree_C"],
  ["Temp (°C)", null, "Temp", "°C", "degree_C"],
  ["Temp C", null, "Temp", "C", "degree_C"],
  ["TempF", null, "Temp", "F", "degree_F"],
  ["Cond (µS/cm)", null, "Cond", "µS/cm", "uS cm-1"],
  ["EC_uS", null, "EC", "uS", "uS cm-1"],
  ["mS/cm", null, "", "mS/cm", "mS cm-1"],
  ["Temp, deg C (ITS-90)", null, "Temp", "deg C (ITS-90)", "degree_C"],
  ["salinity", null, "salinity", null, undefined],
  ["Z", "[m]", "Z", "m", "m"],
  ["T", null, "T", null, undefined],
  ["Pressure [MPa]", null, "Pressure", "MPa", "MPa"],
  ["Temp [K]", null, "Temp", "K", "K"],
  ["Temp [wobbles]", null, "Temp", "wobbles", undefined],
])("%j over %j", (header, below, name, unitText, units) => {
  const head = readHead(header, below);
  expect([head.name, head.unitText, head.unit?.units]).toEqual([name, unitText, units]);
});

test.each([
  ["time (UTC)", [0]],
  ["Time UTC+2", [120]],
  ["SST", undefined],
  ["Z", undefined],
])("zone in %j", (header, want) => expect(readHead(header, null).zone?.minutes).toEqual(want));

test.each([
  ["Température", "temperature"],
  ["Wassertemperatur", "temperature"],
  ["Profundidad", "depth"],
  ["Zoutgehalte", "salinity"],
  ["Saltholdighet", "salinity"],
  ["Leitfähigkeit", "conductivity"],
  ["SpCond", "specific_conductance"],
  ["EC 25", "specific_conductance"],
  ["EC", "ec"],
  ["air temperature", "air"],
  ["water depth", "sounding"],
  ["temperature 2", "temperature"],
  ["T", undefined],
  ["temperature of the box", undefined],
])("%j names %s", (name, want) => expect(roleOfName(name)?.role).toBe(want));

// Names of one word, as scripts write them: common practice, no source.
test.each([
  ["conductivity_ms_cm", "conductivity", "mS cm-1"],
  ["cond_uS_cm", "cond", "uS cm-1"],
  ["conductivity_S_m", "conductivity", "S m-1"],
  ["oxygen_umol_kg", "oxygen", "umol kg-1"],
  ["density_kg_m3", "density", "kg m-3"],
  ["sound_speed_m_s", "sound_speed", "m s-1"],
  ["temp_deg_c", "temp", "degree_C"],
  ["depth_m", "depth", "m"],
])("%s is %s in %s", (header, name, units) => {
  const head = readHead(header, null);
  expect([head.name, head.unit?.units]).toEqual([name, units]);
});
