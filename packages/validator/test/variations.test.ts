import { readFileSync } from "node:fs";
import { parseCdl } from "@wherry/netcdf";
import { testData } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { checkDataset, type Finding } from "../src/index.ts";

const NOW = Date.parse("2026-11-24T00:00:00Z") / 1000;
const products = Object.fromEntries(
  ["full", "binned", "binned_incomplete", "series"].map((name) => [
    name,
    readFileSync(testData("reference-products", `${name}.cdl`), "utf8"),
  ]),
);

/** Errors and warnings on a product in which a text was replaced everywhere. */
async function heavy(product: string, from: string | RegExp, to: string): Promise<Finding[]> {
  const text = products[product] ?? "";
  const changed = text.replaceAll(typeof from === "string" ? from : new RegExp(from, "g"), to);
  expect(changed, "the text to replace was found").not.toBe(text);
  const parsed = parseCdl(changed);
  if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join("; "));
  const findings = await checkDataset(parsed.value, { path: `${product}.nc`, now: NOW });
  return findings.filter(({ level }) => level !== "advice");
}

describe("what the standards allow stays without error and warning", () => {
  test.each([
    ["full", '"degrees_north"', '"degree_N"'],
    ["full", '"degrees_east"', '"degreesE"'],
    ["full", '"degree_C"', '"Celsius"'],
    ["full", '"degree_C"', '"°C"'],
    ["full", '"S m-1"', '"siemens/meter"'],
    ["full", '"S m-1"', '"S.m^-1"'],
    ["full", '"kg m-3"', '"g/l"'],
    ["full", '"m s-1"', '"meters per second"'],
    ["full", '"dbar"', '"decibars"'],
    ["full", "seconds since 1970-01-01 00:00:00Z", "seconds since 1970-01-01"],
    ["full", "seconds since 1970-01-01 00:00:00Z", "s since 1970-1-1 0:0:0 +00:00"],
    ["full", '"CF-1.13, ACDD-1.3"', '"ACDD-1.3, CF-1.13"'],
    ["full", '"CF-1.13, ACDD-1.3"', '"CF-1.13 ACDD-1.3"'],
    ["full", ':featureType = "profile"', ':featureType = "Profile"'],
    ["full", '"time latitude longitude depth profile_id"', '"profile_id  depth longitude latitude time"'],
    ["full", 'depth:positive = "down"', 'depth:positive = "Down"'],
    ["full", '"standard"', '"proleptic_gregorian"'],
    [
      "full",
      ':time_coverage_end = "2024-05-14T08:31:22Z"',
      ':time_coverage_end = "2024-05-14T10:31:22+02:00"',
    ],
    ["full", '"PT49M12S"', '"PT0H49M12S"'],
    ["full", ":Conventions", ":zzz = 1 ; :Conventions"],
    ["full", 'axis = "Z"', 'axis = "z"'],
    ["binned", '"CF-1.13, ACDD-1.3"', '"CF-1.8, ACDD-1.3"'],
    ["binned_incomplete", '"degrees_north"', '"degreeN"'],
    ["series", "seconds since 1970-01-01 00:00:00Z", "seconds since 1970-01-01 00:00:00.0"],
    ["series", '"CF-1.13, ACDD-1.3"', '"CF-1.11, ACDD-1.3"'],
  ] as const)("%s: %s as %s", async (product, from, to) => {
    const findings = await heavy(product, from, to);
    expect(findings.map(({ rule, message }) => `${rule}: ${message}`)).toEqual([]);
  });
});

