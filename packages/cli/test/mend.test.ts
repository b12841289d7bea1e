import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { mendSchema } from "@wherry/contracts";
import { openDataset, parseCdl, toCdl, writeClassic, writeNetcdf4 } from "@wherry/netcdf";
import { inTemporaryFolder, runWherry } from "@wherry/testkit";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";

const CDL = `netcdf casts { dimensions: cast = 2 ; obs = 3 ; variables:
  int cast(cast) ; cast:cf_role = "profile_id" ; cast:long_name = "number of the cast" ;
  int rows(cast) ; rows:sample_dimension = "obs" ; rows:long_name = "rows of the cast" ;
  double time(cast) ; time:standard_name = "time" ; time:units = "seconds since 2020-01-01T00:00:00Z" ; time:axis = "T" ;
  double lat(cast) ; lat:standard_name = "latitude" ; lat:units = "degrees" ; lat:axis = "Y" ;
  double lon(cast) ; lon:standard_name = "longitude" ; lon:units = "degrees_east" ; lon:axis = "X" ;
  float pressure(obs) ; pressure:standard_name = "sea_water_pressure_due_to_sea_water" ; pressure:units = "dbar" ; pressure:axis = "Z" ;
  float temperature(obs) ; temperature:standard_name = "Sea_Water_Temperature" ; temperature:units = "deg C" ;
  temperature:coordinates = "time lat lon pressure" ; temperature:_FillValue = -9.f ;
  :Conventions = "CF1.13" ; :featureType = "profile" ; :title = "Invented casts" ;
  data: cast = 1, 2 ; rows = 2, 1 ; time = 0, 600 ; lat = 50.5, 50.6 ; lon = -4.1, -4.2 ;
  pressure = 1.5, 2.5, 1 ; temperature = 10.25, 10.125, 10.5 ; }`;

async function bytesOf(kind: "classic" | "64-bit offset" | "netCDF-4"): Promise<Buffer> {
  const dataset = parseCdl(CDL);
  if (!dataset.ok) throw new Error(dataset.problems[0].message);
  const chunks: Uint8Array[] = [];
  const sink = (chunk: Uint8Array) => void chunks.push(chunk.slice());
  const written =
    kind === "netCDF-4"
      ? await writeNetcdf4(dataset.value, {}, sink)
      : await writeClassic(dataset.value, { version: kind === "classic" ? 1 : 2 }, sink);
  if (!written.ok) throw new Error(written.problems[0].message);
  return Buffer.concat(chunks);
}

async function cdlOf(path: string): Promise<string> {
  const opened = await openDataset(readFileSync(path));
  if (!opened.ok) throw new Error(opened.problems[0].message);
  return toCdl(opened.value);
}

/** Lines of CDL that one text has and the other has not. */
const onlyIn = (a: string, b: string) => a.split("\n").filter((line) => !b.split("\n").includes(line));

describe.each(["classic", "64-bit offset", "netCDF-4"] as const)("%s", (kind) => {
  test("is mended in its own kind, and only where it says so", () =>
    inTemporaryFolder(async (cwd) => {
      writeFileSync(join(cwd, "a.nc"), await bytesOf(kind));
      const run = await runWherry(["mend", "a.nc", "--out", "b.nc"], { cwd });
      expect(run).toMatchObject({ status: 0, stderr: "" });
      expect(run.stdout).toContain('temperature:units from "deg C" to "degC" (cf/units-readable)');
      expect(run.stdout).toMatch(/\nWritten to b\.nc: \d+ attributes mended\.\n/);
      const [before, after] = [await cdlOf(join(cwd, "a.nc")), await cdlOf(join(cwd, "b.nc"))];
      const opened = await openDataset(readFileSync(join(cwd, "b.nc")));
      expect(opened.ok && opened.value.kind).toBe(kind);
      expect(onlyIn(before, after).map((line) => line.trim().replace(/ = .*/, ""))).toEqual([
        "time:units",
        "lat:units",
        "temperature:standard_name",
        "temperature:units",
        ":Conventions",
      ]);
      const history = onlyIn(after, before).join("\n");
      expect(history).toContain(':Conventions from \\"CF1.13\\" to \\"CF-1.13\\"');
      expect(readdirSync(cwd).sort()).toEqual(["a.nc", "b.nc"]);
      const check = await runWherry(["check", "b.nc", "--rules", "cf"], { cwd });
      expect(check.stdout).toContain("no error, no warning");
      // a second time nothing is left to mend, and the bytes are copied
      const again = await runWherry(["mend", "b.nc", "--out", "c.nc"], { cwd });
      expect(again.stdout).toContain("Nothing to mend");
      expect(readFileSync(join(cwd, "c.nc")).equals(readFileSync(join(cwd, "b.nc")))).toBe(true);
    }));
});

test("--json tells the same, and holds to its schema", () =>
  inTemporaryFolder(async (cwd) => {
    writeFileSync(join(cwd, "a.nc"), await bytesOf("classic"));
    const { stdout, status } = await runWherry(["mend", "a.nc", "--out", "b.nc", "--json"], { cwd });
    const document = JSON.parse(stdout);
    const isDocument = new Ajv2020({ strictTypes: false }).compile(mendSchema);
    expect([status, isDocument(document), isDocument.errors]).toEqual([0, true, null]);
    expect(document.changes).toContainEqual({
      rule: "cf/latitude-units",
      variable: "lat",
      attribute: "units",
      from: "degrees",
      to: "degrees_north",
      fromType: "char",
      toType: "char",
      because: expect.any(String),
    });
  }));

describe("what mend refuses", () => {
  test.each([
    [["a.nc", "--out", "a.nc"], 2, /would replace/],
    [["a.nc", "--out", "./x/../a.nc"], 2, /would replace/],
    [["a.nc", "--out", "there.nc"], 2, /is there already/],
    [["a.nc"], 2, /--out/],
    [["table.csv", "--out", "b.csv"], 2, /only netCDF/],
    [["none.nc", "--out", "b.nc"], 3, /does not exist/],
    [["broken.nc", "--out", "b.nc"], 3, /broken\.nc/],
    [["a.nc", "--out", "nowhere/b.nc"], 3, /does not exist/],
  ])("mend %j", (args, status, words) =>
    inTemporaryFolder(async (cwd) => {
      writeFileSync(join(cwd, "a.nc"), await bytesOf("classic"));
      writeFileSync(join(cwd, "there.nc"), "kept");
      writeFileSync(join(cwd, "table.csv"), "a,b\n1,2\n");
      writeFileSync(join(cwd, "broken.nc"), (await bytesOf("classic")).subarray(0, 300));
      const before = readdirSync(cwd);
      const run = await runWherry(["mend", ...args], { cwd });
      expect(run.status).toBe(status);
      expect(run.stderr).toMatch(words);
      expect(readdirSync(cwd)).toEqual(before);
      expect(readFileSync(join(cwd, "there.nc"), "utf8")).toBe("kept");
    }),
  );
});
