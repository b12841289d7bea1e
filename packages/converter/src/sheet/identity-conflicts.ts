import type { Contributor, Party, SurveySheet } from "@wherry/contracts";
import { nearestNames, type Problem } from "@wherry/core";
import { isOrcid, isRor } from "./identifiers.ts";
import { isOpenLicence, licenceIds, licenceOf, looksLikeLicenceId } from "./licence.ts";
import { type Locate, nameOf, type SheetPath } from "./schema-problems.ts";

/** Identifiers with a wrong check digit, persons named against their will, a licence that the access contradicts. */
export function identityConflicts(sheet: SurveySheet, locate: Locate): Problem[] {
  return [
    ...parties(sheet).flatMap(({ party, path }) => partyProblems(party, path, locate)),
    ...rors(sheet).flatMap(([ror, path]) => rorProblems(ror, path, locate)),
    ...licenceProblems(sheet, locate),
    ...accessProblems(sheet, locate),
  ];
}

interface PlacedParty {
  readonly party: Party | Contributor;
  readonly path: SheetPath;
}

/** Everybody whom the sheet names, with the place. */
export function parties({ people = {} }: Pick<SurveySheet, "people">): PlacedParty[] {
  return [
    ...(["creator", "publisher"] as const).flatMap((role) =>
      people[role] === undefined ? [] : [{ party: people[role], path: ["people", role] }],
    ),
    ...(people.contributors ?? []).map((party, index) => ({
      party,
      path: ["people", "contributors", index],
    })),
  ];
}

/**
 * Creator and publisher are persons unless the sheet says otherwise, as ACDD has it; a contributor only where it, an
 * ORCID or a consent says so.
 */
export const isPerson = (party: Party | Contributor): boolean => {
  const { type, orcid, consent } = party;
  if (type !== undefined) return type === "person";
  return !("role" in party) || orcid !== undefined || consent !== undefined;
};

/** Names of those who agreed to be named, in small letters. */
export const agreedNames = (sheet: Pick<SurveySheet, "people">): ReadonlySet<string> =>
  new Set(parties(sheet).flatMap(({ party: { name, consent } }) => (consent ? [name.toLowerCase()] : [])));

function partyProblems(party: Party | Contributor, path: SheetPath, locate: Locate): Problem[] {
  const problems: Problem[] = [];
  const { orcid, name, consent } = party;
  if (orcid !== undefined && !isOrcid(orcid))
    problems.push({
      code: "sheet/orcid",
      message: `${nameOf([...path, "orcid"])} is ${orcid}, whose last character does not fit the others`,
      where: locate([...path, "orcid"], "value"),
      remedy: "Compare it with the person's page at orcid.org: a digit is wrong.",
    });
  if (orcid !== undefined && !isPerson(party))
    problems.push({
      code: "sheet/orcid",
      message: `${name} is a ${party.type}, and ORCIDs are given to persons`,
      where: locate([...path, "orcid"], "value"),
      remedy: "Remove the orcid, or name the person with type: person.",
    });
  if (consent === false && isPerson(party))
    problems.push({
      code: "sheet/consent",
      message: `${name} does not agree to be named, and the sheet, which goes into the deposit, names them`,
      where: locate([...path, "consent"], "value"),
      remedy: "Name their institution, group or position instead, with the type to match.",
    });
  return problems;
}

function rors(sheet: SurveySheet): (readonly [string, SheetPath])[] {
  const found: (readonly [string | undefined, SheetPath])[] = [
    [sheet.survey.institution_ror, ["survey", "institution_ror"]],
    ...parties(sheet).map(({ party, path }) => [party.ror, [...path, "ror"]] as const),
    ...(sheet.survey.funding ?? []).map(
      ({ funder_ror }, index) => [funder_ror, ["survey", "funding", index, "funder_ror"]] as const,
    ),
  ];
  return found.flatMap(([ror, path]) => (ror === undefined ? [] : [[ror, path] as const]));
}

const rorProblems = (ror: string, path: SheetPath, locate: Locate): Problem[] =>
  isRor(ror)
    ? []
    : [
        {
          code: "sheet/ror",
          message: `${nameOf(path)} is ${ror}, whose last two digits do not fit the others`,
          where: locate(path, "value"),
          remedy: "Compare it with the institution's page at ror.org: a character is wrong.",
        },
      ];

function licenceProblems({ survey }: SurveySheet, locate: Locate): Problem[] {
  const { license } = survey;
  if (license === undefined || licenceOf(license) !== null || !looksLikeLicenceId(license)) return [];
  if (license.startsWith("LicenseRef-")) return [];
  const near = nearestNames(license, licenceIds());
  return [
    {
      code: "sheet/licence",
      message: `survey.license is ${license}, which the SPDX list does not have`,
      where: locate(["survey", "license"], "value"),
      remedy:
        near.length > 0
          ? `Did you mean ${near.join(" or ")}?`
          : "Write an identifier of the SPDX list, the address of the licence, or a sentence.",
    },
  ];
}

function accessProblems({ survey, created }: SurveySheet, locate: Locate): Problem[] {
  const { access, license } = survey;
  if (access === undefined) return [];
  const problem = (key: "right" | "embargo_end", message: string, remedy: string): Problem => ({
    code: "sheet/access",
    message,
    where: locate(["survey", "access", key], "value"),
    remedy,
  });
  const { right, embargo_end: end } = access;
  const licence = license === undefined ? null : licenceOf(license);
  const problems: Problem[] = [];
  if ((right === "restricted" || right === "metadata only") && licence !== null && isOpenLicence(licence))
    problems.push(
      problem(
        "right",
        `survey.access.right is ${right}, but ${licence.id} lets everybody have the data`,
        "Change one of the two: open data under this licence, or another licence.",
      ),
    );
  if (right === "open" && license !== undefined && /all rights reserved/i.test(license))
    problems.push(
      problem(
        "right",
        "survey.access.right is open, but survey.license reserves all rights",
        "Change one of the two.",
      ),
    );
  if (right === "embargoed" && end === undefined)
    problems.push(
      problem(
        "right",
        "the data are embargoed, but until when is not told",
        "Add embargo_end: with the first open day.",
      ),
    );
  if (right !== "embargoed" && end !== undefined)
    problems.push(
      problem(
        "embargo_end",
        `survey.access has an embargo_end, but its right is ${right}`,
        "Write right: embargoed, or remove embargo_end.",
      ),
    );
  if (right === "embargoed" && end !== undefined && created !== undefined && end <= created.slice(0, 10))
    problems.push(
      problem(
        "embargo_end",
        `the embargo ends on ${end}, before the data set was made (${created.slice(0, 10)})`,
        "Write right: open, or correct the day.",
      ),
    );
  return problems;
}
