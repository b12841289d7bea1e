import {
  absoluteUri,
  authority,
  dateTime,
  duration,
  email,
  epsg,
  type Form,
  identifier,
  number,
  oneOf,
  resolution,
  text,
  unit,
} from "./forms.ts";

export type Tier = "highly recommended" | "recommended" | "suggested";

/** When the absence of an attribute is looked at. */
export type Applies = "always" | "vertical" | "choice" | "never";

export interface AcddAttribute {
  readonly name: string;
  readonly tier: Tier;
  readonly form: Form;
  readonly applies: Applies;
  /** A value of the right form, as CDL. */
  readonly good: string;
  /** A value of a wrong form, as CDL; null where every text will do. */
  readonly bad: string | null;
  /** What a reader gets from it. */
  readonly tells: string;
  /** Words that are values here although they mean nothing elsewhere. */
  readonly allows?: readonly string[];
}

type Row = readonly [
  name: string,
  form: Form,
  good: string,
  bad: string | null,
  tells: string,
  applies?: Applies,
];

const group = (tier: Tier, rows: readonly Row[]): AcddAttribute[] =>
  rows.map(([name, form, good, bad, tells, applies = "always"]) => ({
    name,
    tier,
    form,
    applies,
    good,
    bad,
    tells,
  }));

const TYPES = ["person", "group", "institution", "position"];
const NUMBER = "12.5";
const WORDS = '"any words"';
const MOMENT = '"2031-05-04T10:20:00Z"';
const NO_MOMENT = '"04/05/2031 10:20"';

