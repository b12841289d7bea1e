import { defineBagRule, rfc8493 } from "../../engine/bag-rule.ts";
import { DECLARATION } from "./bag-example.ts";
import { few } from "./few.ts";

export const packageBaseDirectory = defineBagRule({
  id: "package/base-directory",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: rfc8493("4, Serialization"),
  covers: [],
  title: "An archive holds one folder, which is the package",
  why: "Unpacked without a folder of its own, the package spills into whatever folder it is unpacked in.",
  remedy: "Pack the folder of the package, and nothing beside it.",
  messages: {
    none: "the archive holds the package without a folder",
    beside: "the archive holds files beside the package: {found}",
  },
  passing: [{ files: { "bag/bagit.txt": DECLARATION }, form: "zip" }],
  failing: [
    { files: { "bagit.txt": DECLARATION }, form: "zip", where: {}, message: "none" },
    {
      files: { "bag/bagit.txt": DECLARATION, "other/a.txt": "a" },
      form: "tar",
      where: {},
      message: "beside",
    },
  ],
  check({ bag: { container, base, beside } }, report) {
    if (container.form === "folder") return;
    if (base === "") report({}, "none");
    if (beside.length > 0) report({}, "beside", { found: few(beside), count: beside.length });
  },
});
