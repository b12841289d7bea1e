import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { inTemporaryFolder, runWherry } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { lay, SHEET } from "./survey-folder.ts";

// An invented logger that keeps silent about its zone, the unit of its pressure and what it calls temperature.

const logger = (name: string) => `Ebbe-Schreiber 3
Messung ${name}
Beginn 04.05.2024 10:00:00
Position 54 30.5 N 8 20.25 O
Sekunden;Druck;Wtmp;Leitfähigkeit [mS/cm]
0;0,10;12,31;35,01
1;0,60;12,30;35,05
2;1,10;-77;35,07
3;1,60;12,20;35,12
4;2,10;12,10;35,30
5;2,60;12,00;35,40
`;

const NOTES = `version: 1
comment: Exports of the invented Ebbe-Schreiber
files_with: Ebbe-Schreiber
answers:
  - { about: timeZone, where: "*", value: "+02:00" }
  - { about: "units:Druck", where: "*", value: dbar }
  - { about: missingMarker, where: "*", value: "-77" }
  - { about: language, where: "*", value: de }
names:
  - { quantity: temperature, language: de, names: [Wtmp], unit: degC, evidence: label on the housing }
`;

interface Looked {
  readonly files: readonly {
    readonly missingMarkers: readonly string[];
    readonly casts: readonly {
      readonly start: string | null;
      readonly longitude: number | null;
      readonly columns: readonly {
        readonly header: string;
        readonly standardName: string | null;
        readonly missing: number;
        readonly evidence: readonly { readonly because: string }[];
      }[];
    }[];
    readonly questions: readonly { readonly about: string }[];
  }[];
}

async function look(here: string, ...args: string[]) {
  const { status, stdout, stderr } = await runWherry(["look", "--json", ...args], { cwd: here });
  return { status, stderr, files: (JSON.parse(stdout) as Looked).files };
}

