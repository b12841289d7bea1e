import { spawnSync } from "node:child_process";
import {
  appendFileSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { inTemporaryFolder, runWherry } from "@wherry/testkit";
import { afterAll, beforeAll, describe, expect, type TestContext, test } from "vitest";
import { exportText, lay, SHEET } from "./survey-folder.ts";

// The deposit package as a user makes it.

/** A cast in warmer water, so that it is not the same cast twice. */
const warmer = (name: string, by: number): string =>
  exportText({ name }).replace(
    /,(\d+\.\d{3}),(\d+\.\d{3})$/gm,
    (_, temperature: string, conductivity: string) =>
      `,${(Number(temperature) + by).toFixed(3)},${(Number(conductivity) * (1 + by / 50)).toFixed(3)}`,
  );

const survey = {
  "casts/q1.csv": exportText(),
  "casts/a b.csv": warmer("Q2", 1.37),
  [`casts/${"long-name-".repeat(12)}ü.csv`]: warmer("Q3", 2.61),
  "survey.yaml": `${SHEET}  summary: Three casts at a quay that nobody built.\n`,
};

const made = mkdtempSync(join(tmpdir(), "wherry-test-"));
beforeAll(async () => {
  lay(made, survey);
  const run = await runWherry(["convert", "casts", "-s", "survey.yaml", "-o", "result"], { cwd: made });
  expect(run.status, run.stderr).toBe(0);
});
afterAll(() => rmSync(made, { recursive: true, force: true }));

/** The survey with its result, in a folder of one's own. */
const converted = (cwd: string): void => cpSync(made, cwd, { recursive: true });

const filesBelow = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
    .sort();

/** A clock that is years ahead, for a whole run. */
const LATER = {
  TZ: "Pacific/Auckland",
  LANG: "de_DE.UTF-8",
  NODE_OPTIONS: `--import=data:text/javascript,${encodeURIComponent(
    "const D = Date; globalThis.Date = class extends D { constructor(...a) { super(...(a.length ? a : [D.now() + 2e11])); } static now() { return D.now() + 2e11; } };",
  )}`,
};

describe("a package", () => {
  test("holds everything, and the checksums of other programs agree", (context) =>
    inTemporaryFolder(async (cwd) => {
      converted(cwd);
      const run = await runWherry(["pack", "result", "-o", "bag", "--sha512"], { cwd });
      expect(run.status, run.stderr).toBe(0);
      const bag = join(cwd, "bag");
      expect(filesBelow(bag)).toEqual(
        expect.arrayContaining([
          "bag-info.txt",
          "bagit.txt",
          "data/README.txt",
          "data/original/a b.csv",
          "data/original/q1.csv",
          "data/quay_check.html",
          "data/quay_check.json",
          "data/quay_datacite.json",
          "data/quay_full.nc",
          "data/quay_iso19115-3.xml",
          "data/quay_positions.csv",
          "data/quay_positions.csv-metadata.json",
          "data/quay_processing.json",
          "data/survey.yaml",
          "manifest-sha256.txt",
          "manifest-sha512.txt",
          "tagmanifest-sha256.txt",
          "tagmanifest-sha512.txt",
        ]),
      );
      expect(readFileSync(join(bag, "data/original/q1.csv"))).toEqual(
        readFileSync(join(cwd, "casts/q1.csv")),
      );
      if (spawnSync("sha256sum", ["--version"]).status !== 0) context.skip("skipped: no sha256sum here");
      for (const name of ["sha256", "sha512"])
        for (const manifest of [`manifest-${name}.txt`, `tagmanifest-${name}.txt`])
          expect(
            spawnSync(`${name}sum`, ["--check", "--strict", "--quiet", manifest], { cwd: bag }).status,
          ).toBe(0);
    }));

  test.each([[[]], [["--zip"]], [["--tar"]]])(
    "has the same bytes on another day, in another zone and another folder: %s",
    (form) =>
      inTemporaryFolder(async (cwd) => {
        converted(cwd);
        const other = join(cwd, "other", "place");
        mkdirSync(other, { recursive: true });
        converted(other);
        expect((await runWherry(["pack", "result", "-o", "p", ...form], { cwd })).status).toBe(0);
        const later = await runWherry(["pack", join(other, "result"), "-o", join(other, "p"), ...form], {
          cwd: join(cwd, "other"),
          env: LATER,
        });
        expect(later.status, later.stderr).toBe(0);
        const name = form.length === 0 ? "p" : `p.${form[0]!.slice(2)}`;
        const names =
          form.length === 0 ? filesBelow(join(cwd, name)).map((file) => `${name}/${file}`) : [name];
        expect(names.length).toBeGreaterThan(0);
        for (const file of names)
          expect(readFileSync(join(cwd, file)).equals(readFileSync(join(other, file))), file).toBe(true);
      }),
  );

  test("passes check without error or warning, as folder, zip and tar", () =>
    inTemporaryFolder(async (cwd) => {
      converted(cwd);
      for (const [form, name] of [
        [[], "p"],
        [["--zip"], "p.zip"],
        [["--tar"], "p.tar"],
      ] as const) {
        expect((await runWherry(["pack", "result", "-o", "p", ...form], { cwd })).status).toBe(0);
        const checked = await runWherry(
          ["check", name, "--fail-on", "warning", "--rules", "package", "csv"],
          {
            cwd,
          },
        );
        expect(checked.status, checked.stdout).toBe(0);
        expect((await runWherry(["pack", "--verify", name], { cwd })).status).toBe(0);
      }
    }));

  test("as an archive is read by other programs", (context) =>
    inTemporaryFolder(async (cwd) => {
      converted(cwd);
      const python =
        "import sys,zipfile,tarfile\nz=zipfile.ZipFile(sys.argv[1]); t=tarfile.open(sys.argv[2])\nassert z.testzip() is None\nz.extractall('z'); t.extractall('t')\n";
      expect((await runWherry(["pack", "result", "-o", "p", "--zip"], { cwd })).status).toBe(0);
      expect((await runWherry(["pack", "result", "-o", "p", "--tar"], { cwd })).status).toBe(0);
      if (spawnSync("python3", ["--version"]).status !== 0) context.skip("skipped: no Python here");
      const read = spawnSync("python3", ["-c", python, "p.zip", "p.tar"], { cwd, encoding: "utf8" });
      expect(read.stderr).toBe("");
      expect((await runWherry(["pack", "result", "-o", "p"], { cwd })).status).toBe(0);
      const files = filesBelow(join(cwd, "p"));
      for (const way of ["z", "t"]) {
        expect(filesBelow(join(cwd, way, "p"))).toEqual(files);
        for (const file of files)
          expect(
            readFileSync(join(cwd, way, "p", file)).equals(readFileSync(join(cwd, "p", file))),
            file,
          ).toBe(true);
      }
    }));
});

test("odd names of source files survive: line ends, percent signs, letters in pieces", () =>
  inTemporaryFolder(async (cwd) => {
    const names = ["a\nb.csv", "100%.csv", "e\u0301.csv", "bell\u0007.csv", " blank .csv"];
    const casts = names.map((name, k) => [`casts/${name}`, warmer(`N${k}`, 1.1 + 1.3 * k)] as const);
    lay(cwd, { ...Object.fromEntries(casts), "survey.yaml": survey["survey.yaml"] });
    expect((await runWherry(["convert", "casts", "-s", "survey.yaml", "-o", "result"], { cwd })).status).toBe(
      0,
    );
    const packed = await runWherry(["pack", "result", "-o", "p"], { cwd });
    expect(packed.status, packed.stderr).toBe(0);
    for (const name of names)
      expect(
        readFileSync(join(cwd, "p/data/original", name)).equals(readFileSync(join(cwd, "casts", name))),
      ).toBe(true);
    const manifest = readFileSync(join(cwd, "p/manifest-sha256.txt"), "utf8");
    // RFC 8493, section 2.1.3: line ends and the percent sign are encoded, nothing else
    expect(manifest).toContain("  data/original/a%0Ab.csv\n");
    expect(manifest).toContain("  data/original/100%25.csv\n");
    expect((await runWherry(["pack", "--verify", "p"], { cwd })).status).toBe(0);
    expect((await runWherry(["check", "p/data/quay_full.nc", "--rules", "cf"], { cwd })).status).toBe(0);
  }));

describe("verify", () => {
  test("tells of a byte that changed, a file that is gone and one that was added: 1", () =>
    inTemporaryFolder(async (cwd) => {
      converted(cwd);
      for (const [spoil, told] of [
        [() => appendFileSync(join(cwd, "p/data/quay_full.csv"), "x"), "data/quay_full.csv"],
        [() => rmSync(join(cwd, "p/data/survey.yaml")), "data/survey.yaml"],
        [() => writeFileSync(join(cwd, "p/data/more.txt"), "x"), "data/more.txt"],
        [() => appendFileSync(join(cwd, "p/bag-info.txt"), "Note: x\n"), "bag-info.txt"],
      ] as const) {
        expect((await runWherry(["pack", "result", "-o", "p", "--force"], { cwd })).status).toBe(0);
        spoil();
        const run = await runWherry(["pack", "--verify", "p"], { cwd });
        expect(run.status, told).toBe(1);
        expect(run.stdout).toContain("not whole");
        expect(run.stderr).toContain(told);
      }
    }));

  test("of something that is no package: 3", () =>
    inTemporaryFolder(async (cwd) => {
      lay(cwd, { "notes.txt": "no package", "empty/x.txt": "x" });
      for (const path of ["notes.txt", "empty", "gone"]) {
        const run = await runWherry(["pack", "--verify", path], { cwd });
        expect(run.status, path).not.toBe(0);
        expect(run.stderr).not.toBe("");
      }
    }));
});

describe("bad input", () => {
  test.each([
    ["no result", ["pack", "casts", "-o", "p"], 2, "no result of a conversion"],
    ["a folder that is gone", ["pack", "gone", "-o", "p"], 3, "does not exist"],
    ["no out", ["pack", "result"], 2, "--out"],
    ["two forms", ["pack", "result", "-o", "p", "--zip", "--tar"], 2, "--tar"],
    ["other files under the name", ["pack", "result", "-o", "casts"], 2, "casts"],
  ])("%s", (_, args, status, words) =>
    inTemporaryFolder(async (cwd) => {
      converted(cwd);
      const run = await runWherry(args, { cwd });
      expect(run.status, run.stderr).toBe(status);
      expect(run.stderr).toContain(words);
      expect(existsSync(join(cwd, "p"))).toBe(false);
    }),
  );

  test("an earlier package is left alone without --force, links are refused, hidden files are told", () =>
    inTemporaryFolder(async (cwd) => {
      converted(cwd);
      writeFileSync(join(cwd, "result", ".secret"), "x");
      const first = await runWherry(["pack", "result", "-o", "p", "--zip"], { cwd });
      expect(first.status).toBe(0);
      expect(first.stdout).toContain(".secret");
      expect((await runWherry(["pack", "result", "-o", "p", "--zip"], { cwd })).status).toBe(2);
      expect((await runWherry(["pack", "result", "-o", "p", "--zip", "--force"], { cwd })).status).toBe(0);
      symlinkSync(join(cwd, "survey.yaml"), join(cwd, "result", "link.yaml"));
      expect((await runWherry(["pack", "result", "-o", "q"], { cwd })).status).toBe(2);
    }));

  test.each([[[]], [["--zip"]], [["--tar"]]])(
    "a full disk: 3, nothing under the name, and a second run finishes: %s",
    (form, context?: TestContext) =>
      inTemporaryFolder(async (cwd) => {
        converted(cwd);
        const disk = join(cwd, "disk");
        mkdirSync(disk);
        const mounted = spawnSync("mount", ["-t", "tmpfs", "-o", "size=64k", "tmpfs", disk]).status === 0;
        if (!mounted) context?.skip("skipped: mounting a small disk needs root");
        try {
          const full = await runWherry(["pack", "result", "-o", "disk/p", ...form], { cwd });
          expect(full.status, full.stderr).toBe(3);
          expect(full.stderr).toContain("full");
          expect(readdirSync(disk)).toEqual([]);
          expect(spawnSync("mount", ["-o", "remount,size=32m", disk]).status).toBe(0);
          expect((await runWherry(["pack", "result", "-o", "disk/p", ...form], { cwd })).status).toBe(0);
        } finally {
          spawnSync("umount", [disk]);
        }
      }),
  );

  test.each([
    ["folder", []],
    ["zip", ["--zip"]],
  ])("killed in the middle: nothing under the name, and a second run finishes: %s", (_, form) =>
    inTemporaryFolder(async (cwd) => {
      converted(cwd);
      const isBuilding = () => readdirSync(cwd).some((name) => name.startsWith(".p.wherry-"));
      const run = await runWherry(["pack", "result", "-o", "p", ...form], {
        cwd,
        interrupt: { signal: "SIGKILL", when: isBuilding },
      });
      expect(run.status).toBeNull();
      expect(existsSync(join(cwd, "p")) || existsSync(join(cwd, "p.zip"))).toBe(false);
      expect((await runWherry(["pack", "result", "-o", "p", ...form], { cwd })).status).toBe(0);
      expect(isBuilding()).toBe(false);
    }),
  );
});
