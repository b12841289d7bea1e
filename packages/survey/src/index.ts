export { lookDocument, lookText } from "@wherry/converter";
export type { Problem, Result } from "@wherry/core";
export { checkDocument, checkText, explainRule, type Level } from "@wherry/validator";
export * from "./check.ts";
export * from "./convert.ts";
export * from "./look.ts";
export { type ChosenRules, chooseRules } from "./rule-files.ts";
export * from "./sheet.ts";
export { FORMATS, type Format } from "./write-products.ts";
