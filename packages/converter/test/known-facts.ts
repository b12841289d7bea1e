import type { SurveySheet } from "@wherry/contracts";
import type { DataSetFacts } from "../src/deposit/data-set-facts.ts";
import type { CastFacts } from "../src/deposit/product-facts.ts";

/** An invented cast as a product tells of it. */
export const castFacts = (id: string, more: Partial<CastFacts> = {}): CastFacts => ({
  id,
  kind: "profile",
  station: "Old Quay",
  time: 1_748_850_000,
  endTime: 1_748_850_300,
  latitude: 46.25,
  longitude: -4.2,
  endLatitude: 46.251,
  endLongitude: -4.2,
  positionFlag: 1,
  timeFlag: 1,
  sourceFile: `${id}.csv`,
  ...more,
});

/** A sheet in which everything that records can tell is told; all of it is invented. */
export const fullSheet = (): SurveySheet => whole as unknown as SurveySheet;

const whole = {
  version: 1,
  created: "2025-06-02T08:00:00Z",
  survey: {
    id: "quay-2025",
    title: "Casts at an invented quay",
    summary: "Invented casts.",
    keywords: ["quay"],
    keywords_vocabulary: "words of ours",
    naming_authority: "org.example.quay",
    product_version: "1.1.0",
    institution: "Quay Station (invented)",
    institution_ror: "https://ror.org/03yrm5c26",
    project: "Quay Project",
    program: "Quay Programme",
    source: "casts by hand",
    comment: "A comment.",
    acknowledgement: "Thanks to nobody.",
    license: "CC-BY-4.0",
    access: { right: "embargoed", embargo_end: "2027-01-01", conditions: "ask the station" },
    funding: [
      {
        funder: "Invented Fund",
        funder_ror: "https://ror.org/04wxnsj81",
        award_number: "A-1",
        award_title: "Quays",
        award_url: "https://fund.example.org/a-1",
      },
    ],
    places: ["Old Quay", "Quay County"],
    water_level: "Depths from the water surface; high water at noon.",
    methods: "Lowered by hand at half a metre a second.",
    quality: "Salinity of sharp layers is doubtful.",
    related: [{ relation: "described by", identifier: "https://doi.org/10.1000/182", title: "On quays" }],
    references: ["https://quay.example.org/notes", "Station book 7"],
    metadata_link: "https://quay.example.org/records/quay-2025",
    sea_name: "Invented Bay",
    date_issued: "2025-06-03",
    date_modified: "2025-06-02",
  },
  people: {
    creator: {
      name: "Ines Invented",
      type: "person",
      institution: "Quay Station (invented)",
      orcid: "0000-0002-1825-0097",
      ror: "https://ror.org/03yrm5c26",
      consent: true,
      email: "ines@quay.example.org",
      url: "https://quay.example.org",
    },
    publisher: { name: "Quay Archive (invented)", type: "institution", ror: "https://ror.org/04wxnsj81" },
    contributors: [{ name: "Boat crew", role: "boat crew", type: "group" }],
  },
  platforms: [{ id: "boat", name: "open boat", call_sign: "XX1", comment: "invented" }],
  instruments: [
    {
      id: "probe",
      name: "conductivity temperature pressure profiler",
      model: "invented probe",
      serial_number: "7",
      identifier: "https://doi.org/10.1000/7",
      calibration_date: "2025-01-01",
      sensors: {
        temperature: {
          units: "degree_C",
          calibrations: [
            {
              date: "2025-01-01",
              certificate: "C-7",
              laboratory: "Quay Laboratory",
              coefficients: { a: 0.5 },
            },
          ],
        },
      },
    },
  ],
};

export const facts = (more: Partial<DataSetFacts> = {}): DataSetFacts => ({
  sheet: fullSheet(),
  created: "2025-06-02T08:00:00Z",
  software: "wherry 0.0.0",
  products: [
    {
      file: "quay-2025_full.nc",
      kind: "classic",
      attributes: new Map<string, string | number>([
        ["Conventions", "CF-1.13, ACDD-1.3"],
        [
          "history",
          "2025-06-02T08:00:00Z wherry 0.0.0: read\n2025-06-02T08:00:00Z wherry 0.0.0: every row written",
        ],
        ["processing_level", "quality flagged"],
        ["standard_name_vocabulary", "CF Standard Name Table v83"],
      ]),
      variables: [
        {
          name: "temperature",
          longName: "in-situ temperature, ITS-90",
          standardName: "sea_water_temperature",
          units: "degree_C",
          content: "physicalMeasurement",
        },
      ],
      casts: [castFacts("Q1")],
    },
  ],
  casts: [castFacts("Q1")],
  box: { west: -4.2, east: -4.1, south: 46.25, north: 46.3 },
  time: { start: "2025-06-02T07:40:00Z", end: "2025-06-02T07:45:00Z" },
  vertical: { least: 0.1, most: 12.5, units: "m" },
  ...more,
});
