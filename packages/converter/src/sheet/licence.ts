import licences from "spdx-license-list";

/** A licence of the SPDX list. */
export interface Licence {
  readonly id: string;
  readonly name: string;
  readonly address: string;
}

const list: ReadonlyMap<string, Licence> = new Map(
  Object.entries(licences as Readonly<Record<string, { name: string; url?: string }>>).map(
    ([id, { name, url }]) => [
      id.toLowerCase(),
      // some old ones have no page of their own
      { id, name: name.replaceAll(/\s+/g, " "), address: url ?? `https://spdx.org/licenses/${id}.html` },
    ],
  ),
);

/** Addresses of one page differ in scheme, in the last slash and in the page of the legal text. */
const page = (address: string): string =>
  address
    .toLowerCase()
    .replace(/^https?:\/\/(www\.)?/, "")
    .replace(/\/(legalcode|deed)?(\.[a-z-]+)*$/, "");

let byPage: ReadonlyMap<string, Licence> | null = null;

/** The SPDX licence that an identifier or an address means; null for any other text. */
export function licenceOf(text: string): Licence | null {
  const trimmed = text.trim();
  const named = list.get(trimmed.toLowerCase());
  if (named || !/^https?:\/\//i.test(trimmed)) return named ?? null;
  const own = /^https?:\/\/spdx\.org\/licenses\/([^/]+?)(\.html|\.json)?$/i.exec(trimmed)?.[1];
  if (own !== undefined) return list.get(own.toLowerCase()) ?? null;
  byPage ??= new Map([...list.values()].reverse().map((licence) => [page(licence.address), licence]));
  return byPage.get(page(trimmed)) ?? null;
}

/** Identifiers of the list that begin like those for data and texts. */
export const licenceIds = (): string[] => [...list.values()].map(({ id }) => id);

/**
 * Licences that let everybody have and pass on the data, so that nothing may be closed under them.
 *
 * @source Open Definition 2.1, conformant licences; the choice of families is ours
 */
const OPEN =
  /^(CC0-|CC-BY-(SA-)?\d|CC-PDDC|CC-PDM-|PDDL-|ODC-By-|ODbL-|OGL-|OGDL-|DL-DE-|etalab-|NLOD-|CDLA-|O-UDA-)/;

export const isOpenLicence = ({ id }: Licence): boolean => OPEN.test(id);

/** Whether a text has the look of an identifier of the list: one word with a version, as CC-BY-4.0. */
export const looksLikeLicenceId = (text: string): boolean =>
  /^[A-Za-z][A-Za-z0-9.+-]*-\d[\w.+-]*$/.test(text);
