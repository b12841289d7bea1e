import { isMap, isScalar, isSeq, parseDocument, stringify } from "yaml";

/** A sheet that others inherit from: what it tells of the boat, the instrument or the people. */
export interface BaseSheet {
  /** Name by which problems and the copy of the sheet call it. */
  readonly file: string;
  readonly sha256: string;
  readonly content: Readonly<Record<string, unknown>>;
}

/** Paths that a sheet inherits from, as they stand in it; none if it is not readable, which reading it tells. */
export function inheritedPaths(text: string): readonly string[] {
  const document = parseDocument(text, { prettyErrors: false, stringKeys: true });
  if (!isMap(document.contents)) return [];
  const own = document.contents.get("inherit", true);
  const nodes: readonly unknown[] = isSeq(own) ? own.items : [own];
  return nodes.flatMap((node) => (isScalar(node) && typeof node.value === "string" ? [node.value] : []));
}

/** Lists whose entries are known by a name: entries of the same name become one. */
const NAMED: Readonly<Record<string, readonly string[]>> = {
  platforms: ["id"],
  instruments: ["id", "serial_number"],
};

/** A sheet with what its bases tell beside it; the sheet goes before its bases, an earlier base before a later. */
export function inherited(
  own: Readonly<Record<string, unknown>>,
  bases: readonly Pick<BaseSheet, "content">[],
): Record<string, unknown> {
  const { inherit, ...merged } = bases.reduce<Record<string, unknown>>(
    (sheet, { content }) => beside(sheet, content) as Record<string, unknown>,
    { ...own },
  );
  return merged;
}

/** What `own` tells, and beside it what only `base` does. */
function beside(own: unknown, base: unknown, key = ""): unknown {
  if (own === undefined) return base;
  if (isObject(own) && isObject(base)) {
    const keys = new Set([...Object.keys(own), ...Object.keys(base)]);
    return Object.fromEntries([...keys].map((name) => [name, beside(own[name], base[name], name)]));
  }
  if (!Array.isArray(own) || !Array.isArray(base)) return own;
  if (key === "answers")
    return [...own, ...base.filter((answer) => !own.some((mine) => sameQuestion(mine, answer)))];
  const names = NAMED[key];
  if (names === undefined) return own;
  const same = (a: unknown, b: unknown) =>
    isObject(a) && isObject(b) && names.some((name) => a[name] !== undefined && a[name] === b[name]);
  return [
    ...own.map((entry) => beside(entry, base.find((other) => same(entry, other)) ?? {})),
    ...base.filter((entry) => !own.some((mine) => same(mine, entry))),
  ];
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const sameQuestion = (a: unknown, b: unknown): boolean =>
  isObject(a) && isObject(b) && a.about === b.about && a.where === b.where;

/**
 * The text of a sheet that stands alone: what it inherits is written into it, and its own lines and comments stay.
 *
 * @param text a sheet that `readSheet` accepts with these bases
 */
export function standAloneText(text: string, bases: readonly BaseSheet[]): string {
  if (bases.length === 0) return text;
  const document = parseDocument(text, { stringKeys: true });
  const own = document.toJS() as Record<string, unknown>;
  const merged = inherited(own, bases);
  const from = bases.map(
    ({ file, sha256 }) => ` What ${file} tells is written into this sheet (SHA-256 ${sha256}).`,
  );
  document.delete("inherit");
  for (const [key, value] of Object.entries(merged))
    if (JSON.stringify(own[key]) !== JSON.stringify(value)) document.set(key, document.createNode(value));
  document.commentBefore = [
    ...from,
    ...(document.commentBefore === null ? [] : [document.commentBefore]),
  ].join("\n");
  try {
    return document.toString({ lineWidth: 0 });
  } catch {
    // an anchor went with a value that was replaced: the text is written anew, without comments
    return `${from.map((line) => `#${line}\n`).join("")}${stringify(merged, { lineWidth: 0 })}`;
  }
}
