import type { Column } from "@wherry/core";

/** Name of the flag scheme of values at observed levels. */
export const WOD = "WOD";

/** Depths have a flag scheme of their own, whose table is not part of what was read here. */
export const WOD_DEPTH = "WOD depth";

export interface WodQuantity extends Pick<Column, "name" | "standardName" | "longName" | "units"> {
  /** What is said of the unit. */
  readonly words: string;
}

/** Units that the format document does not fix, or that changed between releases. */
const OPEN = "the unit depends on the release of the database, and the file does not tell it";

const open = (name: string, longName: string): WodQuantity => ({
  name,
  standardName: null,
  longName,
  units: null,
  words: OPEN,
});

/**
 * Variables of the format by code.
 *
 * @source NODC Internal Report 14 (World Ocean Database 1998), table of variable codes
 */
const VARIABLES: ReadonlyMap<number, WodQuantity> = new Map([
  [
    1,
    {
      name: "temperature",
      standardName: "sea_water_temperature",
      longName: "temperature of sea water",
      units: "degree_C",
      words: "degrees Celsius by the format",
    },
  ],
  [
    2,
    {
      name: "salinity",
      standardName: "sea_water_practical_salinity",
      longName: "Practical Salinity",
      units: "1",
      words: "the format gives it no unit",
    },
  ],
  [3, open("oxygen", "dissolved oxygen")],
  [4, open("phosphate", "phosphate")],
  [6, open("silicate", "silicate")],
  [8, open("nitrate", "nitrate, or nitrate and nitrite")],
  [9, { name: "ph", standardName: null, longName: "pH", units: "1", words: "the pH scale is not told" }],
  [
    11,
    {
      name: "chlorophyll",
      standardName: null,
      longName: "chlorophyll",
      units: "ug l-1",
      words: "micrograms per litre by the format",
    },
  ],
  [17, open("alkalinity", "alkalinity")],
  [
    25,
    {
      name: "pressure",
      standardName: "sea_water_pressure_due_to_sea_water",
      longName: "sea pressure",
      units: "dbar",
      words: "decibars by the format",
    },
  ],
]);

/** What a variable is. Codes that are not known here keep their number and have no unit. */
export const quantityOfCode = (code: number): WodQuantity =>
  VARIABLES.get(code) ?? {
    name: `variable_${code}`,
    standardName: null,
    longName: `variable with code ${code} of the World Ocean Database`,
    units: null,
    words: "the code is not known here, so neither is its unit",
  };

/** How a variable is called in a cast's columns: its code and its name. */
export const headerOfCode = (code: number): string => {
  const { name } = quantityOfCode(code);
  return VARIABLES.has(code) ? `${code} ${name}` : name;
};

/** Entries of the secondary header that are known by code, as words before the number and a unit after it. */
const SECONDARY: ReadonlyMap<number, readonly [string, string]> = new Map([
  [1, ["accession", ""]],
  [3, ["platform code", ""]],
  [4, ["institute code", ""]],
  [5, ["originator's cast number", ""]],
  [7, ["originator's station number", ""]],
  [10, ["bottom depth", " m"]],
  [11, ["cast duration", " h"]],
  [12, ["cast direction code", ""]],
  [29, ["probe type", ""]],
  [91, ["instrument code", ""]],
  [99, ["file version", ""]],
]);

const PROBES: ReadonlyMap<number, string> = new Map([
  [4, " (CTD)"],
  [7, " (bottle)"],
]);

/** An entry of the secondary header as a line of notes. */
export function secondaryWords(code: number, value: number | null): string {
  const [name, unit] = SECONDARY.get(code) ?? [`secondary header ${code}`, ""];
  const probe = code === 29 && value !== null ? (PROBES.get(value) ?? "") : "";
  return `${name} = ${value === null ? "missing" : `${value}${unit}${probe}`}`;
}

/** Meanings of the flag of a whole profile, as far as they are known. */
const PROFILE_FLAGS: ReadonlyMap<string, string> = new Map([
  ["0", "accepted"],
  ["1", "failed the annual check"],
  ["2", "two or more density inversions"],
  ["3", "flagged cruise"],
  ["4", "failed the seasonal check"],
  ["5", "failed the monthly check"],
]);

export const profileFlagWords = (flag: string): string => {
  const meaning = PROFILE_FLAGS.get(flag);
  return meaning === undefined ? flag : `${flag} (${meaning})`;
};

const RELEASES: Readonly<Record<string, string>> = {
  A: "the release of 2001",
  B: "the release of 2005",
  C: "a release of 2009 or later",
  Q: "the variant with uncertainties",
};

/** Words for the version that a profile begins with. */
export const releaseOf = (version: string): string => RELEASES[version] ?? "the release of 1998";
