import { fail, type Problem, type Result, succeed } from "@wherry/core";
import { type ContainedFile, type Container, contentOf } from "../package/container.ts";
import { type Manifest, manifestKind, readManifest } from "./manifest.ts";
import { readTagText, type TagText } from "./tag-text.ts";

/** A line "Label: value" of bag-info.txt, with its continuation lines. */
export interface BagInfoField {
  readonly line: number;
  readonly label: string;
  readonly value: string;
}

export interface BagInfo {
  readonly fields: readonly BagInfoField[];
  /** Lines that are neither a field nor the continuation of one. */
  readonly malformed: readonly { readonly line: number; readonly text: string }[];
}

/** A bag (BagIt, RFC 8493), read in place: its tag files are taken apart, its payload is not read. */
export interface Bag {
  readonly container: Container;
  /** Path of the base directory within the container, with "/" at its end; "" if the container is the bag. */
  readonly base: string;
  /** All files of the bag, by their path from the base directory. */
  readonly files: ReadonlyMap<string, ContainedFile>;
  /** Files of the container that are beside the bag. */
  readonly beside: readonly string[];
  /** bagit.txt; null if there is none. */
  readonly declaration: TagText | null;
  /** Encoding of the other tag files, as declared; UTF-8 without a word. */
  readonly encoding: string;
  readonly manifests: readonly Manifest[];
  /** bag-info.txt; null if there is none. */
  readonly info: BagInfo | null;
  /** Tag files that could not be read. */
  readonly unread: readonly Problem[];
}

/** Paths of the payload: those under data/. */
export const isPayload = (path: string): boolean => path.startsWith("data/");

/** Whether a container looks like a bag: a bagit.txt at its top, or in its only folder. */
export const holdsBag = ({ files }: Container): boolean =>
  files.some(({ path }) => /^(?:[^/]+\/)?bagit\.txt$/.test(path));

/**
 * Opens a bag in a folder or an archive. Nothing is judged here: what is missing or wrong stays visible in the value,
 * for the rules to say.
 *
 * @returns problem package/no-bag if there is neither a bagit.txt nor a manifest. Errors that a source throws are passed
 *          on.
 */
export async function openBag(container: Container): Promise<Result<Bag>> {
  const base = baseOf(container);
  if (base === null)
    return fail({
      code: "package/no-bag",
      message: `${container.path} holds no bag: neither a bagit.txt nor a manifest is at its top or in its folder`,
      where: { file: container.path },
      remedy: "Name the folder that holds bagit.txt, or make a deposit package with wherry pack.",
    });
  const files = new Map<string, ContainedFile>();
  const beside: string[] = [];
  for (const file of container.files) {
    if (file.path.startsWith(base)) files.set(file.path.slice(base.length), file);
    else beside.push(file.path);
  }
  const unread: Problem[] = [];
  const textOf = async (path: string, encoding?: string): Promise<TagText | null> => {
    const file = files.get(path);
    if (file === undefined) return null;
    const content = await contentOf(file);
    if (content.ok) return readTagText(content.value, encoding);
    unread.push(...content.problems);
    return null;
  };
  const declaration = await textOf("bagit.txt");
  const encoding = encodingOf(declaration) ?? "UTF-8";
  const manifests: Manifest[] = [];
  for (const path of [...files.keys()].sort()) {
    const kind = manifestKind(path);
    const text = kind === null ? null : await textOf(path, encoding);
    if (kind !== null && text !== null) manifests.push(readManifest(path, kind, text));
  }
  const info = await textOf("bag-info.txt", encoding);
  return succeed({
    container,
    base,
    files,
    beside,
    declaration,
    encoding,
    manifests,
    info: info === null ? null : readInfo(info),
    unread,
  });
}

/** The base directory: where bagit.txt is, else where a manifest is; null if there is neither. */
function baseOf({ files }: Container): string | null {
  for (const name of [/^([^/]+\/)?bagit\.txt$/, /^([^/]+\/)?manifest-[^/]+\.txt$/]) {
    const bases = files.flatMap(({ path }) => {
      const found = name.exec(path);
      return found === null ? [] : [found[1] ?? ""];
    });
    if (bases.includes("")) return "";
    const [first] = bases.sort();
    if (first !== undefined) return first;
  }
  return null;
}

function encodingOf(declaration: TagText | null): string | null {
  const line = declaration?.lines.find((text) => /^Tag-File-Character-Encoding:/i.test(text));
  return line === undefined ? null : line.slice(line.indexOf(":") + 1).trim();
}

function readInfo({ lines }: TagText): BagInfo {
  const fields: BagInfoField[] = [];
  const malformed: { line: number; text: string }[] = [];
  for (const [index, text] of lines.entries()) {
    const line = index + 1;
    const [, label, value = ""] = /^([^\s:](?:[^:]*[^\s:])?)[ \t]*:[ \t]*(.*)$/.exec(text) ?? [];
    const last = fields.at(-1);
    if (label !== undefined) fields.push({ line, label, value: value.trimEnd() });
    else if (/^[ \t]+\S/.test(text) && last !== undefined)
      fields[fields.length - 1] = { ...last, value: `${last.value} ${text.trim()}` };
    else if (text.trim() !== "") malformed.push({ line, text });
  }
  return { fields, malformed };
}
