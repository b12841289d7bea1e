import {
  areaTypes,
  nearestNames,
  type Result,
  regionNames,
  type StandardName,
  type StandardNameTable,
  standardName,
  succeed,
  unitTableVersion,
} from "@wherry/core";
import { EDITIONS, NEWEST } from "@wherry/validator";
import { readVocabulary } from "./vocabulary-file.ts";

/** A vocabulary or standard that files are written and judged by. */
export interface VocabularyVersion {
  readonly name: string;
  readonly version: string;
  /** Date of the version, ISO 8601; null if it states none. */
  readonly date: string | null;
  /** Number of words or names; null where there is nothing to count. */
  readonly entries: number | null;
  /** File it was read from; null for what ships. */
  readonly file: string | null;
}

/** What the table of standard names says of a name, or the names spelt nearly so. */
export interface NameAnswer {
  readonly asked: string;
  readonly found: StandardName | null;
  readonly near: readonly string[];
}

export interface Vocabularies {
  readonly versions: readonly VocabularyVersion[];
  readonly names: readonly NameAnswer[];
}

/**
 * Versions of the shipped vocabularies, and what the table of standard names says of some names.
 *
 * @param file  a table of standard names in place of the shipped one
 */
export async function vocabularies(
  names: readonly string[],
  file: string | undefined,
): Promise<Result<Vocabularies>> {
  const table = await readVocabulary(file);
  if (!table.ok) return table;
  const shipped = { date: null, file: null };
  return succeed({
    versions: [
      {
        name: "CF standard names",
        version: table.value.version,
        date: table.value.lastModified,
        entries: table.value.names.size,
        file: file ?? null,
      },
      { ...shipped, name: "CF area types", version: areaTypes().version, entries: areaTypes().words.size },
      {
        ...shipped,
        name: "CF region names",
        version: regionNames().version,
        entries: regionNames().words.size,
      },
      { ...shipped, name: "CF Conventions", version: `${EDITIONS[0]} to ${NEWEST}`, entries: null },
      { ...shipped, name: "ACDD", version: "1.3", entries: null },
      { ...shipped, name: "UDUNITS units", version: unitTableVersion, entries: null },
    ],
    names: names.map((name) => answerFor(name, table.value)),
  });
}

function answerFor(asked: string, table: StandardNameTable): NameAnswer {
  const found = standardName(asked, table);
  return { asked, found, near: found === null ? nearestNames(asked, table.names.keys()) : [] };
}
