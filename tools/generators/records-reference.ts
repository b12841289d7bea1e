import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { CROSSWALK } from "@wherry/converter";

const PAGE = join("docs", "reference", "records.md");

const list = (items: readonly string[]): string =>
  items.length === 0 ? "–" : items.map((item) => `\`${item}\``).join("<br>");

/** The page on the records of a package: where each fact goes. */
export async function generateRecordsReference(root: string): Promise<string[]> {
  const rows = CROSSWALK.map(
    ({ fact, acdd, datacite, iso }) =>
      `| ${fact} | ${acdd === null ? "–" : `\`${acdd}\``} | ${list(datacite)} | ${list(iso)} |`,
  );
  const text = `# Records of a package

A deposit package describes its data set twice, from the same facts: \`<id>_iso19115-3.xml\` for catalogues of
geographic data, \`<id>_datacite.json\` for a DOI. The facts are those of the survey sheet and of the headers of the
products themselves. Made by \`tools/generate.ts\` from \`packages/converter/src/deposit/records/crosswalk.ts\`; a test
holds that no element of a record stands outside this table.

Words in brackets behind a path, or behind a colon, are the code by which elements of one path differ.

| fact | global attribute (ACDD) | DataCite 4.7 | ISO 19115-3, below \`mdb:MD_Metadata\` |
| --- | --- | --- | --- |
${rows.join("\n")}

## What was verified, and what was not

- ISO 19115-3: the record is well formed and its name spaces are those of the 2018 edition (held by a strict parser in the
  tests). Names and order of elements were read in public drafts of the schemas (2013 to 2015; \`mrl\` and \`mac\` in their
  version 2.0). **It was not validated against the final schemas**, and the words of the code lists (\`CI_RoleCode\` and
  the like) are from memory. \`cit:partyIdentifier\`, \`mdb:acquisitionInformation\` and \`mrc:MD_RangeDimension\` with several
  names are from memory.
- The standard has no platform without an instrument: every platform names all instruments; which cast used which stands
  in the products.
- DataCite: mandatory properties and lists of words were read in the schema document of kernel 4.7. The JSON form is that of
  DataCite's programming interface, from memory; it was not validated there. No DOI is made up: the record has the data
  set's own id as alternate identifier, and the archive puts the DOI in.
- A contributor's role in free words is given as the contributor type that it seems to mean, else \`Other\`; the words
  themselves stand in the products and in the sheet.
- Access rights are named by the vocabulary of COAR, from memory.
- What is not told is left out, or \`(:unav)\` where DataCite asks for something.
- Characters that XML forbids (control characters, half surrogates) become U+FFFD in the ISO record; the sheet in the
  package keeps them.
`;
  await writeFile(join(root, PAGE), text);
  return [PAGE];
}
