import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { check } from "../src/check.ts";

// "abc" and its checksum are a test vector that FIPS 180-4 publishes
const ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

const own = (path: string) => new URL(`../../../test-data/${path}`, import.meta.url).pathname;

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "wherry-package-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

function write(files: Readonly<Record<string, string>>): void {
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(join(folder, path, ".."), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
}

const GOOD = {
  "bagit.txt": "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n",
  "manifest-sha256.txt": `${ABC}  data/.a\n`,
  "data/.a": "abc",
};

async function verdicts(path: string) {
  const outcome = await check([path], { now: 0 });
  if (!outcome.ok) throw new Error(outcome.problems[0].message);
  return outcome.value.files.map(({ path: name, format, findings }) => ({
    name: name.slice(folder.length + 1),
    format,
    rules: findings
      .filter(({ level }) => level !== "advice")
      .map(({ rule, where }) => [rule, where.file?.slice(folder.length + 1) ?? ""]),
  }));
}

test("a package in a folder is one, hidden files included", async () => {
  write(GOOD);
  expect(await verdicts(folder)).toEqual([{ name: "", format: "deposit package, folder", rules: [] }]);
});

test("packages below a folder are found, and their files are not checked twice", async () => {
  for (const [path, text] of Object.entries(GOOD)) write({ [`one/${path}`]: text, [`two/${path}`]: text });
  expect((await verdicts(folder)).map(({ name }) => name)).toEqual(["one", "two"]);
});

test("data files of a package are checked as well", async () => {
  write(GOOD);
  cpSync(own("netcdf/classic_all_types.nc"), join(folder, "data/casts.nc"));
  const [bag, file, ...others] = await verdicts(folder);
  expect(bag?.rules).toEqual([["package/complete", "manifest-sha256.txt"]]);
  expect(file).toMatchObject({ name: "data/casts.nc", format: "netCDF classic" });
  expect(others).toEqual([]);
});

test("a link in a package is not followed", async () => {
  write(GOOD);
  symlinkSync("/etc", join(folder, "data/etc"));
  expect((await verdicts(folder))[0]?.rules).toEqual([["package/paths", ""]]);
});

test("an archive that a person names must hold a package", async () => {
  const archive = join(folder, "casts.zip");
  writeFileSync(archive, readFileSync(own("whp-zip/no_casts.zip")));
  expect(await verdicts(archive)).toMatchObject([
    { format: null, rules: [["file/package-no-bag", "casts.zip"]] },
  ]);
  expect(await verdicts(folder)).toEqual([]);
});
