import { CELL_WORDS, textCell } from "../writers/csv-cell.ts";
import type { DataSetFacts } from "./data-set-facts.ts";
import { momentText } from "./product-facts.ts";

interface ListColumn {
  readonly name: string;
  readonly datatype: "string" | "double" | "dateTime" | "integer";
  readonly words: string;
  readonly cell: (cast: DataSetFacts["casts"][number]) => string;
}

const number = (value: number): string => (Number.isNaN(value) ? "" : String(value));

const COLUMNS: readonly ListColumn[] = [
  { name: "cast", datatype: "string", words: "cast identifier", cell: ({ id }) => id },
  {
    name: "kind",
    datatype: "string",
    words: "profile or timeSeries (a series at a fixed depth)",
    cell: ({ kind }) => kind,
  },
  { name: "station", datatype: "string", words: "name of the station", cell: ({ station }) => station },
  { name: "start_time", datatype: "dateTime", words: "start in UTC", cell: ({ time }) => momentText(time) },
  {
    name: "start_latitude",
    datatype: "double",
    words: "latitude of the start fix, degrees north, WGS 84",
    cell: ({ latitude }) => number(latitude),
  },
  {
    name: "start_longitude",
    datatype: "double",
    words: "longitude of the start fix, degrees east, WGS 84",
    cell: ({ longitude }) => number(longitude),
  },
  { name: "end_time", datatype: "dateTime", words: "end in UTC", cell: ({ endTime }) => momentText(endTime) },
  {
    name: "end_latitude",
    datatype: "double",
    words: "latitude of the end fix, degrees north, WGS 84",
    cell: ({ endLatitude }) => number(endLatitude),
  },
  {
    name: "end_longitude",
    datatype: "double",
    words: "longitude of the end fix, degrees east, WGS 84",
    cell: ({ endLongitude }) => number(endLongitude),
  },
  {
    name: "position_flag",
    datatype: "integer",
    words: "quality flag of the position, IODE primary level",
    cell: ({ positionFlag }) => number(positionFlag),
  },
  {
    name: "time_flag",
    datatype: "integer",
    words: "quality flag of the time, IODE primary level",
    cell: ({ timeFlag }) => number(timeFlag),
  },
  {
    name: "source_file",
    datatype: "string",
    words: "name of the source file, under original/",
    cell: ({ sourceFile }) => sourceFile,
  },
];

/** The position list of a data set as RFC 4180 text. */
export const positionsCsv = ({ casts }: DataSetFacts): string =>
  [
    COLUMNS.map(({ name }) => name),
    ...casts.map((cast) =>
      COLUMNS.map(({ cell, datatype }) => (datatype === "string" ? textCell(cell(cast)) : cell(cast))),
    ),
  ]
    .map((cells) => `${cells.join(",")}\r\n`)
    .join("");

/** Its description. @source W3C Recommendation "Metadata Vocabulary for Tabular Data", 17 December 2015 */
export function positionsMetadata({ sheet }: DataSetFacts, url: string): string {
  const document = {
    "@context": ["http://www.w3.org/ns/csvw", { "@language": "en" }],
    "@type": "Table",
    url,
    "dc:title": `Positions and times of the casts of ${sheet.survey.title ?? sheet.survey.id}`,
    "rdfs:comment": CELL_WORDS,
    dialect: { encoding: "utf-8", lineTerminators: ["\r\n"], header: true, headerRowCount: 1 },
    tableSchema: {
      "@type": "Schema",
      columns: COLUMNS.map(({ name, datatype, words }) => ({
        name,
        titles: name,
        datatype,
        null: "",
        ...(name === "cast" ? { required: true } : {}),
        "dc:description": words,
      })),
      primaryKey: ["cast"],
    },
  };
  return `${JSON.stringify(document, null, 2)}\n`;
}
