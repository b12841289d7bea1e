import { parseIsoDuration, parseIsoTime, parseNumber } from "@wherry/core";
import type { Attribute } from "@wherry/netcdf";
import { isTextType, lengthOf, textOf } from "../../engine/attribute-value.ts";
import type { Level } from "../../engine/finding.ts";
import { unitOf } from "../../engine/unit-kinds.ts";

/** What is wrong with the form of an attribute, and how much it weighs. */
export interface FormFault {
  readonly level: Level;
  /** The form that was expected, in words. */
  readonly expected: string;
}

export type Form = (attribute: Attribute) => FormFault | null;

const fault = (expected: string, level: Level = "error"): FormFault => ({ level, expected });

/** A form for texts: the test gets the text trimmed; blanks around it weigh as a warning. */
const textForm =
  (expected: string, judge: (text: string) => FormFault | boolean): Form =>
  (attribute) => {
    const text = textOf(attribute);
    if (text === undefined) return fault(`text: ${expected}`);
    const verdict = judge(text.trim());
    if (verdict === false) return fault(expected);
    if (verdict !== true) return verdict;
    return text === text.trim() ? null : fault(`${expected}, without blanks around it`, "warning");
  };

/** Text that says something. */
export const text: Form = (attribute) => (isTextType(attribute.type) ? null : fault("text"));

const DATE_TIME = /^\d{4}-\d\d-\d\d(?:T\d\d:\d\d(?::\d\d(?:\.\d+)?)?(Z|[+-]\d\d:\d\d)?)?$/;

/** ISO 8601 date or date and time; a time without zone is a warning. */
export const dateTime = textForm(
  "an ISO 8601 date and time in UTC, such as 2031-05-04T10:20:00Z",
  (value) => {
    const found = DATE_TIME.exec(value);
    if (found === null || !parseIsoTime(value).ok) return false;
    if (value.includes("T") && found[1] === undefined) return fault("a time zone, best Z for UTC", "warning");
    return true;
  },
);

/** ISO 8601 duration. Years and months have no fixed length but are well formed. */
export const duration = textForm("an ISO 8601 duration, such as PT1H30M", (value) => {
  const read = parseIsoDuration(value);
  return read.ok || read.problems.every(({ code }) => code === "time/nominal-duration");
});

export const absoluteUri = textForm("an absolute address, such as https://example.org", (value) =>
  /^(?:[a-z][a-z0-9+.-]*:\S+)$/i.test(value),
);

const EMAIL = /^[^\s@]+@[^\s@]+\.[^\s@.]+$/;

/** One address, or several with commas. */
export const email = textForm("an e-mail address", (value) =>
  value.split(/[,;]/).every((each) => EMAIL.test(each.trim())),
);

export const epsg = textForm("a code of the form EPSG:4326", (value) =>
  /^epsg:\d+$/i.test(value) ? /^EPSG/.test(value) || fault("EPSG in capital letters", "warning") : false,
);

export const identifier = textForm("an identifier without blanks", (value) => !/\s/.test(value));

export const authority = textForm(
  "a reversed domain name such as org.example, or an address",
  (value) => /^[a-z0-9-]+(?:\.[a-z0-9-]+)+$/i.test(value) || /^[a-z][a-z0-9+.-]*:\S+$/i.test(value),
);

export const unit = textForm(
  "a unit that UDUNITS reads, or a code of the form EPSG:5831",
  (value) => /^epsg:\d+$/i.test(value) || unitOf(value) !== null,
);

/** A word of a closed list; another letter case is a warning. */
export const oneOf = (words: readonly string[]): Form =>
  textForm(`one of ${words.join(", ")}`, (value) => {
    if (words.includes(value)) return true;
    const near = words.find((word) => word.toLowerCase() === value.toLowerCase());
    return near === undefined ? false : fault(`${near}, letter for letter`, "warning");
  });

/** One number; a number stored as text, as old files do, is a warning. */
export const number: Form = (attribute) => {
  if (!isTextType(attribute.type)) return lengthOf(attribute) === 1 ? null : fault("one number");
  const value = textOf(attribute)?.trim() ?? "";
  return fault("a number, not text", Number.isNaN(parseNumber(value)) ? "error" : "warning");
};

/** A number, or a text of number and unit. */
export const resolution: Form = (attribute) => {
  if (!isTextType(attribute.type)) return lengthOf(attribute) === 1 ? null : fault("one number");
  const value = textOf(attribute)?.trim() ?? "";
  const found = /^([+-]?[\d.]+(?:e[+-]?\d+)?)\s*(.*)$/i.exec(value);
  if (found === null || Number.isNaN(parseNumber(found[1] ?? "")))
    return fault("a number, or a number and its unit");
  return unitOf(found[2]) === null ? fault("a number and its unit") : null;
};

/** Text that says nothing. */
export const isPlaceholder = (value: string): boolean =>
  /^(?:unknown|n\/?a|not (?:applicable|available|known)|none|nil|null|tb[dac]|todo|\?+|-+|x+)\.?$/i.test(
    value.trim(),
  );
