import { defineBagRule, rfc8493 } from "../../engine/bag-rule.ts";
import { bagExample } from "./bag-example.ts";
import { few } from "./few.ts";

export const packageChecksums = defineBagRule({
  id: "package/checksums",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: rfc8493("3, Complete and Valid Bags"),
  covers: ["BAG-13"],
  title: "Every file has the checksum that the manifests state",
  why: "Another checksum means that the file is not the one that was sent: damaged on the way, or changed since.",
  remedy: "Get the file again from the sender, or make the package again if the file was changed on purpose.",
  messages: {
    other: "not the content that {file} lists, by its checksum: {found}",
  },
  passing: [bagExample()],
  failing: [
    { ...bagExample({ "data/a.txt": "abd" }), where: { file: "manifest-sha256.txt" }, message: "other" },
  ],
  check({ bag: { manifests }, digests: { byPath } }, report) {
    for (const { path: file, algorithm, entries } of manifests) {
      const other = entries.filter(({ path, checksum }) => {
        const computed = byPath.get(path)?.get(algorithm);
        return computed !== undefined && computed !== checksum;
      });
      const names = [...new Set(other.map(({ path }) => path))];
      if (names.length > 0) report({ file }, "other", { found: few(names), count: names.length });
    }
  },
});
