import type { Dataset, Variable } from "@wherry/netcdf";
import { CELL_WORDS } from "./csv-cell.ts";
import { CAUTION } from "./global-attributes.ts";
import type { TableColumn } from "./product-table.ts";
import type { SurveyProduct } from "./survey-products.ts";

/** What the CSV files of a survey hold, column by column, gathered while they are written. */
export interface DataDictionary {
  /** Files of one kind are described once; columns that only some of them have are added as they come. */
  add(kind: SurveyProduct["kind"], stem: string, dataset: Dataset, columns: readonly TableColumn[]): void;
  /** The page, for people without any software; empty if nothing was added. */
  text(): string;
}

interface Section {
  /** Of the first file. */
  readonly stem: string;
  readonly title: string;
  readonly entries: Map<string, readonly string[]>;
  files: number;
}

export function dataDictionary(): DataDictionary {
  const sections = new Map<SurveyProduct["kind"], Section>();
  return {
    add(kind, stem, dataset, columns) {
      const title = textOf(dataset.attributes.get("title")?.value) ?? stem;
      const section = sections.get(kind) ?? { stem, title, entries: new Map(), files: 0 };
      sections.set(kind, section);
      section.files++;
      for (const column of columns)
        if (!section.entries.has(column.name)) section.entries.set(column.name, factsOf(column));
    },
    text: () => (sections.size === 0 ? "" : page([...sections.values()])),
  };
}

const FORM = `The columns of the CSV files
============================

All files are text in UTF-8. The first line names the columns, each further line is one row. Values are separated by
commas and stand in double quotes where they hold a comma, a quote or a line end; numbers have a decimal point. An
empty cell means that the value is missing. What holds for a cast as a whole is repeated in each of its rows.
${CELL_WORDS}

${CAUTION}
`;

function page(sections: readonly Section[]): string {
  return [FORM, ...sections.map(sectionText)].join("\n");
}

function sectionText({ stem, title, entries, files }: Section): string {
  const name = files === 1 ? `${stem}.csv` : `${stem}.csv and ${files - 1} more of its kind`;
  const body = [...entries].map(([column, facts]) =>
    [column, ...facts.map((fact) => `    ${fact}`)].join("\n"),
  );
  return `${name}\n${"-".repeat(name.length)}\n${title}\n\n${body.join("\n\n")}\n`;
}

const KINDS: Readonly<Record<TableColumn["datatype"], string>> = {
  string: "text",
  float: "number, single precision",
  double: "number, double precision",
  byte: "whole number",
  int: "whole number",
  dateTime: "date and time, ISO 8601",
};

function factsOf({ variable, description, datatype }: TableColumn): string[] {
  const text = (name: string) => (variable === null ? null : textOf(variable.attributes.get(name)?.value));
  const facts: [string, string | null][] = [
    ["", description ?? text("long_name")],
    ["CF standard name: ", description === null ? text("standard_name") : null],
    ["unit: ", text("units")],
    ["kind: ", KINDS[datatype]],
    ["codes: ", variable === null ? null : codesOf(variable)],
    ["layers: ", text("cell_methods")],
    ["how: ", text("source")],
    ["after: ", text("references")],
    ["see also: ", text("ancillary_variables")],
    ["note: ", text("comment")],
  ];
  return facts.flatMap(([label, fact]) => (fact === null ? [] : [label + onOneLine(fact)]));
}

/** As `1 good, 2 not evaluated`. */
function codesOf({ attributes }: Variable): string | null {
  const values = attributes.get("flag_values")?.value;
  const meanings = textOf(attributes.get("flag_meanings")?.value)?.split(" ");
  if (values === undefined || meanings === undefined) return null;
  const codes =
    typeof values === "string" ? values.split(" ") : Array.from(values as ArrayLike<number>, String);
  return codes.map((code, index) => `${code} ${meanings[index]?.replaceAll("_", " ") ?? "?"}`).join(", ");
}

const textOf = (value: unknown): string | null => (typeof value === "string" && value !== "" ? value : null);

const onOneLine = (text: string): string => text.replaceAll(/\s+|\p{Cc}+/gu, " ").trim();
