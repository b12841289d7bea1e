import type { Contributor, Party } from "@wherry/contracts";
import { orcidAddress, rorAddress } from "../../sheet/identifiers.ts";
import { isPerson } from "../../sheet/identity-conflicts.ts";
import type { DataSetFacts } from "../data-set-facts.ts";
import {
  CAUTION,
  instituteOf,
  licenceFacts,
  ownKeywords,
  relationKind,
  standardNames,
} from "./record-words.ts";

/** What DataCite writes where a mandatory fact is not known (appendix of its schema documentation; from memory). */
const UNAVAILABLE = "(:unav)";

/**
 * The data set as a DataCite record in JSON, ready for a DOI to be put in: no identifier is made up here.
 *
 * @source DataCite Metadata Schema 4.7 (2026-03-31), properties and lists of words; the JSON form is that of its
 *         programming interface, from memory
 */
export function dataciteRecord(facts: DataSetFacts): string {
  const { sheet, created } = facts;
  const { survey, people = {} } = sheet;
  const institute = instituteOf(sheet);
  const creator: Party | null =
    people.creator ?? (institute === null ? null : { name: institute, type: "institution" });
  const document = {
    schemaVersion: "http://datacite.org/schema/kernel-4",
    types: { resourceTypeGeneral: "Dataset", resourceType: "conductivity, temperature and depth casts" },
    creators: creator === null ? [{ name: UNAVAILABLE }] : [named(creator)],
    titles: [{ title: survey.title ?? survey.id }],
    publisher: publisher(people.publisher),
    publicationYear: Number.parseInt(
      (survey.access?.embargo_end ?? survey.date_issued ?? created).slice(0, 4),
      10,
    ),
    ...given("subjects", subjects(facts)),
    ...given("contributors", contributors(facts)),
    ...given("dates", dates(facts)),
    language: "en",
    alternateIdentifiers: [
      {
        alternateIdentifier: survey.id,
        alternateIdentifierType: survey.naming_authority ?? "local identifier",
      },
    ],
    ...given("relatedIdentifiers", related(facts)),
    sizes: [`${facts.casts.length} casts`, `${facts.products.length} netCDF files`],
    formats: ["application/netcdf", "text/csv"],
    ...(survey.product_version === undefined ? {} : { version: survey.product_version }),
    ...given("rightsList", rights(facts)),
    ...given("descriptions", descriptions(facts)),
    ...given("geoLocations", places(facts)),
    ...given(
      "fundingReferences",
      (survey.funding ?? []).map(({ funder, funder_ror, award_number, award_title, award_url }) => ({
        funderName: funder,
        ...(funder_ror === undefined
          ? {}
          : {
              funderIdentifier: rorAddress(funder_ror),
              funderIdentifierType: "ROR",
              schemeUri: "https://ror.org",
            }),
        ...(award_number === undefined ? {} : { awardNumber: award_number }),
        ...(award_url === undefined ? {} : { awardUri: award_url }),
        ...(award_title === undefined ? {} : { awardTitle: award_title }),
      })),
    ),
  };
  return `${JSON.stringify(document, null, 2)}\n`;
}

const given = <T>(key: string, list: readonly T[]): Record<string, readonly T[]> =>
  list.length === 0 ? {} : { [key]: list };

function named(party: Party | Contributor) {
  const { name, orcid, ror, institution } = party;
  const person = isPerson(party);
  const identifiers = [
    ...(orcid === undefined
      ? []
      : [
          {
            nameIdentifier: orcidAddress(orcid),
            nameIdentifierScheme: "ORCID",
            schemeUri: "https://orcid.org",
          },
        ]),
    ...(ror === undefined || person
      ? []
      : [{ nameIdentifier: rorAddress(ror), nameIdentifierScheme: "ROR", schemeUri: "https://ror.org" }]),
  ];
  return {
    name,
    nameType: person ? "Personal" : "Organizational",
    ...given("nameIdentifiers", identifiers),
    ...(institution === undefined || institution === name
      ? {}
      : {
          affiliation: [
            {
              name: institution,
              ...(ror === undefined || !person
                ? {}
                : {
                    affiliationIdentifier: rorAddress(ror),
                    affiliationIdentifierScheme: "ROR",
                    schemeUri: "https://ror.org",
                  }),
            },
          ],
        }),
  };
}

function publisher(party: Party | undefined) {
  if (party === undefined) return { name: UNAVAILABLE };
  return {
    name: party.name,
    ...(party.ror === undefined
      ? {}
      : {
          publisherIdentifier: rorAddress(party.ror),
          publisherIdentifierScheme: "ROR",
          schemeUri: "https://ror.org",
        }),
  };
}

function subjects(facts: DataSetFacts) {
  const table = facts.products[0]?.attributes.get("standard_name_vocabulary");
  const own = facts.sheet.survey.keywords_vocabulary;
  return [
    ...standardNames(facts).map((subject) => ({
      subject,
      ...(typeof table === "string" ? { subjectScheme: table } : {}),
    })),
    ...ownKeywords(facts.sheet).map((subject) => ({
      subject,
      ...(own === undefined ? {} : { subjectScheme: own }),
    })),
  ];
}

/** Words of roles, and the contributor type of DataCite that they mean; any other role is Other. */
const ROLES: readonly (readonly [RegExp, string])[] = [
  [/collect|crew|field|observ|sampl|handling/i, "DataCollector"],
  [/manag|process|curat/i, "DataManager"],
  [/lead|principal|chief/i, "ProjectLeader"],
  [/contact/i, "ContactPerson"],
  [/supervis/i, "Supervisor"],
  [/research|scien/i, "Researcher"],
];

