import type { Place } from "@wherry/core";
import type { Attribute } from "@wherry/netcdf";
import { cfClause, defineRule, type Report } from "../../engine/rule.ts";

type Key = "encoding" | "normal";

function judgeText(text: string, where: Place, report: Report<Key>) {
  if (text !== text.normalize("NFC"))
    report(where, "normal", { found: text, expected: text.normalize("NFC") });
}

function judge(attribute: Attribute, where: Place, report: Report<Key>) {
  if (attribute.bytes !== undefined)
    report(where, "encoding", { found: typeof attribute.value === "string" ? attribute.value : null });
  else if (typeof attribute.value === "string") judgeText(attribute.value, where, report);
  else if (attribute.type === "string")
    for (const text of attribute.value as string[]) judgeText(text, where, report);
}

/** Index of the first cell of a char array that is not UTF-8 in normal form; -1 if all are. */
function firstBadCell(bytes: Uint8Array, length: number): number {
  const strict = new TextDecoder("utf-8", { fatal: true });
  for (let cell = 0; cell * length < bytes.length; cell += 1) {
    const own = bytes.subarray(cell * length, (cell + 1) * length);
    if (own.every((byte) => byte < 0x80)) continue;
    try {
      const text = strict.decode(own);
      if (text !== text.normalize("NFC")) return cell;
    } catch {
      return cell;
    }
  }
  return -1;
}

export const textEncoding = defineRule<Key | "data">({
  id: "cf/text-encoding",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("2.2"),
  editions: { since: "1.12" },
  covers: ["CF-2.2-R1"],
  title: "Text is UTF-8 in normal form C",
  why: "Text in another encoding, or with letters in pieces, is shown and searched wrongly elsewhere.",
  remedy: "Write the text again as UTF-8, normalised to form C.",
  messages: {
    encoding: "the text of {attribute} is not UTF-8",
    normal: "the text of {attribute} is UTF-8, but its letters with marks are written in pieces (not form C)",
    data: "{variable} holds text that is not UTF-8 in normal form C",
  },
  passing: [`:title = "Mündung" ;`, `dimensions: n = 8 ; variables: char id(n) ; data: id = "Mündung" ;`],
  failing: [
    { cdl: `:title = "Mu\u0308ndung" ;`, where: { attribute: "title" }, message: "normal" },
    { cdl: `:title = "M\\374ndung" ;`, where: { attribute: "title" }, message: "encoding" },
    {
      cdl: `dimensions: n = 3 ; variables: char id(n) ; data: id = "M\\374n" ;`,
      where: { variable: "id" },
      message: "data",
    },
  ],
  async check(dataset, report) {
    for (const attribute of dataset.attributes.values())
      judge(attribute, { attribute: attribute.name }, report);
    for (const { name, type, attributes, shape } of dataset.all) {
      for (const attribute of attributes.values())
        judge(attribute, { variable: name, attribute: attribute.name }, report);
      if (type !== "char") continue;
      const bytes = await dataset.data.bytes(name);
      const bad = bytes === null ? -1 : firstBadCell(bytes, Math.max(1, shape.at(-1) ?? 1));
      if (bad >= 0) report({ variable: name }, "data", { places: [bad] });
    }
  },
});
