import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { testWithShared } from "@wherry/testkit";
import { expect } from "vitest";
import { checkFile } from "../src/index.ts";

const NOW = Date.parse("2026-11-24T00:00:00Z") / 1000;

/**
 * Every error on the real files, by rule, as read by a person, with the reason why it is true. Rules under "file/" are
 * damage that the reader of the format reports.
 */
const NO_COORDINATES = "cf/data-coordinates"; // featureType is claimed, `coordinates` not attached (CF 9.5)
const UNIT = "cf/units-readable"; // psu, WOD_code, or a bare number 1 in place of text (CF 3.1)
const NO_CONVENTIONS = "cf/conventions"; // no global attribute Conventions (CF 2.6.1)
const READ: Readonly<Record<string, readonly string[]>> = {
  "argo/D1900857_029.nc": [NO_COORDINATES, UNIT],
  "argo/D5900865_011.nc": [NO_COORDINATES, UNIT],
  "argo/R13857_004.nc": [NO_COORDINATES],
  "argo/R6903247_203.nc": [NO_COORDINATES, UNIT],
  "dsg/glider_template_v2.0.nc": [UNIT],
  // broken on purpose
  "netcdf/bad_begin.nc5": ["file/netcdf-overlap"],
  "netcdf/bad_cdf5_begin.nc": ["file/netcdf-overlap"],
  "netcdf/bad_ndims.nc2": ["file/netcdf-count"],
  "netcdf/bad_padding_name_dim.nc1": [NO_CONVENTIONS, "cf/file-name"],
  "netcdf/bad_unlimited.nc1": ["file/netcdf-record-dimensions"],
  // tests of the format that know nothing of CF
  "netcdf/example_1.nc": [NO_CONVENTIONS],
  "netcdf/example_2.nc": [
    NO_CONVENTIONS,
    "cf/coordinate-fill",
    "cf/coordinate-monotonic",
    "cf/packing-types",
  ],
  "netcdf/ref_nctest_classic.nc": [NO_CONVENTIONS, "cf/text-encoding"],
  "netcdf/tiny.nc": [NO_CONVENTIONS],
  // data on dimensions of their own name the depth of another one; mole concentrations in umol/kg; a compound type
  "wod/wod_ragged_OSD.nc": ["cf/coordinates-fit", "cf/units-canonical", UNIT, "file/netcdf-unsupported-type"],
};

testWithShared(
  ["samples", "real"],
  "real netCDF files are judged without a crash, and each error was read",
  async (folder) => {
    const names = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) =>
      /\.nc\d?$/.test(name),
    );
    expect(names.length).toBeGreaterThan(10);
    const errors: Record<string, string[]> = {};
    for (const name of names.sort()) {
      const { findings } = await checkFile(readFileSync(join(folder, name)), { path: name, now: NOW });
      const rules = findings.filter(({ level }) => level === "error").map(({ rule }) => rule);
      if (rules.length > 0) errors[name] = [...new Set(rules)].sort();
    }
    expect(errors).toEqual(READ);
  },
);
