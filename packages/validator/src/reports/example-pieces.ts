import type { BagExample } from "../engine/bag-rule.ts";
import type { CsvExample } from "../engine/csv-rule.ts";
import type { Example } from "../engine/rule.ts";

export type AnyExample = string | Example | CsvExample | BagExample;

export interface ExamplePiece {
  /** Language of the text, as fenced blocks of Markdown have it. */
  readonly language: "cdl" | "csv" | "json" | "text";
  readonly text: string;
  /** Path of the file whose content it is, where there are several. */
  readonly name?: string;
}

/** An example as texts: CDL, a table and its metadata, or the files of a package. */
export function examplePieces(example: AnyExample): ExamplePiece[] {
  if (typeof example === "string") return [{ language: "cdl", text: example }];
  if ("cdl" in example) {
    const { cdl, full } = example;
    const own: ExamplePiece = { language: "cdl", text: cdl };
    return full === undefined
      ? [own]
      : [own, { language: "cdl", name: "The full data beside it", text: full }];
  }
  if ("files" in example)
    return Object.entries(example.files).map(([name, text]) => ({ language: "text", name, text }));
  const { csv, encoding } = example;
  const table: ExamplePiece = {
    language: "csv",
    text: csv,
    ...(encoding === undefined ? {} : { name: `Stored as ${encoding}` }),
  };
  return example.metadata === null ? [table] : [table, { language: "json", text: example.metadata }];
}
