import type { Checksum } from "./bag-tags.ts";
import type { DataSetFacts } from "./data-set-facts.ts";
import { momentText } from "./product-facts.ts";
import { CAUTION, instituteOf, licenceFacts } from "./records/record-words.ts";

const WIDTH = 78;

/** A file of the package with what it is for. */
export interface PackedName {
  /** Below data/. */
  readonly path: string;
  readonly size: number;
}

/** The plain-text read-me of a package: what a person needs who opens it without any software of the trade. */
export function readMe(facts: DataSetFacts, files: readonly PackedName[], checksum: Checksum): string {
  const { sheet, software, created, casts, box, time, vertical } = facts;
  const { survey, people = {} } = sheet;
  const licence = licenceFacts(sheet);
  const title = survey.title ?? survey.id;
  const fact = (label: string, value: string | null | undefined) =>
    value ? [filled(value, `${label}: `.padEnd(14), " ".repeat(14))] : [];
  const who = (party: { name: string; institution?: string; email?: string } | undefined) =>
    party && [party.name, party.institution, party.email].filter(Boolean).join(", ");
  return `${[
    filled(title),
    "=".repeat(Math.min(WIDTH, title.length)),
    "",
    ...(survey.summary ? [filled(survey.summary), ""] : []),
    ...fact("Data set", `${survey.id}${survey.product_version ? `, version ${survey.product_version}` : ""}`),
    ...fact("Made", `${created} by ${software}`),
    ...fact("Creator", who(people.creator)),
    ...fact("Publisher", who(people.publisher)),
    ...fact("Institution", instituteOf(sheet)),
    ...fact("Licence", licence && [licence.id, licence.name, licence.address].filter(Boolean).join(", ")),
    ...fact(
      "Access",
      survey.access &&
        [
          survey.access.right,
          survey.access.embargo_end && `open from ${survey.access.embargo_end}`,
          survey.access.conditions,
        ]
          .filter(Boolean)
          .join(", "),
    ),
    ...fact("Casts", String(casts.length)),
    ...fact("Time", time && `${time.start} to ${time.end} (UTC)`),
    ...fact(
      "Area",
      box && `latitude ${box.south} to ${box.north}, longitude ${box.west} to ${box.east} (WGS 84)`,
    ),
    ...fact("Vertical", vertical && `${vertical.least} to ${vertical.most} ${vertical.units}, positive down`),
    ...fact("Tide, datum", survey.water_level),
    ...fact("Quality", survey.quality),
    "",
    filled(CAUTION),
    "",
    "What is in data/",
    "----------------",
    "",
    ...files.map(({ path, size }) =>
      filled(`${wordsFor(path)} (${size} bytes)`, `${path.replace(/[\n\r]/g, "\ufffd")}\n    `, "    "),
    ),
    "",
    "How to read it",
    "--------------",
    "",
    filled(
      "The files that end in .csv open in any spreadsheet or text editor: one header row, comma between cells, point for decimals, empty cells where nothing was measured. The file with -metadata.json behind the same name says what each column is, in which unit.",
    ),
    "",
    filled(
      "The files that end in .nc hold the same numbers as netCDF, a format that most languages for computing read. Missing values stand there as the _FillValue of their variable.",
    ),
    "",
    filled(
      "Columns and variables that end in _qc are quality flags of the IODE primary level: 1 good, 2 not evaluated, 3 questionable, 4 bad, 9 missing. Nothing was deleted: bad values are still there, with their flag.",
    ),
    "",
    filled(
      "original/ holds the files as the instrument or the person gave them, byte for byte. source_line in the full products tells the line of each row there.",
    ),
    "",
    "Casts",
    "-----",
    "",
    ...casts.map(({ id, station, time: start, latitude, longitude }) =>
      [id, momentText(start), Number.isNaN(latitude + longitude) ? "" : `${latitude} ${longitude}`, station]
        .filter((text) => text !== "")
        .join("  "),
    ),
    "",
    "Whether everything arrived",
    "--------------------------",
    "",
    filled(
      `This folder is a bag (BagIt 1.0, RFC 8493). manifest-${checksum}.txt beside data/ lists the ${checksum === "sha256" ? "SHA-256" : "SHA-512"} checksum of every file in it. On most systems this command, given in the folder with bagit.txt, compares them:`,
    ),
    "",
    `    ${checksum}sum -c manifest-${checksum}.txt`,
    "",
  ]
    .map(plain)
    .join("\n")}`;
}

/** What files are, by their names; the first that fits. */
const KINDS: readonly (readonly [RegExp, string])[] = [
  [/^original\//, "source file, byte for byte"],
  [/_iso19115-3\.xml$/, "description of the data set by ISO 19115-3"],
  [/_datacite\.json$/, "description of the data set by DataCite, for a DOI"],
  [/_processing\.json$/, "what was done to each cast, with parameters and counts"],
  [/_check\.json$/, "findings of the check before packing, for programs"],
  [/_check\.html$/, "findings of the check before packing, for people"],
  [/_columns\.txt$/, "what the columns of the CSV files are, in plain text"],
  [/^notes\//, "notes that the source files were read with"],
  [/_soundspeed\.csv$/, "sound speed against depth, CSV"],
  [/_ct1\.(csv|zip)$/, "casts in WHP-Exchange form"],
  [/_positions\.csv$/, "positions and times of the casts"],
  [/_map\.svg$/, "map of the positions"],
  [/_report\.html$/, "quick look at the casts"],
  [/judgements\.jsonl$/, "flags that persons set, with who, when and why"],
  [/-metadata\.json$/, "what the columns of the CSV file of that name are"],
  [/_full\.nc$/, "every row with its flags, netCDF"],
  [/_full\.csv$/, "every row with its flags, CSV"],
  [/_binned\.nc$/, "layer means, netCDF"],
  [/_binned\.csv$/, "layer means, CSV"],
  [/_series(_.*)?\.nc$/, "series at a fixed depth, netCDF"],
  [/_series(_.*)?\.csv$/, "series at a fixed depth, CSV"],
  [/\.ya?ml$/, "survey sheet: what people told of survey, instruments and casts"],
];

const wordsFor = (path: string): string =>
  KINDS.find(([name]) => name.test(path))?.[1] ?? "file of the data set";

/** Text in lines of at most 78 characters, the first with its own beginning. */
function filled(text: string, first = "", further = ""): string {
  const lines: string[] = [];
  let line = first;
  let bare = true;
  for (const word of text.trim().split(/\s+/)) {
    const last = line.slice(line.lastIndexOf("\n") + 1);
    if (!bare && last.length + 1 + word.length > WIDTH) {
      lines.push(line);
      line = further + word;
    } else line = bare ? line + word : `${line} ${word}`;
    bare = false;
  }
  return [...lines, line].join("\n");
}

/** No control or bidirectional characters: they would steer a terminal or show names that are others. */
const plain = (text: string): string => text.replace(/[^\P{Cc}\n]|\p{Bidi_Control}/gu, "\ufffd");
