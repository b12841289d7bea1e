export { default as ctdRules } from "../rules/ctd.json" with { type: "json" };
export { default as usTemplateRules } from "../rules/us-template.json" with { type: "json" };
export { default as answersSchema } from "../schemas/answers.schema.json" with { type: "json" };
export { default as checkSchema } from "../schemas/check.schema.json" with { type: "json" };
export { default as judgementSchema } from "../schemas/judgement.schema.json" with { type: "json" };
export { default as lookSchema } from "../schemas/look.schema.json" with { type: "json" };
export { default as mendSchema } from "../schemas/mend.schema.json" with { type: "json" };
export { default as processingSchema } from "../schemas/processing.schema.json" with { type: "json" };
export { default as recipeSchema } from "../schemas/recipe.schema.json" with { type: "json" };
export { default as ruleDocumentSchema } from "../schemas/rule-document.schema.json" with { type: "json" };
export { default as sheetSchema } from "../schemas/sheet.schema.json" with { type: "json" };
export { default as waiversSchema } from "../schemas/waivers.schema.json" with { type: "json" };
export type { NotedAnswer, NotedName, ReadingNotes } from "./answers.generated.ts";
export type {
  CheckedFile,
  CheckOutput,
  PlaceOfAFinding,
  ReportedFinding,
  WaivedFinding,
} from "./check.generated.ts";
export type { Judgement } from "./judgement.generated.ts";
export type { LookedAtCast, LookedAtColumn, LookedAtFile, LookOutput } from "./look.generated.ts";
export type { ChangedAttribute, MendOutput } from "./mend.generated.ts";
export type { FlagCounts, ProcessedCast, ProcessingDocument, Step } from "./processing.generated.ts";
export type { ProcessingRecipe } from "./recipe.generated.ts";
export type {
  DocumentRule,
  ProductAttribute,
  ProductsForAnArchive,
  RuleDocument,
  SheetFact,
} from "./rule-document.generated.ts";
export type {
  Calibration,
  Contributor,
  Instrument,
  ListedCast,
  Party,
  People,
  Platform,
  ProcessingChoices,
  Relation,
  Sensor,
  SurveyIdentity,
  SurveySheet,
} from "./sheet.generated.ts";
export type { Waivers as WaiversDocument } from "./waivers.generated.ts";
