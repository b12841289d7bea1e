import { type Cast, type Evidence, type Position, type Result, succeed } from "@wherry/core";
import type { Dataset } from "@wherry/netcdf";
import type { Asking, Recognition } from "../asking.ts";
import { attributeWords, textOf } from "../cf-dsg/attributes.ts";
import { MOST_CELLS } from "../cf-dsg/layout.ts";
import { noCasts } from "../cf-dsg/no-casts.ts";
import type { CfDsgContext } from "../cf-dsg/read-cf-dsg.ts";
import { cellsOf } from "../cf-dsg/stored-numbers.ts";
import { settlePosition, settleTime, settleTimeRoles } from "../settle-cast.ts";
import type { UnderstoodFile } from "../understood.ts";
import { ArgoArrays, columnsOf } from "./argo-columns.ts";
import { ArgoValues } from "./argo-values.ts";

/** Whether a dataset is an Argo profile file: by its dimensions, and by its conventions or a variable that no other has. */
export function recogniseArgoProfile(dataset: Dataset): Recognition | null {
  if (!dataset.dimensions.has("N_PROF") || !dataset.dimensions.has("N_LEVELS")) return null;
  const conventions = textOf(dataset.attributes, "Conventions") ?? "";
  const named = /\bArgo\b/i.test(conventions);
  if (!named && !dataset.variables.has("STATION_PARAMETERS")) return null;
  return {
    format: "Argo profile netCDF",
    because: `its profiles stand on N_PROF and N_LEVELS; ${named ? `Conventions says ${conventions}` : "STATION_PARAMETERS names what was measured"}`,
  };
}

/**
 * Casts of an Argo profile file: one for each profile of N_PROF, the primary sampling first.
 *
 * Delayed-mode and adjusted profiles give their adjusted values, real-time ones the raw; flags are kept as they are.
 * The manual does not say whether JULD is the start or the end of a profile: that is asked, or the role stays unknown.
 *
 * @returns always a file: where no casts can be made of it, a finding says why. Findings stand again in the warnings.
 * @source  Argo user's manual (doi 10.13155/29825), reference tables 2 and 2a
 */
export async function readArgoProfile(
  dataset: Dataset,
  { asking, ...context }: CfDsgContext & { readonly asking?: Asking },
): Promise<Result<UnderstoodFile>> {
  const from = new ArgoValues(dataset, context.path);
  from.findings.push(
    ...dataset.problems.map((each) => ({ ...each, where: { ...each.where, file: context.path } })),
  );
  const cells = [...dataset.variables.values()]
    .filter(({ dimensions }) => dimensions.includes("N_LEVELS"))
    .reduce((sum, variable) => sum + cellsOf(variable), 0);
  const read = cells > MOST_CELLS ? null : await readCasts(from, context);
  const casts =
    read && asking
      ? settleTimeRoles(
          read.map((cast) => settleMissing(cast, asking)),
          asking,
          {
            text: "Is the time of the profiles (JULD) their start, their bottom or their end? The manual does not say.",
          },
        )
      : read;
  if (!casts || casts.length === 0)
    from.findings.push(
      noCasts(
        dataset,
        casts
          ? "no profile of it has STATION_PARAMETERS that are there"
          : `${cells} numbers are too many to read at once`,
        context.path,
      ),
    );
  return succeed(
    {
      path: context.path,
      format: "Argo profile netCDF",
      sha256: context.sha256,
      encoding: null,
      lineEnding: null,
      delimiter: null,
      decimal: null,
      missingMarkers: ["99999"],
      casts: casts ?? [],
      questions: [],
      findings: from.findings,
    },
    from.findings,
  );
}

/** What the file leaves missing, by answers. */
function settleMissing(cast: Cast, asking: Asking): Cast {
  const { id } = cast;
  const found: Evidence[] = [];
  const say = (fact: string, because: string) =>
    found.push({ fact, certainty: "answered", because, where: { file: cast.source.path } });
  const time = Number.isNaN(cast.time)
    ? settleTime(asking, { id, text: `The time of profile ${id} (JULD) is missing. When did it start?` })
    : null;
  if (time) say("time", time.because);
  const position = cast.start
    ? null
    : settlePosition(asking, { id, text: `The position of profile ${id} is missing. Where was it?` });
  if (position) say("latitude", position.because);
  return {
    ...cast,
    ...(time ? { time: time.value, timeRole: "start" } : {}),
    ...(position ? { start: { ...position.value, satellites: null, quality: null } } : {}),
    evidence: [...cast.evidence, ...found],
  };
}

