import { createHash } from "node:crypto";

/** Names of the checksums that packages carry, as manifests have them (RFC 8493, section 2.4). */
export type Checksum = "sha256" | "sha512";

/** A file with its path from the base directory of the bag, and its checksums in hexadecimal. */
export interface Checked {
  readonly path: string;
  readonly size: number;
  readonly checksums: Readonly<Partial<Record<Checksum, string>>>;
}

export interface TagFile {
  readonly path: string;
  readonly bytes: Uint8Array;
}

/** A label and what it says, for bag-info.txt. */
export type InfoLine = readonly [label: string, value: string | undefined];

/**
 * The tag files of a bag: declaration, bag-info, payload manifests and tag manifests.
 *
 * @param payload    all files under data/
 * @param algorithms one manifest of each kind for each
 * @source RFC 8493 (BagIt 1.0), section 2
 */
export function tagFiles(
  payload: readonly Checked[],
  info: readonly InfoLine[],
  algorithms: readonly Checksum[],
): TagFile[] {
  const octets = payload.reduce((sum, { size }) => sum + size, 0);
  const tags = [
    tagFile("bagit.txt", "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n"),
    tagFile("bag-info.txt", infoText([...info, ["Payload-Oxum", `${octets}.${payload.length}`]])),
    ...algorithms.map((name) => tagFile(`manifest-${name}.txt`, manifestText(payload, name))),
  ];
  const checked = tags.map(({ path, bytes }) => ({
    path,
    size: bytes.length,
    checksums: Object.fromEntries(
      algorithms.map((name) => [name, createHash(name).update(bytes).digest("hex")]),
    ),
  }));
  return [
    ...tags,
    ...algorithms.map((name) => tagFile(`tagmanifest-${name}.txt`, manifestText(checked, name))),
  ];
}

const encoder = new TextEncoder();
const tagFile = (path: string, text: string): TagFile => ({ path, bytes: encoder.encode(text) });

/** Two blanks stand between checksum and path, as programs that make checksums have it. */
function manifestText(files: readonly Checked[], algorithm: Checksum): string {
  return [...files]
    .sort((a, b) => (a.path < b.path ? -1 : 1))
    .map(({ path, checksums }) => {
      const checksum = checksums[algorithm];
      if (checksum === undefined) throw new RangeError(`${path} has no ${algorithm}`);
      return `${checksum}  ${encodedPath(path)}\n`;
    })
    .join("");
}

/** Line ends and the percent sign are the only characters that are encoded (RFC 8493, section 2.1.3). */
const encodedPath = (path: string): string =>
  path.replace(/[\r\n%]/g, (found) => `%${found.charCodeAt(0).toString(16).toUpperCase().padStart(2, "0")}`);

const LONGEST = 79;

function infoText(lines: readonly InfoLine[]): string {
  return lines
    .map(([label, value]) => [label, oneLine(value ?? "")] as const)
    .filter(([, value]) => value !== "")
    .map(([label, value]) => `${folded(`${label}: ${value}`)}\n`)
    .join("");
}

/** Line ends would begin another field, and control characters have no business in a label's text. */
const oneLine = (text: string): string => text.replaceAll(/[\p{Cc}\s]+/gu, " ").trim();

/** Lines of at most 79 characters where words allow it, the further ones indented. */
function folded(text: string): string {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(" ")) {
    if (line !== "" && line.length + 1 + word.length > LONGEST) {
      lines.push(line);
      line = `  ${word}`;
    } else line = line === "" ? word : `${line} ${word}`;
  }
  return [...lines, line].join("\n");
}
