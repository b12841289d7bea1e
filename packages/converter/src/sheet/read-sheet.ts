import type { SurveySheet } from "@wherry/contracts";
import { fail, failOr, type Place, type Problem, type Result } from "@wherry/core";
import type { ErrorObject } from "ajv";
import { type Document, isMap, isPair, isScalar, isSeq, LineCounter, type Node, parseDocument } from "yaml";
import { type BaseSheet, inherited } from "./inherit-sheet.ts";
import { type Locate, type SheetPath, schemaProblems } from "./schema-problems.ts";
import { sheetConflicts } from "./sheet-conflicts.ts";
import { baseValidator, sheetValidator } from "./sheet-schema.ts";

/**
 * A survey sheet from its text. Every problem is reported at once, with line and column.
 *
 * @param file  name by which problems call the sheet
 * @param bases sheets that it inherits from, nearest first
 */
export function readSheet(text: string, file: string, bases: readonly BaseSheet[] = []): Result<SurveySheet> {
  const read = readContent(text, file);
  if (!read.ok) return read;
  const { content, locate } = read.value;
  if (bases.length === 0 && content.inherit !== undefined)
    return fail({
      code: "sheet/inherit",
      message: "the sheet inherits from another, which was not read with it",
      where: locate(["inherit"], "value"),
      remedy: "Read it together with the sheets that it names.",
    });
  const whole: unknown = bases.length === 0 ? content : inherited(content, bases);
  const validate = sheetValidator();
  if (validate(whole)) return failOr(sheetConflicts(whole, locate), () => whole, read.warnings);
  return invalid(validate.errors, locate);
}

/** A sheet that others inherit from: all keys are optional, and it has no casts and no moment of writing. */
export function readBaseSheet(text: string, file: string, sha256: string): Result<BaseSheet> {
  const read = readContent(text, file);
  if (!read.ok) return read;
  const { content, locate } = read.value;
  for (const key of ["casts", "created"])
    if (content[key] !== undefined)
      return fail({
        code: "sheet/inherit",
        message: `a sheet that others inherit from has no ${key}`,
        where: locate([key], "key"),
        remedy: `Move ${key} into the sheet of the survey.`,
      });
  const validate = baseValidator();
  if (validate(content)) return { ok: true, value: { file, sha256, content }, warnings: read.warnings };
  return invalid(validate.errors, locate);
}

function invalid(errors: readonly ErrorObject[] | null | undefined, locate: Locate): Result<never> {
  const [first, ...rest] = schemaProblems(errors ?? [], locate);
  return first
    ? fail(first, ...rest)
    : fail({
        code: "sheet/invalid",
        message: "the sheet is not of the form of a survey sheet",
        where: locate([], "value"),
      });
}

interface SheetContent {
  readonly content: Readonly<Record<string, unknown>>;
  readonly locate: Locate;
}

/** The keys and values of a sheet, and where each stands. */
function readContent(text: string, file: string): Result<SheetContent> {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false, stringKeys: true });
  const place = (offset: number | undefined): Place => {
    if (offset === undefined) return { file };
    const { line, col } = lines.linePos(offset);
    return { file, line: Math.max(line, 1), column: Math.max(col, 1) };
  };
  const [syntax, ...others] = document.errors.map(
    ({ message, pos }): Problem => ({
      code: "sheet/yaml",
      message: `the sheet is not readable YAML: ${message.replace(/\.$/, "")}`,
      where: place(pos[0]),
      remedy:
        "Look for a missing quote, a missing blank after a colon, or a line that is not indented as its neighbours.",
    }),
  );
  if (syntax) return fail(syntax, ...others);
  const content = plainContent(document, file);
  if (!content.ok) return content;
  const locate: Locate = (path, which) => place(offsetOf(document, path, which));
  const warnings = document.warnings.map(
    ({ message, pos }): Problem => ({ code: "sheet/yaml", message, where: place(pos[0]) }),
  );
  return { ok: true, value: { content: content.value, locate }, warnings };
}

/** The sheet as plain data. */
function plainContent(document: Document, file: string): Result<Readonly<Record<string, unknown>>> {
  const remedy = "Make one with `wherry sheet FILE... --out survey.yaml`.";
  if (!isMap(document.contents))
    return fail({
      code: "sheet/no-keys",
      message:
        document.contents === null ? "the sheet is empty" : "the sheet does not consist of keys and values",
      where: { file },
      remedy,
    });
  try {
    const value = withoutEmpty(document.toJS()) as Record<string, unknown>;
    return { ok: true, value, warnings: [] };
  } catch {
    // the library refuses references that grow beyond all bounds
    return fail({
      code: "sheet/references",
      message: "the sheet refers to itself too often to be read",
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