async function readCasts(from: ArgoValues, context: CfDsgContext): Promise<readonly Cast[]> {
  const parameters = await from.textLists("STATION_PARAMETERS");
  if (!parameters) return [];
  const perProfile = await readPerProfile(from);
  const arrays = new ArgoArrays(from);
  const used = new Set<string>();
  const casts: Cast[] = [];
  for (const [index, own] of parameters.entries()) {
    const facts = perProfile(index);
    const time = facts.time;
    const count = own.length;
    const read = await columnsOf(
      { index, time, parameters: own, modeOf: (k) => facts.parameterMode(index * count + k) },
      arrays,
      from,
    );
    if (read.columns.size === 0) continue;
    casts.push(castOf(from, context, index, facts, read, uniqueId(facts.id, used)));
  }
  return casts;
}

type Facts = Awaited<ReturnType<typeof readPerProfile>> extends (index: number) => infer F ? F : never;

/** What stands once for each profile. */
async function readPerProfile(from: ArgoValues) {
  const texts = new Map<string, readonly string[] | null>();
  for (const name of NOTED) texts.set(name, from.dataset.variables.has(name) ? await from.texts(name) : null);
  const cycles = await from.numbers(from.variable("CYCLE_NUMBER"));
  const times = await from.moments("JULD");
  const latitudes = await from.numbers(from.variable("LATITUDE"));
  const longitudes = await from.numbers(from.variable("LONGITUDE"));
  const [mode, direction, timeFlag, positionFlag] = [
    await from.letters("DATA_MODE"),
    await from.letters("DIRECTION"),
    await from.letters("JULD_QC"),
    await from.letters("POSITION_QC"),
  ];
  const ofParameters = from.dataset.variables.has("PARAMETER_DATA_MODE")
    ? await from.letters("PARAMETER_DATA_MODE", "N_PARAM")
    : null;
  const stem = from.path
    .split(/[/\\]/)
    .at(-1)!
    .replace(/\.[^.]*$/, "");
  return (index: number) => {
    const text = (name: string) => texts.get(name)?.[index] || null;
    const platform = text("PLATFORM_NUMBER");
    const cycle = cycles?.[index] ?? Number.NaN;
    const goes = direction(index);
    const known = platform !== null && !Number.isNaN(cycle);
    return {
      id: known ? `${platform}_${String(cycle).padStart(3, "0")}${goes === "D" ? "D" : ""}` : stem,
      idBecause: known
        ? `PLATFORM_NUMBER is ${platform}, CYCLE_NUMBER ${cycle}`
        : "PLATFORM_NUMBER or CYCLE_NUMBER is missing: the name of the file stands for them",
      text,
      time: times?.[index] ?? Number.NaN,
      timeFlag: timeFlag(index),
      latitude: latitudes?.[index] ?? Number.NaN,
      longitude: longitudes?.[index] ?? Number.NaN,
      positionFlag: positionFlag(index),
      direction: goes,
      mode: mode(index),
      parameterMode: (cell: number) => {
        const own = ofParameters?.(cell) ?? " ";
        return own === " " ? mode(index) : own;
      },
    };
  };
}

/** Texts of each profile that go into the notes. */
const NOTED = [
  "PLATFORM_NUMBER",
  "PROJECT_NAME",
  "PI_NAME",
  "DATA_CENTRE",
  "DATA_STATE_INDICATOR",
  "PLATFORM_TYPE",
  "FLOAT_SERIAL_NO",
  "FIRMWARE_VERSION",
  "WMO_INST_TYPE",
  "POSITIONING_SYSTEM",
  "VERTICAL_SAMPLING_SCHEME",
] as const;

