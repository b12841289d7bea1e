import { type Cast, dayNumber, type Evidence, type Position } from "@wherry/core";
import type { Asking, ReadContext } from "../asking.ts";
import { settlePosition, settleTime } from "../settle-cast.ts";
import { headerOfCode, profileFlagWords, releaseOf, secondaryWords } from "./codes.ts";
import type { WodProfile } from "./profile.ts";
import type { WodText } from "./stream.ts";
import { columnsOf } from "./wod-columns.ts";

const two = (value: number) => String(value).padStart(2, "0");

/** A profile as a cast: what the header does not tell is asked. */
export function castOf(
  profile: WodProfile,
  id: string,
  text: WodText,
  path: string,
  context: ReadContext,
): Cast {
  const { asking } = context;
  const evidence: Evidence[] = [];
  const at = (offset: number) => text.place(offset);
  const say = (fact: string, certainty: Evidence["certainty"], because: string, offset = profile.offset) =>
    evidence.push({ fact, certainty, because, where: at(offset) });
  say("id", "stated", `the unique cast number is ${profile.cast}`);
  const { time, answered } = timeOf(profile, id, asking, say, at(profile.dateOffset).line ?? 1);
  const start = positionOf(profile, id, asking, say, at(profile.dateOffset).line ?? 1);
  const standard = profile.profileType === "1";
  say(
    "state",
    standard ? "stated" : "implied",
    standard
      ? "profile type 1: values at standard levels, interpolated by the database and not measured there"
      : "profile type 0: observed levels, without times of rows",
  );
  for (const { code, profileFlag } of profile.variables)
    say(
      `flags:${headerOfCode(code)}`,
      "stated",
      `flag of the whole profile: ${profileFlagWords(profileFlag)}`,
    );
  const columns = columnsOf(profile, {
    id,
    year: profile.year,
    latitude: start?.latitude ?? 45,
    asking,
    say,
  });
  return {
    id,
    kind: "profile",
    state: {
      processing: "averaged",
      pressureZeroed: columns.get("pressure")?.standardName === "sea_water_pressure_due_to_sea_water",
      lagCorrected: false,
      direction: "unknown",
    },
    rows: profile.levels.length,
    time,
    timeRole: answered ? "start" : "unknown",
    endTime: Number.NaN,
    elapsed: null,
    start,
    end: null,
    fixedDepth: null,
    instrument: { model: null, serialNumber: null, ratedPressure: null },
    notes: notesOf(profile),
    columns,
    texts: originatorFlags(profile),
    lines: Uint32Array.from(profile.levels, ({ offset }) => at(offset).line ?? 1),
    source: { path, sha256: context.sha256 },
    evidence,
    pressureOffset: Number.NaN,
    segments: [],
    steps: [],
  };
}

function timeOf(
  { year, month, day, hours, dateOffset }: WodProfile,
  id: string,
  asking: Asking,
  say: (fact: string, certainty: Evidence["certainty"], because: string, offset?: number) => void,
  line: number,
): { readonly time: number; readonly answered: boolean } {
  const date = `${year}-${two(month)}${day === 0 ? "" : `-${two(day)}`}`;
  if (hours !== null && day > 0) {
    say(
      "time",
      "stated",
      `the date is ${date}, the time ${hours.value} hours UTC, to ${10 ** -hours.decimals} hours`,
      dateOffset,
    );
    const midnight = dayNumber({ year, month, day }, "proleptic_gregorian") * 86_400;
    return { time: midnight + Math.round(hours.value * 3.6e6) / 1000, answered: false };
  }
  const lacks = day === 0 ? (hours === null ? "neither day nor time of day" : "no day") : "no time of day";
  const answer = settleTime(asking, {
    id,
    text: `The file gives ${lacks}, only ${date}. When did cast ${id} start?`,
    line,
    example: `${year}-${two(month)}-${two(day || 1)}T12:00:00Z`,
  });
  if (answer) say("time", "answered", answer.because);
  else say("time", "unknown", `the header says ${date} and ${lacks}`, dateOffset);
  return { time: answer?.value ?? Number.NaN, answered: answer !== null };
}

function positionOf(
  { latitude, longitude, dateOffset }: WodProfile,
  id: string,
  asking: Asking,
  say: (fact: string, certainty: Evidence["certainty"], because: string, offset?: number) => void,
  line: number,
): Position | null {
  if (latitude && longitude) {
    say(
      "latitude",
      "stated",
      `the header says ${latitude.value.toFixed(latitude.decimals)}`,
      latitude.offset,
    );
    say(
      "longitude",
      "stated",
      `the header says ${longitude.value.toFixed(longitude.decimals)}`,
      longitude.offset,
    );
    return { latitude: latitude.value, longitude: longitude.value, satellites: null, quality: null };
  }
  const answer = settlePosition(asking, {
    id,
    text: `The file gives no ${latitude ? "longitude" : longitude ? "latitude" : "position"} for cast ${id}. Where was it?`,
    line,
  });
  if (!answer) {
    say("latitude", "unknown", "the header leaves the position missing", dateOffset);
    return null;
  }
  say("latitude", "answered", answer.because);
  say("longitude", "answered", answer.because);
  return { ...answer.value, satellites: null, quality: null };
}

function notesOf(profile: WodProfile): string[] {
  const { version, country, cruise, texts, secondary, biology, latitudeUncertainty, longitudeUncertainty } =
    profile;
  return [
    `version ${version}: ${releaseOf(version)}`,
    `country ${country}`,
    ...(cruise === null ? [] : [`cruise ${cruise}`]),
    ...[["latitude", latitudeUncertainty] as const, ["longitude", longitudeUncertainty] as const].flatMap(
      ([what, found]) => (found ? [`uncertainty of the ${what} = ${found.value} degrees`] : []),
    ),
    ...texts,
    ...secondary.map(([code, value]) => secondaryWords(code, value?.value ?? null)),
    ...profile.variables.flatMap(({ code, metadata, profileFlag }) => [
      ...(profileFlag === "0"
        ? []
        : [`${headerOfCode(code)}: flag of the whole profile ${profileFlagWords(profileFlag)}`]),
      ...metadata.map(
        ([entry, value]) => `${headerOfCode(code)}: metadata ${entry} = ${value?.value ?? "missing"}`,
      ),
    ]),
    ...(biology > 0
      ? [`a biological header of ${biology} characters is not read; it is in the original`]
      : []),
  ];
}

/** Originators' flags, whose scheme is not told, as text where there are any. */
function originatorFlags({ levels, variables }: WodProfile): ReadonlyMap<string, readonly string[]> {
  const texts = new Map<string, readonly string[]>();
  const put = (header: string, flags: readonly string[]) => {
    if (flags.some((flag) => flag !== "" && flag !== "0")) texts.set(`${header} originator flag`, flags);
  };
  put(
    "depth",
    levels.map(({ depth }) => depth.originatorFlag),
  );
  for (const [index, { code }] of variables.entries())
    put(
      headerOfCode(code),
      levels.map(({ cells }) => cells[index]!.originatorFlag),
    );
  return texts;
}
