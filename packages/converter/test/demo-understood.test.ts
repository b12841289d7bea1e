import { readdirSync, readFileSync } from "node:fs";
import { testData } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { asked, understoodPath } from "./understand-samples.ts";

interface DemoTruth {
  readonly rows: number;
  readonly kind: string;
  readonly start_utc: string;
  readonly rated_pressure_dbar: number;
  readonly start: { latitude: number; longitude: number; satellites: number };
  readonly end: { latitude: number; longitude: number; satellites: number } | null;
}

const folder = testData("demo");
const records = readdirSync(folder).filter((name) => /^oe25_.*\.(?:csv|txt|tsv|dat)$/.test(name));

test("the demo survey has its sixteen records in four layouts", () => {
  expect(records.length).toBe(16);
  expect(new Set(records.map((name) => name.split(".").at(-1))).size).toBe(4);
});

describe.each(records)("%s", (name) => {
  const file = understoodPath(`${folder}/${name}`);
  const [cast, ...others] = file.casts;

  test("is understood without a question", () => {
    expect(asked(file)).toEqual([]);
    expect(others).toEqual([]);
    expect(cast?.time).toBeGreaterThan(Date.UTC(2025, 4, 13) / 1000);
    expect(cast?.start).not.toBeNull();
    expect(cast?.elapsed?.[0]).toBe(0);
    expect([...(cast?.columns.keys() ?? [])]).toEqual(
      expect.arrayContaining(["pressure", "temperature", "conductivity"]),
    );
    expect(cast?.state).toMatchObject({
      processing: "raw",
      direction: name.startsWith("oe25_p") ? "unknown" : "both",
    });
  });

  test("its damage is told and nothing else", () => {
    // oe25_10 stops inside a row: its battery failed
    expect(file.findings.map(({ code }) => code)).toEqual(
      name === "oe25_10.txt" ? ["understand/cut-off"] : [],
    );
  });

  test("rows, start, fixes and rating are those of the simulation", () => {
    // written by the script that simulates the casts
    const truth = JSON.parse(readFileSync(testData("demo-truth", `${cast?.id}.json`), "utf8")) as DemoTruth;
    expect(cast?.rows).toBe(truth.rows);
    expect(cast?.time).toBe(Date.parse(truth.start_utc) / 1000);
    expect(cast?.kind).toBe(truth.kind === "profile" ? "profile" : "fixed-depth");
    expect(cast?.instrument.ratedPressure).toBe(truth.rated_pressure_dbar);
    for (const [fix, want] of [
      [cast?.start, truth.start],
      [cast?.end, truth.end],
    ] as const) {
      expect(fix?.satellites ?? null).toBe(want?.satellites ?? null);
      // printed to a millionth of a degree or a ten-thousandth of a minute
      expect(Math.abs((fix?.latitude ?? 0) - (want?.latitude ?? 0))).toBeLessThan(2e-6);
      expect(Math.abs((fix?.longitude ?? 0) - (want?.longitude ?? 0))).toBeLessThan(2e-6);
    }
  });
});