function contributors({ sheet }: DataSetFacts) {
  const institute = instituteOf(sheet);
  const { institution_ror: ror } = sheet.survey;
  return [
    ...(sheet.people?.contributors ?? []).map((party) => ({
      ...named(party),
      contributorType: ROLES.find(([words]) => words.test(party.role))?.[1] ?? "Other",
    })),
    ...(institute === null
      ? []
      : [
          {
            ...named({ name: institute, type: "institution", ...(ror === undefined ? {} : { ror }) }),
            contributorType: "HostingInstitution",
          },
        ]),
  ];
}

function dates({ sheet, created, time }: DataSetFacts) {
  const { survey } = sheet;
  const date = (text: string | undefined, dateType: string) =>
    text === undefined ? [] : [{ date: text, dateType }];
  return [
    ...date(created, "Created"),
    ...date(survey.date_modified, "Updated"),
    ...date(survey.date_issued, "Issued"),
    ...date(survey.access?.embargo_end, "Available"),
    ...date(time === null ? undefined : `${time.start}/${time.end}`, "Collected"),
    ...date(time === null ? undefined : `${time.start}/${time.end}`, "Coverage"),
  ];
}

function related({ sheet }: DataSetFacts) {
  const { survey, instruments = [] } = sheet;
  const address = (text: string) => {
    const doi = /^(?:doi:|https?:\/\/(?:dx\.)?doi\.org\/)(10\..+)$/i.exec(text)?.[1];
    return doi === undefined
      ? { relatedIdentifier: text, relatedIdentifierType: "URL" }
      : { relatedIdentifier: doi, relatedIdentifierType: "DOI" };
  };
  const addresses = (texts: readonly string[]) => texts.filter((text) => /^(https?|doi):/i.test(text));
  return [
    ...(survey.related ?? []).map(({ identifier, relation }) => ({
      ...address(identifier),
      relationType: relationKind(relation).datacite,
    })),
    ...addresses(survey.references ?? []).map((text) => ({ ...address(text), relationType: "References" })),
    ...addresses([survey.metadata_link ?? ""]).map((text) => ({
      ...address(text),
      relationType: "HasMetadata",
    })),
    ...instruments.flatMap(({ identifier }) =>
      identifier === undefined
        ? []
        : [{ ...address(identifier), relationType: "IsCollectedBy", resourceTypeGeneral: "Instrument" }],
    ),
  ];
}

/** Concepts of the Access Rights vocabulary of COAR (version 1.0, from memory). */
const ACCESS = {
  open: ["open access", "http://purl.org/coar/access_right/c_abf2"],
  embargoed: ["embargoed access", "http://purl.org/coar/access_right/c_f1cf"],
  restricted: ["restricted access", "http://purl.org/coar/access_right/c_16ec"],
  "metadata only": ["metadata only access", "http://purl.org/coar/access_right/c_14cb"],
} as const;

function rights({ sheet }: DataSetFacts) {
  const licence = licenceFacts(sheet);
  const { access } = sheet.survey;
  return [
    ...(licence === null
      ? []
      : [
          {
            rights: licence.name,
            ...(licence.address === null ? {} : { rightsUri: licence.address }),
            ...(licence.id === null
              ? {}
              : {
                  rightsIdentifier: licence.id,
                  rightsIdentifierScheme: "SPDX",
                  schemeUri: "https://spdx.org/licenses/",
                }),
          },
        ]),
    ...(access === undefined
      ? []
      : [
          {
            rights: [ACCESS[access.right][0], access.conditions].filter(Boolean).join(": "),
            rightsUri: ACCESS[access.right][1],
          },
        ]),
  ];
}

function descriptions({ sheet, products, vertical }: DataSetFacts) {
  const { survey } = sheet;
  const history = products[0]?.attributes.get("history");
  const description = (text: string | undefined, descriptionType: string) =>
    text ? [{ description: text, descriptionType }] : [];
  const technical = [
    String(products[0]?.attributes.get("Conventions") ?? ""),
    vertical === null
      ? ""
      : `vertical range ${vertical.least} to ${vertical.most} ${vertical.units}, positive down`,
    survey.water_level ?? "",
  ].filter((text) => text !== "");
  return [
    ...description(survey.summary, "Abstract"),
    ...description(
      [survey.methods, typeof history === "string" ? history : ""].filter(Boolean).join("\n"),
      "Methods",
    ),
    ...description(technical.join("; "), "TechnicalInfo"),
    ...description(
      [survey.quality, survey.comment, survey.acknowledgement, CAUTION].filter(Boolean).join("\n"),
      "Other",
    ),
  ];
}

function places({ sheet, box }: DataSetFacts) {
  const { sea_name, places: names = [] } = sheet.survey;
  const area =
    box === null
      ? {}
      : box.west === box.east && box.south === box.north
        ? { geoLocationPoint: { pointLongitude: box.west, pointLatitude: box.south } }
        : {
            geoLocationBox: {
              westBoundLongitude: box.west,
              eastBoundLongitude: box.east,
              southBoundLatitude: box.south,
              northBoundLatitude: box.north,
            },
          };
  const first = { ...(sea_name === undefined ? {} : { geoLocationPlace: sea_name }), ...area };
  return [
    ...(Object.keys(first).length === 0 ? [] : [first]),
    ...names.map((name) => ({ geoLocationPlace: name })),
  ];
}