/** Tiers are from memory and were not read on the released page; see the basis of the rules. */
export const ACDD_ATTRIBUTES: readonly AcddAttribute[] = [
  ...group("highly recommended", [
    ["title", text, WORDS, "5", "what the data set is, in one phrase"],
    ["summary", text, WORDS, "5", "what the data set holds and how it came about"],
    ["keywords", text, '"salinity, temperature"', "5", "the words by which it is found"],
  ]),
  ...group("recommended", [
    ["id", identifier, '"survey-2031"', '"survey of 2031"', "the name by which it is referred to"],
    [
      "naming_authority",
      authority,
      '"org.example"',
      '"Example Station"',
      "who vouches that the id is unique",
    ],
    ["history", text, WORDS, "5", "what was done to the data"],
    ["source", text, WORDS, "5", "how the data were produced"],
    ["processing_level", text, WORDS, "5", "how far the data were processed and judged"],
    ["comment", text, WORDS, "5", "what else a user should know"],
    ["acknowledgement", text, '"none"', "5", "who made the work possible"],
    ["license", text, '"None"', "5", "what one may do with the data"],
    [
      "standard_name_vocabulary",
      text,
      '"CF Standard Name Table v83"',
      "83",
      "where the names of quantities come from",
    ],
    ["date_created", dateTime, MOMENT, NO_MOMENT, "when this version was made"],
    ["creator_name", text, WORDS, "5", "whom to ask about the data"],
    ["creator_email", email, '"a@example.org"', '"a at example"', "how to reach the creator"],
    ["creator_url", absoluteUri, '"https://example.org"', '"example.org"', "where to read about the creator"],
    ["institution", text, WORDS, "5", "which institution stands behind the data"],
    ["project", text, WORDS, "5", "in which project the data were taken"],
    ["publisher_name", text, WORDS, "5", "who hands the data out"],
    ["publisher_email", email, '"a@example.org"', '"a at example"', "how to reach the publisher"],
    [
      "publisher_url",
      absoluteUri,
      '"https://example.org"',
      '"example.org"',
      "where to read about the publisher",
    ],
    ["geospatial_bounds", text, '"POINT (50 3)"', "5", "where the data lie, as a figure"],
    ["geospatial_bounds_crs", epsg, '"EPSG:4326"', '"WGS 84"', "in which system the figure is given"],
    [
      "geospatial_bounds_vertical_crs",
      epsg,
      '"EPSG:5831"',
      '"depth"',
      "from which level heights count",
      "vertical",
    ],
    ["geospatial_lat_min", number, NUMBER, '"south"', "the southern limit"],
    ["geospatial_lat_max", number, NUMBER, '"north"', "the northern limit"],
    ["geospatial_lon_min", number, NUMBER, '"west"', "the western limit"],
    ["geospatial_lon_max", number, NUMBER, '"east"', "the eastern limit"],
    ["geospatial_vertical_min", number, NUMBER, '"top"', "the smallest depth or height", "vertical"],
    ["geospatial_vertical_max", number, NUMBER, '"bottom"', "the largest depth or height", "vertical"],
    [
      "geospatial_vertical_positive",
      oneOf(["up", "down"]),
      '"down"',
      '"downwards"',
      "which way it counts",
      "vertical",
    ],
    ["time_coverage_start", dateTime, MOMENT, NO_MOMENT, "when the data begin"],
    ["time_coverage_end", dateTime, MOMENT, NO_MOMENT, "when the data end"],
    ["time_coverage_duration", duration, '"PT1H30M"', '"1.5 h"', "how long the data last"],
    ["time_coverage_resolution", duration, '"PT1S"', '"1 s"', "how far apart the times are", "never"],
  ]),
  ...group("suggested", [
    ["creator_type", oneOf(TYPES), '"person"', '"team"', "whether the creator is a person or an institution"],
    ["creator_institution", text, WORDS, "5", "where the creator works"],
    [
      "publisher_type",
      oneOf(TYPES),
      '"group"',
      '"team"',
      "whether the publisher is a person or an institution",
    ],
    ["publisher_institution", text, WORDS, "5", "to which institution the publisher belongs"],
    ["program", text, WORDS, "5", "the programme that paid for the work", "choice"],
    ["contributor_name", text, WORDS, "5", "who else took part", "choice"],
    ["contributor_role", text, WORDS, "5", "what they did", "choice"],
    [
      "geospatial_lat_units",
      unit,
      '"degrees_north"',
      '"degrees of latitude"',
      "the unit of the latitude limits",
    ],
    ["geospatial_lat_resolution", resolution, NUMBER, '"fine"', "the spacing of latitudes", "never"],
    [
      "geospatial_lon_units",
      unit,
      '"degrees_east"',
      '"degrees of longitude"',
      "the unit of the longitude limits",
    ],
    ["geospatial_lon_resolution", resolution, NUMBER, '"fine"', "the spacing of longitudes", "never"],
    ["geospatial_vertical_units", unit, '"m"', '"deep"', "the unit of the vertical limits", "vertical"],
    ["geospatial_vertical_resolution", resolution, '"0.5 m"', '"fine"', "the thickness of layers", "never"],
    ["date_modified", dateTime, MOMENT, NO_MOMENT, "when the data were last changed"],
    ["date_issued", dateTime, MOMENT, NO_MOMENT, "when the data were published", "choice"],
    [
      "date_metadata_modified",
      dateTime,
      MOMENT,
      NO_MOMENT,
      "when the description was last changed",
      "choice",
    ],
    ["product_version", text, WORDS, "5", "which version this is", "choice"],
    ["keywords_vocabulary", text, WORDS, "5", "where the keywords come from", "never"],
    ["platform", text, WORDS, "5", "from what the data were taken"],
    ["platform_vocabulary", text, WORDS, "5", "where the name of the platform comes from", "never"],
    ["instrument", text, WORDS, "5", "with what the data were taken"],
    ["instrument_vocabulary", text, WORDS, "5", "where the name of the instrument comes from", "never"],
    ["cdm_data_type", text, '"Profile"', "5", "the kind of sampling, for catalogues"],
    [
      "metadata_link",
      absoluteUri,
      '"https://example.org/a"',
      '"example"',
      "where a fuller description is",
      "choice",
    ],
    ["references", text, WORDS, "5", "what was published about the data", "choice"],
  ]),
].map((row) =>
  row.name === "license" || row.name === "acknowledgement" ? { ...row, allows: ["none"] } : row,
);
