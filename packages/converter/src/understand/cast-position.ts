import { type Evidence, type Position, parseDecimal, parseNumber } from "@wherry/core";
import type { CastTime } from "./cast-time.ts";
import { evidence, type FileFacts } from "./file-facts.ts";
import type { HeaderLine } from "./header-lines.ts";
import type { Axis, Coordinate } from "./position.ts";
import { findCoordinates } from "./position.ts";
import { type CoordinateFact, type PositionFacts, positionFacts } from "./position-facts.ts";
import type { RawCast } from "./raw-cast.ts";
import { exchange, type Fix, rowPositions } from "./row-position.ts";
import { writeZone } from "./zone.ts";

export interface CastPosition {
  readonly start: Position | null;
  readonly end: Position | null;
  readonly evidence: readonly Evidence[];
}

/**
 * Start and end fix of a cast: from columns of the table or lines of the header, else asked. A letter O is read by
 * the language of the file or asked; 0° 0° is no fix.
 *
 * @param when of it the zone, minutes east of UTC of the file's local clock, null if unknown, and the times of start
 *             and end, NaN if unknown
 */
export function castPosition(
  cast: RawCast,
  id: string,
  facts: FileFacts,
  when: Pick<CastTime, "zone" | "time" | "endTime">,
): CastPosition {
  const { zone } = when;
  const found: Evidence[] = [];
  const own = positionFacts(cast.own);
  const said = own.coordinates.length > 0 || own.noFix ? own : positionFacts([...cast.own, ...cast.shared]);
  const inRows = rowPositions(cast);
  const place = (line: number | null) => (line === null ? { file: facts.path } : { file: facts.path, line });
  let start: Fix | null = null;
  let end: Fix | null = null;
  if (inRows) {
    start = inRows.first;
    end = inRows.last;
  } else {
    start = fixOf(said, "start");
    end = fixOf(said, "end");
  }
  const near = inRows
    ? undefined
    : said.coordinates.find(({ role, approximate }) => approximate && role !== "end");
  const datum = start && oldDatum([...cast.own, ...cast.shared]);
  const doubtful = !start || near || datum || (end && tooFar(start, end));
  const given = doubtful ? facts.inquiry.given({ topic: "position", cast: id, read: readPosition }) : null;
  const unsettled = near?.line ?? datum;
  if (!given && start && unsettled) {
    askPosition(start, unsettled);
    start = null;
  } else if (given) {
    start = { ...given.value, line: null, words: given.because };
    found.push(evidence("position", "answered", given.because, place(null)));
  } else if (start) {
    const because = start.line === null ? start.words : `line ${start.line} says "${start.words}"`;
    const certainty = signOnly(said) ? "implied" : "stated";
    for (const fact of ["latitude", "longitude"])
      found.push(evidence(fact, certainty, because, place(start.line)));
    found.push(
      evidence("geodeticDatum", "assumed", "satellite fixes are given on WGS 84", place(start.line)),
    );
  }
  const openSign = facts.inquiry.questions.some(
    ({ about, casts }) => about === "hemisphere" && casts.includes(id),
  );
  if (!start && !openSign) askPosition(null, null);
  const lateEnd = facts.inquiry.given({ topic: "endPosition", cast: id, read: readEnd });
  if (lateEnd)
    end = lateEnd.value === "none" ? null : { ...lateEnd.value, line: null, words: lateEnd.because };
  else if (start && end && tooFar(start, end)) {
    askEnd(start, end);
    end = null;
  }
  if (end && (end.line !== null || lateEnd))
    found.push(
      evidence(
        "endPosition",
        lateEnd ? "answered" : "stated",
        end.line === null ? end.words : `line ${end.line} says "${end.words}"`,
        place(end.line),
      ),
    );
  return { start: start && toPosition(start, "start"), end: end && toPosition(end, "end"), evidence: found };

  function toPosition(fix: Fix, role: "start" | "end"): Position {
    const satellites =
      said.satellites.find((each) => each.role === role) ??
      (role === "start" ? said.satellites.find((each) => each.role === "any") : undefined);
    const onLine = said.satellites.find(({ line }) => fix.line !== null && line.number === fix.line);
    const chosen = onLine ?? satellites;
    return {
      latitude: fix.latitude,
      longitude: fix.longitude,
      satellites: chosen?.satellites ?? null,
      quality: chosen?.quality ?? null,
    };
  }

  function fixOf(from: PositionFacts, role: "start" | "end"): Fix | null {
    const latitude = choose(from, "latitude", role);
    const longitude = choose(from, "longitude", role);
    if (latitude === "conflict" || longitude === "conflict") return null;
    if (!latitude || !longitude) return null;
    if (latitude.coordinate.degrees === 0 && longitude.coordinate.degrees === 0) return null;
    const north = signed(latitude);
    const east = signed(longitude);
    if (north === null || east === null) return null;
    const words =
      latitude.line === longitude.line ? latitude.line.text : `${latitude.line.text}; ${longitude.line.text}`;
    return { latitude: north, longitude: east, line: latitude.line.number, words };
  }

  function signed({ axis, coordinate, line }: CoordinateFact): number | null {
    if (coordinate.sign === null) return letterO(coordinate, line.number);
    if (coordinate.hemisphere === "none") {
      // "E/W: W" on a line of its own
      const side = sideOnItsOwn([...cast.own, ...cast.shared], axis);
      if (side === null) return letterO({ ...coordinate, sign: null }, line.number);
      if (side !== undefined) return side * coordinate.degrees;
    }
    if (axis === "longitude" && coordinate.hemisphere === "none" && zone !== null && zone !== 0) {
      // a local clock keeps near its longitude: 15 degrees an hour, a few hours off at most
      const expected = zone / 4;
      if (Math.abs(coordinate.degrees - expected) > 75 && Math.abs(-coordinate.degrees - expected) < 45)
        return askHemisphere(
          coordinate,
          line.number,
          `the time zone ${writeZone(zone)} lies on the other side of Greenwich`,
        );
    }
    return coordinate.sign * coordinate.degrees;
  }

  function letterO(coordinate: Coordinate, line: number): number | null {
    if (facts.letterO) {
      const { sign, words } = facts.letterO;
      const side = sign < 0 ? "west" : "east";
      found.push(
        evidence(
          "hemisphere",
          "implied",
          `the letter O is ${side} in the language of ${words
            .slice(0, 4)
            .map((word) => `"${word}"`)
            .join(", ")}`,
          place(line),
        ),
      );
      return sign * coordinate.degrees;
    }
    return askHemisphere(
      coordinate,
      line,
      "O is west in some languages (ouest, oeste) and east in others (Ost)",
    );
  }

  function askHemisphere(coordinate: Coordinate, line: number, why: string): number | null {
    const settled = facts.inquiry.settle({
      topic: "hemisphere",
      holds: [id],
      text: `Is the longitude "${coordinate.words}" east or west? ${why[0]!.toUpperCase()}${why.slice(1)}.`,
      line,
      candidates: ["west", "east"],
      read: (value) => (/^w(est)?$/i.test(value) ? -1 : /^e(ast)?$/i.test(value) ? 1 : null),
      form: "west or east",
    });
    if (!settled) return null;
    found.push(evidence("hemisphere", "answered", settled.because, place(line)));
    return settled.value * coordinate.degrees;
  }

  /** Whether no drift takes a boat from one fix to the other: 3 m/s, an hour where the end is not timed. */
  function tooFar(from: Fix, to: Fix): boolean {
    const seconds = when.endTime - when.time;
    return distance(from, to) > 1000 + 3 * (seconds > 0 ? seconds : 3600);
  }

  function askEnd(from: Fix, to: Fix): void {
    const kilometres = Math.round(distance(from, to) / 100) / 10;
    const mirrored = { ...to, longitude: -to.longitude };
    facts.inquiry.settle({
      topic: "endPosition",
      cast: id,
      holds: [id],
      text: `Start and end fix lie ${kilometres} km apart, more than a drifting boat makes. At what position did the cast end? If the start is wrong, answer position as well.`,
      ...(to.line === null ? {} : { line: to.line }),
      candidates: [...(tooFar(from, mirrored) ? [] : [writePosition(mirrored)]), writePosition(to), "none"],
      read: readEnd,
      form: 'latitude and longitude in decimal degrees, or "none"',
    });
  }

  function askPosition(near: Fix | null, nearLine: HeaderLine | null): void {
    const conflicting = ["latitude", "longitude"].some(
      (axis) => choose(said, axis as Axis, "start") === "conflict",
    );
    const line = nearLine ?? said.noFix ?? said.unordered ?? said.coordinates[0]?.line;
    const exchanged =
      near || nearLine ? null : (inRows?.exchanged ?? exchangedFix([...cast.own, ...cast.shared]));
    const candidate = near ?? exchanged;
    const text = exchanged
      ? `No latitude is ${exchanged.longitude}: are latitude and longitude exchanged? At what position was the cast made?`
      : nearLine
        ? datum
          ? `"${nearLine.text}" names another datum than WGS 84. At what position on WGS 84 was the cast made?`
          : `"${nearLine.text}" is given as approximate: at what position was the cast made, as well as you know?`
        : said.noFix
          ? `"${said.noFix.text}": at what position (latitude, longitude) was the cast made?`
          : said.unordered
            ? `Which of the numbers in "${said.unordered.text}" is the latitude? Give the position as latitude, longitude.`
            : conflicting
              ? "The header gives more than one position for the cast. Which is its start fix?"
              : "At what position (latitude, longitude) was the cast made? The file gives none.";
    facts.inquiry.settle({
      topic: "position",
      cast: id,
      holds: [id],
      text,
      ...(line ? { line: line.number } : {}),
      candidates: candidate ? [writePosition(candidate)] : [],
      ...(candidate ? {} : { example: "51.2000, -4.3000" }),
      read: readPosition,
      form: 'latitude and longitude in decimal degrees, such as "51.2000, -4.3000"',
    });
  }
}

