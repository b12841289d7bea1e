import { spawnSync } from "node:child_process";
import { chmodSync, chownSync, existsSync, mkdirSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { inTemporaryFolder, runWherry } from "@wherry/testkit";
import { expect, test } from "vitest";
import { exportText, lay, SHEET } from "./survey-folder.ts";

// What the disk can do to a run: nothing half-written stands under a final name, and a second run finishes.

const isRoot = process.getuid?.() === 0;
const NOBODY = 65534;
/** Whether the program can be run by this user: node and the clone may lie in folders that are root's own. */
const runsAs = (uid: { uid?: number }): Promise<boolean> =>
  runWherry(["--version"], uid).then(
    ({ status }) => status === 0,
    () => false,
  );
const survey = { "q1.csv": exportText(), "survey.yaml": SHEET };
const convert = (...more: string[]) => [
  "convert",
  "q1.csv",
  "--sheet",
  "survey.yaml",
  "--out",
  "result",
  ...more,
];

test("a folder that may not be written: 3, nothing written", (context) =>
  inTemporaryFolder(async (folder) => {
    lay(folder, survey);
    mkdirSync(join(folder, "locked"), { mode: 0o555 });
    chmodSync(folder, 0o755);
    // Root may write anywhere, so the program then runs as nobody, who must be able to read it.
    const uid = isRoot ? { uid: NOBODY } : {};
    if (!(await runsAs(uid)))
      context.skip("skipped: the program's folder can't be read by another user here");
    const run = await runWherry(["convert", "q1.csv", "-s", "survey.yaml", "-o", "locked/result"], {
      cwd: folder,
      ...uid,
    });
    expect(run.status).toBe(3);
    expect(run.stderr).toContain("locked/result");
    expect(readdirSync(join(folder, "locked"))).toEqual([]);
  }));

test("a full disk: 3, nothing under a final name, and a second run finishes", (context) =>
  inTemporaryFolder(async (folder) => {
    lay(folder, survey);
    const disk = join(folder, "disk");
    mkdirSync(disk);
    const mounted = spawnSync("mount", ["-t", "tmpfs", "-o", "size=64k", "tmpfs", disk]).status === 0;
    if (!mounted) context.skip("skipped: mounting a small disk needs root");
    try {
      const args = ["convert", "q1.csv", "-s", "survey.yaml", "-o", "disk/result"];
      const full = await runWherry(args, { cwd: folder });
      expect(full.status).toBe(3);
      expect(full.stderr).toContain("full");
      expect(readdirSync(disk)).toEqual([]);
      expect(spawnSync("mount", ["-o", "remount,size=8m", disk]).status).toBe(0);
      expect((await runWherry(args, { cwd: folder })).status).toBe(0);
      expect(existsSync(join(disk, "result", "quay_full.nc"))).toBe(true);
    } finally {
      spawnSync("umount", [disk]);
    }
  }));

test("a finished result is left alone without --force: 2", () =>
  inTemporaryFolder(async (folder) => {
    lay(folder, survey);
    expect((await runWherry(convert(), { cwd: folder })).status).toBe(0);
    const before = readFileSync(join(folder, "result", "quay_full.nc"));
    const again = await runWherry(convert(), { cwd: folder });
    expect(again.status).toBe(2);
    expect(again.stderr).toContain("--force");
    expect((await runWherry(convert("--force"), { cwd: folder })).status).toBe(0);
    expect(readFileSync(join(folder, "result", "quay_full.nc")).equals(before)).toBe(true);
  }));

test("a folder of other things is never replaced, not even with --force: 2", () =>
  inTemporaryFolder(async (folder) => {
    lay(folder, { ...survey, "result/thesis.txt": "the only copy" });
    expect((await runWherry(convert("--force"), { cwd: folder })).status).toBe(2);
    expect(readFileSync(join(folder, "result", "thesis.txt"), "utf8")).toBe("the only copy");
  }));

const many = Object.fromEntries(
  Array.from({ length: 60 }, (_, k) => [`casts/c${k}.csv`, exportText({ name: `C${k}`, rows: 140 })]),
);
const convertMany = ["convert", "casts", "--sheet", "survey.yaml", "--out", "result", "--per-cast"];
const building = (folder: string) => readdirSync(folder).some((name) => name.startsWith(".result.wherry-"));

test.each(["SIGINT", "SIGTERM"] as const)(
  "%s in the middle: 130, no leftover, and a second run finishes",
  (signal) =>
    inTemporaryFolder(async (folder) => {
      lay(folder, { ...many, "survey.yaml": SHEET });
      const run = await runWherry(convertMany, {
        cwd: folder,
        interrupt: { signal, when: () => building(folder) },
      });
      expect(run.status).toBe(130);
      expect(existsSync(join(folder, "result"))).toBe(false);
      expect(building(folder)).toBe(false);
      expect((await runWherry(convertMany, { cwd: folder })).status).toBe(0);
    }),
);

test("killed in the middle: nothing under the final name, and a second run finishes and cleans up", () =>
  inTemporaryFolder(async (folder) => {
    lay(folder, { ...many, "survey.yaml": SHEET });
    const run = await runWherry(convertMany, {
      cwd: folder,
      interrupt: { signal: "SIGKILL", when: () => building(folder) },
    });
    expect(run.status).toBeNull();
    expect(existsSync(join(folder, "result"))).toBe(false);
    expect((await runWherry(convertMany, { cwd: folder })).status).toBe(0);
    expect(building(folder)).toBe(false);
  }));

test("killed between the two renames: the earlier result comes back", () =>
  inTemporaryFolder(async (folder) => {
    lay(folder, { ...survey, ".result.wherry-previous/quay_processing.json": "{}" });
    const refused = await runWherry(convert(), { cwd: folder });
    expect(refused.status).toBe(2);
    expect(existsSync(join(folder, "result", "quay_processing.json"))).toBe(true);
  }));

test("unreadable for lack of permission: 3", (context) =>
  inTemporaryFolder(async (folder) => {
    lay(folder, survey);
    chmodSync(join(folder, "q1.csv"), 0o000);
    chmodSync(folder, 0o777);
    const uid = isRoot ? { uid: NOBODY } : {};
    if (isRoot) chownSync(join(folder, "q1.csv"), 0, 0);
    if (!(await runsAs(uid)))
      context.skip("skipped: the program's folder can't be read by another user here");
    const run = await runWherry(["look", "q1.csv"], { cwd: folder, ...uid });
    expect(run.status).toBe(3);
    expect(run.stderr).toContain("q1.csv");
  }));
