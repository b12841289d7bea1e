import { inventCast, type Lowering, seeded } from "@wherry/testkit";
import { test } from "vitest";
import { processCast } from "../src/recipe/process-cast.ts";
import { defaultSettings } from "../src/recipe/settings.ts";

test("scratch", () => {
  const random = seeded(7);
  const pick = <T>(...xs: T[]): T => xs[Math.floor(random() * xs.length)]!;
  const bad: Record<string, number> = {};
  for (let n = 0; n < 400; n++) {
    const how: { -readonly [K in keyof Lowering]?: Lowering[K] } = {
      rate: pick(1, 2, 4, 8, 16),
      deepest: pick(3, 4, 5.5, 8, 15, 40, 90),
      speed: pick(0.25, 0.5, 1, 1.5),
      bottom: pick(2, 8, 30),
      soak: pick(0, 20, 45, 90),
      soakPressure: pick(0.8, 1.2, 2, 3),
      air: pick(0, 5, 12),
      swell: pick(0, 0.1, 0.25),
      period: pick(4, 6, 9),
      printed: pick(0.001, 0.01, 0.1),
      offset: pick(-0.3, 0.05, 0.4),
      upSpeed: pick(0.3, 0.8, 0),
      noise: pick(0.003, 0.008, 0.02),
      seed: n + 1,
    };
    if (how.soakPressure! > how.deepest! / 3) how.soakPressure = 0.8;
    const made = inventCast(how);
    const cast = processCast(made.cast, defaultSettings);
    const seg = (kind: string) => cast.segments.find((s) => s.kind === kind);
    const down = seg("down");
    const out: string[] = [];
    if (!down) out.push("nodown");
    else {
      const dt = 1 / how.rate!;
      const from = how.soak === 0 ? made.wet[0] : made.downFrom;
      const late = made.truePressure[down.firstRow]! - made.truePressure[from]!;
      if (down.firstRow > from && late > 0.3 + how.swell!) out.push(`late`);
      if (how.soak! > 0 && (made.downFrom - down.firstRow) * dt > 6) out.push("early");
      const bottomRow = down.lastRow + 1;
      const off = (bottomRow - made.bottomFrom) * dt;
      if (Math.abs(off) > 5) out.push(off > 0 ? "bottomlate" : "bottomearly");
    }
    if (how.air! > 0 && Math.abs(cast.pressureOffset - how.offset!) > 0.02 + how.printed! / 2)
      out.push("offset");
    for (const o of out) bad[o] = (bad[o] ?? 0) + 1;
    if (out.length)
      console.log(
        out.join(),
        JSON.stringify(how),
        JSON.stringify(cast.segments.map((s) => [s.kind, s.firstRow, s.lastRow])),
        made.wet,
        made.downFrom,
        made.bottomFrom,
        made.upFrom,
      );
  }
  console.log(bad);
});
