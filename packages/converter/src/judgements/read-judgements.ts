import { type Judgement, judgementSchema } from "@wherry/contracts";
import { failOr, nearestNames, type Problem, type Result } from "@wherry/core";
import type { ErrorObject, ValidateFunction } from "ajv";
import { Ajv2020 } from "ajv/dist/2020.js";
import addFormats from "ajv-formats";

/** A judgement that says a flag, with the line of the file that it stands in. */
export interface PlacedJudgement {
  readonly line: number;
  readonly judgement: Judgement;
}

let compiled: ValidateFunction<Judgement> | null = null;

function validator(): ValidateFunction<Judgement> {
  if (compiled === null) {
    const ajv = new Ajv2020({ allErrors: true });
    addFormats.default(ajv);
    compiled = ajv.compile<Judgement>(judgementSchema);
  }
  return compiled;
}

/**
 * The lines of a file of judgements, each a JSON document; empty lines are passed over.
 *
 * @param file name by which problems call it
 */
export function readJudgements(text: string, file: string): Result<readonly PlacedJudgement[]> {
  const problems: Problem[] = [];
  const entries: PlacedJudgement[] = [];
  const ids = new Map<string, number>();
  for (const [index, content] of text
    .replace(/^\uFEFF/, "")
    .split(/\r?\n/)
    .entries()) {
    if (content.trim() === "") continue;
    const line = index + 1;
    const where = { file, line };
    const read = parsed(content);
    if (read === undefined) {
      problems.push({
        code: "judgements/json",
        message: "the line is no JSON document",
        where,
        remedy: "Write one document in curly brackets on each line, or let wherry judge write it.",
      });
      continue;
    }
    const validate = validator();
    if (!validate(read)) {
      problems.push({
        code: "judgements/form",
        message: `the line is no judgement: ${wordsOf(validate.errors ?? [])}`,
        where,
        remedy: "Compare it with a line that wherry judge writes.",
      });
      continue;
    }
    const { id, undo } = read;
    const before = ids.get(id);
    if (before !== undefined)
      problems.push({
        code: "judgements/repeated-id",
        message: `the id ${id} stands in line ${before} too`,
        where,
        remedy: "Give every line an id of its own.",
      });
    if (undo !== undefined && !ids.has(undo)) {
      const near = nearestNames(undo, [...ids.keys()]);
      problems.push({
        code: "judgements/undo",
        message: `the line undoes ${undo}, and no line above it has that id`,
        where,
        remedy: near.length > 0 ? `Did you mean ${near.join(" or ")}?` : "Name the id of an earlier line.",
      });
    }
    ids.set(id, line);
    entries.push({ line, judgement: read });
  }
  return failOr(problems, () => entries);
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}

function wordsOf(errors: readonly ErrorObject[]): string {
  const told = errors
    .filter(({ keyword }) => keyword !== "if" && keyword !== "oneOf")
    .map(({ instancePath, keyword, message, params }) =>
      keyword === "additionalProperties"
        ? `it has the unknown key ${params.additionalProperty}`
        : `${instancePath.slice(1).replaceAll("/", ".") || "it"} ${message}`,
    );
  return told.length === 0 ? "it needs either lines or pressure" : [...new Set(told)].slice(0, 3).join("; ");
}

/** The judgements that hold: those that no later line undoes, an undone undoing included. In the order of the file. */
export function holding(entries: readonly PlacedJudgement[]): readonly PlacedJudgement[] {
  const undone = new Set<string>();
  const held: PlacedJudgement[] = [];
  for (const entry of [...entries].reverse()) {
    const { id, undo } = entry.judgement;
    if (undone.has(id)) continue;
    if (undo !== undefined) undone.add(undo);
    else held.unshift(entry);
  }
  return held;
}
