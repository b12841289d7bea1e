import type { Change, Product } from "./products.ts";

/** A change that the standards allow: no error and no warning may come of it. */
export type Variation = readonly [product: Product, ...changes: Change[]];

/** Spellings that UDUNITS reads as the same unit, or as one that can be converted without another number. */
const SPELLINGS: Readonly<Record<string, readonly string[]>> = {
  '"degrees_north"': ["degree_north", "degree_N", "degrees_N", "degreeN", "degreesN"],
  '"degrees_east"': ["degree_east", "degree_E", "degrees_E", "degreeE", "degreesE"],
  '"degree_C"': ["degC", "deg_C", "Celsius", "celsius", "degree_Celsius", "degrees_C", "°C"],
  '"S m-1"': ["siemens/meter", "S.m^-1", "S/m", "siemens m-1", "S m^-1", "S m**-1"],
  '"kg m-3"': ["kg/m3", "kg m^-3", "g/l", "kilogram meter-3", "kg.m-3", "g L-1"],
  '"m s-1"': ["m/s", "meters per second", "metre second-1", "m.s-1"],
  '"dbar"': ["decibar", "decibars", "dbars"],
  'depth:units = "m"': ["meter", "meters", "metre", "metres"],
  'elapsed:units = "s"': ["second", "seconds", "sec"],
  'salinity:units = "1"': ["1.", "1e0"],
};

const spelt: readonly Variation[] = Object.entries(SPELLINGS).flatMap(([from, others]) =>
  others.map((other): Variation => {
    const quoted = from.slice(from.indexOf('"'));
    return ["full", [from, from.replace(quoted, `"${other}"`)]];
  }),
);

const MOMENT = "seconds since 1970-01-01 00:00:00Z";

const times: readonly Variation[] = [
  "seconds since 1970-01-01",
  "s since 1970-1-1 0:0:0",
  "sec since 1970-01-01 00:00",
  "seconds since 1970-01-01 00:00:00.0",
  "second since 1970-01-01 00:00:00 +00:00",
  "seconds since 1970-01-01 00:00:00 Z",
  "seconds since 1970-01-01 00:00:00 -0:00",
  "seconds since 1970-01-01 0",
].map((units): Variation => ["full", [MOMENT, units]]);

const older = (edition: string, ...changes: Change[]): Variation => [
  "full",
  ['"CF-1.13, ACDD-1.3"', `"CF-${edition}, ACDD-1.3"`],
  ...changes,
];

/** What an older edition allows, in a file that claims it. */
const editions: readonly Variation[] = [
  older("1.11"),
  older("1.11", [MOMENT, "seconds since 1970-01-01T00:00:00Z"]),
  older("1.10", [MOMENT, "seconds since 1970-01-01 00:00:00 UTC"]),
  older("1.10"),
  older("1.9"),
  older("1.8", ['time:calendar = "standard" ;', ""]),
  older("1.8", ['time:calendar = "standard"', 'time:calendar = "gregorian"']),
  older("1.10", ['temperature:units_metadata = "temperature: on_scale" ;', ""]),
  older("1.8", ['time:calendar = "standard"', 'time:calendar = "Gregorian"']),
  older("1.10", [MOMENT, "seconds since 1970-01-01 01:00:00 +1:00"]),
  ["binned", ['"CF-1.13, ACDD-1.3"', '"CF-1.8, ACDD-1.3"']],
  ["series", ['"CF-1.13, ACDD-1.3"', '"CF-1.11, ACDD-1.3"']],
];

