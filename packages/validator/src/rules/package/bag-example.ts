import type { BagExample } from "../../engine/bag-rule.ts";

// "abc" and its checksums are the test vectors that FIPS 180-4 and RFC 1321 publish
export const SHA256_ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
export const MD5_ABC = "900150983cd24fb0d6963f7d28e17f72";

export const DECLARATION = "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n";

/** A bag without fault, of one payload file; parts are replaced, or with null left out. */
export function bagExample(parts: Readonly<Record<string, string | null>> = {}): BagExample {
  const files = {
    "bagit.txt": DECLARATION,
    "manifest-sha256.txt": `${SHA256_ABC}  data/a.txt\n`,
    "data/a.txt": "abc",
    ...parts,
  };
  return {
    files: Object.fromEntries(
      Object.entries(files).filter((entry): entry is [string, string] => entry[1] !== null),
    ),
  };
}
