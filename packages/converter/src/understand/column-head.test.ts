import { expect, test } from "vitest";
import { readHead } from "./column-head.ts";

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
