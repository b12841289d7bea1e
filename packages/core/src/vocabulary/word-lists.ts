import { areaTypeWords, regionWords } from "./word-lists.generated.ts";

/** A controlled list of words with its version. */
export interface WordList {
  readonly version: string;
  readonly words: ReadonlySet<string>;
}

const unpack = ({ version, words }: { version: string; words: string }): WordList => ({
  version,
  words: new Set(words.split(" ")),
});

let areas: WordList | null = null;
let regions: WordList | null = null;

/** Area types of CF (section 7.3.3). */
export function areaTypes(): WordList {
  areas ??= unpack(areaTypeWords);
  return areas;
}

/** Standardized region names of CF (section 6.1.1). */
export function regionNames(): WordList {
  regions ??= unpack(regionWords);
  return regions;
}
