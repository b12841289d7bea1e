export { type Archive, type ArchiveForm, archive, fitsZip, ZIP_LIMITS } from "./deposit/archive.ts";
export { type Checked, type Checksum, type TagFile, tagFiles } from "./deposit/bag-tags.ts";
export { type DataSetFacts, dataSetFacts } from "./deposit/data-set-facts.ts";
export { bagInfo, describingFiles, type PackedName } from "./deposit/describing-files.ts";
export { type ProductFacts, productFacts } from "./deposit/product-facts.ts";
export { CROSSWALK, type CrosswalkRow } from "./deposit/records/crosswalk.ts";
export { type JoinedLog, joinFieldLog, withLog } from "./field-log/join-field-log.ts";
export { readFieldLog } from "./field-log/read-field-log.ts";
export { type BoundJudgements, bindJudgements } from "./judgements/bind-judgements.ts";
export { holding, type PlacedJudgement, readJudgements } from "./judgements/read-judgements.ts";
export * from "./recipe/process-cast.ts";
export * from "./recipe/read-recipe.ts";
export * from "./recipe/settings.ts";
export * from "./recipe/settings-from-sheet.ts";
export { type CompletedSheet, completeSheet, mintIds } from "./sheet/cast-ids.ts";
export * from "./sheet/check-sheet.ts";
export * from "./sheet/complete-sheet-text.ts";
export { type BaseSheet, inheritedPaths, standAloneText } from "./sheet/inherit-sheet.ts";
export * from "./sheet/read-notes.ts";
export * from "./sheet/read-sheet.ts";
export * from "./sheet/write-sheet.ts";
export type { ByteSource } from "./understand/encoding.ts";
export type { ExtraName } from "./understand/extra-names.ts";
export { gatherQuestions } from "./understand/gather-questions.ts";
export { topicProblem } from "./understand/inquiry.ts";
export {
  type LookCast,
  type LookColumn,
  type LookDocument,
  type LookFile,
  lookDocument,
} from "./understand/report/look-document.ts";
export { lookText } from "./understand/report/look-text.ts";
export { type SameCast, sameCastProblem, sameCasts } from "./understand/same-casts.ts";
export { concernsAnswers, type UnderstandContext, understandFile } from "./understand/understand-file.ts";
export { understandNetcdf, understandTable } from "./understand/understand-open-format.ts";
export * from "./writers/binned-dataset.ts";
export * from "./writers/csv-product.ts";
export { type DataDictionary, dataDictionary } from "./writers/data-dictionary.ts";
export { type Equipment, equipmentOf, instrumentOf, platformOf } from "./writers/equipment.ts";
export * from "./writers/fingerprint.ts";
export { fullDataset } from "./writers/full-dataset.ts";
export { packValues } from "./writers/pack-values.ts";
export * from "./writers/processing-record.ts";
export { QUANTITIES, type Quantity, quantityOf } from "./writers/quantities.ts";
export * from "./writers/series-dataset.ts";
export * from "./writers/survey-products.ts";
export * from "./writers/target.ts";
export * from "./writers/uuid.ts";
export * from "./writers/whp-exchange.ts";
export type { WritingContext } from "./writers/writing-context.ts";
