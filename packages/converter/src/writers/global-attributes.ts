import type { Party, SurveySheet } from "@wherry/contracts";
import type { Cast } from "@wherry/core";
import type { Attribute } from "@wherry/netcdf";
import { fundingWords } from "../sheet/funding-words.ts";
import { orcidAddress, rorAddress } from "../sheet/identifiers.ts";
import type { Equipment } from "./equipment.ts";
import { dataSetFingerprint } from "./fingerprint.ts";
import { FLAG_SCHEME } from "./flag-variables.ts";
import { attributes } from "./storage.ts";
import { URL_NAMESPACE, uuidFromName } from "./uuid.ts";
import type { WritingContext } from "./writing-context.ts";

/** What one product says of itself. */
export interface ProductWords {
  readonly featureType: "profile" | "timeSeries";
  /** Added to the survey's id, as "full". */
  readonly suffix: string;
  /** Added to the survey's title. */
  readonly title: string;
  /** Added to the survey's summary. */
  readonly summary: string;
  readonly processingLevel: string;
  readonly history: string;
  /** For `source`, where the sheet has none. */
  readonly source: string;
}

/** The word that ends every comment: sound speed and depth are no basis for decisions on safety. */
export const CAUTION = "Not for navigation or diving decisions.";

/** Global attributes of CF 1.13 and ACDD 1.3: from the sheet, from the product and, as `coverage`, from the data. */
export function globalAttributes(
  casts: readonly Cast[],
  product: ProductWords,
  standardNames: readonly string[],
  equipment: Equipment,
  context: WritingContext,
  coverage: readonly Attribute[],
  references: readonly string[],
): Attribute[] {
  const { sheet, created } = context;
  const { survey, people = {} } = sheet;
  const ownWords = survey.keywords ?? [];
  const contributors = people.contributors ?? [];
  const issued = survey.date_issued ?? created;
  const modified = survey.date_modified ?? created;
  return [
    ...attributes(
      ["Conventions", "CF-1.13, ACDD-1.3"],
      ["featureType", product.featureType],
      ["title", survey.title && `${survey.title}, ${product.title}`],
      ["summary", survey.summary && `${sentence(survey.summary)} ${product.summary}`],
      ["keywords", [...new Set([...standardNames, ...ownWords])].join(", ")],
      ["keywords_vocabulary", keywordsVocabulary(context, ownWords.length > 0)],
      ["standard_name_vocabulary", context.standardNames],
      ["id", `${survey.id}-${product.suffix}`],
      ["naming_authority", survey.naming_authority],
      ["uuid", uuidFromName(URL_NAMESPACE, uuidName(casts, product, context))],
      ["product_version", survey.product_version],
      ["source", survey.source ?? product.source],
      ["history", product.history],
      ["processing_level", product.processingLevel],
      ["comment", withCaution(sentences(survey.comment, survey.water_level, survey.quality))],
      ["acknowledgement", survey.acknowledgement ?? fundingWords(sheet).join("; ")],
      ["license", licenceWords(sheet)],
      [
        "references",
        [
          ...new Set([
            ...(survey.references ?? []),
            ...(survey.related ?? []).map(({ identifier }) => identifier),
            FLAG_SCHEME,
            ...references,
          ]),
        ].join("; "),
      ],
      ["metadata_link", survey.metadata_link],
      ["institution", survey.institution ?? people.creator?.institution],
      ["project", survey.project],
      ["program", survey.program],
      ["sea_name", survey.sea_name],
      ...partyAttributes("creator", people.creator),
      ["contributor_name", contributors.map(({ name }) => name).join(", ")],
      ["contributor_role", contributors.map(({ role }) => role).join(", ")],
      ...partyAttributes("publisher", people.publisher),
      ["platform", names(equipment.platforms)],
      ["platform_vocabulary", vocabularies(equipment.platforms)],
      ["instrument", names(equipment.instruments)],
      ["instrument_vocabulary", vocabularies(equipment.instruments)],
      ["cdm_data_type", product.featureType === "profile" ? "Profile" : "Station"],
      ["date_created", created],
      ["date_modified", modified],
      ["date_issued", issued],
      ["date_metadata_modified", created],
    ),
    ...coverage,
  ];
}

/** The same data arranged for another archive are another file. */
function uuidName(casts: readonly Cast[], { suffix }: ProductWords, { target }: WritingContext): string {
  const arranged = target === undefined || target.target === "general" ? "" : `:${target.target}`;
  return `urn:sha256:${dataSetFingerprint(casts)}:${suffix}${arranged}`;
}

/** ACDD asks for the licence here, or for what restricts access and use. */
function licenceWords({ survey: { license, access } }: SurveySheet): string {
  const words = [license];
  if (access && access.right !== "open")
    words.push(
      [`access: ${access.right}`, access.embargo_end && `open from ${access.embargo_end}`, access.conditions]
        .filter(Boolean)
        .join(", "),
    );
  return words.filter(Boolean).join("; ");
}

const sentences = (...texts: readonly (string | undefined)[]): string | undefined => {
  const told = texts.filter((text) => text !== undefined);
  return told.length > 1 ? told.map(sentence).join(" ") : told[0];
};

const withCaution = (comment: string | undefined): string => {
  if (comment === undefined) return CAUTION;
  return /not for navigation/i.test(comment) ? comment : `${sentence(comment)} ${CAUTION}`;
};

const sentence = (text: string): string => {
  const trimmed = text.trim();
  return /[.!?]$/.test(trimmed) ? trimmed : `${trimmed}.`;
};

/** Named only where every key word comes from a vocabulary that is known. */
function keywordsVocabulary({ sheet, standardNames }: WritingContext, hasOwnWords: boolean): string | null {
  if (!hasOwnWords) return standardNames;
  const own = sheet.survey.keywords_vocabulary;
  return own === undefined ? null : `${standardNames}, ${own}`;
}

const partyAttributes = (role: "creator" | "publisher", party: Party | undefined): Attribute[] =>
  (["name", "type", "institution", "email", "url"] as const).flatMap((what) => {
    const text = party?.[what] ?? (what === "url" ? addressOf(party) : undefined);
    return text === undefined ? [] : attributes([`${role}_${what}`, text]);
  });

/** The page of a person or institution, where the sheet gives no other. */
function addressOf(party: Party | undefined): string | undefined {
  if (party?.orcid !== undefined) return orcidAddress(party.orcid);
  return party?.ror === undefined ? undefined : rorAddress(party.ror);
}

const names = (items: readonly { readonly name: string }[]): string =>
  [...new Set(items.map(({ name }) => name))].join(", ");

const vocabularies = (items: readonly { readonly vocabulary?: string }[]): string =>
  [...new Set(items.map(({ vocabulary }) => vocabulary ?? "").filter((text) => text !== ""))].join(", ");
