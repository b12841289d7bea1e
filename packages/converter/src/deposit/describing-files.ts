import type { Checksum, InfoLine } from "./bag-tags.ts";
import type { DataSetFacts } from "./data-set-facts.ts";
import { positionsCsv, positionsMetadata } from "./positions.ts";
import { type PackedName, readMe } from "./read-me.ts";
import { dataciteRecord } from "./records/datacite.ts";
import { isoRecord } from "./records/iso-record.ts";
import { instituteOf } from "./records/record-words.ts";

export type { PackedName };

/** A file that is made for the package, with its path below data/. */
export interface MadeFile {
  readonly path: string;
  readonly text: string;
}

/**
 * What a package holds beside the result of a conversion: records, position list, what is handed in, and a read-me
 * that tells of everything.
 *
 * @param given    files of the result
 * @param reports  further files that were made of it, as the check report
 * @param checksum the one that the read-me shows how to compare
 */
export function describingFiles(
  facts: DataSetFacts,
  given: readonly PackedName[],
  reports: readonly MadeFile[],
  checksum: Checksum,
): MadeFile[] {
  const { id } = facts.sheet.survey;
  const positions = `${id}_positions.csv`;
  const made: MadeFile[] = [
    { path: `${id}_iso19115-3.xml`, text: isoRecord(facts) },
    { path: `${id}_datacite.json`, text: dataciteRecord(facts) },
    { path: positions, text: positionsCsv(facts) },
    { path: `${positions}-metadata.json`, text: positionsMetadata(facts, positions) },
    ...reports,
  ];
  const names = [...given, ...made.map(({ path, text }) => ({ path, size: byteLength(text) }))].sort(
    (a, b) => (a.path < b.path ? -1 : 1),
  );
  return [{ path: "README.txt", text: readMe(facts, names, checksum) }, ...made];
}

const encoder = new TextEncoder();
const byteLength = (text: string): number => encoder.encode(text).length;

/** What bag-info.txt says of the package. */
export function bagInfo({ sheet, created, software }: DataSetFacts): InfoLine[] {
  const { survey, people } = sheet;
  return [
    ["Source-Organization", instituteOf(sheet) ?? undefined],
    ["Contact-Name", people?.creator?.name],
    ["Contact-Email", people?.creator?.email],
    ["External-Description", [survey.title, survey.summary].filter(Boolean).join(". ")],
    ["External-Identifier", [survey.naming_authority, survey.id].filter(Boolean).join(":")],
    ["Bagging-Date", created.slice(0, 10)],
    ["Bag-Software-Agent", software],
  ];
}
