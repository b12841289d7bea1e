import {
  ctdRules,
  type DocumentRule,
  type RuleDocument,
  ruleDocumentSchema,
  usTemplateRules,
} from "@wherry/contracts";
import { failOr, type Problem, type Result } from "@wherry/core";
import { Ajv2020, type AnySchema, type ValidateFunction } from "ajv/dist/2020.js";
import type { DatasetView } from "./dataset-view.ts";
import { plainHeader, plainVariable } from "./header-projection.ts";
import { defineRule, type Rule } from "./rule.ts";

/** Schemas of authors may be loose; what JSON Schema allows is allowed. */
const compiler = () => new Ajv2020({ strict: false, allErrors: true, logger: false, validateFormats: false });

type Fits = (value: unknown) => boolean;

const compileIfGiven = (schema: object | undefined): Fits =>
  schema === undefined ? () => true : (compiler().compile(schema as AnySchema) as ValidateFunction);

type Failing = NonNullable<DocumentRule["failing"]>[number];

/** Example that shows a rule failing: the finding stands at the variable or attribute that the rule points at. */
const failingExample = ({ attribute }: DocumentRule, example: Failing) => {
  const { cdl, ...variable } = typeof example === "string" ? { cdl: example } : example;
  return {
    cdl,
    where: { ...variable, ...(attribute === undefined ? {} : { attribute }) },
    message: "missed" as const,
  };
};

function ruleOf(document: RuleDocument, rule: DocumentRule): Rule {
  // compiled when first needed: most files are judged by few documents
  let ready: { file: Fits; when: Fits; must: Fits } | undefined;
  const compiled = () => {
    ready ??= {
      file: compileIfGiven(document.when),
      when: compileIfGiven(rule.when),
      must: compileIfGiven(rule.must),
    };
    return ready;
  };
  const { level, basis, title, why, remedy, attribute } = rule;
  const at = attribute === undefined ? {} : { attribute };
  return defineRule({
    id: `${document.id}/${rule.id}`,
    status: "stable",
    since: "0.1.0",
    level,
    basis,
    citation: { document: document.document.name, edition: document.document.edition, clause: rule.clause },
    covers: [],
    title,
    why,
    remedy,
    messages: { missed: rule.message },
    passing: rule.passing ?? [],
    failing: (rule.failing ?? []).map((example) => failingExample(rule, example)),
    check(dataset: DatasetView, report) {
      const { file, when, must } = compiled();
      const header = plainHeader(dataset);
      if (!file(header)) return;
      if (rule.each === "file") {
        if (when(header) && !must(header)) report(at, "missed");
        return;
      }
      for (const variable of dataset.all) {
        const plain = plainVariable(dataset, variable);
        if (!when(plain) || must(plain)) continue;
        const found = attribute === undefined ? undefined : plain.attributes[attribute];
        report({ variable: variable.name, ...at }, "missed", found === undefined ? {} : { found });
      }
    },
  });
}

/**
 * The rules of a document, parsed from its JSON.
 *
 * @param file  name of the document, for the problems
 * @returns     the rules; or what is wrong with the document: rules/form for a part that the schema of rule documents
 *              refuses, rules/schema for a JSON Schema that cannot be compiled, rules/twice for an id given twice
 */
export function rulesOfDocument(document: unknown, file: string): Result<readonly Rule[]> {
  const isDocument = new Ajv2020({ allErrors: true, allowUnionTypes: true }).compile<RuleDocument>(
    ruleDocumentSchema,
  );
  if (!isDocument(document)) {
    const problems = (isDocument.errors ?? []).map(
      ({ instancePath, message, params }): Problem => ({
        code: "rules/form",
        message: `${instancePath === "" ? "the document" : instancePath} ${message ?? "is not as it should be"}${
          "additionalProperty" in params ? `: ${String(params.additionalProperty)}` : ""
        }`,
        where: { file },
        remedy: "Compare the document with the schema of rule documents.",
      }),
    );
    return failOr(problems, () => []);
  }
  const problems: Problem[] = [];
  const seen = new Set<string>();
  const schemas: [string, object | undefined][] = [
    ["the document", document.when],
    ...document.rules.flatMap(({ id, when, must }): [string, object | undefined][] => [
      [`rule ${id}`, when],
      [`rule ${id}`, must],
    ]),
  ];
  for (const [place, schema] of schemas) {
    try {
      compileIfGiven(schema);
    } catch (error) {
      problems.push({
        code: "rules/schema",
        message: `${place} has a schema that cannot be used: ${error instanceof Error ? error.message : "unknown reason"}`,
        where: { file },
        remedy: "Correct the JSON Schema (2020-12).",
      });
    }
  }
  for (const { id } of document.rules) {
    if (seen.has(id))
      problems.push({
        code: "rules/twice",
        message: `rule ${id} is given twice`,
        where: { file },
        remedy: "Rename one.",
      });
    seen.add(id);
  }
  return failOr(problems, () => document.rules.map((rule) => ruleOf(document, rule)));
}

/** Rules of the documents that ship. Their schemas are compiled when they are first used. */
export const shippedDocumentRules: readonly Rule[] = (
  [ctdRules, usTemplateRules] as unknown as RuleDocument[]
).flatMap((document) => document.rules.map((rule) => ruleOf(document, rule)));
