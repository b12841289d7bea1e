import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { checkSchema } from "@wherry/contracts";
import { parseCdl, writeClassic } from "@wherry/netcdf";
import { inTemporaryFolder, runWherry } from "@wherry/testkit";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";

/** Two errors of one rule and one of another, a warning, and advice. */
const CDL = `:Conventions = "CF-1.13" ; variables:
  float a ; a:units = "PSU" ; a:long_name = "a" ; float b ; b:units = "PSU" ; b:long_name = "b" ;
  float c ; c:standard_name = "sea_water_temprature" ; c:units = "K" ; float d ;`;

async function lay(cwd: string, ...names: string[]): Promise<void> {
  const dataset = parseCdl(CDL);
  if (!dataset.ok) throw new Error(dataset.problems[0].message);
  const chunks: Uint8Array[] = [];
  await writeClassic(dataset.value, { version: 1 }, (chunk) => void chunks.push(chunk.slice()));
  for (const name of names) writeFileSync(join(cwd, name), Buffer.concat(chunks));
}

const inFolder = (
  work: (run: (...args: string[]) => ReturnType<typeof runWherry>, cwd: string) => Promise<void>,
) =>
  inTemporaryFolder(async (cwd) => {
    await lay(cwd, "a.nc");
    await work((...args) => runWherry(["check", ...args], { cwd }), cwd);
  });

test("--level leaves out what weighs less, in text and JSON, and counts it", () =>
  inFolder(async (run) => {
    const text = await run("a.nc", "--level", "error");
    expect(text.status).toBe(1);
    expect(text.stdout).not.toMatch(/^ {2}(?:Warning|Advice) at/m);
    expect(text.stdout).toMatch(/ {2}3 errors, [1-9]/);
    const { files } = JSON.parse((await run("a.nc", "--level", "error", "--json")).stdout);
    expect(files[0].findings.map(({ level }: { level: string }) => level)).toEqual([
      "error",
      "error",
      "error",
    ]);
    expect(files[0].counts.warning).toBeGreaterThan(0);
  }));

test("--max writes out so many kinds of findings, the worst", () =>
  inFolder(async (run) => {
    const { stdout } = await run("a.nc", "--max", "1");
    expect(stdout.match(/^ {2}(?:Error|Warning|Advice) at/gm)).toEqual(["  Error at"]);
    expect(stdout).toMatch(/\d+ kinds of findings more, not written out/);
    expect((await run("a.nc", "--max", "0")).status).toBe(2);
  }));

test("--only tells findings of the rules named, and offers the nearest of one that is not there", () =>
  inFolder(async (run) => {
    const some = await run("a.nc", "--only", "cf/standard-name-known");
    expect(some.stdout).toMatch(/^1 file checked: 1 error, no warning, no advice\.$/m);
    const none = await run("a.nc", "--only", "flags/values");
    expect([none.status, none.stdout.includes("no error, no warning, no advice")]).toEqual([0, true]);
    const wrong = await run("a.nc", "--only", "cf/standard-name-konwn");
    expect([wrong.status, wrong.stdout]).toEqual([2, ""]);
    expect(wrong.stderr).toContain("cf/standard-name-known");
  }));

test("--edition and --rules choose by what is judged", () =>
  inFolder(async (run) => {
    expect((await run("a.nc", "--edition", "1.8")).stdout).toContain("CF 1.8, as asked for");
    expect((await run("a.nc", "--edition", "2.0")).status).toBe(2);
    expect((await run("a.nc", "--rules", "flags")).stdout).toContain("rules: flags");
    expect((await run("a.nc", "--rules", "flagz")).stderr).toContain("Did you mean flags?");
  }));

describe("--waivers", () => {
  const waivers = (...list: object[]) => JSON.stringify({ version: 1, waivers: list });
  const known = { rule: "cf/standard-name-known", reason: "a name of our own", by: "K. Invented" };

  test("what is accepted counts no longer and stands apart in the JSON, which keeps to its schema", () =>
    inFolder(async (run, cwd) => {
      writeFileSync(join(cwd, "w.json"), waivers(known));
      const { stdout, stderr } = await run("a.nc", "--waivers", "w.json", "--json");
      const document = JSON.parse(stdout);
      const isOutput = new Ajv2020({ strict: false }).compile(checkSchema);
      expect([isOutput(document), isOutput.errors, stderr]).toEqual([true, null, ""]);
      expect(document.files[0].counts.error).toBe(2);
      expect(document.files[0].waived).toMatchObject([
        { finding: { rule: known.rule, where: { variable: "c" } }, reason: known.reason, by: known.by },
      ]);
      expect((await run("a.nc", "--waivers", "w.json")).stdout).toContain("1 finding accepted by waivers");
    }));

  test("one that has expired or that nothing needs is told", () =>
    inFolder(async (run, cwd) => {
      const past = { ...known, until: "2001-01-01" };
      writeFileSync(join(cwd, "w.json"), waivers(past, { ...known, rule: "cf/names" }));
      const { stdout, stderr } = await run("a.nc", "--waivers", "w.json");
      expect(stderr).toContain("ended on 2001-01-01");
      expect(stderr).toContain("nothing needs the waiver of cf/names");
      expect(stdout).toContain("3 errors");
    }));
});

test("threads change neither order nor answer, and a file that cannot be read holds up no other", () =>
  inTemporaryFolder(async (cwd) => {
    const folder = join(cwd, "many");
    mkdirSync(folder);
    await lay(folder, ...Array.from({ length: 20 }, (_, i) => `c${String(i).padStart(2, "0")}.nc`));
    writeFileSync(join(folder, "c07.nc"), readFileSync(join(folder, "c00.nc")).subarray(0, 50));
    writeFileSync(join(folder, "notes.txt"), "no data");
    for (const form of [[], ["--json"]]) {
      const alone = await runWherry(["check", "many", ...form], { cwd });
      const together = await runWherry(["check", "many", "--jobs", "3", ...form], { cwd });
      expect(together).toEqual(alone);
      expect(alone.status).toBe(3);
      expect(alone.stderr).toContain("notes.txt");
    }
    const { files, skipped } = JSON.parse((await runWherry(["check", "many", "--json"], { cwd })).stdout);
    expect(files.map(({ path }: { path: string }) => path)).toEqual(
      Array.from({ length: 20 }, (_, i) => join("many", `c${String(i).padStart(2, "0")}.nc`)),
    );
    expect(skipped).toEqual([join("many", "notes.txt")]);
  }));
