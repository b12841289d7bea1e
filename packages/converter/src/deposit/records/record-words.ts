import type { Relation, SurveySheet } from "@wherry/contracts";
import { licenceOf } from "../../sheet/licence.ts";
import type { DataSetFacts } from "../data-set-facts.ts";

/** What every record says on safety. */
export const CAUTION =
  "Not for navigation or diving decisions: the hydrographic authority and licensed practice decide.";

export const instituteOf = ({ survey, people }: SurveySheet): string | null =>
  survey.institution ?? people?.creator?.institution ?? null;

/** The licence by its SPDX facts; a licence that is not of that list by its own words. */
export function licenceFacts({ survey: { license } }: SurveySheet): {
  readonly id: string | null;
  readonly name: string;
  readonly address: string | null;
} | null {
  if (license === undefined) return null;
  const known = licenceOf(license);
  if (known !== null) return known;
  return { id: null, name: license, address: /^https?:\/\//.test(license) ? license : null };
}

/** Standard names of all that was measured or computed, each once, in the order of the products. */
export const standardNames = ({ products }: DataSetFacts): string[] => [
  ...new Set(
    products.flatMap(({ variables }) =>
      variables.flatMap(({ standardName, content }) =>
        standardName !== null && content === "physicalMeasurement" ? [standardName] : [],
      ),
    ),
  ),
];

export const ownKeywords = ({ survey }: SurveySheet): readonly string[] => survey.keywords ?? [];

/** Codes that a relation has in the two records: DataCite relationType, ISO DS_AssociationTypeCode. */
const RELATIONS: Readonly<Record<Relation["relation"], { readonly datacite: string; readonly iso: string }>> =
  {
    "described by": { datacite: "IsDescribedBy", iso: "crossReference" },
    "supplement to": { datacite: "IsSupplementTo", iso: "crossReference" },
    "cited by": { datacite: "IsCitedBy", iso: "crossReference" },
    cites: { datacite: "Cites", iso: "crossReference" },
    continues: { datacite: "Continues", iso: "series" },
    "part of": { datacite: "IsPartOf", iso: "largerWorkCitation" },
    "new version of": { datacite: "IsNewVersionOf", iso: "revisionOf" },
    "derived from": { datacite: "IsDerivedFrom", iso: "source" },
  };

export const relationKind = (
  relation: Relation["relation"],
): { readonly datacite: string; readonly iso: string } => RELATIONS[relation];