describe("notes on exports of one kind", () => {
  test("answer what every file of the kind leaves open, and say that it was they", () =>
    inTemporaryFolder(async (here) => {
      lay(here, { "e/a.txt": logger("Kai 1"), "e/b.txt": logger("Kai 2"), "ebbe.yaml": NOTES });
      const open = await look(here, "e");
      expect(open.files.map(({ questions }) => questions.map(({ about }) => about))).toEqual([
        ["timeZone", "units:Druck"],
        ["timeZone", "units:Druck"],
      ]);
      const { status, stderr, files } = await look(here, "e", "--notes", "ebbe.yaml");
      expect([status, stderr]).toEqual([0, ""]);
      for (const { casts, questions, missingMarkers } of files) {
        expect(questions).toEqual([]);
        expect(missingMarkers).toContain("-77");
        expect(casts[0]).toMatchObject({ start: "2024-05-04T08:00:00Z", longitude: 8.3375 });
        const [temperature] = casts[0]!.columns.filter(({ header }) => header === "Wtmp");
        expect(temperature).toMatchObject({ standardName: "sea_water_temperature", missing: 1 });
        expect(temperature!.evidence[0]!.because).toContain("the notes ebbe.yaml");
        expect(temperature!.evidence[0]!.because).toContain("label on the housing");
      }
    }));

  test("are passed over in files of another kind", () =>
    inTemporaryFolder(async (here) => {
      lay(here, {
        "other.txt": logger("Kai 1").replace("Ebbe-Schreiber", "Flut-Schreiber"),
        "ebbe.yaml": NOTES,
      });
      const { files, stderr } = await look(here, "other.txt", "--notes", "ebbe.yaml");
      expect(files[0]!.questions.map(({ about }) => about)).toEqual(["timeZone", "units:Druck"]);
      expect(stderr).toContain("4 of 4 answers of the notes ebbe.yaml settled nothing");
    }));

  test("stand behind the sheet, and the sheet behind the command line", () =>
    inTemporaryFolder(async (here) => {
      const sheet = `${SHEET}notes: [ebbe.yaml]\nanswers:\n  - { about: timeZone, where: "*", value: "+01:00" }\n`;
      lay(here, { "a.txt": logger("Kai 1"), "s/survey.yaml": sheet, "s/ebbe.yaml": NOTES });
      const start = async (...args: string[]) => {
        const run = ["convert", "a.txt", "--sheet", "s/survey.yaml", "--out", "r", "--force", ...args];
        const { status } = await runWherry(run, { cwd: here });
        expect(status).toBe(0);
        const [head = "", row = ""] = readFileSync(join(here, "r", "quay_full.csv"), "utf8").split("\r\n");
        return row.split(",")[head.split(",").indexOf("time")];
      };
      // seconds since 1970: 09:00 and 07:00 UTC on 4 May 2024
      expect(await start()).toBe(String(Date.UTC(2024, 4, 4, 9) / 1000));
      expect(await start("--answer", "timeZone=+03:00")).toBe(String(Date.UTC(2024, 4, 4, 7) / 1000));
      expect(existsSync(join(here, "r", "notes", "ebbe.yaml"))).toBe(true);
    }));

  test("that are faulty are refused with the place and the nearest name", () =>
    inTemporaryFolder(async (here) => {
      lay(here, { "a.txt": logger("Kai 1") });
      for (const [text, place, hint] of [
        [NOTES.replace("answers:", "anwsers:"), "n.yaml:4:1", '"answers"'],
        [NOTES.replace("about: timeZone", "about: timeZon"), "n.yaml:5:14", "timeZone"],
        [NOTES.replace("quantity: temperature", "quantity: temprature"), "n.yaml:10:17", "temperature"],
        [NOTES.replace("unit: degC", "unit: dbar"), "n.yaml:10:65", "not a unit of temperature"],
        ["", "n.yaml", "version: 1"],
      ] as const) {
        lay(here, { "n.yaml": text });
        const { status, stderr } = await runWherry(["look", "a.txt", "--notes", "n.yaml"], { cwd: here });
        expect([status, stderr]).toEqual([2, expect.stringContaining(place)]);
        expect(stderr).toContain(hint);
      }
      const wrong = await runWherry(["look", "a.txt", "--answer", "timezone"], { cwd: here });
      expect([wrong.status, wrong.stderr]).toEqual([2, expect.stringContaining("timeZone=+02:00")]);
    }));

  test("a sheet asks once what many files ask, and look and convert tell of a cast that stands twice", () =>
    inTemporaryFolder(async (here) => {
      const later = logger("Kai 2").replace("10:00:00", "12:00:00").replace("12,31", "11,31");
      lay(here, {
        "e/a.txt": logger("Kai 1"),
        "e/b.txt": logger("Kai 1"),
        "e/c.txt": later,
        "ebbe.yaml": NOTES,
      });
      const made = await runWherry(["sheet", "e", "--out", "s.yaml"], { cwd: here });
      expect(made.status).toBe(2);
      const sheet = readFileSync(join(here, "s.yaml"), "utf8");
      expect(sheet.match(/about: timeZone/g)).toHaveLength(1);
      expect(sheet).toContain("and 2 more files");
      expect(sheet).toContain('{ about: timeZone, where: "*", value: "+00:00" }');
      const looked = await runWherry(["look", "--json", "e", "--notes", "ebbe.yaml"], { cwd: here });
      const { sameCasts } = JSON.parse(looked.stdout) as { sameCasts: unknown[] };
      expect(sameCasts).toEqual([
        {
          casts: [
            { path: join("e", "a.txt"), id: expect.any(String) },
            { path: join("e", "b.txt"), id: expect.any(String) },
          ],
          how: "exact",
          differences: [],
        },
      ]);
      const run = ["convert", "e", "--sheet", "s.yaml", "--notes", "ebbe.yaml", "--out", "r", "--json"];
      const { status, stdout } = await runWherry(run, { cwd: here });
      const done = JSON.parse(stdout) as { casts: number; findings: { code: string }[] };
      expect([status, done.casts, done.findings.map(({ code }) => code)]).toEqual([1, 3, ["casts/same"]]);
    }));
});
