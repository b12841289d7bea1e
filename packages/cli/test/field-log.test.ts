import { readFileSync } from "node:fs";
import { join } from "node:path";
import { inTemporaryFolder, runWherry } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { exportText, lay, SHEET } from "./survey-folder.ts";

// An invented day at an invented quay: three casts, and what was written down of them.

/** A cast of 70 s that starts at a time of 13 May 2025, UTC, in water of its own. */
const cast = (name: string, clock: string, warmer: number) =>
  exportText({ name })
    .replace("09:00:00", clock)
    .replace(/,(\d+\.\d{3}),/g, (_, celsius) => `,${(Number(celsius) + warmer).toFixed(3)},`);

const EXPORTS = {
  "e/first.csv": cast("Q1", "09:00:00", 0),
  "e/second.csv": cast("Q2", "09:30:00", 1),
  "e/third.csv": cast("Q3", "10:00:00", 2),
};

const LOG = `cast,station,time (UTC+02:00),sounding [ft],wind,sea,observer,aborted,notes
,Outer Buoy,2025-05-13 11:31,40,"SW, 4",slight,Ines Invented,,
Q1,Quay,2025-05-13 10:59,20,calm,smooth,Otto Invented,,first of the day
,Quay,2025-05-13 12:40,20,,,,yes,line tangled
Q3,Quay,2025-05-13 12:01,20,,,,yes,
Q9,Point,2025-05-13 13:00,30,,,,,
`;

const PEOPLE = `people:
  contributors:
    - { name: Ines Invented, role: observer, type: person, consent: true }
`;

const convert = (here: string, ...args: string[]) =>
  runWherry(["convert", "e", "--sheet", "s.yaml", "--out", "r", "--force", ...args], { cwd: here });

/** First row of each cast in the table of all rows. */
function table(here: string): ReadonlyMap<string, (column: string) => string> {
  const [head = "", ...rows] = readFileSync(join(here, "r", "quay_full.csv"), "utf8")
    .trimEnd()
    .split("\r\n");
  const names = head.split(",");
  // the only cell with a comma is the wind of Q2
  const cells = (row: string) => row.replace('"SW, 4"', "SW; 4").split(",");
  return new Map(
    rows
      .reverse()
      .map((row) => [
        cells(row)[0]!,
        (column: string) => cells(row)[names.indexOf(column)] ?? "no such column",
      ]),
  );
}

