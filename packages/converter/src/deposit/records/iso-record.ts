import { fundingWords } from "../../sheet/funding-words.ts";
import type { DataSetFacts } from "../data-set-facts.ts";
import type { ProductFacts, VariableFacts } from "../product-facts.ts";
import { acquisition } from "./iso-acquisition.ts";
import {
  cited,
  code,
  dated,
  decimal,
  identifier,
  NAMESPACES,
  online,
  responsible,
  text,
} from "./iso-parts.ts";
import {
  CAUTION,
  instituteOf,
  licenceFacts,
  ownKeywords,
  relationKind,
  standardNames,
} from "./record-words.ts";
import { type Element, element, withAttributes, xmlText } from "./xml.ts";

type Part = Element | null;

/**
 * The data set as an ISO 19115-3 record. Where each fact goes is the crosswalk of `crosswalk.ts`.
 *
 * @source ISO 19115-1:2014, ISO 19115-3:2016 with the name spaces of its 2018 edition. The order of elements was read
 *         in drafts of its schemas (2013 to 2015, mrl and mac of 2.0); the record was not validated against the final ones
 */
export function isoRecord(facts: DataSetFacts): string {
  const { sheet, created } = facts;
  const { survey, people = {} } = sheet;
  const root = withAttributes(
    "mdb:MD_Metadata",
    NAMESPACES,
    identifier("mdb:metadataIdentifier", { code: survey.id, space: survey.naming_authority }),
    locale("mdb:defaultLocale"),
    element(
      "mdb:metadataScope",
      element("mdb:MD_MetadataScope", code("mdb:resourceScope", "mcc:MD_ScopeCode", "dataset")),
    ),
    responsible(
      "mdb:contact",
      people.publisher ?? people.creator ?? { name: instituteOf(sheet) ?? survey.id, type: "institution" },
      "pointOfContact",
    ),
    dated("mdb:dateInfo", created, "creation"),
    element(
      "mdb:metadataStandard",
      element("cit:CI_Citation", text("cit:title", "ISO 19115-3"), text("cit:edition", "2016")),
    ),
    online("mdb:metadataLinkage", survey.metadata_link),
    element("mdb:referenceSystemInfo", referenceSystem("4326", "WGS 84")),
    element("mdb:identificationInfo", identification(facts)),
    ...contents(facts),
    element("mdb:distributionInfo", distribution(facts)),
    element("mdb:resourceLineage", lineage(facts)),
    element("mdb:acquisitionInformation", acquisition(facts)),
  );
  if (root === null) throw new TypeError("a record without a root");
  return xmlText(root);
}

const locale = (name: string): Part =>
  element(
    name,
    element(
      "lan:PT_Locale",
      code("lan:language", "lan:LanguageCode", "eng"),
      code("lan:characterEncoding", "lan:MD_CharacterSetCode", "utf8"),
    ),
  );

const referenceSystem = (epsg: string, words: string): Part =>
  element(
    "mrs:MD_ReferenceSystem",
    identifier("mrs:referenceSystemIdentifier", { code: epsg, space: "EPSG", words }),
  );

