import { deepestOf, layerMeans, styleOf } from "@wherry/core";
import { readSimulated, readTruth, simulated } from "@wherry/testkit";
import { test } from "vitest";
import { processCast } from "../src/recipe/process-cast.ts";
import { defaultSettings } from "../src/recipe/settings.ts";

test("look", () => {
  for (const name of simulated) {
    const truth = readTruth(name);
    const settings = {
      ...defaultSettings,
      segmentation: { ...defaultSettings.segmentation, responseTime: truth.sensor.tau_temperature_s },
    };
    const cast = processCast(readSimulated(name), settings);
    console.log(name, JSON.stringify(cast.segments.map((s) => [s.kind, s.firstRow, s.lastRow])));
    console.log(
      "truth",
      JSON.stringify(truth.segments),
      styleOf(cast),
      deepestOf(cast),
      truth.max_sea_pressure,
      truth.deepest_row,
      cast.pressureOffset,
      truth.pressure_offset_dbar,
    );
    for (const s of cast.steps) console.log("   ", s.words, JSON.stringify(s.counts));
    for (const { index, column } of truth.spikes)
      console.log(index, column, cast.columns.get(column)!.flags[index]);
    for (const [n, c] of cast.columns) {
      const counts: Record<string, number> = {};
      for (const f of c.flags) counts[f] = (counts[f] ?? 0) + 1;
      console.log("   ", n, JSON.stringify(counts), c.method?.equation);
    }
    const m = layerMeans(cast, { width: 1, coordinate: "pressure", direction: "down" });
    const S = m.columns.get("salinity")!;
    const T = m.columns.get("temperature")!;
    let ss = 0,
      tt = 0,
      n = 0,
      empty = 0;
    truth.profile_1dbar.pressure.forEach((p, k) => {
      const c = m.centres.indexOf(p);
      if (c < 0 || Number.isNaN(S.mean[c]!)) {
        empty++;
        return;
      }
      ss += (S.mean[c]! - truth.profile_1dbar.practical_salinity[k]!) ** 2;
      tt += (T.mean[c]! - truth.profile_1dbar.temperature_t90[k]!) ** 2;
      n++;
    });
    console.log(
      "S rms",
      Math.sqrt(ss / n),
      "T rms",
      Math.sqrt(tt / n),
      "empty",
      empty,
      JSON.stringify(truth.attainable_1dbar.response_left),
    );
    console.log(layerMeans(cast, { width: null, coordinate: "depth", direction: "down" }).step.words);
  }
});