describe("a field log", () => {
  test("joins by name and by time, and its words go into the products", () =>
    inTemporaryFolder(async (here) => {
      lay(here, {
        ...EXPORTS,
        "e/log.csv": LOG,
        "s.yaml": `${SHEET}  summary: Invented.\n${PEOPLE}field_log: e/log.csv\n`,
      });
      const { status, stderr } = await convert(here);
      expect(status).toBe(0);
      for (const words of [
        "Q3 was aborted",
        "an aborted cast without a file: Quay",
        "Q9",
        "not named in the products",
      ])
        expect(stderr).toContain(words);
      const rows = table(here);
      const told = (name: string) =>
        ["station", "wind", "sea", "observer", "remarks"].map((column) => rows.get(name)!(column));
      expect(told("Q1")).toEqual(["Quay", "calm", "smooth", "", "first of the day"]);
      expect(told("Q2")).toEqual(["Outer Buoy", "SW; 4", "slight", "Ines Invented", ""]);
      expect(told("Q3")).toEqual(["Quay", "", "", "", "aborted"]);
      // one international foot is 0.3048 m
      expect(["Q1", "Q2"].map((name) => Number(rows.get(name)!("sounding")))).toEqual([
        20 * 0.3048,
        40 * 0.3048,
      ]);
      const copy = readFileSync(join(here, "r", "survey.yaml").replace("survey.yaml", "s.yaml"), "utf8");
      expect(copy).not.toContain("field_log");
      expect(copy).not.toContain("Otto Invented");
      const check = await runWherry(["check", "r", "--fail-on", "error"], { cwd: here });
      expect([check.status, check.stdout]).toEqual([0, expect.not.stringMatching(/sounding|wind|observer/)]);
    }));

  test("fills a sheet, which then stands for it", () =>
    inTemporaryFolder(async (here) => {
      lay(here, { ...EXPORTS, "log.csv": LOG });
      const made = await runWherry(["sheet", "e", "--out", "new.yaml", "--field-log", "log.csv"], {
        cwd: here,
      });
      expect([made.status, made.stdout]).toEqual([0, expect.stringContaining("3 casts, 0 open questions")]);
      const sheet = readFileSync(join(here, "new.yaml"), "utf8");
      for (const line of ["station: Outer Buoy", 'field_log: "log.csv"', "notes: first of the day"])
        expect(sheet).toContain(line);
      expect(sheet).not.toMatch(/Otto|Ines/);
    }));

  test("whose clock is not told is asked, and holds the casts back until it is answered", () =>
    inTemporaryFolder(async (here) => {
      const silent = LOG.replace(" (UTC+02:00)", "").replace(" [ft]", "");
      lay(here, { ...EXPORTS, "log.csv": silent, "s.yaml": SHEET });
      const asked = await convert(here, "--field-log", "log.csv");
      expect(asked.status).toBe(2);
      expect(asked.stdout).toContain('{ about: timeZone, where: "log.csv", value: "+00:00" }');
      expect(asked.stdout).toContain('{ about: "units:sounding", where: "log.csv", value: m }');
      const answers = `answers:\n  - { about: timeZone, where: log.csv, value: "+02:00" }\n  - { about: "units:sounding", where: log.csv, value: m }\n`;
      lay(here, { "s.yaml": `${SHEET}${answers}` });
      const told = await convert(here, "--field-log", "log.csv");
      expect(told.status).toBe(0);
      expect(Number(table(here).get("Q2")!("sounding"))).toBe(40);
    }));

  test("in which a cast could be one of two lines is asked for that cast alone", () =>
    inTemporaryFolder(async (here) => {
      const twice = `${LOG},Inner Buoy,2025-05-13 11:30,33,,,,,\n`;
      lay(here, { ...EXPORTS, "log.csv": twice, "s.yaml": SHEET });
      const asked = await convert(here, "--field-log", "log.csv");
      expect(asked.status).toBe(2);
      expect([...table(here).keys()].sort()).toEqual(["Q1", "Q3"]);
      expect(asked.stdout).toContain('{ about: logLine, where: "log.csv#Q2", value:');
      lay(here, { "s.yaml": `${SHEET}answers:\n  - { about: logLine, where: "log.csv#Q2", value: 7 }\n` });
      const told = await convert(here, "--field-log", "log.csv");
      expect([told.status, table(here).get("Q2")!("station")]).toEqual([0, "Inner Buoy"]);
    }));

  test("in which a cast of that name has another time is asked: one of the clocks is wrong", () =>
    inTemporaryFolder(async (here) => {
      lay(here, { ...EXPORTS, "log.csv": LOG.replace("10:59", "08:59"), "s.yaml": SHEET });
      const asked = await convert(here, "--field-log", "log.csv");
      expect([asked.status, asked.stdout]).toEqual([2, expect.stringContaining("2025-05-13T06:59:00Z")]);
    }));

  test("that is none is refused with the names of its columns", () =>
    inTemporaryFolder(async (here) => {
      lay(here, { ...EXPORTS, "log.csv": "a,b\n1,2\n", "s.yaml": SHEET });
      const { status, stderr } = await convert(here, "--field-log", "log.csv");
      expect([status, stderr]).toEqual([2, expect.stringContaining("cast, station, time")]);
      const absent = await convert(here, "--field-log", "nowhere.csv");
      expect(absent.status).toBe(3);
    }));
});
