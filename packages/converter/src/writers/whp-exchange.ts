import {
  type Cast,
  codeFor,
  convertUnits,
  fail,
  formatIsoTime,
  type LayerMeans,
  type MeanColumn,
  type Problem,
  type Result,
  succeed,
} from "@wherry/core";
import { baseName } from "./feature-variables.ts";
import { CAUTION } from "./global-attributes.ts";
import type { WritingContext } from "./writing-context.ts";
import { inTimeOrder } from "./writing-words.ts";

/** A parameter of the format and the column of a cast that becomes it. */
interface Parameter {
  readonly name: string;
  /** Of the format. */
  readonly units: string;
  readonly column: string;
  readonly standardName: string;
  /** UDUNITS spelling of the format's unit. */
  readonly unit: string;
  readonly decimals: number;
}

const PARAMETERS: readonly Parameter[] = [
  {
    name: "CTDPRS",
    units: "DBAR",
    column: "pressure",
    standardName: "sea_water_pressure_due_to_sea_water",
    unit: "dbar",
    decimals: 2,
  },
  {
    name: "CTDTMP",
    units: "ITS-90",
    column: "temperature",
    standardName: "sea_water_temperature",
    unit: "degree_C",
    decimals: 4,
  },
  {
    name: "CTDSAL",
    units: "PSS-78",
    column: "salinity",
    standardName: "sea_water_practical_salinity",
    unit: "1",
    decimals: 4,
  },
  {
    name: "CTDOXY",
    units: "UMOL/KG",
    column: "oxygen",
    standardName: "moles_of_oxygen_per_unit_mass_in_sea_water",
    unit: "umol kg-1",
    decimals: 1,
  },
];

/** One file of the format. */
export interface WhpFile {
  readonly name: string;
  readonly text: string;
}

/**
 * Layer means of every profile as WHP-Exchange CTD files, one a cast; a cast that the format cannot hold is left out
 * with a warning.
 *
 * @param casts full casts of the survey
 * @param means their layer means by cast id
 * @returns a problem if the sheet does not tell the cruise code that the format demands
 * @source WHP-Exchange Format 1.2.1 (2024), with the line ends of 1.3
 */
export function whpExchangeFiles(
  casts: readonly Cast[],
  means: ReadonlyMap<string, LayerMeans>,
  context: WritingContext,
): Result<readonly WhpFile[]> {
  const { exchange, survey } = context.sheet;
  if (exchange === undefined)
    return fail({
      code: "sheet/expocode-missing",
      message: "the sheet does not tell the cruise code (EXPOCODE), which WHP-Exchange files must name",
      where: { variable: "exchange.expocode" },
      remedy:
        "Add exchange: with expocode: followed by the code of the platform and the first day, as 99ZZ20250513.",
    });
  const files: WhpFile[] = [];
  const warnings: Problem[] = [];
  const castsAt = new Map<string, number>();
  for (const cast of inTimeOrder(casts)) {
    const layers = means.get(cast.id);
    if (cast.kind !== "profile" || layers === undefined) continue;
    const station = stationOf(cast, context);
    const number = (castsAt.get(station) ?? 0) + 1;
    castsAt.set(station, number);
    const lacking = whatLacks(cast, layers);
    if (lacking !== null) {
      warnings.push({
        code: "whp/left-out",
        message: `cast ${cast.id} is not written as a WHP-Exchange file: ${lacking}`,
        where: { file: cast.source.path },
        remedy: "The other products hold it.",
      });
      continue;
    }
    const header = [
      ["EXPOCODE", exchange.expocode],
      ...(exchange.section === undefined ? [] : [["SECT_ID", exchange.section]]),
      ["STNNBR", station],
      ["CASTNO", String(number)],
      ["DATE", formatIsoTime(cast.time).slice(0, 10).replaceAll("-", "")],
      ["TIME", formatIsoTime(cast.time).slice(11, 16).replace(":", "")],
      ["LATITUDE", cast.start!.latitude.toFixed(6)],
      ["LONGITUDE", cast.start!.longitude.toFixed(6)],
    ];
    const lines = [
      `CTD,${context.created.slice(0, 10).replaceAll("-", "")}${exchange.stamp ?? ""}`,
      ...comments(cast, layers, context).map((text) => `# ${text.replaceAll(/\p{Cc}+/gu, " ").trim()}`),
      `NUMBER_HEADERS = ${header.length + 1}`,
      ...header.map(([name, value]) => `${name} = ${value}`),
      ...tableOf(layers, cast),
      "END_DATA",
    ];
    files.push({ name: `${survey.id}_${cast.id}_ct1.csv`, text: `${lines.join("\n")}\n` });
  }
  return succeed(files, warnings);
}