function identification(facts: DataSetFacts): Part {
  const { sheet, created } = facts;
  const { survey, people = {} } = sheet;
  const contributors = people.contributors ?? [];
  const funding = fundingWords(sheet);
  return element(
    "mri:MD_DataIdentification",
    element(
      "mri:citation",
      element(
        "cit:CI_Citation",
        text("cit:title", survey.title ?? survey.id),
        dated("cit:date", created, "creation"),
        dated("cit:date", survey.date_modified ?? created, "revision"),
        dated("cit:date", survey.date_issued ?? created, "publication"),
        dated("cit:date", survey.access?.embargo_end, "released"),
        text("cit:edition", survey.product_version),
        identifier("cit:identifier", { code: survey.id, space: survey.naming_authority }),
        responsible("cit:citedResponsibleParty", people.creator, "author"),
        responsible("cit:citedResponsibleParty", people.publisher, "publisher"),
        contributors.map((party) => responsible("cit:citedResponsibleParty", party, "contributor")),
        institution(facts),
      ),
    ),
    text("mri:abstract", survey.summary ?? survey.title ?? survey.id),
    text("mri:credit", survey.acknowledgement),
    funding.map((words) => text("mri:credit", words)),
    responsible("mri:pointOfContact", people.creator, "pointOfContact"),
    element("mri:topicCategory", element("mri:MD_TopicCategoryCode", "oceans")),
    element("mri:extent", extent(facts)),
    (survey.references ?? []).map((reference) =>
      cited("mri:additionalDocumentation", reference, /^(https?|doi):/.test(reference) ? reference : null),
    ),
    keywords(standardNames(facts), "theme", facts.products[0]?.attributes.get("standard_name_vocabulary")),
    keywords(ownKeywords(sheet), "theme", survey.keywords_vocabulary),
    keywords([survey.project, survey.program], "project", null),
    keywords([survey.sea_name, ...(survey.places ?? [])], "place", null),
    element("mri:resourceConstraints", constraints(facts)),
    (survey.related ?? []).map(({ relation, identifier: address, title }) =>
      element(
        "mri:associatedResource",
        element(
          "mri:MD_AssociatedResource",
          cited("mri:name", title ?? address, address),
          code("mri:associationType", "mri:DS_AssociationTypeCode", relationKind(relation).iso),
        ),
      ),
    ),
    locale("mri:defaultLocale"),
    text(
      "mri:supplementalInformation",
      [survey.quality, survey.water_level, survey.comment].filter(Boolean).join("\n"),
    ),
  );
}

const institution = ({ sheet }: DataSetFacts): Part => {
  const name = instituteOf(sheet);
  return name === null
    ? null
    : responsible(
        "cit:citedResponsibleParty",
        {
          name,
          type: "institution",
          ...(sheet.survey.institution_ror ? { ror: sheet.survey.institution_ror } : {}),
        },
        "owner",
      );
};

const keywords = (words: readonly (string | undefined)[], type: string, vocabulary: unknown): Part => {
  const told = words.filter((word) => word !== undefined && word !== "");
  if (told.length === 0) return null;
  return element(
    "mri:descriptiveKeywords",
    element(
      "mri:MD_Keywords",
      told.map((word) => text("mri:keyword", word)),
      code("mri:type", "mri:MD_KeywordTypeCode", type),
      typeof vocabulary === "string" ? cited("mri:thesaurusName", vocabulary) : null,
    ),
  );
};

function extent({ box, time, vertical, sheet }: DataSetFacts): Part {
  return element(
    "gex:EX_Extent",
    text("gex:description", sheet.survey.sea_name),
    box &&
      element(
        "gex:geographicElement",
        element(
          "gex:EX_GeographicBoundingBox",
          decimal("gex:westBoundLongitude", box.west),
          decimal("gex:eastBoundLongitude", box.east),
          decimal("gex:southBoundLatitude", box.south),
          decimal("gex:northBoundLatitude", box.north),
        ),
      ),
    time &&
      element(
        "gex:temporalElement",
        element(
          "gex:EX_TemporalExtent",
          element(
            "gex:extent",
            withAttributes(
              "gml:TimePeriod",
              { "gml:id": "covered" },
              element("gml:beginPosition", time.start),
              element("gml:endPosition", time.end),
            ),
          ),
        ),
      ),
    vertical &&
      element(
        "gex:verticalElement",
        element(
          "gex:EX_VerticalExtent",
          element("gex:minimumValue", element("gco:Real", String(vertical.least))),
          element("gex:maximumValue", element("gco:Real", String(vertical.most))),
          vertical.units === "m"
            ? element(
                "gex:verticalCRSId",
                referenceSystem("5831", "depth below the instantaneous water surface"),
              )
            : null,
        ),
      ),
  );
}

