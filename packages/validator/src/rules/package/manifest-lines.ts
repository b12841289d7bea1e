import { dangerOf, isPayload } from "@wherry/formats";
import { defineBagRule, rfc8493 } from "../../engine/bag-rule.ts";
import { bagExample, DECLARATION, SHA256_ABC } from "./bag-example.ts";

/** Hexadecimal digits of a checksum (FIPS 180-4, RFC 1321). */
const DIGITS: Readonly<Record<string, number>> = {
  sha512: 128,
  sha384: 96,
  sha256: 64,
  sha224: 56,
  sha1: 40,
  md5: 32,
};

const FILE = "manifest-sha256.txt";
const LINE = `${SHA256_ABC}  data/a.txt\n`;

export const packageManifestLines = defineBagRule({
  id: "package/manifest-lines",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: rfc8493("2.1.3, Payload Manifest"),
  covers: ["BAG-3", "BAG-5", "BAG-12", "BAG-14"],
  title: "Each line of a manifest is a checksum and a path within the package",
  why: "A line that cannot be read protects no file; a path out of the package asks for a file of the reader.",
  remedy: "Make the manifest again.",
  messages: {
    form: "{file}, line {line} is no checksum with a path behind it",
    length: "{file}, line {line}: {found} hexadecimal digits, a checksum by {algorithm} has {expected}",
    outside: "{file}, line {line}: {found} is not a path of the payload (data/…)",
    unsafe: "{file}, line {line}: {found} is refused, because {because}",
    twice: "{file}, line {line}: {found} is listed a second time",
    text: "{file} is not text in the declared encoding ({expected})",
  },
  passing: [
    bagExample(),
    bagExample({ "manifest-sha256.txt": `${SHA256_ABC.toUpperCase()}\t./data/a.txt\r\n` }),
  ],
  failing: [
    {
      ...bagExample({ "manifest-sha256.txt": `${LINE}data/a.txt\n` }),
      where: { file: FILE, line: 2 },
      message: "form",
    },
    {
      ...bagExample({ "manifest-sha256.txt": "abc123  data/a.txt\n" }),
      where: { file: FILE, line: 1 },
      message: "length",
    },
    {
      ...bagExample({ "manifest-sha256.txt": `${LINE}${SHA256_ABC}  bagit.txt\n` }),
      where: { file: FILE, line: 2 },
      message: "outside",
    },
    {
      ...bagExample({ "manifest-sha256.txt": `${LINE}${SHA256_ABC}  data/../../a.txt\n` }),
      where: { file: FILE, line: 2 },
      message: "unsafe",
    },
    {
      ...bagExample({ "manifest-sha256.txt": `${LINE}${LINE}` }),
      where: { file: FILE, line: 2 },
      message: "twice",
    },
    {
      ...bagExample({
        "bagit.txt": DECLARATION.replace("UTF-8", "x-unheard-of"),
      }),
      where: { file: FILE },
      message: "text",
    },
  ],
  check({ bag: { manifests, encoding } }, report) {
    for (const { path: file, of, algorithm, entries, malformed, text } of manifests) {
      if (!text.isText) report({ file }, "text", { expected: encoding });
      for (const { line } of malformed) report({ file, line }, "form");
      const digits = DIGITS[algorithm];
      const seen = new Set<string>();
      for (const { line, checksum, path } of entries) {
        const danger = dangerOf(path);
        if (digits !== undefined && checksum.length !== digits)
          report({ file, line }, "length", { found: checksum.length, expected: digits, fill: { algorithm } });
        if (danger !== null) report({ file, line }, "unsafe", { found: path, fill: { because: danger } });
        else if (of === "payload" && !isPayload(path)) report({ file, line }, "outside", { found: path });
        else if (seen.has(path)) report({ file, line }, "twice", { found: path });
        seen.add(path);
      }
    }
  },
});
