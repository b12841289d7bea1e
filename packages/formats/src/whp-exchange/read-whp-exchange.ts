import {
  type Cast,
  type Column,
  convertUnitsColumn,
  type Evidence,
  Flag,
  failOr,
  type Problem,
  type Result,
  sameDimension,
  temperatureFrom68Column,
} from "@wherry/core";
import type { Question, UnderstoodFile } from "../understood.ts";
import { readDegrees, readHeader, readWhpTime, type WhpHeader } from "./header.ts";
import { readTable, type WhpParameter } from "./rows.ts";
import { iodeFromWoceCtd, WOCE_CTD } from "./woce-flags.ts";

export type TimeRole = "start" | "bottom" | "end" | "unknown";

/**
 * One cast of a WHP-Exchange CTD file (`*_ct1.csv`).
 *
 * Strict: what breaks the format is a problem with its place. Lenient only where the format allows it or the reading
 * is clear, with a warning: CRLF line ends (format 1.0), a byte-order mark, free headers, a header count that forgot
 * itself; rows of a wrong width and a missing END_DATA are findings. Source flags are kept and mapped.
 *
 * @param context id of the cast, SHA-256 of the bytes, and what DATE and TIME stand for: the format does not say
 * @source WHP-Exchange Format 1.2.1 (2024)
 */
export function readWhpExchange(
  bytes: Uint8Array,
  path: string,
  context: { readonly sha256: string; readonly id: string; readonly timeRole?: TimeRole },
): Result<UnderstoodFile> {
  const problems: Problem[] = [];
  const warnings: Problem[] = [];
  const findings: Problem[] = [];
  const { text, encoding } = decode(bytes, path, warnings);
  const lineEnding = endingOf(text, path, warnings);
  const lines = text.split(/\r\n|\n|\r/);
  if (lines.at(-1) === "") lines.pop();
  if (!/^CTD\s*(?:,|$)/.test(lines[0] ?? ""))
    problems.push({
      code: "whp-exchange/identifier",
      message: 'the first line does not begin with "CTD,"',
      where: { file: path, line: 1 },
      remedy: "Is this a CTD file of the format?",
    });
  const header = readHeader(lines, path, problems, warnings);
  const table = header && readTable(lines, header.nameLine, path, problems, findings);
  const role = context.timeRole ?? "unknown";
  const cast =
    header && table
      ? castOf(header, table.parameters, table.lines, path, context, role, problems, warnings, findings)
      : null;
  return failOr(
    problems,
    () => ({
      path,
      format: "WHP-Exchange CTD",
      sha256: context.sha256,
      encoding,
      lineEnding,
      delimiter: ",",
      decimal: ".",
      missingMarkers: ["-999"],
      casts: cast ? [cast] : [],
      questions: cast ? questionsOf(cast, header!, path, role) : [],
      findings,
    }),
    [...warnings, ...findings],
  );
}

function decode(
  bytes: Uint8Array,
  file: string,
  warnings: Problem[],
): { readonly text: string; readonly encoding: string } {
  const marked = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf;
  if (marked)
    warnings.push({
      code: "whp-exchange/byte-order-mark",
      message: "the file begins with a byte-order mark, which the format forbids",
      where: { file, byte: 0 },
    });
  const body = marked ? bytes.subarray(3) : bytes;
  try {
    return {
      text: new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(body),
      encoding: "utf-8",
    };
  } catch {
    warnings.push({
      code: "whp-exchange/encoding",
      message: "the file is not valid UTF-8; it is read as windows-1252",
      where: { file },
    });
    return { text: new TextDecoder("windows-1252").decode(body), encoding: "windows-1252" };
  }
}

function endingOf(text: string, file: string, warnings: Problem[]): UnderstoodFile["lineEnding"] {
  const crlf = /\r\n/.test(text);
  const cr = /\r(?!\n)/.test(text);
  const lf = /(?<!\r)\n/.test(text);
  if (!crlf && !cr) return "LF";
  const ending = [crlf, cr, lf].filter(Boolean).length > 1 ? "mixed" : crlf ? "CRLF" : "CR";
  warnings.push({
    code: "whp-exchange/line-end",
    message: `lines end with ${ending}; the format allowed CRLF in its first version and asks for LF since 1.3`,
    where: { file, line: 1 },
    remedy: "Nothing needs to be done for reading.",
  });
  return ending;
}

