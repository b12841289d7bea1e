import { ctdRules, type DocumentRule, type RuleDocument, usTemplateRules } from "@wherry/contracts";
import type { DatasetView } from "./dataset-view.ts";
import { plainHeader, plainVariable } from "./header-projection.ts";
import { defineRule, type Rule } from "./rule.ts";
import { shippedSchemas } from "./shipped-schemas.generated.ts";

export type Fits = (value: unknown) => boolean;

/** The schemas of a rule and of its document, ready for use. */
export interface RuleSchemas {
  readonly file: Fits;
  readonly when: Fits;
  readonly must: Fits;
}

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

/** A rule of a document as the engine runs it. */
export function ruleOf(document: RuleDocument, rule: DocumentRule, { file, when, must }: RuleSchemas): Rule {
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

const documents: readonly RuleDocument[] = [ctdRules, usTemplateRules] as unknown as RuleDocument[];

/** The schemas of the documents that ship, by a key: "ctd", "ctd/licence/must". */
export const schemasOfDocuments: ReadonlyMap<string, object> = new Map(
  documents.flatMap(({ id, when, rules }) =>
    [
      [id, when] as const,
      ...rules.flatMap((rule) => [
        [`${id}/${rule.id}/when`, rule.when] as const,
        [`${id}/${rule.id}/must`, rule.must] as const,
      ]),
    ].flatMap(([key, schema]): [string, object][] => (schema === undefined ? [] : [[key, schema]])),
  ),
);

/** Schemas that ship are compiled beforehand, by tools/generate.ts: that takes longer than most checks. */
const compiled: Readonly<Record<string, Fits>> = shippedSchemas;
const shipped = (key: string): Fits =>
  schemasOfDocuments.has(key)
    ? (value) => {
        const fits = compiled[key];
        if (fits === undefined) throw new TypeError(`schema ${key} is not compiled: run tools/generate.ts`);
        return fits(value);
      }
    : () => true;

/** Rules of the documents that ship. */
export const shippedDocumentRules: readonly Rule[] = documents.flatMap((document) =>
  document.rules.map((rule) =>
    ruleOf(document, rule, {
      file: shipped(document.id),
      when: shipped(`${document.id}/${rule.id}/when`),
      must: shipped(`${document.id}/${rule.id}/must`),
    }),
  ),
);