describe("what breaks a rule is found by that rule", () => {
  test.each([
    ["full", '\tlatitude:units = "degrees_north" ;', "", "cf/latitude-units"],
    ["full", 'longitude:units = "degrees_east"', 'longitude:units = "degrees_west"', "cf/longitude-units"],
    ["full", 'depth:positive = "down" ;', "", "cf/vertical-positive"],
    ["full", 'depth:positive = "down"', 'depth:positive = "up"', "cf/positive-sense"],
    ["full", 'depth:positive = "down"', 'depth:positive = "below"', "cf/positive-value"],
    ["full", 'sample_dimension = "obs"', 'sample_dimension = "rows"', "cf/count-variable"],
    ["full", 'row_size:sample_dimension = "obs" ;', "", "cf/ragged-link"],
    ["full", "row_size = 32,", "row_size = 33,", "cf/count-variable"],
    ["full", "EE24-02", "EE24-01", "cf/feature-ids"],
    ["full", 'cf_role = "profile_id"', 'cf_role = "cast_id"', "cf/cf-role"],
    ["full", 'profile_id:cf_role = "profile_id" ;', "", "cf/cf-role"],
    ["full", ':featureType = "profile" ;', "", "cf/feature-type"],
    ["full", ':featureType = "profile"', ':featureType = "cast"', "cf/feature-type"],
    [
      "full",
      'temperature:coordinates = "time latitude longitude depth profile_id" ;',
      "",
      "cf/data-coordinates",
    ],
    ["full", 'temperature:coordinates = "time', 'temperature:coordinates = "tiem', "cf/coordinates-exist"],
    ["full", '"sea_water_temperature"', '"sea_water_temprature"', "cf/standard-name-known"],
    ["full", 'temperature:units = "degree_C"', 'temperature:units = "deg C"', "cf/units-readable"],
    ["full", 'temperature:units = "degree_C"', 'temperature:units = "dbar"', "cf/units-canonical"],
    ["full", 'temperature:units_metadata = "temperature: on_scale" ;', "", "cf/temperature-metadata"],
    ["full", '"temperature: on_scale"', '"on_scale"', "cf/units-metadata"],
    ["full", "density:actual_range = 998.542f", "density:actual_range = 998.5f", "cf/actual-range"],
    [
      "full",
      "temperature_qc:flag_values = 1b, 2b, 3b, 4b, 9b",
      "temperature_qc:flag_values = 1b, 2b, 3b, 9b",
      "cf/flag-meanings",
    ],
    [
      "full",
      "temperature_qc:flag_values = 1b, 2b",
      "temperature_qc:flag_values = 1b, 1b",
      "cf/flag-values-distinct",
    ],
    [
      "full",
      'temperature:ancillary_variables = "temperature_qc"',
      'temperature:ancillary_variables = "temp_qc"',
      "cf/ancillary-exist",
    ],
    ["full", 'grid_mapping_name = "latitude_longitude"', 'grid_mapping_name = "wgs84"', "cf/grid-mapping"],
    ["full", "1970-01-01 00:00:00Z", "1970-01-01T00:00:00Z", "cf/time-origin-form"],
    ["full", 'time:calendar = "standard" ;', "", "cf/calendar-present"],
    ["full", "end_time:units", 'end_time:calendar = "standard" ; end_time:units', "cf/calendar-place"],
    ["full", '"CF-1.13, ACDD-1.3"', '"CF1.13, ACDD-1.3"', "cf/conventions"],
    ["full", '"CF-1.13, ACDD-1.3"', '"CF-1.13"', "acdd/conventions"],
    ["full", /:title = "[^"]*" ;/.source, "", "acdd/title"],
    ["full", ":geospatial_lat_max = 50.3529", ":geospatial_lat_max = 51.", "acdd/latitude-limits"],
    ["full", ":geospatial_lon_min = 3.08977", ":geospatial_lon_min = -3.08977", "acdd/longitude-limits"],
    [
      "full",
      ":geospatial_vertical_max = 3.855f",
      ":geospatial_vertical_max = 38.55f",
      "acdd/vertical-limits",
    ],
    [
      "full",
      ':time_coverage_start = "2024-05-14T07',
      ':time_coverage_start = "2024-05-14T09',
      "acdd/time-coverage",
    ],
    ["full", '"PT49M12S"', '"PT4M12S"', "acdd/time-coverage"],
    ["full", ':cdm_data_type = "Profile"', ':cdm_data_type = "Trajectory"', "acdd/sampling-kind"],
    ["full", ':creator_email = "field@', ':creator_email = "field at ', "acdd/creator-email"],
    [
      "full",
      'temperature:coverage_content_type = "physicalMeasurement"',
      'temperature:coverage_content_type = "qualityInformation"',
      "acdd/content-type",
    ],
    ["binned", "float depth_bounds(obs, bound)", "float depth_bounds(bound, obs)", "cf/bounds-fit"],
    ["series", "time = 17", "time = 99", "cf/coordinate-monotonic"],
  ] as const)("%s: %s as %j by %s", async (product, from, to, rule) => {
    const pattern = rule === "acdd/title" ? new RegExp(from) : from;
    expect((await heavy(product, pattern, to)).map((finding) => finding.rule)).toContain(rule);
  });
});
