import { SaxesParser } from "saxes";
import { describe, expect, test } from "vitest";
import { CROSSWALK } from "../src/deposit/records/crosswalk.ts";
import { dataciteRecord } from "../src/deposit/records/datacite.ts";
import { isoRecord } from "../src/deposit/records/iso-record.ts";
import { facts, fullSheet } from "./known-facts.ts";

interface Leaf {
  /** Names of the elements from below the root to the text. */
  readonly path: string;
  readonly text: string;
}

/** Every text of a document with its path, as a strict parser that minds name spaces reads it. */
function leaves(xml: string): { leaves: Leaf[]; codes: string[] } {
  const parser = new SaxesParser({ xmlns: true });
  const path: string[] = [];
  const found: Leaf[] = [];
  const codes: string[] = [];
  let text = "";
  parser.on("error", (error) => {
    throw error;
  });
  parser.on("opentag", ({ name, attributes }) => {
    path.push(name);
    text = "";
    if (attributes.codeListValue) codes.push(`${path.slice(1).join("/")}:${attributes.codeListValue.value}`);
  });
  parser.on("text", (part) => {
    text += part;
  });
  parser.on("closetag", () => {
    if (text.trim() !== "") found.push({ path: path.slice(1).join("/"), text });
    text = "";
    path.pop();
  });
  parser.write(xml).close();
  return { leaves: found, codes };
}

/** A place of the crosswalk without its code. */
const pathOf = (place: string): string => place.replace(/ \(\w+\)$/, "");

describe("the ISO record", () => {
  const xml = isoRecord(facts());
  const record = leaves(xml);
  const at = (end: string) => record.leaves.filter(({ path }) => path.endsWith(end)).map(({ text }) => text);

  test("is well formed with name spaces, and the same each time", () => {
    expect(record.leaves.length).toBeGreaterThan(60);
    expect(isoRecord(facts())).toBe(xml);
  });

  test("every element is placed by the crosswalk", () => {
    const places = CROSSWALK.flatMap(({ iso }) => iso.map((place) => pathOf(place)));
    const homeless = record.leaves
      .map(({ path }) => path)
      .filter((path) => !places.some((place) => path === place || path.startsWith(`${place}/`)));
    expect(homeless).toEqual([]);
  });

  test("every row of the crosswalk is in the record of a full sheet", () => {
    const paths = record.leaves.map(({ path }) => path);
    const unused = CROSSWALK.flatMap(({ fact, iso }) =>
      iso
        .map((place) => pathOf(place))
        .filter((place) => !paths.some((path) => path === place || path.startsWith(`${place}/`)))
        .map((place) => `${fact}: ${place}`),
    );
    expect(unused).toEqual([]);
  });

  test("tells who, with their identifiers", () => {
    expect(
      at(
        "cit:individual/cit:CI_Individual/cit:partyIdentifier/mcc:MD_Identifier/mcc:code/gco:CharacterString",
      ),
    ).toContain("https://orcid.org/0000-0002-1825-0097");
    expect(
      at("cit:CI_Organisation/cit:partyIdentifier/mcc:MD_Identifier/mcc:code/gco:CharacterString"),
    ).toContain("https://ror.org/03yrm5c26");
    expect(
      record.codes.filter((code) => code.includes("cit:role")).map((code) => code.split(":").at(-1)),
    ).toEqual([
      "pointOfContact",
      "author",
      "publisher",
      "contributor",
      "owner",
      "pointOfContact",
      "distributor",
    ]);
  });

  test("tells access, embargo and licence, and the caution", () => {
    expect(at("mco:otherConstraints/gco:CharacterString")).toEqual([
      "Access: embargoed; open from 2027-01-01; ask the station",
      "CC-BY-4.0",
    ]);
    expect(
      record.codes
        .filter((code) => code.includes("MD_RestrictionCode"))
        .map((code) => code.split(":").at(-1)),
    ).toEqual(["otherRestrictions", "licence"]);
    expect(at("mco:useLimitation/gco:CharacterString")[0]).toMatch(/^Not for navigation or diving/);
    expect(record.codes.some((code) => code.endsWith(":released"))).toBe(true);
  });

  test("tells calibration with certificate and coefficients", () => {
    expect(at("mac:description/gco:CharacterString").join("\n")).toContain(
      "temperature calibrated 2025-01-01, Quay Laboratory, certificate C-7, a = 0.5",
    );
  });

  test("of a sheet that tells an id only is well formed too", () => {
    const bare = isoRecord(
      facts({ sheet: { version: 1, survey: { id: "x" } }, box: null, time: null, vertical: null }),
    );
    expect(leaves(bare).leaves.some(({ text }) => text === "x")).toBe(true);
  });
});

