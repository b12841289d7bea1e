import { readFileSync } from "node:fs";
import { lookSchema } from "@wherry/contracts";
import { readCfDsg } from "@wherry/formats";
import { parseCdl } from "@wherry/netcdf";
import { testData } from "@wherry/testkit";
import { Ajv2020 } from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import { lookDocument } from "../src/understand/report/look-document.ts";
import { lookText } from "../src/understand/report/look-text.ts";

const validate = new Ajv2020({ allErrors: true }).compile(lookSchema);

async function look(cdl: string) {
  const dataset = parseCdl(cdl);
  if (!dataset.ok) throw new Error(dataset.problems[0].message);
  const read = await readCfDsg(dataset.value, { path: "full.nc", sha256: "0".repeat(64) });
  if (!read.ok) throw new Error(read.problems[0].message);
  return read.value;
}

test("a netCDF file is told in the same form as text, without what only text has", async () => {
  const file = await look(readFileSync(testData("reference-products", "full.cdl"), "utf8"));
  const document = lookDocument([file]);
  validate(JSON.parse(JSON.stringify(document)));
  expect(validate.errors).toBeNull();
  expect(document.files[0]).toMatchObject({
    format: "CF netCDF, profile, contiguous ragged array",
    encoding: null,
    lineEnding: null,
    delimiter: null,
    decimal: null,
    missingMarkers: ["-9999", "-1"],
  });
  // the third cast starts in air: conductivity 0, in the unit of the products
  const { columns = [] } = document.files[0]?.casts[2] ?? {};
  const conductivity = columns.find(({ header }) => header === "conductivity");
  expect(conductivity).toMatchObject({ units: "S m-1", sourceUnits: "S m-1", first: 0, sourceFirst: 0 });
  const text = lookText([file], { explain: true });
  expect(text).toContain("CF netCDF, profile, contiguous ragged array, missing: -9999 -1\n");
  expect(text).toContain("Cast EE24-03: profile, pressure already zeroed, 41 rows\n");
  expect(text).toMatch(/pressure +sea_water_pressure_due_to_sea_water +dbar +-0\.02 +0 +1 +stated/);
  expect(text).toContain("variable conductivity: standard_name says sea_water_electrical_conductivity");
});

test("a netCDF file without casts is told in words", async () => {
  const file = await look("netcdf grid { dimensions: x = 2 ; variables: float v(x) ; }");
  validate(JSON.parse(JSON.stringify(lookDocument([file]))));
  expect(validate.errors).toBeNull();
  expect(lookText([file], { explain: false })).toMatch(
    /1 variable, dimensions x = 2, no featureType, no Conventions\. .*No casts were made of it/,
  );
});
