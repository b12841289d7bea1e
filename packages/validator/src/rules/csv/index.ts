import type { CsvRule } from "../../engine/csv-rule.ts";
import { csvColumns } from "./columns.ts";
import { csvEncoding } from "./encoding.ts";
import { csvHeader } from "./header.ts";
import { csvKey } from "./key.ts";
import { csvMetadata } from "./metadata.ts";
import { csvText } from "./text.ts";
import { csvValues } from "./values.ts";

/** Rules of CSV with metadata (CSV on the Web). */
export const csvRules: readonly CsvRule[] = [
  csvColumns,
  csvEncoding,
  csvHeader,
  csvKey,
  csvMetadata,
  csvText,
  csvValues,
];
