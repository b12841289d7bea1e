import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { inTemporaryFolder, type Run, runWherry } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { exportText, lay, SHEET } from "./survey-folder.ts";

// The table "bad input" of the design, row by row, with the real program in a temporary folder.

type Files = Readonly<Record<string, string | Uint8Array>>;

/** Runs the program in a folder with these files; afterwards there is never a stack trace or a hidden leftover. */
const inFolder = (
  files: Files,
  use: (run: (...args: string[]) => Promise<Run>, folder: string) => Promise<void>,
) =>
  inTemporaryFolder(async (folder) => {
    lay(folder, files);
    await use(async (...args) => {
      const run = await runWherry(args, { cwd: folder });
      expect(run.stderr).not.toMatch(/^\s+at .+:\d+:\d+/m);
      return run;
    }, folder);
    expect(readdirSync(folder).filter((name) => name.startsWith("."))).toEqual([]);
  });

const CONVERT = ["--sheet", "survey.yaml", "--out", "result"];
const names = (folder: string) => readdirSync(join(folder, "result"));

describe.each([
  ["empty", new Uint8Array(0)],
  ["binary", Uint8Array.from({ length: 4000 }, (_, k) => (k * 197) % 256)],
  ["without numbers", "Dear colleague,\n\nthe casts follow next week.\n"],
])("a file that is %s", (_, content) => {
  test("look says so: 3", () =>
    inFolder({ "a.csv": content }, async (run) => {
      const { status, stderr } = await run("look", "a.csv");
      expect(status).toBe(3);
      expect(stderr).toContain("a.csv");
    }));

  test("convert writes nothing: 3", () =>
    inFolder({ "a.csv": content, "q1.csv": exportText(), "survey.yaml": SHEET }, async (run, folder) => {
      const { status, stderr } = await run("convert", "a.csv", "q1.csv", ...CONVERT);
      expect(status).toBe(3);
      expect(stderr).toContain("a.csv");
      expect(existsSync(join(folder, "result"))).toBe(false);
    }));

  test("check says so: 3", () =>
    inFolder({ "a.nc": content }, async (run) => {
      const { status, stdout } = await run("check", "a.nc");
      expect(status).toBe(3);
      expect(stdout).toContain("a.nc");
    }));
});

describe("rows that are too short, or cut in mid-line", () => {
  const whole = exportText();
  const lines = whole.split("\n");
  const damaged = [...lines.slice(0, 50), "21.5,0.60", ...lines.slice(50, 120), lines[120]!.slice(0, 9)].join(
    "\n",
  );

  test("look warns with the lines: 0", () =>
    inFolder({ "q1.csv": damaged }, async (run) => {
      const { status, stdout } = await run("look", "q1.csv");
      expect(status).toBe(0);
      expect(stdout).toMatch(/51/);
      expect(stdout).toMatch(/122/);
    }));

  test("convert keeps the whole rows and lists the finding: 1", () =>
    inFolder({ "q1.csv": damaged, "survey.yaml": SHEET }, async (run, folder) => {
      const { status, stdout } = await run("convert", "q1.csv", ...CONVERT);
      expect(status).toBe(1);
      expect(stdout).toMatch(/q1\.csv.*51/s);
      const rows =
        readFileSync(join(folder, "result", "quay_full.csv"), "utf8")
          .trimEnd()
          .split("\r\n").length - 1;
      expect(rows).toBe(lines.slice(7, 120).length);
      expect(readFileSync(join(folder, "result", "original", "q1.csv"), "utf8")).toBe(damaged);
    }));
});

describe("an ambiguous fact", () => {
  const files = {
    "q1.csv": exportText(),
    "q2.csv": exportText({ name: "Q2", zone: null }),
    "survey.yaml": SHEET,
  };

  test("look lists the question: 0", () =>
    inFolder(files, async (run) => {
      const { status, stdout } = await run("look", "q2.csv", "--json");
      expect(status).toBe(0);
      const { files: looked } = JSON.parse(stdout);
      expect(looked[0].questions).toHaveLength(1);
      expect(looked[0].casts[0].start).toBeNull();
    }));

  test("convert holds back that cast and writes the others: 2", () =>
    inFolder(files, async (run, folder) => {
      const { status, stdout } = await run("convert", "q1.csv", "q2.csv", ...CONVERT);
      expect(status).toBe(2);
      expect(stdout).toContain("Q2");
      const record = JSON.parse(readFileSync(join(folder, "result", "quay_processing.json"), "utf8"));
      expect(record.casts.map(({ id }: { id: string }) => id)).toEqual(["Q1"]);
      expect(record.held.map(({ id }: { id: string }) => id)).toEqual(["Q2"]);
    }));

  test("the printed answer settles it", () =>
    inFolder({ "q2.csv": files["q2.csv"] }, async (run, folder) => {
      const looked = JSON.parse((await run("look", "q2.csv", "--json")).stdout);
      const { answerWith, candidates } = looked.files[0].questions[0];
      const answer =
        candidates.length > 0
          ? answerWith.replace(/value:.*?(?=[,}]|$)/, `value: ${candidates[0]}`)
          : answerWith;
      lay(folder, {
        "survey.yaml": `${SHEET}answers:\n  ${answer.startsWith("-") ? answer : `- ${answer}`}\n`,
      });
      const { status, stderr } = await run("convert", "q2.csv", ...CONVERT);
      expect(stderr).toBe("");
      expect(status).toBe(0);
      expect(names(folder)).toContain("quay_full.nc");
    }));

  test("with every cast held back no result stands in the way of the next run: 2", () =>
    inFolder({ "q2.csv": files["q2.csv"], "survey.yaml": SHEET }, async (run, folder) => {
      expect((await run("convert", "q2.csv", ...CONVERT)).status).toBe(2);
      expect(existsSync(join(folder, "result"))).toBe(false);
    }));
});

test("a folder stands for its files", () =>
  inFolder(
    { "day/q1.csv": exportText(), "day/b/q2.csv": exportText({ name: "Q2" }), "survey.yaml": SHEET },
    async (run, folder) => {
      const looked = JSON.parse((await run("look", "day", "--json")).stdout);
      expect(looked.files.map(({ path }: { path: string }) => path)).toEqual(["day/b/q2.csv", "day/q1.csv"]);
      expect((await run("convert", "day", ...CONVERT)).status).toBe(0);
      expect(readdirSync(join(folder, "result", "original")).sort()).toEqual(["b", "q1.csv"]);
      expect((await run("check", "result", "--json")).stdout).toContain("quay_full.nc");
    },
  ));

test("an unknown key of the sheet is told with its line and the nearest known one: 2", () =>
  inFolder({ "q1.csv": exportText(), "survey.yaml": `${SHEET}  sumary: misspelt\n` }, async (run, folder) => {
    const { status, stderr } = await run("convert", "q1.csv", ...CONVERT);
    expect(status).toBe(2);
    expect(stderr).toContain("survey.yaml:6");
    expect(stderr).toContain("summary");
    expect(existsSync(join(folder, "result"))).toBe(false);
  }));

test("a file that does not exist: 3", () =>
  inFolder({ "survey.yaml": SHEET }, async (run) => {
    for (const args of [
      ["look", "none.csv"],
      ["convert", "none.csv", ...CONVERT],
      ["check", "none.nc"],
    ]) {
      const { status, stderr } = await run(...args);
      expect(stderr).toContain("none");
      expect(status).toBe(3);
    }
  }));

test("a sheet that does not exist: 3", () =>
  inFolder({ "q1.csv": exportText() }, async (run) => {
    expect((await run("convert", "q1.csv", ...CONVERT)).status).toBe(3);
  }));
