import { isKnownAlgorithm } from "@wherry/formats";
import { defineBagRule, rfc8493 } from "../../engine/bag-rule.ts";
import { bagExample, MD5_ABC, SHA256_ABC } from "./bag-example.ts";

const WEAK: ReadonlySet<string> = new Set(["md5", "sha1"]);

export const packageManifests = defineBagRule({
  id: "package/manifests",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: rfc8493("2.1.3, Payload Manifest"),
  covers: ["BAG-1", "BAG-6"],
  title: "A manifest lists the payload, by a checksum that is safe",
  why: "Without a list of checksums nobody can say whether the data arrived whole.",
  remedy: "Make the package again with a manifest-sha256.txt or manifest-sha512.txt.",
  messages: {
    missing: "there is no payload manifest (manifest-sha256.txt or another)",
    name: "{found} names no algorithm as RFC 8493 writes it, in lower-case letters and digits",
    weak: "the only checksums of the payload are {found}, which can be forged",
    unknown: "{file}: checksums by {found} are not computed here: this manifest was not examined",
  },
  passing: [bagExample()],
  failing: [
    { ...bagExample({ "manifest-sha256.txt": null }), where: {}, message: "missing" },
    {
      ...bagExample({ "manifest-SHA-256.txt": `${SHA256_ABC}  data/a.txt\n` }),
      where: { file: "manifest-SHA-256.txt" },
      message: "name",
    },
    {
      ...bagExample({ "manifest-sha256.txt": null, "manifest-md5.txt": `${MD5_ABC}  data/a.txt\n` }),
      where: {},
      message: "weak",
    },
    {
      ...bagExample({ "manifest-crc32c.txt": "364b3fb7  data/a.txt\n" }),
      where: { file: "manifest-crc32c.txt" },
      message: "unknown",
    },
  ],
  check({ bag: { manifests } }, report) {
    const payload = manifests.filter((manifest) => manifest.of === "payload");
    if (payload.length === 0) report({}, "missing");
    for (const { path, algorithm } of manifests) {
      if (!/^[a-z0-9]+$/.test(algorithm)) report({ file: path }, "name", { found: path });
      else if (!isKnownAlgorithm(algorithm))
        report({ file: path }, "unknown", { found: algorithm, level: "advice" });
    }
    const names = payload.map(({ algorithm }) => algorithm);
    if (names.length > 0 && names.every((name) => WEAK.has(name)))
      report({}, "weak", { found: names, level: "warning" });
  },
});
