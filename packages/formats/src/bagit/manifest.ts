import type { TagText } from "./tag-text.ts";

export interface ManifestLine {
  /** From 1. */
  readonly line: number;
  /** Hexadecimal, in lower case. */
  readonly checksum: string;
  /** Path from the base directory, decoded. */
  readonly path: string;
}

export interface Manifest {
  /** Name of the file: manifest-sha256.txt. */
  readonly path: string;
  /** As the name says it: sha256. */
  readonly algorithm: string;
  readonly of: "payload" | "tags";
  readonly entries: readonly ManifestLine[];
  /** Lines that are not a checksum and a path. */
  readonly malformed: readonly { readonly line: number; readonly text: string }[];
  readonly text: TagText;
}

const NAME = /^(tag)?manifest-([^/]+)\.txt$/;

/** Whether a file at the top of the bag is a manifest, and of what; null if not. */
export function manifestKind(path: string): { of: Manifest["of"]; algorithm: string } | null {
  const [, tag, algorithm] = NAME.exec(path) ?? [];
  return algorithm === undefined ? null : { of: tag === undefined ? "payload" : "tags", algorithm };
}

/**
 * Takes a manifest apart: lines "checksum path" (RFC 8493, section 2.1.3). A star before the path, which programs that
 * make checksums put there, and "./" at its beginning are passed over (common practice, no source).
 */
export function readManifest(
  path: string,
  kind: { of: Manifest["of"]; algorithm: string },
  text: TagText,
): Manifest {
  const entries: ManifestLine[] = [];
  const malformed: { line: number; text: string }[] = [];
  for (const [index, content] of text.lines.entries()) {
    const line = index + 1;
    if (content.trim() === "") continue;
    const [, checksum, name] = /^[ \t]*([0-9a-fA-F]+)[ \t]+\*?(?:\.\/)?(.+)$/.exec(content) ?? [];
    if (checksum === undefined || name === undefined) malformed.push({ line, text: content });
    else entries.push({ line, checksum: checksum.toLowerCase(), path: decodePath(name) });
  }
  return { path, ...kind, entries, malformed, text };
}

/** Only line ends and the percent sign are encoded in paths (RFC 8493, section 2.1.3). */
const decodePath = (path: string): string =>
  path.replace(/%(0[aA]|0[dD]|25)/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));
