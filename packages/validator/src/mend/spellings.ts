import { sameDimension, suggestUnits } from "@wherry/core";
import { textOf } from "../engine/attribute-value.ts";
import { conventionNames } from "../engine/edition.ts";
import { CF_ROLES } from "../engine/layout.ts";
import { unitOf } from "../engine/unit-kinds.ts";
import { attributeAt, type Mender, setText } from "./edit.ts";

/** Text of the attribute that a finding is about. */
const textAt: (...of: Parameters<Mender>) => string = (finding, dataset) =>
  textOf(attributeAt(finding, dataset)) ?? "";

/** Letters and digits in small letters: what is left of a word when it is spelt with other signs between. */
const bare = (text: string): string => text.toLowerCase().replace(/[^a-z0-9]/g, "");

/** Puts in the word of a list that differs only in case, blanks and signs between. */
const wordOf =
  (words: readonly string[]): Mender =>
  (finding, dataset) => {
    const found = bare(textAt(finding, dataset));
    const [word, ...others] = words.filter((each) => bare(each) === found);
    return word === undefined || others.length > 0 ? [] : setText(finding, dataset, word);
  };

export const featureTypeWord = wordOf([
  "point",
  "timeSeries",
  "trajectory",
  "profile",
  "timeSeriesProfile",
  "trajectoryProfile",
]);
export const cfRoleWord = wordOf([...new Set(Object.values(CF_ROLES).flat())]);
export const positiveWord = wordOf(["up", "down"]);
export const calendarWord = wordOf([
  "standard",
  "proleptic_gregorian",
  "julian",
  "noleap",
  "365_day",
  "360_day",
  "all_leap",
  "366_day",
  "none",
  "utc",
  "tai",
]);

/** "CF1.8", "cf-1.8", "CF 1.8" and the like. */
export const conventionsName: Mender = (finding, dataset) => {
  const text = textAt(finding, dataset);
  const names = text.includes(",") ? conventionNames(text) : text.split(/\s*;\s*|\s+(?=[A-Za-z])/);
  let mended = 0;
  const written = names.map((name) => {
    const number = /^CF[-_ ]?v?(\d+\.\d+)$/i.exec(name.trim())?.[1];
    if (number === undefined) return name.trim();
    mended += 1;
    return `CF-${number}`;
  });
  return mended === 1 ? setText(finding, dataset, written.filter(Boolean).join(", ")) : [];
};

/** "ACDD 1.3", "acdd-1.3" where ACDD-1.3 is meant; another version is another document. */
export const acddName: Mender = (finding, dataset) => {
  const text = textAt(finding, dataset);
  const mended = text.replace(/\bACDD[-_ ]?v?1\.3\b/i, "ACDD-1.3");
  return finding.key === "other" && mended !== text ? setText(finding, dataset, mended) : [];
};

/** A name of the table written with other case, blanks or hyphens. */
export const standardName: Mender = (finding, dataset) => {
  if (finding.key !== "unknown" && finding.key !== "words") return [];
  const text = textAt(finding, dataset);
  const name = text
    .trim()
    .toLowerCase()
    .replace(/[\s-]+/g, "_");
  return dataset.vocabulary.find(name) === null ? [] : setText(finding, dataset, name);
};

/** The name that took the place of an alias; with its modifier if there is one. */
export const currentName: Mender = (finding, dataset) => {
  const [name = "", ...modifier] = textAt(finding, dataset).trim().split(/\s+/);
  const current = dataset.vocabulary.find(name)?.aliasOf ?? null;
  return current === null ? [] : setText(finding, dataset, [current, ...modifier].join(" "));
};

/** Suggested spellings whose meaning nobody can doubt; those for numbers without unit and for scales are no such. */
const PLAIN = /^(?:degC|degF|[mu]?S (?:cm|m)-1|dbar|m s-1|m|ft|s|min|h|%)$/;
const SCALE = /(?:ITS|IPTS)/i;
const PRACTICAL = new Set(["sea_water_practical_salinity", "sea_water_salinity"]);

/** A unit that UDUNITS does not read, or reads as another, where only one can be meant. */
export const unitSpelling: Mender = (finding, dataset) => {
  if (finding.key === "text") return [];
  const text = textAt(finding, dataset);
  const better = suggestUnits(text)?.units;
  if (better === undefined || SCALE.test(text)) return [];
  const name = dataset.variables.get(finding.where.variable ?? "")?.standardName;
  const canonical = name === undefined ? undefined : dataset.vocabulary.find(name)?.units;
  if (better === "1")
    return /^p\.?s/i.test(text.trim()) && PRACTICAL.has(name ?? "") ? setText(finding, dataset, "1") : [];
  const known = PLAIN.test(better) || /^.*[A-Za-z] -\d/.test(text);
  const fits = canonical === undefined || canonical === "" || sameDimension(better, canonical);
  return known && unitOf(better) !== null && fits ? setText(finding, dataset, better) : [];
};

/** The word between unit and moment, and the moment written as year-month-day hour:minute:second. */
export const timeUnits: Mender = (finding, dataset) => {
  const text = textAt(finding, dataset);
  const parts = /^\s*(\S+)\s+(since|after|from|ref|@)\s+(.*?)\s*$/i.exec(text);
  if (parts === null) return [];
  const [, unit = "", , moment = ""] = parts;
  const read =
    /^(\d{4}-\d{1,2}-\d{1,2})(?:[T ]\s*(\d{1,2}:\d{1,2}(?::\d{1,2}(?:\.\d+)?)?))?\s*(Z|UTC|GMT|\+?0?0:?00)?$/i.exec(
      moment,
    );
  if (read === null) return [];
  const [, day = "", clock, zone] = read;
  const two = (number: string) => number.padStart(2, "0");
  const date = day.split("-").map(two).join("-");
  const time = clock?.split(":").map(two).join(":");
  const written = `${unit} since ${date}${time === undefined ? "" : ` ${time}`}${time !== undefined && zone !== undefined ? " Z" : ""}`;
  return written === text ? [] : setText(finding, dataset, written);
};

/** Commas or line breaks between the names of a list, where every name is then one of the file. */
export const nameList: Mender = (finding, dataset) => {
  const { variable = "" } = finding.where;
  const text = textAt(finding, dataset);
  const names = text.split(/[\s,;]+/).filter(Boolean);
  const known = names.map((name) => {
    if (dataset.named(name, variable) !== null) return name;
    const same = [...dataset.variables.keys()].filter((each) => each.toLowerCase() === name.toLowerCase());
    return same.length === 1 ? same[0] : undefined;
  });
  return known.includes(undefined) || names.length === 0 ? [] : setText(finding, dataset, known.join(" "));
};

/** Meanings between commas, where each is then one word for one flag. */
export const flagMeanings: Mender = (finding, dataset) => {
  const variable = dataset.variables.get(finding.where.variable ?? "");
  const flags = variable?.numbers("flag_values")?.length ?? variable?.numbers("flag_masks")?.length;
  const words = textAt(finding, dataset)
    .split(/\s*[,;]\s*/)
    .map((word) => word.trim().replace(/\s+/g, "_"))
    .filter(Boolean);
  const fits = words.length === flags && words.every((word) => /^[A-Za-z0-9_.+@-]+$/.test(word));
  return fits ? setText(finding, dataset, words.join(" ")) : [];
};
