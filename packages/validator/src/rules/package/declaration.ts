import { defineBagRule, rfc8493 } from "../../engine/bag-rule.ts";
import { bagExample, DECLARATION } from "./bag-example.ts";

const NEWEST = "1.0";

export const packageDeclaration = defineBagRule({
  id: "package/declaration",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: rfc8493("2.1.1, Bag Declaration"),
  covers: ["BAG-1", "BAG-2"],
  title: "bagit.txt declares the version and the encoding, in two lines",
  why: "By these two lines a program knows that the folder is a bag and how to read the rest of it.",
  remedy:
    "Write bagit.txt with exactly two lines: BagIt-Version: 1.0 and Tag-File-Character-Encoding: UTF-8.",
  messages: {
    missing: "there is no bagit.txt at the top of the package",
    lines: "bagit.txt does not consist of the two lines that it must have",
    mark: "bagit.txt begins with a byte-order mark",
    version: "the package is of version {found}, the newest is {expected}",
    encoding: "the tag files are declared to be {found}, UTF-8 is recommended",
  },
  passing: [bagExample(), bagExample({ "bagit.txt": DECLARATION.replaceAll("\n", "\r\n") })],
  failing: [
    { ...bagExample({ "bagit.txt": null }), where: {}, message: "missing" },
    {
      ...bagExample({ "bagit.txt": "BagIt-Version: 1.0\n" }),
      where: { file: "bagit.txt" },
      message: "lines",
    },
    { ...bagExample({ "bagit.txt": `\ufeff${DECLARATION}` }), where: { file: "bagit.txt" }, message: "mark" },
    {
      ...bagExample({ "bagit.txt": DECLARATION.replace("1.0", "0.97") }),
      where: { file: "bagit.txt", line: 1 },
      message: "version",
    },
    {
      ...bagExample({ "bagit.txt": DECLARATION.replace("UTF-8", "ISO-8859-1") }),
      where: { file: "bagit.txt", line: 2 },
      message: "encoding",
    },
  ],
  check({ bag: { declaration } }, report) {
    if (declaration === null) return report({}, "missing");
    const file = "bagit.txt";
    if (declaration.hasBom) report({ file }, "mark");
    const [first = "", second = "", ...others] = declaration.lines;
    const [, version] = /^BagIt-Version: (\d+\.\d+)$/.exec(first) ?? [];
    const [, encoding] = /^Tag-File-Character-Encoding: (\S+)$/.exec(second) ?? [];
    if (version === undefined || encoding === undefined || others.length > 0)
      return report({ file }, "lines");
    if (version !== NEWEST)
      report({ file, line: 1 }, "version", { found: version, expected: NEWEST, level: "advice" });
    if (encoding.toUpperCase() !== "UTF-8")
      report({ file, line: 2 }, "encoding", { found: encoding, level: "warning" });
  },
});