/** Parameters that have a place of their own in casts. */
const KNOWN: Readonly<Record<string, Pick<Column, "name" | "standardName" | "longName" | "units">>> = {
  CTDPRS: {
    name: "pressure",
    standardName: "sea_water_pressure_due_to_sea_water",
    longName: "sea pressure",
    units: "dbar",
  },
  CTDTMP: {
    name: "temperature",
    standardName: "sea_water_temperature",
    longName: "temperature of sea water",
    units: "degree_C",
  },
  CTDSAL: {
    name: "salinity",
    standardName: "sea_water_practical_salinity",
    longName: "Practical Salinity",
    units: "1",
  },
  CTDOXY: {
    name: "oxygen",
    standardName: "moles_of_oxygen_per_unit_mass_in_sea_water",
    longName: "dissolved oxygen",
    units: "umol kg-1",
  },
};
/** Spellings of units by the format, as UDUNITS writes them; scales of temperature and salinity are no units. */
const UNITS: Readonly<Record<string, string>> = {
  DBAR: "dbar",
  "ITS-90": "degree_C",
  "IPTS-68": "degree_C",
  "PSS-78": "1",
  "UMOL/KG": "umol kg-1",
  S: "s",
  "0-5VDC": "V",
  "%TRANS": "percent",
};

function castOf(
  header: WhpHeader,
  parameters: readonly WhpParameter[],
  lines: Uint32Array,
  path: string,
  context: { readonly sha256: string; readonly id: string },
  role: TimeRole,
  problems: Problem[],
  warnings: Problem[],
  findings: Problem[],
): Cast {
  const time = readWhpTime(header, path, problems, warnings);
  const latitude = readDegrees(header, "LATITUDE", path, problems);
  const longitude = readDegrees(header, "LONGITUDE", path, problems);
  const evidence: Evidence[] = [];
  const say = (fact: string, certainty: Evidence["certainty"], because: string, line: number) =>
    evidence.push({ fact, certainty, because, where: { file: path, line } });
  for (const [fact, name] of [
    ["time", "DATE"],
    ["latitude", "LATITUDE"],
    ["longitude", "LONGITUDE"],
  ] as const) {
    const entry = header.entries.get(name);
    if (entry) say(fact, "stated", `line ${entry.line} says ${name} = ${entry.value}`, entry.line);
  }
  say("timeZone", "stated", "the format gives times in UTC", 1);
  say("state", "stated", "the format holds levels that were averaged and calibrated", 1);
  const columns = new Map<string, Column>();
  for (const parameter of parameters) {
    const column = columnOf(parameter, path, header.nameLine + 2, problems, findings);
    columns.set(column.name, column);
    const stated = parameter.units === "" ? "no unit" : parameter.units;
    say(
      `column:${parameter.name}`,
      "stated",
      `the format defines ${parameter.name}; the unit line says ${stated}`,
      header.nameLine + 2,
    );
  }
  checkPressure(columns.get("pressure"), lines, path, problems);
  const notes = [
    header.identifier,
    ...header.comments.map((comment) => `# ${comment}`),
    ...[...header.entries].map(([name, { value }]) => `${name} = ${value}`),
  ];
  const instrument = header.entries.get("INSTRUMENT_ID")?.value ?? null;
  const placed = !Number.isNaN(latitude) && !Number.isNaN(longitude);
  return {
    id: context.id,
    kind: "profile",
    state: { processing: "averaged", pressureZeroed: true, lagCorrected: true, direction: "unknown" },
    rows: lines.length,
    time,
    timeRole: role,
    endTime: role === "end" ? time : NaN,
    elapsed: null,
    start: placed ? { latitude, longitude, satellites: null, quality: null } : null,
    end: null,
    fixedDepth: null,
    instrument: { model: null, serialNumber: instrument, ratedPressure: null },
    notes,
    columns,
    texts: new Map(),
    lines,
    source: { path, sha256: context.sha256 },
    evidence,
    pressureOffset: NaN,
    segments: [],
    steps: [],
  };
}