/** A line whose value is a hemisphere and nothing else; null for the letter O, undefined if there is none. */
function sideOnItsOwn(lines: readonly HeaderLine[], axis: Axis): 1 | -1 | null | undefined {
  for (const { key, value } of lines) {
    if (key === null || !/^[A-Za-zÀ-ÿ]{1,6}$/.test(value)) continue;
    const [coordinate] = findCoordinates(`1 ${value.toUpperCase()}`);
    if (coordinate?.axis !== axis) continue;
    if (value.length > 1 || /hemi|direction|\bdir\b|[EWNS]\s*\/\s*[EWNS]|lat|lon/i.test(key))
      return coordinate.sign;
  }
  return undefined;
}

const signOnly = (said: PositionFacts) =>
  said.coordinates.some(({ coordinate }) => coordinate.hemisphere === "none");

/** The fact for an axis and a fix. Two different values without a role are a conflict. */
function choose(from: PositionFacts, axis: Axis, role: "start" | "end"): CoordinateFact | "conflict" | null {
  const ofAxis = from.coordinates.filter((fact) => fact.axis === axis);
  const exact = ofAxis.filter((fact) => fact.role === role);
  const fitting =
    exact.length > 0 ? exact : role === "start" ? ofAxis.filter((fact) => fact.role === "any") : [];
  const [first] = fitting;
  if (!first) return null;
  const same = (other: CoordinateFact) =>
    Math.abs(other.coordinate.degrees - first.coordinate.degrees) < 1e-4 &&
    other.coordinate.sign === first.coordinate.sign;
  return fitting.every(same) ? first : "conflict";
}