const words: readonly Variation[] = [
  ["full", ['"CF-1.13, ACDD-1.3"', '"ACDD-1.3, CF-1.13"']],
  ["full", ['"CF-1.13, ACDD-1.3"', '"CF-1.13 ACDD-1.3"']],
  ["full", ['"CF-1.13, ACDD-1.3"', '"CF-1.13,ACDD-1.3,Our-2"']],
  ["full", [':featureType = "profile"', ':featureType = "Profile"']],
  ["full", [':featureType = "profile"', ':featureType = "PROFILE"']],
  ["full", ['depth:positive = "down"', 'depth:positive = "Down"']],
  ["full", ['depth:positive = "down"', 'depth:positive = "DOWN"']],
  ["full", ['axis = "Z"', 'axis = "z"']],
  ["full", ['axis = "T"', 'axis = "t"']],
  ["full", ['time:calendar = "standard"', 'time:calendar = "Standard"']],
  ["full", ['time:calendar = "standard"', 'time:calendar = "proleptic_gregorian"']],
  ["full", ['"time latitude longitude depth profile_id"', '"profile_id  depth longitude latitude time"']],
  ["full", ['"time latitude longitude depth profile_id"', '" time latitude longitude depth profile_id "']],
  ["full", ['"time latitude longitude depth profile_id"', '"time latitude longitude depth"']],
  ["full", ['temperature:grid_mapping = "crs"', 'temperature:grid_mapping = "crs: latitude longitude"']],
  ["full", [":geospatial_lat_min = 50.3412", ":geospatial_lat_min = 50.3412f"]],
  ["full", [/:time_coverage_end = "[^"]*"/, ':time_coverage_end = "2024-05-14T10:31:22+02:00"']],
  ["full", [/:time_coverage_start = "[^"]*"/, ':time_coverage_start = "2024-05-14T09:42:10+02:00"']],
  ["full", ['"PT49M12S"', '"PT0H49M12S"']],
  ["full", ['"PT49M12S"', '"PT2952S"']],
  ["full", ['"PT49M12S"', '"P0DT49M12S"']],
  ["full", [':license = "https://creativecommons.org/publicdomain/zero/1.0/"', ':license = "CC0-1.0"']],
  ["full", [':date_created = "2024-05-20T09:00:00Z"', ':date_created = "2024-05-20"']],
  ["full", [':date_issued = "2024-05-20T09:00:00Z"', ':date_issued = "2024-06-01T11:00:00+02:00"']],
  ["full", [':creator_type = "group"', ':creator_type = "person"']],
  [
    "full",
    [
      "POLYGON ((50.3412 3.08977, 50.3529 3.08977, 50.3529 3.1184, 50.3412 3.1184, 50.3412 3.08977))",
      "MULTIPOINT (50.3412 3.08977, 50.3529 3.1184)",
    ],
  ],
  ["full", ["POLYGON ((50.3412 3.08977", "polygon((50.3412 3.08977"]],
  [
    "full",
    [
      "POLYGON ((50.3412 3.08977, 50.3529 3.08977, 50.3529 3.1184, 50.3412 3.1184, 50.3412 3.08977))",
      "MULTIPOLYGON (((50.3412 3.08977, 50.3529 3.08977, 50.3529 3.1184, 50.3412 3.1184, 50.3412 3.08977)))",
    ],
  ],
  [
    "full",
    [
      "POLYGON ((50.3412 3.08977, 50.3529 3.08977, 50.3529 3.1184, 50.3412 3.1184, 50.3412 3.08977))",
      "LINESTRING (50.3412 3.08977, 50.3529 3.1184)",
    ],
  ],
  ["binned", ["depth: mean (downcast rows flagged good, layers 0.5 m thick)", "depth: mean"]],
  ["binned", ["depth: mean (downcast", "depth: mean (interval: 0.1 m comment: downcast"]],
  ["binned", ["depth: mean (downcast", "time: latitude: longitude: point depth: mean (downcast"]],
  [
    "full",
    [
      'temperature_qc:flag_meanings = "good not_evaluated',
      'temperature_qc:flag_meanings = "good_value not_evaluated',
    ],
  ],
];

const structure: readonly Variation[] = [
  ["full", [":Conventions", ":zzz = 1 ; :Conventions"]],
  ["full", [":Conventions", ':our_note = "länger" ; :Conventions']],
  ["full", ["temperature:units =", 'temperature:our_note = "x" ; temperature:units =']],
  [
    "full",
    [
      "temperature:_FillValue = -9999.f",
      "temperature:_FillValue = -9999.f ; temperature:missing_value = -9999.f",
    ],
  ],
  [
    "full",
    [
      "temperature:_FillValue = -9999.f",
      "temperature:_FillValue = -9999.f ; temperature:valid_min = -5.f ; temperature:valid_max = 45.f",
    ],
  ],
  [
    "full",
    [
      "temperature:_FillValue = -9999.f",
      "temperature:_FillValue = -9999.f ; temperature:valid_range = -5.f, 45.f",
    ],
  ],
  ["full", ["\t\ttemperature:actual_range = 13.005f, 18.304f ;\n", ""]],
  ["full", ['\t\tlatitude:axis = "Y" ;\n', ""], ['\t\tlongitude:axis = "X" ;\n', ""]],
  [
    "full",
    [
      "\tdouble time(profile)",
      '\tfloat unused ;\n\t\tunused:long_name = "nothing" ; unused:units = "1" ; unused:coverage_content_type = "auxiliaryInformation" ;\n\tdouble time(profile)',
    ],
  ],
  ["full", ["obs = 110 ;", "obs = UNLIMITED ; // (110 currently)"]],
  ["full", ["double latitude(profile)", "float latitude(profile)"]],
  ["full", ["\tint row_size(profile)", "\tshort row_size(profile)"]],
  [
    "full",
    [/(float|byte|double|int) ([a-z_]+)\(obs\) ;/g, "$1 $2(row) ;"],
    ["obs = 110", "row = 110"],
    ['"obs"', '"row"'],
  ],
  ["full", [/\bprofile_id\b/g, "cast_name"], ['cf_role = "cast_name"', 'cf_role = "profile_id"']],
  ["full", [/\btemperature\b(?=[(: ])/g, "t090"], ['"t090: on_scale"', '"temperature: on_scale"']],
  ["binned_incomplete", ['"degrees_north"', '"degreeN"']],
  ["series", [MOMENT, "seconds since 1970-01-01 00:00:00.0"]],
  ["series", ["\tdouble latitude ;", "\tfloat latitude ;"]],
];

export const LEGAL: readonly Variation[] = [...spelt, ...times, ...editions, ...words, ...structure];
