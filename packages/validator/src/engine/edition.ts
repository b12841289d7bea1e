/**
 * Editions of the CF Conventions, oldest first. The requirements of 1.6 and later were read edition by edition;
 * older files are judged by what stands in 1.6 and is not new in it.
 */
export const EDITIONS = [
  "1.0",
  "1.1",
  "1.2",
  "1.3",
  "1.4",
  "1.5",
  "1.6",
  "1.7",
  "1.8",
  "1.9",
  "1.10",
  "1.11",
  "1.12",
  "1.13",
] as const;

export type Edition = (typeof EDITIONS)[number];

export const NEWEST: Edition = "1.13";

/** The oldest edition whose text the rules were compared with. */
export const OLDEST_READ: Edition = "1.6";

export const isEdition = (text: string): text is Edition => (EDITIONS as readonly string[]).includes(text);

const rank = (edition: Edition): number => EDITIONS.indexOf(edition);

export const atLeast = (edition: Edition, since: Edition): boolean => rank(edition) >= rank(since);

export const atMost = (edition: Edition, until: Edition): boolean => rank(edition) <= rank(until);

/** By which edition a file is judged, and why. */
export interface EditionChoice {
  readonly edition: Edition;
  /** The edition that the file names: "1.8"; null if it names none. */
  readonly claimed: string | null;
  /**
   * `claimed`: the file says so; `option`: asked for by the caller; `newest`: the file names none, or one that is
   * not known here.
   */
  readonly because: "claimed" | "option" | "newest";
}

/** The names in a `Conventions` text: split at commas if there is one, else at blanks (CF 2.6.1). */
export function conventionNames(text: string): string[] {
  const parts = text.includes(",") ? text.split(",") : text.split(/\s+/);
  return parts.map((part) => part.trim()).filter((part) => part !== "");
}

/** Number of the edition in the first name of the form CF-major.minor; null if there is none. */
export function claimedEdition(conventions: string): string | null {
  for (const name of conventionNames(conventions)) {
    const number = /^CF-(\d+\.\d+)$/.exec(name)?.[1];
    if (number !== undefined) return number;
  }
  return null;
}

export function chooseEdition(conventions: string | undefined, option: Edition | undefined): EditionChoice {
  const claimed = conventions === undefined ? null : claimedEdition(conventions);
  if (option !== undefined) return { edition: option, claimed, because: "option" };
  if (claimed !== null && isEdition(claimed)) return { edition: claimed, claimed, because: "claimed" };
  return { edition: NEWEST, claimed, because: "newest" };
}
