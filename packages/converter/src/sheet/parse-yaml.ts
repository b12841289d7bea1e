import { fail, type Place, type Problem, type Result, succeed } from "@wherry/core";
import { type Document, isMap, isPair, isScalar, isSeq, LineCounter, type Node, parseDocument } from "yaml";
import type { Locate, SheetPath } from "./schema-problems.ts";
import type { DocumentForm } from "./sheet-schema.ts";

/** A YAML document as plain data, with the way back to its text. */
export interface ParsedDocument {
  readonly content: Readonly<Record<string, unknown>>;
  readonly locate: Locate;
}

/**
 * A document that a person wrote, in YAML or JSON. Keys without a value count as left out.
 *
 * @param file name by which problems call it
 */
export function parseYaml(text: string, file: string, form: DocumentForm): Result<ParsedDocument> {
  const { called, area } = form;
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false, stringKeys: true });
  const place = (offset: number | undefined): Place => {
    if (offset === undefined) return { file };
    const { line, col } = lines.linePos(offset);
    return { file, line: Math.max(line, 1), column: Math.max(col, 1) };
  };
  const [syntax, ...others] = document.errors.map(
    ({ message, pos }): Problem => ({
      code: `${area}/yaml`,
      message: `${called} is not readable YAML: ${message.replace(/\.$/, "")}`,
      where: place(pos[0]),
      remedy:
        "Look for a missing quote, a missing blank after a colon, or a line that is not indented as its neighbours.",
    }),
  );
  if (syntax) return fail(syntax, ...others);
  const content = plainContent(document, file, form);
  if (!content.ok) return content;
  const warnings = document.warnings.map(
    ({ message, pos }): Problem => ({ code: `${area}/yaml`, message, where: place(pos[0]) }),
  );
  const locate: Locate = (path, which) => place(offsetOf(document, path, which));
  return succeed({ content: content.value, locate }, warnings);
}

/** The document as plain data. */
function plainContent(
  document: Document,
  file: string,
  { called, area, remedy }: DocumentForm,
): Result<Readonly<Record<string, unknown>>> {
  if (!isMap(document.contents))
    return fail({
      code: `${area}/no-keys`,
      message:
        document.contents === null ? `${called} is empty` : `${called} does not consist of keys and values`,
      where: { file },
      remedy,
    });
  try {
    return succeed(withoutEmpty(document.toJS()) as Record<string, unknown>);
  } catch {
    // the library refuses references that grow beyond all bounds
    return fail({
      code: `${area}/references`,
      message: `${called} refers to itself too often to be read`,
      where: { file },
      remedy: "Write repeated parts out instead of referring to them with *.",
    });
  }
}

/** A key without a value tells nothing: it counts as left out. */
function withoutEmpty(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutEmpty);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([key, own]) => (own === null ? [] : [[key, withoutEmpty(own)]])),
  );
}

/** Where a value, or the key that holds it, begins in the text; the nearest that exists. */
function offsetOf(document: Document, path: SheetPath, which: "key" | "value"): number | undefined {
  let node: Node | null = document.contents;
  let offset = startOf(node);
  for (const [depth, step] of path.entries()) {
    if (isMap(node)) {
      const pair = node.items.find((item) => isPair(item) && isScalar(item.key) && item.key.value === step);
      if (!pair) return offset;
      const isLast = depth === path.length - 1;
      offset = startOf(pair.key as Node);
      node = pair.value as Node | null;
      if (isLast && which === "key") return offset;
    } else if (isSeq(node) && typeof step === "number") {
      node = (node.items[step] ?? null) as Node | null;
    } else return offset;
    offset = startOf(node) ?? offset;
  }
  return offset;
}

const startOf = (node: Node | null): number | undefined => node?.range?.[0];
