import { parseIsoTime, parseNumber } from "@wherry/core";

const INTEGER = /^[+-]?\d+$/;

/** Lexical forms of the built-in datatypes that tables of measurements use; other datatypes are not examined. */
export const DATATYPE_FORMS: Readonly<Record<string, (text: string) => boolean>> = {
  number: isNumber,
  double: isNumber,
  float: isNumber,
  decimal: (text) => /^[+-]?(?:\d+\.?\d*|\.\d+)$/.test(text),
  ...Object.fromEntries(
    ["integer", "long", "int", "short", "byte"].map((name) => [name, (text: string) => INTEGER.test(text)]),
  ),
  ...Object.fromEntries(
    ["nonNegativeInteger", "unsignedLong", "unsignedInt", "unsignedShort", "unsignedByte"].map((name) => [
      name,
      (text: string) => INTEGER.test(text) && parseNumber(text) >= 0,
    ]),
  ),
  positiveInteger: (text) => INTEGER.test(text) && parseNumber(text) > 0,
  boolean: (text) => /^(?:true|false|1|0)$/.test(text),
  date: (text) => /^-?\d{4,}-\d\d-\d\d(?:Z|[+-]\d\d:\d\d)?$/.test(text) && parseIsoTime(text.slice(0, 10)).ok,
  dateTime: (text) => /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d/.test(text) && parseIsoTime(text).ok,
  datetime: (text) => /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d/.test(text) && parseIsoTime(text).ok,
  dateTimeStamp: (text) => /T.*(?:Z|[+-]\d\d:\d\d)$/.test(text) && parseIsoTime(text).ok,
};

function isNumber(text: string): boolean {
  return /^(?:NaN|-?INF)$/.test(text) || !Number.isNaN(parseNumber(text));
}
