import { defineBagRule, rfc8493 } from "../../engine/bag-rule.ts";
import { bagExample } from "./bag-example.ts";
import { few } from "./few.ts";

/** Refused entries that are reported; an archive of thousands says nothing more. */
const MOST = 20;

export const packagePaths = defineBagRule({
  id: "package/paths",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "reading",
  citation: rfc8493("5.3, Interoperability"),
  covers: ["BAG-14"],
  title: "The paths of the package mean the same on every system",
  why: "Paths that lead out, links and names that differ by case alone are lost, or overwrite a file, on another system.",
  remedy: "Rename the files and make the package again.",
  messages: {
    refused: "{found}",
    alike: "the names differ only by the case or the composition of letters: {found}",
    blank: "names with blanks or other characters that archives ask to leave out: {found}",
  },
  passing: [bagExample()],
  failing: [
    { ...bagExample({ "data/../../b.txt": "b" }), where: {}, message: "refused" },
    { ...bagExample({ "data/A.txt": "abc" }), where: {}, message: "alike" },
    { ...bagExample({ "data/my casts.txt": "abc" }), where: {}, message: "blank" },
  ],
  check({ bag: { container, files } }, report) {
    for (const { message } of container.refused.slice(0, MOST)) report({}, "refused", { found: message });
    const byForm = new Map<string, string[]>();
    for (const path of files.keys()) {
      const form = path.normalize("NFC").toLowerCase();
      byForm.set(form, [...(byForm.get(form) ?? []), path]);
    }
    const alike = [...byForm.values()].filter((paths) => paths.length > 1);
    if (alike.length > 0)
      report({}, "alike", { found: alike[0] ?? [], count: alike.length, level: "warning" });
    const odd = [...files.keys()].filter((path) => /[^A-Za-z0-9._/-]/.test(path));
    if (odd.length > 0) report({}, "blank", { found: few(odd), count: odd.length, level: "advice" });
  },
});
