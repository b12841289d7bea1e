import { readFileSync } from "node:fs";
import { join } from "node:path";
import { inTemporaryFolder, runWherry } from "@wherry/testkit";
import Papa from "papaparse";
import { expect, test } from "vitest";
import { exportText, lay, SHEET } from "./survey-folder.ts";

type Row = Readonly<Record<string, string>>;

const RECIPE =
  "processing:\n  recipe:\n    soundSpeedProfile: { tolerance: 0, toSurface: true, toDepth: 40 }\n";

test.each(["general", "us-template"])("sound-speed profiles for %s", (target) =>
  inTemporaryFolder(async (folder) => {
    lay(folder, {
      "q1.csv": exportText({ name: "Q1" }),
      "q2.csv": exportText({ name: "Q2" }).replace("09:00:00", "11:00:00"),
      "survey.yaml": SHEET + RECIPE,
    });
    const run = await runWherry(
      [
        ...["convert", "q1.csv", "q2.csv", "--sheet", "survey.yaml", "--out", "result"],
        ...["--products", "soundspeed", "--target", target],
      ],
      { cwd: folder },
    );
    expect(run).toMatchObject({ status: 0 });
    const check = await runWherry(["check", "result", "--rules", "cf", "csv", "flags", "physics"], {
      cwd: folder,
    });
    expect(check).toMatchObject({ status: 0, stdout: expect.stringContaining("no error, no warning") });

    const text = readFileSync(join(folder, "result", "quay_soundspeed.csv"), "utf8");
    const rows = Papa.parse<Row>(text, { header: true, skipEmptyLines: true }).data.filter(
      ({ depth }) => depth !== "",
    );
    const identity = target === "general" ? "profile_id" : "cast_id";
    const [first, second] = ["Q1", "Q2"].map((id) => rows.filter((row) => row[identity] === id));
    for (const cast of [first!, second!]) {
      const depths = cast.map(({ depth }) => Number(depth));
      expect(depths[0]).toBe(0);
      expect(depths.at(-1)).toBe(40);
      expect(depths.every((depth, k) => k === 0 || depth > depths[k - 1]!)).toBe(true);
      expect(cast.map(({ sound_speed_origin }) => sound_speed_origin)).toEqual([
        "1",
        ...Array<string>(cast.length - 2).fill("0"),
        "2",
      ]);
    }
    // with every layer kept the points of both casts lie at the same depths
    expect(first!.map(({ sound_speed_change }) => sound_speed_change)).toEqual(first!.map(() => ""));
    for (const [k, { sound_speed, sound_speed_change }] of second!.entries())
      expect(Number(sound_speed_change)).toBeCloseTo(Number(sound_speed) - Number(first![k]!.sound_speed), 3);
    expect(second![0]!.sound_speed_change).not.toBe("");
    expect(readFileSync(join(folder, "result", "quay_soundspeed.csv-metadata.json"), "utf8")).toMatch(
      /Not for navigation/,
    );
  }),
);