/** A line that names a geodetic datum that lies tens or hundreds of metres off WGS 84. */
const oldDatum = (lines: readonly HeaderLine[]): HeaderLine | null =>
  lines.find(({ text }) =>
    /(?<![A-Za-z])(?:ED ?(?:19)?50|NAD ?(?:19)?27|OSGB ?(?:19)?36|Tokyo datum|Pulkovo|DHDN|Potsdam|RT ?(?:19)?90|KKJ|NTF|Amersfoort|SAD ?(?:19)?69|AGD ?(?:19)?(?:66|84)|NZGD ?(?:19)?49|Datum 73|Monte Mario|Bessel)(?![A-Za-z\d])/i.test(
      text,
    ),
  ) ?? null;

const writePosition = ({ latitude, longitude }: Pick<Fix, "latitude" | "longitude">): string =>
  `${latitude.toFixed(5)}, ${longitude.toFixed(5)}`;

const readEnd = (text: string) => (text === "none" ? ("none" as const) : readPosition(text));

/** Metres between two positions on a sphere of 6371 km. */
function distance(a: Fix, b: Fix): number {
  const radians = (degrees: number) => (degrees * Math.PI) / 180;
  const half = (from: number, to: number) => Math.sin(radians(to - from) / 2) ** 2;
  const chord =
    half(a.latitude, b.latitude) +
    Math.cos(radians(a.latitude)) * Math.cos(radians(b.latitude)) * half(a.longitude, b.longitude);
  return 2 * 6_371_000 * Math.asin(Math.sqrt(Math.min(1, chord)));
}

/** Latitude and longitude of the header, where they can only be a position the other way round. */
function exchangedFix(lines: readonly HeaderLine[]) {
  const of = (axis: Axis) => {
    const line = lines.find(({ key, topics }) => key !== null && topics.has(axis) && !topics.has("end"));
    return line ? parseDecimal(line.value.replace(",", "."), { decimal: "." }) : NaN;
  };
  return exchange(of("latitude"), of("longitude"));
}

/** "51.2, -4.3" or with hemisphere letters N, S, E, W. */
export function readPosition(text: string): { readonly latitude: number; readonly longitude: number } | null {
  const plain = /^\s*([+-]?\d+(?:\.\d+)?)\s*[,; ]\s*([+-]?\d+(?:\.\d+)?)\s*$/.exec(text);
  if (plain) {
    const [latitude, longitude] = [parseNumber(plain[1]!), parseNumber(plain[2]!)];
    return Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180 ? { latitude, longitude } : null;
  }
  const found = findCoordinates(text);
  const latitude = found.find(({ axis }) => axis === "latitude");
  const longitude = found.find(({ axis }) => axis === "longitude");
  if (!latitude?.sign || !longitude?.sign || found.length !== 2) return null;
  return { latitude: latitude.sign * latitude.degrees, longitude: longitude.sign * longitude.degrees };
}
