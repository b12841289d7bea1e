import type { SheetFact, SurveySheet } from "@wherry/contracts";
import { generalTarget, type Target } from "../writers/target.ts";
import { isPerson, parties } from "./identity-conflicts.ts";
import { nameOf, type SheetPath } from "./schema-problems.ts";
import { schemaAt } from "./sheet-schema.ts";

/** Something that a target asks for and the sheet does not tell. */
export interface SheetLack {
  /** Place in the sheet, as `survey.title`. */
  readonly key: string;
  /** Global attribute that stays empty, or null for attributes of containers. */
  readonly attribute: string | null;
  /** By the tier of the attribute: highly recommended, recommended, suggested. */
  readonly level: "error" | "warning" | "advice";
  readonly message: string;
  readonly remedy: string;
}

type Wanted = readonly [path: SheetPath, attribute: string, level: SheetLack["level"]];

/** Tiers as in ACDD 1.3; attributes that are computed from the data or have a default are not listed. */
const WANTED: readonly Wanted[] = [
  [["created"], "date_created", "error"],
  [["survey", "title"], "title", "error"],
  [["survey", "summary"], "summary", "error"],
  [["survey", "naming_authority"], "naming_authority", "warning"],
  [["survey", "acknowledgement"], "acknowledgement", "warning"],
  [["survey", "license"], "license", "warning"],
  [["survey", "project"], "project", "warning"],
  [["people", "creator", "name"], "creator_name", "warning"],
  [["people", "creator", "email"], "creator_email", "warning"],
  [["people", "creator", "url"], "creator_url", "warning"],
  [["people", "publisher", "name"], "publisher_name", "warning"],
  [["people", "publisher", "email"], "publisher_email", "warning"],
  [["people", "publisher", "url"], "publisher_url", "warning"],
  [["people", "creator", "type"], "creator_type", "advice"],
  [["people", "creator", "institution"], "creator_institution", "advice"],
  [["people", "publisher", "type"], "publisher_type", "advice"],
  [["people", "publisher", "institution"], "publisher_institution", "advice"],
  [["survey", "product_version"], "product_version", "advice"],
  [["survey", "program"], "program", "advice"],
  [["survey", "metadata_link"], "metadata_link", "advice"],
  [["people", "contributors"], "contributor_name", "advice"],
  [["platforms"], "platform", "advice"],
];

/** Words that stand for nothing. */
const PLACEHOLDER = /^(unknown|n\/?a|tbd|todo|\?+|-+|\.+)$/i;

/**
 * What the sheet still lacks, most important first: for CF with ACDD 1.3, which every data set follows, and for what
 * the target asks beside them. A fact that both ask for counts as much as the one that asks more.
 */
export function checkSheet(sheet: SurveySheet, target: Target = generalTarget): SheetLack[] {
  const lacks = new Map(generalLacks(sheet).map((each) => [each.key, each]));
  for (const each of (target.sheet ?? []).flatMap((fact) => targetLacks(sheet, fact))) {
    const known = lacks.get(each.key);
    if (!known || rank(each) < rank(known)) lacks.set(each.key, each);
  }
  return [...lacks.values()].sort((a, b) => rank(a) - rank(b));
}

/** A key such as `instruments[].model` is asked of every entry of the list. */
function targetLacks(sheet: SurveySheet, { key, attribute, level }: SheetFact): SheetLack[] {
  const of = (path: SheetPath) =>
    isTold(valueAt(sheet, path)) ? [] : [lack(path, attribute ?? null, level)];
  const [list, rest] = key.split("[].");
  if (rest === undefined) return of(key.split("."));
  const entries = valueAt(sheet, list!.split("."));
  const count = Array.isArray(entries) ? entries.length : 0;
  return Array.from({ length: count }, (_, index) => [
    ...list!.split("."),
    index,
    ...rest.split("."),
  ]).flatMap(of);
}

function generalLacks(sheet: SurveySheet): SheetLack[] {
  const lacks = WANTED.flatMap(([path, attribute, level]): SheetLack[] =>
    isTold(valueAt(sheet, path)) || isToldOtherwise(sheet, attribute) ? [] : [lack(path, attribute, level)],
  );
  if (!isTold(sheet.survey.institution) && !isTold(sheet.people?.creator?.institution))
    lacks.push(lack(["survey", "institution"], "institution", "warning"));
  return [...lacks, ...consentLacks(sheet), ...instrumentLacks(sheet)].sort((a, b) => rank(a) - rank(b));
}

/** Attributes that are made of other keys where their own is empty. */
function isToldOtherwise({ survey, people }: SurveySheet, attribute: string): boolean {
  if (attribute === "acknowledgement") return isTold(survey.funding);
  const party = /^(creator|publisher)_url$/.exec(attribute)?.[1] as "creator" | "publisher" | undefined;
  return party !== undefined && (isTold(people?.[party]?.orcid) || isTold(people?.[party]?.ror));
}

/** Persons are named in public, for good: whether they agreed is asked, and an ORCID tells them from namesakes. */
const consentLacks = (sheet: SurveySheet): SheetLack[] =>
  parties(sheet)
    .filter(({ party }) => isPerson(party))
    .flatMap(({ party, path }) => [
      ...(party.consent === undefined ? [lack([...path, "consent"], null, "warning")] : []),
      ...(isTold(party.orcid) ? [] : [lack([...path, "orcid"], null, "advice")]),
    ]);

const rank = ({ level }: SheetLack): number => ["error", "warning", "advice"].indexOf(level);

function isTold(value: unknown): boolean {
  if (typeof value === "string") return value.trim() !== "" && !PLACEHOLDER.test(value.trim());
  return Array.isArray(value) ? value.length > 0 : value !== undefined && value !== null;
}

function valueAt(sheet: SurveySheet, path: SheetPath): unknown {
  let value: unknown = sheet;
  for (const step of path) {
    if (typeof value !== "object" || value === null) return undefined;
    value = (value as Record<string | number, unknown>)[step];
  }
  return value;
}

function lack(path: SheetPath, attribute: string | null, level: SheetLack["level"]): SheetLack {
  const words = schemaAt(path)?.description ?? "";
  return {
    key: nameOf(path),
    attribute,
    level,
    message: `the sheet does not tell ${nameOf(path)}`,
    remedy: `Add ${nameOf(path)}: ${words}`,
  };
}

/** Whoever uses the data later needs to know what they were measured with. */
function instrumentLacks(sheet: SurveySheet): SheetLack[] {
  const instruments = sheet.instruments ?? [];
  if (instruments.length === 0) return [lack(["instruments"], "instrument", "advice")];
  return instruments.flatMap((instrument, index) =>
    (["model", "serial_number", "calibration_date", "sensors"] as const).flatMap((key) =>
      isTold(instrument[key]) ? [] : [lack(["instruments", index, key], null, "advice")],
    ),
  );
}
