import { inventCast } from "@wherry/testkit";
import { layerMeans } from "@wherry/core";
import { test } from "vitest";
import { processCast } from "../src/recipe/process-cast.ts";
import { defaultSettings } from "../src/recipe/settings.ts";
test("speed", () => {
  const casts = Array.from({ length: 1000 }, (_, n) => inventCast({ seed: n, deepest: 20, speed: 0.6, upSpeed: 0.8, soak: 30 }).cast);
  console.log(casts[0]!.rows);
  const a = performance.now();
  for (const c of casts) { const p = processCast(c, defaultSettings); layerMeans(p, { width: 0.5, coordinate: "depth", direction: "down" }); }
  console.log(performance.now() - a);
});
