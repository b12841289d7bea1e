import type { Place } from "@wherry/core";
import type { DatasetView } from "./dataset-view.ts";
import { atLeast, atMost, type Edition, NEWEST, OLDEST_READ } from "./edition.ts";
import type { Basis, Citation, Level, Plain } from "./finding.ts";

/** Sets from which `--rules` chooses. */
export type RuleSet = "cf" | "acdd" | "csv" | (string & {});

/** When a rule holds, in editions of the CF Conventions. Without it: in all. */
export interface EditionSpan {
  /** First edition; absent: 1.6 or before. */
  readonly since?: Edition;
  /** Last edition; absent: still in force. */
  readonly until?: Edition;
  /** Levels that older editions gave it, oldest first: the first entry whose `until` is not passed counts. */
  readonly levels?: readonly { readonly until: Edition; readonly level: Level }[];
  /** Section numbers in older editions, oldest first. */
  readonly clauses?: readonly { readonly until: Edition; readonly clause: string }[];
}

export interface Detail {
  readonly found?: Plain;
  readonly expected?: Plain;
  /** Only where a case weighs less or more than the rule as a whole. */
  readonly level?: Level;
  /** Indices of the values concerned, row-major, from 0. Pass all of them or the first few with `count`. */
  readonly places?: readonly number[];
  readonly count?: number;
  /** Further words for the message: `{other}` and so on. */
  readonly fill?: Readonly<Record<string, string | number>>;
}

export type Report<Key extends string> = (where: Place, message: Key, detail?: Detail) => void;

/** A piece of CDL that the rule must pass. An object where the example needs more than the newest edition. */
export interface Example {
  readonly cdl: string;
  /** The edition by which to judge; newest if not given. */
  readonly edition?: Edition;
  /** CDL of the full data beside a file of layer means. */
  readonly full?: string;
  /** Name of the file, "example.nc" if not given. */
  readonly path?: string;
  /** The moment of checking, ISO 8601, "2030-01-01T00:00:00Z" if not given. */
  readonly now?: string;
}

export interface FailingExample<Key extends string> extends Example {
  readonly where: Place;
  readonly message: Key;
  /** Level where it differs from the rule's. */
  readonly level?: Level;
}

/** A requirement in words: what is asked, why, where it stands, what to do. */
export interface RuleText<Key extends string = string> {
  /** "<set>/<subject>-<requirement>", never used again for something else. */
  readonly id: string;
  readonly status: "stable" | "retired";
  /** Version of Wherry that brought it. */
  readonly since: string;
  /** Level in the newest edition. */
  readonly level: Level;
  readonly basis: Basis;
  readonly citation: Citation;
  readonly editions?: EditionSpan;
  /** Rows of the project's list of requirements that the rule checks, for the coverage table. */
  readonly covers: readonly string[];
  readonly title: string;
  readonly why: string;
  readonly remedy: string;
  /** `{variable}`, `{attribute}`, `{dimension}`, `{found}`, `{expected}` and the words of `fill` are filled in. */
  readonly messages: Readonly<Record<Key, string>>;
}

/** One requirement on a netCDF data set, with the examples that are its tests. */
export interface Rule<Key extends string = string> extends RuleText<Key> {
  readonly passing: readonly (string | Example)[];
  readonly failing: readonly FailingExample<Key>[];
  check(dataset: DatasetView, report: Report<Key>): void | Promise<void>;
}

/** Keeps the message keys of a rule, its reports and its examples in agreement. */
export const defineRule = <const Key extends string>(rule: Rule<Key>): Rule => rule as unknown as Rule;

/** The rule's set: the part of its id before the slash. */
export const setOf = (rule: RuleText): RuleSet => rule.id.slice(0, rule.id.indexOf("/"));

export function holdsIn(rule: RuleText, edition: Edition): boolean {
  // other documents have editions of their own
  const { since, until } = setOf(rule) === "cf" ? (rule.editions ?? {}) : {};
  return (since === undefined || atLeast(edition, since)) && (until === undefined || atMost(edition, until));
}

export function levelIn(rule: RuleText, edition: Edition): Level {
  const older = rule.editions?.levels?.find(({ until }) => atMost(edition, until));
  return older?.level ?? rule.level;
}

/** The citation for a file judged by this edition: only CF rules follow the edition. */
export function citationIn(rule: RuleText, edition: Edition): Citation {
  if (setOf(rule) !== "cf") return rule.citation;
  const older = rule.editions?.clauses?.find(({ until }) => atMost(edition, until));
  const cited = atLeast(edition, OLDEST_READ) ? edition : OLDEST_READ;
  return { document: rule.citation.document, edition: cited, clause: older?.clause ?? rule.citation.clause };
}

/** Citation of a CF clause, by the number that the newest edition gives it. */
export const cfClause = (clause: string): Citation => ({
  document: "CF Conventions",
  edition: NEWEST,
  clause,
});