function castOf(
  from: ArgoValues,
  context: CfDsgContext,
  index: number,
  facts: Facts,
  { rows, columns, evidence: ofColumns }: Awaited<ReturnType<typeof columnsOf>>,
  id: string,
): Cast {
  const evidence: Evidence[] = [];
  const say = (fact: string, certainty: Evidence["certainty"], because: string, variable: string) =>
    evidence.push({ fact, certainty, because, where: { file: context.path, variable, index } });
  say("id", "stated", facts.idBecause, "PLATFORM_NUMBER");
  const scheme = facts.text("VERTICAL_SAMPLING_SCHEME");
  say(
    "state",
    scheme ? "stated" : "implied",
    scheme
      ? `VERTICAL_SAMPLING_SCHEME says ${scheme}`
      : `${index === 0 ? "the first profile is the primary sampling" : "a further profile of the file"}; levels without times`,
    "VERTICAL_SAMPLING_SCHEME",
  );
  if (Number.isNaN(facts.time)) say("time", "unknown", "JULD is missing", "JULD");
  else {
    say("time", "stated", `JULD, flag ${facts.timeFlag.trim() || "none"}`, "JULD");
    say(
      "timeRole",
      "unknown",
      "the manual does not say whether JULD is the start or the end of a profile",
      "JULD",
    );
  }
  const placed = Math.abs(facts.latitude) <= 90 && Math.abs(facts.longitude) <= 360;
  const flag = facts.positionFlag.trim();
  say(
    "latitude",
    placed ? "stated" : "unknown",
    placed ? `LATITUDE, POSITION_QC ${flag || "none"}` : "LATITUDE or LONGITUDE is missing",
    "LATITUDE",
  );
  if (placed) say("longitude", "stated", `LONGITUDE, POSITION_QC ${flag || "none"}`, "LONGITUDE");
  else if (!Number.isNaN(facts.latitude) || !Number.isNaN(facts.longitude))
    from.find(
      "position",
      `profile ${index + 1} is at ${facts.latitude}, ${facts.longitude}`,
      "Correct the position.",
      "LATITUDE",
      index,
    );
  const start: Position | null = placed
    ? {
        latitude: facts.latitude,
        longitude: facts.longitude > 180 ? facts.longitude - 360 : facts.longitude,
        satellites: null,
        quality: flag === "" ? null : `POSITION_QC ${flag} (Argo)`,
      }
    : null;
  return {
    id,
    kind: "profile",
    state: {
      processing: "averaged",
      pressureZeroed: columns.get("pressure")?.standardName === "sea_water_pressure_due_to_sea_water",
      lagCorrected: false,
      direction: directionOf(from, index, facts.direction, columns.get("pressure")?.values, say),
    },
    rows,
    time: facts.time,
    timeRole: "unknown",
    endTime: Number.NaN,
    elapsed: null,
    start,
    end: null,
    fixedDepth: null,
    instrument: { model: null, serialNumber: null, ratedPressure: null },
    notes: [
      ...NOTED.flatMap((name) => (facts.text(name) === null ? [] : [`${name} = ${facts.text(name)}`])),
      ...[...from.dataset.attributes.values()].map((each) => `${each.name} = ${attributeWords(each)}`),
    ],
    columns,
    texts: new Map(),
    lines: Uint32Array.from({ length: rows }, (_, row) => row + 1),
    source: context,
    evidence: [...evidence, ...ofColumns],
    pressureOffset: Number.NaN,
    segments: [],
    steps: [],
  };
}

/** Direction by DIRECTION and by the letter D of the file's name, which must agree. */
function directionOf(
  from: ArgoValues,
  index: number,
  letter: string,
  pressure: Float64Array | undefined,
  say: (fact: string, certainty: Evidence["certainty"], because: string, variable: string) => void,
): Cast["state"]["direction"] {
  const named = /_\d{3,4}(D?)\.nc$/i.exec(from.path);
  const byName = named ? (named[1] ? "D" : "A") : null;
  if (!/^[AD]$/.test(letter) && byName === null) {
    say("direction", "unknown", "neither DIRECTION nor the file's name says it", "DIRECTION");
    return "unknown";
  }
  if (byName !== null && /^[AD]$/.test(letter) && byName !== letter) {
    from.find(
      "direction",
      `DIRECTION of profile ${index + 1} is ${letter}, and the file's name says ${byName === "D" ? "descending" : "ascending"}`,
      "The file's name ends in D for descending profiles alone.",
      "DIRECTION",
      index,
    );
    return "unknown";
  }
  const goes = /^[AD]$/.test(letter) ? letter : byName;
  say(
    "direction",
    "stated",
    `${goes === letter ? `DIRECTION is ${letter}` : "the file's name tells it"}: ${goes === "D" ? "descending" : "ascending"}`,
    "DIRECTION",
  );
  if (goes === "D") return "down";
  const known = [...(pressure ?? [])].filter((value) => !Number.isNaN(value));
  return known.length > 1 && known[0]! < known.at(-1)! ? "up-reversed" : "up";
}

function uniqueId(wanted: string, used: Set<string>): string {
  const base = wanted.replace(/[^A-Za-z0-9._-]+/g, "-") || "profile";
  let id = base;
  for (let n = 2; used.has(id); n++) id = `${base}-${n}`;
  used.add(id);
  return id;
}