function columnOf(
  parameter: WhpParameter,
  file: string,
  unitLine: number,
  problems: Problem[],
  findings: Problem[],
): Column {
  const known = KNOWN[parameter.name];
  const spelling = parameter.units.toUpperCase();
  const units = UNITS[spelling] ?? (parameter.units === "" ? null : parameter.units);
  let values = parameter.values;
  let named: Pick<Column, "name" | "standardName" | "longName" | "units"> = known ?? {
    name: parameter.name.toLowerCase().replace(/[^a-z0-9]+/g, "_"),
    standardName: null,
    longName: parameter.name,
    units,
  };
  if (parameter.name === "CTDTMP" && spelling === "IPTS-68") {
    values = new Float64Array(values.length);
    temperatureFrom68Column(parameter.values, values);
  } else if (known && (units === null || (units !== known.units && !sameDimension(units, known.units!)))) {
    const where = { file, line: unitLine, variable: parameter.name };
    if (parameter.name === "CTDOXY") named = { ...known, standardName: null, units };
    else
      problems.push({
        code: "whp-exchange/unit",
        message: `the unit of ${parameter.name} is "${parameter.units}"`,
        where,
        remedy: `The format gives ${parameter.name} in ${parameter.name === "CTDPRS" ? "DBAR" : parameter.name === "CTDTMP" ? "ITS-90 or IPTS-68" : "PSS-78"}.`,
      });
  } else if (known && units !== known.units && units !== null) {
    values = new Float64Array(values.length);
    convertUnitsColumn(parameter.values, units, known.units!, values);
  }
  const codes = parameter.flags;
  const flags = Uint8Array.from(values, (value, row) =>
    codes
      ? iodeFromWoceCtd(codeOf(codes[row]), value)
      : Number.isNaN(value)
        ? Flag.missing
        : Flag.notEvaluated,
  );
  if (codes) {
    const odd = [...codes.keys()].filter(
      (row) => Number.isNaN(values[row]!) !== ["5", "9"].includes(codes[row]!),
    );
    if (odd.length > 0)
      findings.push({
        code: "whp-exchange/flag-and-value",
        message: `${odd.length} flags of ${parameter.name} call a value missing that is there, or the reverse`,
        where: { file, variable: parameter.name, index: odd[0]! },
        remedy:
          "Missing values are flagged 9; values that are there and were called missing count as not evaluated.",
      });
  }
  return {
    ...named,
    values,
    flags,
    source: {
      header: parameter.name,
      units: parameter.units === "" ? null : parameter.units,
      index: parameter.index,
      decimals: parameter.decimals,
      significantDigits: parameter.significantDigits,
      first: parameter.first,
      last: parameter.last,
    },
    sourceFlags: codes ? { scheme: WOCE_CTD, header: `${parameter.name}_FLAG_W`, values: codes } : null,
    tests: new Map(),
    method: null,
  };
}

const codeOf = (text: string | undefined) => (text && /^[0-9]$/.test(text) ? text.charCodeAt(0) - 48 : 0);

function checkPressure(
  pressure: Column | undefined,
  lines: Uint32Array,
  file: string,
  problems: Problem[],
): void {
  if (!pressure) {
    problems.push({
      code: "whp-exchange/no-pressure",
      message: "there is no parameter CTDPRS",
      where: { file },
      remedy: "A CTD file of the format holds CTDPRS in DBAR.",
    });
    return;
  }
  for (let row = 1; row < pressure.values.length; row++) {
    if (!(pressure.values[row]! < pressure.values[row - 1]!)) continue;
    problems.push({
      code: "whp-exchange/pressure-falls",
      message: `CTDPRS falls from ${pressure.values[row - 1]} to ${pressure.values[row]}`,
      where: { file, line: lines[row] ?? 1, variable: "CTDPRS" },
      remedy: "Levels stand in the order of pressure.",
    });
    return;
  }
}

function questionsOf(cast: Cast, header: WhpHeader, path: string, role: TimeRole): readonly Question[] {
  const name = path.split("/").at(-1) ?? path;
  if (Number.isNaN(cast.time)) {
    const line = header.entries.get("DATE")?.line ?? 1;
    return [
      {
        about: "time",
        text: "The file gives the day of the cast and not its hour. When did it start?",
        where: { file: path, line },
        casts: [cast.id],
        candidates: [],
        answerWith: `{ about: time, where: ${JSON.stringify(name)}, value: "2024-05-20T09:00:00Z" }`,
      },
    ];
  }
  if (role !== "unknown") return [];
  return [
    {
      about: "timeRole",
      text: "Is the time of the cast its start, its bottom or its end? The format does not say.",
      where: { file: path, line: header.entries.get("TIME")?.line ?? 1 },
      casts: [cast.id],
      candidates: ["start", "bottom", "end"],
      answerWith: `{ about: timeRole, where: ${JSON.stringify(name)}, value: start }`,
    },
  ];
}
