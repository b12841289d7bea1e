import type { Defect } from "./attribute-defects.ts";

export const DIMENSION: readonly Defect[] = [
  ["binned", "float depth_bounds(obs, bound)", "float depth_bounds(bound, obs)", "cf/bounds-fit"],
  ["binned", "byte temperature_qc(obs)", "byte temperature_qc(obs, bound)", "cf/ancillary-exist"],
  ["full", "\tdouble latitude(profile)", "\tdouble latitude(obs)", "cf/feature-coordinates"],
  ["full", "\tint row_size(profile)", "\tint row_size(obs)", "cf/coordinates-fit"],
  ["binned", "bound = 2", "bound = 3", "cf/bounds-fit"],
  ["full", "source_file", "profile", "cf/label-name"],
  ["series", "char station_id(id_length)", "char station_id(time, id_length)", "cf/missing-ids"],
  ["series", "float temperature(time)", "float temperature(time, time)", "cf/dimension-once"],
  ["full", /\bconductivity\b/g, "Temperature", "cf/names-differ"],
  ["full", /\bsegment\b/g, "seg.ment", "cf/names"],
];

/** Names of a variable in the text, wherever they stand. */
export const COORDINATES: readonly Defect[] = [
  [
    "full",
    '"time latitude longitude depth profile_id"',
    '"time latitude longitude profile_id"',
    "cf/data-coordinates",
  ],
  [
    "full",
    '"time latitude longitude depth profile_id"',
    '"time latitude longitude depth profile_id crsx"',
    "cf/coordinates-exist",
  ],
  ["full", 'longitude:axis = "X"', 'longitude:axis = "Y"', "cf/axis-value"],
  ["full", 'pressure:units = "dbar"', 'pressure:units = "dbar" ; pressure:axis = "Z"', "cf/axis-place"],
  ["full", "end_latitude:units", 'end_latitude:axis = "Y" ; end_latitude:units', "cf/axis-place"],
  [
    "full",
    "latitude = 50.3412, 50.34655, 50.3529",
    "latitude = 50.3412, 150.34655, 50.3529",
    "physics/positions",
  ],
  [
    "full",
    "longitude = 3.1184, 3.10412, 3.08977",
    "longitude = 3.1184, 0., 3.08977",
    "acdd/longitude-limits",
  ],
  [
    "full",
    "latitude = 50.3412, 50.34655, 50.3529 ;\n\n longitude = 3.1184, 3.10412, 3.08977",
    "latitude = 50.3412, 3.10412, 50.3529 ;\n\n longitude = 3.1184, 50.34655, 3.08977",
    "physics/positions",
  ],
  [
    "full",
    "latitude = 50.3412, 50.34655, 50.3529 ;\n\n longitude = 3.1184, 3.10412, 3.08977",
    "latitude = 50.3412, 0., 50.3529 ;\n\n longitude = 3.1184, 0., 3.08977",
    "physics/positions",
  ],
  ["full", "longitude = 3.1184, 3.10412, 3.08977", "longitude = 8.1184, 8.10412, 8.08977", "physics/inland"],
];

export const DATA: readonly Defect[] = [
  ["full", "row_size = 32,", "row_size = 33,", "cf/count-variable"],
  ["full", "row_size = 32, 37, 41", "row_size = 32, -37, 41", "cf/count-variable"],
  ["full", '"EE24-02"', '"EE24-01"', "cf/feature-ids"],
  ["series", "time = 17", "time = 99", "cf/coordinate-monotonic"],
  ["full", "time = 1715672530.0, 1715673935.0", "time = 1715672530.0, 1915673935.0", "physics/times"],
  ["full", "time = 1715672530.0,", "time = -4715672530.0,", "physics/times"],
  ["full", "1.208, 1.38, 1.521", "1.208, 13.8, 1.521", "physics/pressure-depth"],
  [
    "full",
    "temperature = 18.3, 18.302, 18.304, 15.829, 15.807",
    "temperature = 18.3, 18.302, 18.304, 15.829, 95.807",
    "physics/range",
  ],
  ["full", "12.471, 13.7261, 14.8772", "12.471, 23.7261, 14.8772", "physics/salinity"],
  ["full", "1009.68, 1010.594", "1009.68, 1030.594", "physics/density"],
  ["full", "1481.4, 1482.16", "1481.4, 1492.16", "physics/sound-speed"],
  ["binned", /depth_bounds =\s*0\.25, 0\.75/, "depth_bounds = 0.75, 0.25", "cf/bounds-values"],
];

export const FLAGS: readonly Defect[] = [
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
    'temperature_qc:flag_meanings = "good not_evaluated questionable bad missing"',
    'temperature_qc:flag_meanings = "good, not_evaluated, questionable, bad, missing"',
    "cf/flag-meanings",
  ],
  [
    "full",
    "segment:flag_values = 1b, 2b, 3b, 4b, 5b, 6b",
    "segment:flag_masks = 0b, 1b, 2b, 4b, 8b, 16b",
    "cf/flag-values-distinct",
  ],
  ["full", /temperature_qc =\s*\d/, "temperature_qc = 7", "flags/values"],
  ["full", /temperature_qc =\s*\d/, "temperature_qc = 9", "flags/missing"],
  [
    "full",
    'temperature_qc:flag_meanings = "good not_evaluated questionable bad missing"',
    'temperature_qc:flag_meanings = "bad not_evaluated questionable good missing"',
    "flags/scheme",
  ],
  [
    "full",
    'temperature_qc:standard_name = "aggregate_quality_flag"',
    'temperature_qc:standard_name = "sea_water_temperature"',
    "cf/flag-name",
  ],
];
