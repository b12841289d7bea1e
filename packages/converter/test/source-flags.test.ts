import { type Cast, layerMeans } from "@wherry/core";
import { castOf } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { processCast } from "../src/recipe/process-cast.ts";
import { defaultSettings } from "../src/recipe/settings.ts";
import { plainExport, understood } from "./understand-samples.ts";

// Meanings of the WOCE CTD flags: WHP-Exchange description, 2 acceptable, 3 questionable, 4 bad, 6 interpolated.

const levels = (codes: readonly string[], scheme = "WOCE CTD") => {
  const rows = codes.length;
  const cast: Cast = castOf(
    {
      pressure: Float64Array.from({ length: rows }, (_, k) => 2 * (k + 1)),
      temperature: new Float64Array(rows).fill(10),
      salinity: new Float64Array(rows).fill(35),
    },
    null,
    { state: { processing: "averaged", pressureZeroed: true, lagCorrected: false, direction: "down" } },
  );
  const salinity = { ...cast.columns.get("salinity")!, sourceFlags: { scheme, header: "F", values: codes } };
  return processCast({ ...cast, columns: new Map(cast.columns).set("salinity", salinity) }, defaultSettings);
};

describe("flags of the source", () => {
  test("what came as questionable or bad is at least that bad, and so is what is computed from it", () => {
    const cast = levels(["2", "2", "3", "4", "6", "2", "2"]);
    expect([...cast.columns.get("salinity")!.flags].slice(2, 5)).toEqual([3, 4, 3]);
    for (const name of ["density", "sound_speed"]) expect(cast.columns.get(name)!.flags[3]).toBe(4);
    expect(cast.columns.get("temperature")!.flags[3]).toBeLessThan(3);
  });

  test("the record says it", () => {
    const step = levels(["2", "4", "2"]).steps.find((each) => each.step === "quality tests");
    expect(step?.words).toContain("what the source flagged (WOCE CTD) is at least that bad");
    expect(step?.counts["salinity.source_flags"]).toBe(1);
  });

  test("bad levels stay out of the means", () => {
    const layers = layerMeans(levels(["2", "4", "2", "2"]), {
      width: null,
      coordinate: "pressure",
      direction: "down",
    });
    expect([...layers.columns.get("salinity")!.count]).toEqual([1, 0, 1, 1]);
  });

  test("flags of no known scheme are kept and not used", () => {
    const cast = levels(["2", "4", "2"], "unknown");
    expect(cast.columns.get("salinity")!.tests.has("source_flags")).toBe(false);
    expect(cast.columns.get("salinity")!.sourceFlags?.values).toEqual(["2", "4", "2"]);
  });

  test("an answer names the scheme of a column of flags", () => {
    const text = plainExport({
      head: "elapsed [s],pressure [dbar],temperature [degC],qc flag,conductivity [mS/cm]",
      rows: "0,0.10,16.755,1,20.39\n1,0.51,16.615,1,20.84\n2,1.02,16.444,4,21.49\n3,1.51,16.168,1,22.41\n4,2.02,15.776,1,23.67",
    });
    const [question] = understood(text, "f.csv").questions.filter(({ about }) =>
      about.startsWith("flagScheme"),
    );
    // what the source calls bad could pass for good
    expect(question?.casts).toEqual(["f"]);
    const answers = [{ about: question!.about, where: "*", value: "seadatanet" }];
    const cast = understood(text, "f.csv", answers).casts[0]!;
    expect(cast.columns.get("temperature")?.sourceFlags?.scheme).toBe("SeaDataNet L20");
    expect(processCast(cast, defaultSettings).columns.get("temperature")!.flags[2]).toBe(4);
  });
});
