import { dangerOf, isPayload } from "@wherry/formats";
import { defineBagRule, rfc8493 } from "../../engine/bag-rule.ts";
import { bagExample, SHA256_ABC } from "./bag-example.ts";
import { few } from "./few.ts";

const FILE = "manifest-sha256.txt";
const BOTH = `${SHA256_ABC}  data/a.txt\n${SHA256_ABC}  data/b.txt\n`;

export const packageComplete = defineBagRule({
  id: "package/complete",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: rfc8493("3, Complete and Valid Bags"),
  covers: ["BAG-4", "BAG-13"],
  title: "The package holds exactly the files that its manifests list",
  why: "A file that is missing was lost on the way; a file that no manifest lists may be another one than was sent.",
  remedy: "Add the missing files, or make the package again from what it should hold.",
  messages: {
    missing: "{file}: listed, but not in the package: {found}",
    extra: "in the package, but not listed in {file}: {found}",
    empty: "the package holds no data",
  },
  passing: [bagExample()],
  failing: [
    {
      ...bagExample({ "data/a.txt": null, "data/b.txt": "abc", "manifest-sha256.txt": BOTH }),
      where: { file: FILE },
      message: "missing",
    },
    { ...bagExample({ "data/b.txt": "b" }), where: { file: FILE }, message: "extra" },
    { ...bagExample({ "data/a.txt": null, "manifest-sha256.txt": "" }), where: {}, message: "empty" },
  ],
  check({ bag: { manifests, files } }, report) {
    const payload = [...files.keys()].filter(isPayload);
    for (const { path: file, of, entries } of manifests) {
      const listed = new Set(entries.map(({ path }) => path));
      const missing = [...listed].filter((path) => !files.has(path) && dangerOf(path) === null);
      if (missing.length > 0) report({ file }, "missing", { found: few(missing), count: missing.length });
      const extra = of === "payload" ? payload.filter((path) => !listed.has(path)) : [];
      if (extra.length > 0) report({ file }, "extra", { found: few(extra), count: extra.length });
    }
    if (payload.length === 0 && manifests.every(({ entries }) => entries.length === 0))
      report({}, "empty", { level: "warning" });
  },
});
