export { lookDocument, lookText } from "@wherry/converter";
export type { Problem, Result } from "@wherry/core";
export {
  type CheckedFile,
  documentPieces,
  explainRule,
  fileText,
  type Level,
  mendDocument,
  mendText,
  newTally,
} from "@wherry/validator";
export * from "./check.ts";
export { reportForms, writeReport } from "./check-report.ts";
export * from "./convert.ts";
export { type Judging, judge } from "./judge.ts";
export * from "./look.ts";
export * from "./mend.ts";
export * from "./pack.ts";
export { type ChosenRules, chooseRules } from "./rule-files.ts";
export * from "./sheet.ts";
export { TARGETS } from "./target-file.ts";
export * from "./vocabularies.ts";
export { FORMATS, type Format } from "./write-products.ts";
