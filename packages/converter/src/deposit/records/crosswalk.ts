/** Where a fact goes in each record. */
export interface CrosswalkRow {
  /** Place in the survey sheet, or what it is found from. */
  readonly fact: string;
  /** Global attribute of the products, if it is one. */
  readonly acdd: string | null;
  /** Property of the DataCite record, as `creators.name`. */
  readonly datacite: readonly string[];
  /** Path in the ISO record, from the root, of the element that holds it. */
  readonly iso: readonly string[];
}

const ID = "mdb:identificationInfo/mri:MD_DataIdentification";
const CITATION = `${ID}/mri:citation/cit:CI_Citation`;
const EXTENT = `${ID}/mri:extent/gex:EX_Extent`;
const PARTY = `${CITATION}/cit:citedResponsibleParty`;
const KEYWORDS = `${ID}/mri:descriptiveKeywords`;
const RIGHTS = `${ID}/mri:resourceConstraints/mco:MD_LegalConstraints`;
const ACQUISITION = "mdb:acquisitionInformation";

const row = (
  fact: string,
  acdd: string | null,
  datacite: readonly string[],
  iso: readonly string[],
): CrosswalkRow => ({ fact, acdd, datacite, iso });

/**
 * The crosswalk: every element of a record belongs to one of its rows, which a test holds. Words in brackets behind a
 * path, or behind a colon, are the code by which elements of one path differ.
 */
export const CROSSWALK: readonly CrosswalkRow[] = [
  row(
    "survey.id, survey.naming_authority",
    "id, naming_authority",
    ["alternateIdentifiers"],
    ["mdb:metadataIdentifier", `${CITATION}/cit:identifier`],
  ),
  row("survey.title", "title", ["titles"], [`${CITATION}/cit:title`]),
  row("survey.summary", "summary", ["descriptions:Abstract"], [`${ID}/mri:abstract`]),
  row(
    "standard names of the variables; survey.keywords, survey.keywords_vocabulary",
    "keywords, keywords_vocabulary",
    ["subjects"],
    [KEYWORDS],
  ),
  row("people.creator", "creator_*", ["creators"], [`${PARTY} (author)`, `${ID}/mri:pointOfContact`]),
  row(
    "people.publisher",
    "publisher_*",
    ["publisher"],
    [`${PARTY} (publisher)`, "mdb:contact", "mdb:distributionInfo/mrd:MD_Distribution/mrd:distributor"],
  ),
  row(
    "people.contributors",
    "contributor_name, contributor_role",
    ["contributors"],
    [`${PARTY} (contributor)`],
  ),
  row(
    "survey.institution, survey.institution_ror",
    "institution",
    ["contributors:HostingInstitution"],
    [`${PARTY} (owner)`],
  ),
  row("survey.project, survey.program", "project, program", [], [`${KEYWORDS} (project)`]),
  row("survey.acknowledgement", "acknowledgement", ["descriptions:Other"], [`${ID}/mri:credit`]),
  row("survey.funding", null, ["fundingReferences"], [`${ID}/mri:credit`]),
  row(
    "survey.license",
    "license",
    ["rightsList"],
    [`${RIGHTS}/mco:reference`, `${RIGHTS}/mco:useConstraints`, `${RIGHTS}/mco:otherConstraints`],
  ),
  row(
    "survey.access",
    null,
    ["rightsList", "dates:Available", "publicationYear"],
    [`${RIGHTS}/mco:accessConstraints`, `${RIGHTS}/mco:otherConstraints`, `${CITATION}/cit:date (released)`],
  ),
  row("the caution on safety", "comment", ["descriptions:Other"], [`${RIGHTS}/mco:useLimitation`]),
  row("created", "date_created", ["dates:Created"], ["mdb:dateInfo", `${CITATION}/cit:date (creation)`]),
  row("survey.date_modified", "date_modified", ["dates:Updated"], [`${CITATION}/cit:date (revision)`]),
  row(
    "survey.date_issued",
    "date_issued",
    ["dates:Issued", "publicationYear"],
    [`${CITATION}/cit:date (publication)`],
  ),
  row("survey.product_version", "product_version", ["version"], [`${CITATION}/cit:edition`]),
  row(
    "times of the casts",
    "time_coverage_*",
    ["dates:Collected", "dates:Coverage"],
    [`${EXTENT}/gex:temporalElement`],
  ),
  row(
    "positions of the casts",
    "geospatial_lat_*, geospatial_lon_*",
    ["geoLocations"],
    [`${EXTENT}/gex:geographicElement`, "mdb:referenceSystemInfo"],
  ),
  row(
    "depths of the casts",
    "geospatial_vertical_*",
    ["descriptions:TechnicalInfo"],
    [`${EXTENT}/gex:verticalElement`],
  ),
  row(
    "survey.sea_name, survey.places",
    "sea_name",
    ["geoLocations"],
    [`${EXTENT}/gex:description`, `${KEYWORDS} (place)`],
  ),
  row("survey.water_level", "comment", ["descriptions:TechnicalInfo"], [`${ID}/mri:supplementalInformation`]),
  row(
    "survey.quality, survey.comment",
    "comment",
    ["descriptions:Other"],
    [`${ID}/mri:supplementalInformation`],
  ),
  row(
    "survey.methods, survey.source, steps of the processing",
    "source, history",
    ["descriptions:Methods"],
    ["mdb:resourceLineage"],
  ),
  row(
    "survey.references",
    "references",
    ["relatedIdentifiers:References"],
    [`${ID}/mri:additionalDocumentation`],
  ),
  row("survey.metadata_link", "metadata_link", ["relatedIdentifiers:HasMetadata"], ["mdb:metadataLinkage"]),
  row("survey.related", null, ["relatedIdentifiers"], [`${ID}/mri:associatedResource`]),
  row("platforms", "platform", [], [`${ACQUISITION}/mac:MI_AcquisitionInformation/mac:platform`]),
  row(
    "instruments with their calibrations",
    "instrument",
    ["relatedIdentifiers:IsCollectedBy"],
    [ACQUISITION],
  ),
  row("variables with long name, standard name, unit and kind of content", null, [], ["mdb:contentInfo"]),
  row(
    "kinds of files",
    "Conventions",
    ["formats", "sizes", "descriptions:TechnicalInfo"],
    ["mdb:distributionInfo"],
  ),
  row(
    "what the record is",
    null,
    ["schemaVersion", "types", "language"],
    [
      "mdb:defaultLocale",
      `${ID}/mri:defaultLocale`,
      "mdb:metadataScope",
      "mdb:metadataStandard",
      `${ID}/mri:topicCategory`,
    ],
  ),
];
