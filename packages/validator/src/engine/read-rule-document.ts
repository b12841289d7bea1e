import { type RuleDocument, ruleDocumentSchema } from "@wherry/contracts";
import { failOr, type Problem, type Result } from "@wherry/core";
import type { Rule } from "./rule.ts";
import { type Fits, ruleOf } from "./rule-document.ts";

/**
 * The rules of a document, parsed from its JSON.
 *
 * @param file  name of the document, for the problems
 * @returns     the rules; or what is wrong with the document: rules/form for a part that the schema of rule documents
 *              refuses, rules/schema for a JSON Schema that cannot be compiled, rules/twice for an id given twice
 */
export async function rulesOfDocument(document: unknown, file: string): Promise<Result<readonly Rule[]>> {
  const { Ajv2020 } = await import("./json-schema.ts");
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
  // what JSON Schema allows is allowed, however loose
  const compiler = new Ajv2020({
    strict: false,
    logger: false,
    validateFormats: false,
    addUsedSchema: false,
  });
  const compile = (place: string, schema: object | undefined): Fits => {
    try {
      return schema === undefined ? () => true : compiler.compile(schema);
    } catch (error) {
      problems.push({
        code: "rules/schema",
        message: `${place} has a schema that cannot be used: ${error instanceof Error ? error.message : "unknown reason"}`,
        where: { file },
        remedy: "Correct the JSON Schema (2020-12).",
      });
      return () => true;
    }
  };
  const applies = compile("the document", document.when);
  const rules = document.rules.map((rule) =>
    ruleOf(document, rule, {
      file: applies,
      when: compile(`rule ${rule.id}`, rule.when),
      must: compile(`rule ${rule.id}`, rule.must),
    }),
  );
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
  return failOr(problems, () => rules);
}