describe("the DataCite record", () => {
  const record = JSON.parse(dataciteRecord(facts())) as Record<string, unknown> & {
    creators: { name: string; nameIdentifiers: object[]; affiliation: object[] }[];
    dates: { date: string; dateType: string }[];
    relatedIdentifiers: { relatedIdentifier: string; relatedIdentifierType: string; relationType: string }[];
    rightsList: Record<string, string>[];
  };

  test("has every mandatory property of schema 4.7 but the identifier, which a DOI will be", () => {
    // kernel-4.7/metadata.xsd: elements of `resource` without minOccurs="0"
    for (const property of ["creators", "titles", "publisher", "publicationYear", "types"])
      expect(record).toHaveProperty(property);
    expect(record).not.toHaveProperty("doi");
  });

  test("every property is placed by the crosswalk, and every row is there", () => {
    const placed = CROSSWALK.flatMap(({ datacite }) => datacite.map((place) => place.split(":")[0]!));
    expect(Object.keys(record).filter((key) => !placed.includes(key))).toEqual([]);
    expect([...new Set(placed)].filter((key) => !(key in record))).toEqual([]);
  });

  test("carries the embargo: the year and the day on which the data are open", () => {
    expect(record.publicationYear).toBe(2027);
    expect(record.dates).toContainEqual({ date: "2027-01-01", dateType: "Available" });
    expect(record.rightsList.map(({ rightsIdentifier, rightsUri }) => rightsIdentifier ?? rightsUri)).toEqual(
      ["CC-BY-4.0", "http://purl.org/coar/access_right/c_f1cf"],
    );
  });

  test("names a person with ORCID and the ROR of where they belong", () => {
    expect(record.creators).toEqual([
      {
        name: "Ines Invented",
        nameType: "Personal",
        nameIdentifiers: [
          {
            nameIdentifier: "https://orcid.org/0000-0002-1825-0097",
            nameIdentifierScheme: "ORCID",
            schemeUri: "https://orcid.org",
          },
        ],
        affiliation: [
          {
            name: "Quay Station (invented)",
            affiliationIdentifier: "https://ror.org/03yrm5c26",
            affiliationIdentifierScheme: "ROR",
            schemeUri: "https://ror.org",
          },
        ],
      },
    ]);
  });

  test("gives DOIs as DOIs", () => {
    expect(record.relatedIdentifiers).toContainEqual({
      relatedIdentifier: "10.1000/182",
      relatedIdentifierType: "DOI",
      relationType: "IsDescribedBy",
    });
  });

  test("does not make up what is not told", () => {
    const bare = JSON.parse(dataciteRecord(facts({ sheet: { version: 1, survey: { id: "x" } }, box: null })));
    expect(bare.creators).toEqual([{ name: "(:unav)" }]);
    expect(bare.publisher).toEqual({ name: "(:unav)" });
    expect(bare).not.toHaveProperty("rightsList");
  });
});

test("hostile texts of a sheet stay texts in both records", () => {
  const evil = '</gco:CharacterString><script>alert(1)</script>\u0000\u202e"; DROP';
  const sheet = fullSheet();
  const survey = { ...sheet.survey, title: evil, summary: evil, keywords: [evil] };
  const hostile = facts({ sheet: { ...sheet, survey } });
  const { leaves: found } = leaves(isoRecord(hostile));
  const kept = evil.replace("\u0000", "\ufffd");
  expect(found.filter(({ text }) => text === kept)).toHaveLength(3);
  expect(JSON.parse(dataciteRecord(hostile)).titles[0].title).toBe(evil);
});
