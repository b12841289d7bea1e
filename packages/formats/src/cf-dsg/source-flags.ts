import { Flag } from "@wherry/core";
import type { Variable } from "@wherry/netcdf";
import { iodeFromWoceCtd, WOCE_CTD } from "../whp-exchange/woce-flags.ts";
import { WOD, WOD_DEPTH } from "../wod-ascii/codes.ts";
import { numbersOf, textOf } from "./attributes.ts";

/** A scheme of quality flags, known by the meanings that a file gives its flags. */
export interface FlagScheme {
  readonly name: string;
  /** IODE primary flag of a value that is there. */
  readonly iode: (code: string) => Flag;
}

type Meanings = ReadonlyMap<string, RegExp>;

/** IOC Manuals and Guides 54, volume 3 (2013), primary level; "suspect" and the like are other words in use. */
const IODE: Meanings = new Map([
  ["1", /^(?:good|pass)/],
  ["2", /^(?:not_evaluated|unknown|not_available)/],
  ["3", /^(?:questionable|suspect)/],
  ["4", /^(?:bad|fail)/],
  ["9", /^missing/],
]);

/** WHP-Exchange Format 1.2.1 (2024), Quality Codes, CTD data. */
const WOCE: Meanings = new Map([
  ["1", /^not_calibrated/],
  ["2", /^acceptable/],
  ["3", /^questionable/],
  ["4", /^bad/],
  ["5", /^not_reported/],
  ["6", /^interpolated/],
  ["7", /^despiked/],
  ["8", /./],
  ["9", /^not_sampled/],
]);

/** Argo user's manual (doi 10.13155/29825), reference table 2; OceanSITES Data Format Reference Manual 1.4, table 2. */
const ARGO: Meanings = new Map([
  ["0", /no_?qc|unknown/],
  ["1", /^good/],
  ["2", /^probably_good/],
  ["3", /^(?:probably_bad|bad_data_that_are_potentially_correct|potentially_correct)/],
  ["4", /^bad/],
  ["5", /changed/],
  ["6", /./],
  ["7", /./],
  ["8", /^(?:interpolated|estimated)/],
  ["9", /^missing/],
]);

/** World Ocean Database and its IQuOD edition, flags of observed levels; depths have a scheme of their own. */
const WOD_LEVELS: Meanings = new Map([
  ["0", /^accepted/],
  ["1", /^range/],
  ["2", /inversion/],
  ["3", /gradient/],
  ["4", /./],
  ["5", /./],
  ["6", /./],
  ["7", /./],
  ["8", /./],
  ["9", /./],
]);
const WOD_DEPTHS: Meanings = new Map([
  ["0", /^accepted/],
  ["1", /^duplicate/],
  ["2", /^density_inversion/],
]);

const sameDigit = (code: string): Flag =>
  code === "1" ? Flag.good : code === "3" ? Flag.questionable : code === "4" ? Flag.bad : Flag.notEvaluated;

const UNKNOWN: FlagScheme = { name: "unknown", iode: () => Flag.notEvaluated };

/** Schemes with the codes that tell each from the others. What is not evaluated in one is good in another. */
const SCHEMES: readonly (FlagScheme & { readonly meanings: Meanings; readonly needed: readonly string[] })[] =
  [
    { name: "IODE primary level", meanings: IODE, needed: ["1", "2", "4"], iode: sameDigit },
    { name: WOCE_CTD, meanings: WOCE, needed: ["2"], iode: (code) => iodeFromWoceCtd(Number(code), 0) },
    // "probably good" is less than good and stays not evaluated: a decision of this project
    {
      name: "Argo and OceanSITES reference table 2",
      meanings: ARGO,
      needed: ["1", "2", "4"],
      iode: sameDigit,
    },
    // what they say of a value enters when the quality tests run, by the map of the scheme
    { name: WOD, meanings: WOD_LEVELS, needed: ["0", "1", "2", "3"], iode: () => Flag.notEvaluated },
    { name: WOD_DEPTH, meanings: WOD_DEPTHS, needed: ["0", "1"], iode: () => Flag.notEvaluated },
  ];

/** Codes of a flag variable with their meanings; empty if it gives none. */
export function flagMeanings({ attributes }: Variable): ReadonlyMap<string, string> {
  const meanings = textOf(attributes, "flag_meanings")?.split(/\s+/) ?? [];
  const text = attributes.get("flag_values")?.value;
  const codes = typeof text === "string" ? lettersOf(text) : numbersOf(attributes, "flag_values").map(String);
  if (codes.length !== meanings.length) return new Map();
  return new Map(codes.map((code, i) => [code, meanings[i]!]));
}

/** Values of a char flag: one letter each, with or without blanks or commas between them. */
const lettersOf = (text: string): readonly string[] => [...text.replace(/[\s,]+/g, "")];

export const isFlag = ({ attributes }: Variable): boolean =>
  attributes.has("flag_values") ||
  attributes.has("flag_masks") ||
  /(?:^|_)quality_flag$|(?:^| )status_flag$/.test(textOf(attributes, "standard_name") ?? "");

/** The scheme that a flag variable's meanings are of; "unknown" if they are of none that is known here. */
export function schemeOf(variable: Variable): FlagScheme {
  const meanings = flagMeanings(variable);
  if (meanings.size === 0) return UNKNOWN;
  const found = SCHEMES.find(
    (scheme) =>
      scheme.needed.every((code) => meanings.has(code)) &&
      [...meanings].every(([code, words]) => scheme.meanings.get(code)?.test(words.toLowerCase()) ?? false),
  );
  return found ?? UNKNOWN;
}
