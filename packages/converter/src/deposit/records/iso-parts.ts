import type { Contributor, Party } from "@wherry/contracts";
import { orcidAddress, rorAddress } from "../../sheet/identifiers.ts";
import { isPerson } from "../../sheet/identity-conflicts.ts";
import { type Element, element, withAttributes } from "./xml.ts";

// Building blocks of an ISO 19115-3 record. Elements stand in the order that the schemas of the standard give them.

type Part = Element | null;
type Text = string | null | undefined;

export const text = (name: string, value: Text): Part =>
  value ? element(name, element("gco:CharacterString", value)) : null;

export const decimal = (name: string, value: number): Part =>
  element(name, element("gco:Decimal", String(value)));

/** A word of a code list of the standard. */
export function code(name: string, list: string, value: string): Part {
  const [, prefix] = /^(\w+):/.exec(list) ?? [];
  const type = list.slice((prefix?.length ?? 0) + 1);
  return element(
    name,
    withAttributes(
      list,
      {
        codeList: `https://standards.iso.org/iso/19115/resources/Codelists/cat/codelists.xml#${type}`,
        codeListValue: value,
      },
      value,
    ),
  );
}

/** A date, or a date and time. */
export const moment = (name: string, value: string): Part =>
  element(name, element(value.includes("T") ? "gco:DateTime" : "gco:Date", value));

export const dated = (name: string, value: Text, type: string): Part =>
  value
    ? element(
        name,
        element("cit:CI_Date", moment("cit:date", value), code("cit:dateType", "cit:CI_DateTypeCode", type)),
      )
    : null;

export interface Identifier {
  readonly code: Text;
  readonly space?: Text;
  readonly words?: Text;
}

export const identifier = (name: string, { code: value, space, words }: Identifier): Part =>
  value
    ? element(
        name,
        element(
          "mcc:MD_Identifier",
          text("mcc:code", value),
          text("mcc:codeSpace", space),
          text("mcc:description", words),
        ),
      )
    : null;

export const online = (name: string, address: Text, words?: Text): Part =>
  address
    ? element(
        name,
        element("cit:CI_OnlineResource", text("cit:linkage", address), text("cit:description", words)),
      )
    : null;

/** A thing that is cited by a title and perhaps an address. */
export const cited = (name: string, title: string, address?: Text): Part =>
  element(name, element("cit:CI_Citation", text("cit:title", title), online("cit:onlineResource", address)));

/** Somebody with a role. A person stands within their institution, where it is told. */
export function responsible(name: string, party: Party | Contributor | undefined, role: string): Part {
  if (party === undefined) return null;
  const person = isPerson(party);
  const own = {
    name: party.name,
    id: party.orcid === undefined ? null : orcidAddress(party.orcid),
    space: "ORCID",
  };
  const ror = party.ror === undefined ? null : rorAddress(party.ror);
  const contact = contactOf(party);
  const institution = person || party.type === "position" ? party.institution : null;
  const individual = (...more: Part[]) =>
    element(
      "cit:CI_Individual",
      text("cit:name", own.name),
      ...more,
      identifier("cit:partyIdentifier", { code: own.id, space: own.space }),
    );
  const organisation = institution
    ? element(
        "cit:CI_Organisation",
        text("cit:name", institution),
        contact,
        identifier("cit:partyIdentifier", { code: ror, space: "ROR" }),
        element(
          "cit:individual",
          party.type === "position"
            ? element("cit:CI_Individual", text("cit:positionName", party.name))
            : individual(),
        ),
      )
    : person
      ? individual(contact)
      : element(
          "cit:CI_Organisation",
          text("cit:name", own.name),
          contact,
          identifier("cit:partyIdentifier", { code: ror, space: "ROR" }),
        );
  return element(
    name,
    element(
      "cit:CI_Responsibility",
      code("cit:role", "cit:CI_RoleCode", role),
      element("cit:party", organisation),
    ),
  );
}

const contactOf = ({ email, url }: Party | Contributor): Part =>
  element(
    "cit:contactInfo",
    element(
      "cit:CI_Contact",
      email
        ? element("cit:address", element("cit:CI_Address", text("cit:electronicMailAddress", email)))
        : null,
      online("cit:onlineResource", url),
    ),
  );

export const NAMESPACES: Readonly<Record<string, string>> = {
  "xmlns:mdb": "http://standards.iso.org/iso/19115/-3/mdb/2.0",
  "xmlns:cit": "http://standards.iso.org/iso/19115/-3/cit/2.0",
  "xmlns:gco": "http://standards.iso.org/iso/19115/-3/gco/1.0",
  "xmlns:gex": "http://standards.iso.org/iso/19115/-3/gex/1.0",
  "xmlns:lan": "http://standards.iso.org/iso/19115/-3/lan/1.0",
  "xmlns:mac": "http://standards.iso.org/iso/19115/-3/mac/2.0",
  "xmlns:mcc": "http://standards.iso.org/iso/19115/-3/mcc/1.0",
  "xmlns:mco": "http://standards.iso.org/iso/19115/-3/mco/1.0",
  "xmlns:mrc": "http://standards.iso.org/iso/19115/-3/mrc/2.0",
  "xmlns:mrd": "http://standards.iso.org/iso/19115/-3/mrd/1.0",
  "xmlns:mri": "http://standards.iso.org/iso/19115/-3/mri/1.0",
  "xmlns:mrl": "http://standards.iso.org/iso/19115/-3/mrl/2.0",
  "xmlns:mrs": "http://standards.iso.org/iso/19115/-3/mrs/1.0",
  "xmlns:gml": "http://www.opengis.net/gml/3.2",
};
