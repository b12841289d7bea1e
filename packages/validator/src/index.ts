export * from "./engine/check-dataset.ts";
export * from "./engine/check-file.ts";
export { EDITIONS, type Edition, type EditionChoice, isEdition, NEWEST } from "./engine/edition.ts";
export * from "./engine/finding.ts";
export { allRules } from "./engine/registry.ts";
export type { Example, FailingExample, Rule, RuleSet } from "./engine/rule.ts";
export { tryExamples } from "./engine/rule-tester.ts";
