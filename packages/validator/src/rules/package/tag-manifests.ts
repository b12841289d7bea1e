import { isPayload } from "@wherry/formats";
import { defineBagRule, rfc8493 } from "../../engine/bag-rule.ts";
import { bagExample, SHA256_ABC } from "./bag-example.ts";
import { few } from "./few.ts";

const FILE = "tagmanifest-sha256.txt";

const TAGS = [
  "14d3686defda673b8b53b2d01d2be206c566d4fb66c98c8b1c2decaf8f44316e  manifest-sha256.txt\n",
  "1712ecfb074bf29c4188ad3421032509159a09739fd604f8fe57038b4ddefcc9  bagit.txt\n",
].join("");

const isTagManifest = (path: string): boolean => /^tagmanifest-[^/]+\.txt$/.test(path);

export const packageTagManifests = defineBagRule({
  id: "package/tag-manifests",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: rfc8493("2.2.1, Tag Manifest"),
  covers: ["BAG-7"],
  title: "A tag manifest lists every payload manifest and the other tag files",
  why: "It protects the list of checksums and the description of the package themselves.",
  remedy: "Make the tag manifest again; it lists neither itself nor the payload.",
  messages: {
    missing: "{file} does not list the payload manifest {found}",
    itself: "{file} lists a tag manifest: {found}",
    payload: "{file} lists payload: {found}",
    unlisted: "{file} does not list {found}",
    algorithm: "{file}: there is no payload manifest by {found}",
  },
  passing: [bagExample({ "tagmanifest-sha256.txt": TAGS }), bagExample()],
  failing: [
    {
      ...bagExample({ "tagmanifest-sha256.txt": TAGS.slice(TAGS.indexOf("\n") + 1) }),
      where: { file: FILE },
      message: "missing",
    },
    {
      ...bagExample({ "tagmanifest-sha256.txt": `${TAGS}${SHA256_ABC}  ${FILE}\n` }),
      where: { file: FILE },
      message: "itself",
    },
    {
      ...bagExample({ "tagmanifest-sha256.txt": `${TAGS}${SHA256_ABC}  data/a.txt\n` }),
      where: { file: FILE },
      message: "payload",
    },
    {
      ...bagExample({ "tagmanifest-sha256.txt": TAGS, "notes/read.txt": "x" }),
      where: { file: FILE },
      message: "unlisted",
    },
    {
      ...bagExample({ "tagmanifest-md5.txt": TAGS }),
      where: { file: "tagmanifest-md5.txt" },
      message: "algorithm",
    },
  ],
  check({ bag: { manifests, files } }, report) {
    const payload = manifests.filter(({ of }) => of === "payload");
    const tags = [...files.keys()].filter((path) => !isPayload(path) && !isTagManifest(path));
    for (const { path: file, of, algorithm, entries } of manifests) {
      if (of === "payload") continue;
      const listed = new Set(entries.map(({ path }) => path));
      const itself = [...listed].filter(isTagManifest);
      const held = [...listed].filter(isPayload);
      const missing = payload.map(({ path }) => path).filter((path) => !listed.has(path));
      const unlisted = tags.filter((path) => !listed.has(path) && !missing.includes(path));
      if (missing.length > 0) report({ file }, "missing", { found: few(missing) });
      if (itself.length > 0) report({ file }, "itself", { found: few(itself) });
      if (held.length > 0) report({ file }, "payload", { found: few(held), count: held.length });
      if (unlisted.length > 0)
        report({ file }, "unlisted", { found: few(unlisted), count: unlisted.length, level: "warning" });
      if (!payload.some((manifest) => manifest.algorithm === algorithm))
        report({ file }, "algorithm", { found: algorithm, level: "warning" });
    }
  },
});