function constraints({ sheet }: DataSetFacts): Part {
  const licence = licenceFacts(sheet);
  const { access } = sheet.survey;
  return element(
    "mco:MD_LegalConstraints",
    text("mco:useLimitation", CAUTION),
    licence ? cited("mco:reference", licence.name, licence.address) : null,
    access
      ? code(
          "mco:accessConstraints",
          "mco:MD_RestrictionCode",
          access.right === "open" ? "unrestricted" : "otherRestrictions",
        )
      : null,
    licence ? code("mco:useConstraints", "mco:MD_RestrictionCode", "licence") : null,
    access
      ? text(
          "mco:otherConstraints",
          [
            `Access: ${access.right}`,
            access.embargo_end && `open from ${access.embargo_end}`,
            access.conditions,
          ]
            .filter(Boolean)
            .join("; "),
        )
      : null,
    text("mco:otherConstraints", licence?.id === null ? licence.name : licence?.id),
  );
}

/** What the variables are, in groups by the kind of their content; products with the same variables are told once. */
function contents({ products }: DataSetFacts): Part[] {
  const alike = new Map<string, ProductFacts[]>();
  for (const product of products) {
    const key = JSON.stringify([product.variables, product.attributes.get("processing_level")]);
    alike.set(key, [...(alike.get(key) ?? []), product]);
  }
  return [...alike.values()].map((group) => {
    const [{ file, variables, attributes }] = group as [ProductFacts];
    const kinds = [...new Set(variables.map(({ content }) => content))];
    const files = group.length === 1 ? file : `${file} and ${group.length - 1} files with the same variables`;
    return element(
      "mdb:contentInfo",
      element(
        "mrc:MD_CoverageDescription",
        element("mrc:attributeDescription", element("gco:RecordType", files)),
        identifier("mrc:processingLevelCode", { code: String(attributes.get("processing_level") ?? "") }),
        kinds.map((kind) => attributeGroup(kind, variables)),
      ),
    );
  });
}

const attributeGroup = (kind: string, variables: readonly VariableFacts[]): Part =>
  element(
    "mrc:attributeGroup",
    element(
      "mrc:MD_AttributeGroup",
      code("mrc:contentType", "mrc:MD_CoverageContentTypeCode", kind),
      variables
        .filter(({ content }) => content === kind)
        .map(({ name, longName, standardName, units }) =>
          element(
            "mrc:attribute",
            element(
              "mrc:MD_RangeDimension",
              text("mrc:description", units === null ? longName : `${longName}; unit: ${units}`),
              identifier("mrc:name", { code: name }),
              standardName ? identifier("mrc:name", { code: standardName, space: "CF standard name" }) : null,
            ),
          ),
        ),
    ),
  );

function distribution({ sheet, products }: DataSetFacts): Part {
  const conventions = products[0]?.attributes.get("Conventions");
  const kinds = [
    ...new Set(
      products.map(({ kind }) => (kind.startsWith("netCDF-4") ? "netCDF-4" : "netCDF, classic formats")),
    ),
  ];
  return element(
    "mrd:MD_Distribution",
    [...kinds.map((kind) => `${kind}; ${conventions}`), "CSV (RFC 4180) with metadata by CSV on the Web"].map(
      (title) =>
        element(
          "mrd:distributionFormat",
          element("mrd:MD_Format", cited("mrd:formatSpecificationCitation", title)),
        ),
    ),
    element(
      "mrd:distributor",
      element(
        "mrd:MD_Distributor",
        responsible("mrd:distributorContact", sheet.people?.publisher, "distributor"),
      ),
    ),
  );
}

function lineage({ sheet, products, casts }: DataSetFacts): Part {
  const history = String(products[0]?.attributes.get("history") ?? "");
  const sources = [
    ...new Set(casts.map(({ sourceFile }) => sourceFile).filter((name) => name !== "")),
  ].sort();
  return element(
    "mrl:LI_Lineage",
    text(
      "mrl:statement",
      [sheet.survey.source, sheet.survey.methods].filter(Boolean).join("\n") ||
        String(products[0]?.attributes.get("source") ?? ""),
    ),
    element("mrl:scope", element("mcc:MD_Scope", code("mcc:level", "mcc:MD_ScopeCode", "dataset"))),
    sources.map((name) =>
      element(
        "mrl:source",
        element("mrl:LI_Source", text("mrl:description", `file original/${name} of this package`)),
      ),
    ),
    history
      .split("\n")
      .filter((line) => line !== "")
      .map((line) =>
        element("mrl:processStep", element("mrl:LI_ProcessStep", text("mrl:description", line))),
      ),
  );
}
