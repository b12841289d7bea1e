import { Flag } from "./flag.ts";

/** Published flag schemes with a mapping to the primary level of IODE. */
export type FlagScheme =
  | "IODE primary level"
  | "QARTOD"
  | "SeaDataNet L20"
  | "Argo"
  | "GTSPP"
  | "WOCE CTD"
  | "WOD";

/** A code in another scheme and what the step to it loses, in words; null if nothing. */
export interface MappedFlag {
  readonly flag: Flag;
  readonly lost: string | null;
}

export interface MappedCode {
  /** Null where the scheme has no code for it: then no flag is written, or the value is left out. */
  readonly code: string | null;
  readonly lost: string | null;
}

const probably = "good and probably good are one flag";
const changed = "that the value was changed";
const interpolated = "that the value was interpolated, not measured";
const range = "which check it failed";

type Row = readonly [code: string, flag: Flag, lost: string | null];

const plain = (...flags: readonly Flag[]): Row[] => flags.map((flag) => [String(flag), flag, null]);

/** The codes of Argo and GTSPP are those of one family. */
const family: readonly Row[] = [
  ["0", Flag.notEvaluated, null],
  ["1", Flag.good, null],
  ["2", Flag.good, probably],
  ["3", Flag.questionable, null],
  ["4", Flag.bad, null],
  ["5", Flag.good, changed],
  ["8", Flag.questionable, interpolated],
  ["9", Flag.missing, null],
];

const toPrimary: Readonly<Record<FlagScheme, readonly Row[]>> = {
  "IODE primary level": plain(1, 2, 3, 4, 9),
  QARTOD: plain(1, 2, 3, 4, 9),
  "SeaDataNet L20": [
    ...family,
    ["6", Flag.questionable, "that the value is below detection"],
    ["7", Flag.questionable, "that the value is in excess"],
    ["A", Flag.questionable, "that the phenomenon is uncertain"],
    ["B", Flag.good, "that the value is nominal"],
    ["Q", Flag.questionable, "that the value is below the limit of quantification"],
  ],
  Argo: family,
  GTSPP: family,
  "WOCE CTD": [
    ["0", Flag.notEvaluated, null],
    ["1", Flag.notEvaluated, "that the value is not calibrated"],
    ["2", Flag.good, null],
    ["3", Flag.questionable, null],
    ["4", Flag.bad, null],
    ["5", Flag.missing, "that the value was sampled and not reported"],
    ["6", Flag.questionable, interpolated],
    ["7", Flag.good, "that the value was despiked"],
    ["9", Flag.missing, null],
  ],
  WOD: [
    ["0", Flag.good, null],
    ["1", Flag.questionable, range],
    ...["2", "3", "4", "5"].map((code): Row => [code, Flag.questionable, range]),
    ...["6", "7", "8", "9"].map((code): Row => [code, Flag.bad, range]),
  ],
};

/**
 * Primary flag of a code of another scheme; null if the scheme does not know the code.
 *
 * @source Codes: IOC Manuals and Guides 54-3, QARTOD flags manual, SeaDataNet L20, Argo table 2, GTSPP, WHP-Exchange,
 *         World Ocean Database. The mapping is ours: interpolated values are never good; ranges of whole basins are no
 *         proof that a value is bad.
 */
export function primaryFlag(scheme: FlagScheme, code: string): MappedFlag | null {
  const row = toPrimary[scheme].find(([known]) => known === code.trim());
  return row === undefined ? null : { flag: row[1], lost: row[2] };
}

export interface ReverseContext {
  /** A comparison with water samples is recorded: only then is a good value calibrated by the WOCE scheme. */
  readonly comparedWithSamples: boolean;
  /** The only test that failed is a range: the WOD scheme tells that apart. */
  readonly rangeAlone: boolean;
}

/**
 * Code of another scheme for a primary flag. Not a way back: a code that came from that scheme stands beside the data
 * as received, and is the one to use.
 */
export function codeFor(
  scheme: FlagScheme,
  flag: Flag,
  { comparedWithSamples, rangeAlone }: ReverseContext,
): MappedCode {
  if (scheme === "IODE primary level" || scheme === "QARTOD") return { code: String(flag), lost: null };
  if (scheme === "WOCE CTD") {
    if (flag === Flag.good)
      return comparedWithSamples
        ? { code: "2", lost: null }
        : { code: "1", lost: "that the value passed its tests: without check samples it is not calibrated" };
    if (flag === Flag.notEvaluated) return { code: "1", lost: "that the value was not tested" };
    if (flag === Flag.missing) return { code: "5", lost: null };
    return { code: String(flag), lost: null };
  }
  if (scheme === "WOD") {
    if (flag === Flag.good) return { code: "0", lost: null };
    if (flag === Flag.notEvaluated) return { code: null, lost: "the flag: the scheme has none for it" };
    if (flag === Flag.missing) return { code: null, lost: "the row: the scheme leaves missing values out" };
    if (flag === Flag.questionable) return { code: "3", lost: range };
    return { code: rangeAlone ? "1" : "8", lost: rangeAlone ? "that the value is bad" : range };
  }
  return { code: flag === Flag.notEvaluated ? "0" : String(flag), lost: null };
}

const names: readonly (readonly [RegExp, FlagScheme])[] = [
  [/iode|54-3|intergovernmental/i, "IODE primary level"],
  [/qartod/i, "QARTOD"],
  [/seadatanet|sea ?data ?net|\bL20\b/i, "SeaDataNet L20"],
  [/argo/i, "Argo"],
  [/gtspp/i, "GTSPP"],
  [/woce|whp/i, "WOCE CTD"],
  [/\bWOD\b|world ocean database/i, "WOD"],
];

/** Names of the schemes that are mapped. */
export const flagSchemes: readonly FlagScheme[] = names.map(([, scheme]) => scheme);

/** The scheme that a name stands for, as files and people write it; null for any other: it is not mapped. */
export const flagSchemeOf = (name: string): FlagScheme | null =>
  names.find(([pattern]) => pattern.test(name))?.[1] ?? null;