/** The station as the sheet names it; without, the cast stands for itself. */
const stationOf = ({ id }: Cast, { sheet }: WritingContext): string =>
  sheet.casts
    ?.find((entry) => entry.id === id)
    ?.station?.replaceAll(/\p{Cc}+/gu, " ")
    .trim() || id;

function whatLacks(cast: Cast, layers: LayerMeans): string | null {
  if (Number.isNaN(cast.time)) return "its time is not known";
  if (cast.start === null || Number.isNaN(cast.start.latitude + cast.start.longitude))
    return "its position is not known";
  if (!columnOf(PARAMETERS[0]!, layers, cast)) return "it has no sea pressure";
  return null;
}

const ROLE_WORDS = {
  start: "those of the start of the cast",
  bottom: "those of the bottom of the cast",
  end: "those of the end of the cast",
  unknown: "as the source tells them, which moment of the cast is not known",
} as const;

function comments(cast: Cast, layers: LayerMeans, { sheet, software, created }: WritingContext): string[] {
  const { survey, people } = sheet;
  const unit = layers.coordinate === "depth" ? "m" : "dbar";
  const way = layers.direction === "down" ? "downcast" : "upcast";
  return [
    survey.title ?? survey.id,
    `cast ${cast.id} from ${baseName(cast.source.path)} (SHA-256 ${cast.source.sha256})`,
    layers.ownLevels
      ? "levels as the source had averaged them"
      : `means of the ${way} in layers of ${layers.width} ${unit}; CTDNOBS rows in each, by salinity or temperature`,
    `DATE and TIME (UTC) are ${ROLE_WORDS[cast.timeRole]}; the position is that of the start, WGS 84`,
    "flags are WOCE CTD codes; what passed its tests is 1, not calibrated: no comparison with water samples is told",
    ...(people?.creator ? [`made by ${people.creator.name}`] : []),
    ...(survey.license ? [`licence: ${survey.license}`] : []),
    `written by ${software}, ${created}`,
    CAUTION,
  ];
}

function columnOf({ column, standardName }: Parameter, layers: LayerMeans, cast: Cast): MeanColumn | null {
  if (cast.columns.get(column)?.standardName !== standardName) return null;
  return layers.columns.get(column) ?? null;
}

/** Names, units and rows; a layer without a pressure has no place. */
function tableOf(layers: LayerMeans, cast: Cast): string[] {
  const columns = PARAMETERS.flatMap((parameter) => {
    const column = columnOf(parameter, layers, cast);
    return column ? [{ parameter, column, from: cast.columns.get(parameter.column)!.units ?? "1" }] : [];
  });
  const counted = layers.ownLevels ? null : (columns.at(2) ?? columns.at(1))?.column.count;
  const names = columns.flatMap(({ parameter }) => [parameter.name, `${parameter.name}_FLAG_W`]);
  const units = columns.flatMap(({ parameter }) => [parameter.units, ""]);
  const rows: string[] = [];
  const [{ column: pressure }] = columns as [(typeof columns)[number]];
  for (let layer = 0; layer < layers.centres.length; layer++) {
    if (Number.isNaN(pressure.mean[layer]!)) continue;
    const cells = columns.flatMap(({ parameter, column, from }) => {
      const value = convertUnits(column.mean[layer]!, from, parameter.unit);
      const text = Number.isNaN(value) ? "-999" : value.toFixed(parameter.decimals);
      return [text.padStart(parameter.decimals + 6), woceCode(column.flags[layer]!)];
    });
    rows.push([...cells, ...(counted ? [String(counted[layer]!).padStart(5)] : [])].join(","));
  }
  return [
    [...names, ...(counted ? ["CTDNOBS"] : [])].join(","),
    [...units, ...(counted ? [""] : [])].join(","),
    ...rows,
  ];
}

const woceCode = (flag: number): string =>
  codeFor("WOCE CTD", flag as 1 | 2 | 3 | 4 | 9, { comparedWithSamples: false, rangeAlone: false }).code ??
  "0";
