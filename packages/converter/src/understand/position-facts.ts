import { findMoments } from "./clock.ts";
import type { HeaderLine } from "./header-lines.ts";
import { type Axis, type Coordinate, findCoordinates } from "./position.ts";
import { isApproximate } from "./reservations.ts";
import { headerTopics } from "./vocabulary/header-words.ts";
import { plainWords, wordsOf } from "./words.ts";
import { toInteger } from "./zone.ts";

/** A latitude or longitude in the header and which fix it belongs to. */
export interface CoordinateFact {
  readonly axis: Axis;
  readonly role: "start" | "end" | "any";
  readonly coordinate: Coordinate;
  readonly line: HeaderLine;
  /** "about 51.2 N" */
  readonly approximate: boolean;
}

export interface SatelliteFact {
  readonly role: "start" | "end" | "any";
  readonly satellites: number | null;
  readonly quality: string | null;
  readonly line: HeaderLine;
}

export interface PositionFacts {
  readonly coordinates: readonly CoordinateFact[];
  readonly satellites: readonly SatelliteFact[];
  /** Line that says there is no fix. */
  readonly noFix: HeaderLine | null;
  /** Two numbers after a word for position, in an order that nothing tells. */
  readonly unordered: HeaderLine | null;
}

const AXIS_WORD =
  /(?<![A-Za-zÀ-ÿ])(?:(lat(?:itude|itud|itudine|\.)?|breite(?:ngrad)?|breedte(?:graad)?|bredde(?:grad)?|leveys(?:aste)?|breidd(?:argr[aá][ðd]a)?)|(lon(?:g|gitude|gitud|gitudine|\.)?|lng|l(?:ä|ae)nge(?:ngrad)?|lengte(?:graad)?|l(?:e|æ|ae)ngde(?:grad)?|pituus(?:aste)?|lengd(?:argr[aá][ðd]a)?))(?![A-Za-zÀ-ÿ])/gi;
const NO_FIX =
  /\bno (?:fix|position|gps|satellites?)\b|\b(?:fix|position|gps)\s*[:=;,\t]?\s*(?:none|no|lost|unknown|n\/a|not recorded|-+)\s*$|\b(?:kein|keine) (?:fix|position)|\b(?:sans|pas de) (?:position|fix)|\bsin posici/i;

/** Everything that header lines say on positions. */
export function positionFacts(lines: readonly HeaderLine[]): PositionFacts {
  const coordinates: CoordinateFact[] = [];
  const satellites: SatelliteFact[] = [];
  let noFix: HeaderLine | null = null;
  let unordered: HeaderLine | null = null;
  for (const line of lines) {
    if (line.topics.has("elsewhere")) continue;
    const role = roleOf(line.tokens.length > 0 ? headerTopics(wordsOf(line.text).slice(0, 30)) : line.topics);
    if (NO_FIX.test(line.text)) noFix ??= line;
    satellites.push(...satellitesOf(line, role));
    const keyed = keyedCoordinates(line, role);
    if (keyed.found) {
      coordinates.push(...keyed.facts);
      continue;
    }
    const pair = pairOf(withoutTimes(line));
    if (pair === "unordered") unordered ??= line;
    else if (pair)
      for (const coordinate of pair)
        coordinates.push({ axis: coordinate.axis!, role, coordinate, line, approximate: isNear(line) });
  }
  return { coordinates, satellites, noFix, unordered };
}

/** Whether the words before the first figure, or those in brackets behind, call a position approximate. */
function isNear({ text }: HeaderLine): boolean {
  const figure = text.search(/\d/);
  const last = text.search(/\d\D*$/);
  return isApproximate(text.slice(0, figure), text.slice(last + 1));
}

/** Dates and times hold figures and letters (0909Z) that a position must not be read from. */
function withoutTimes(line: HeaderLine): HeaderLine {
  const blank = (text: string) =>
    findMoments(text).reduce(
      (rest, { start, end }) => rest.slice(0, start) + " ".repeat(end - start) + rest.slice(end),
      text,
    );
  return { ...line, text: blank(line.text), value: blank(line.value) };
}

function roleOf(topics: ReturnType<typeof headerTopics>): "start" | "end" | "any" {
  if (topics.has("end")) return "end";
  return topics.has("start") ? "start" : "any";
}

/** "Lat: 51.2  Lon: -4.3", "lat_end = …", "Lat/Lon: 51.2, -4.3". */
function keyedCoordinates(
  line: HeaderLine,
  lineRole: CoordinateFact["role"],
): { readonly found: boolean; readonly facts: readonly CoordinateFact[] } {
  const text = line.text.replace(/_/g, " ");
  const words = [...text.matchAll(AXIS_WORD)];
  const facts: CoordinateFact[] = [];
  let waiting: Axis[] = [];
  for (const [i, match] of words.entries()) {
    waiting.push(match[1] !== undefined ? "latitude" : "longitude");
    const stop = words[i + 1]?.index ?? text.length;
    const behind = text.slice(match.index + match[0].length, stop);
    const near = plainWords(`${text.slice(0, match.index).slice(-16)} ${behind.slice(0, 14)}`);
    const role = roleOf(headerTopics(near.split(" ")));
    const value = behind.replace(/^[^\d+\-−–]*?(?=(?:[NSEWO]\s*)?[+\-−–]?\s?\d)/, "");
    const hint = waiting.length === 1 ? waiting[0]! : null;
    const found = findCoordinates(value, hint);
    if (found.length === 0) continue;
    for (const [k, axis] of waiting.entries()) {
      const coordinate = found[k];
      if (!coordinate || (coordinate.axis !== null && coordinate.axis !== axis)) continue;
      if (coordinate.degrees > (axis === "latitude" ? 90 : 180)) continue;
      facts.push({
        axis,
        role: role === "any" ? lineRole : role,
        coordinate: westInHead(coordinate, axis, match[0], behind),
        line,
        approximate: isNear(line),
      });
    }
    waiting = [];
  }
  return { found: facts.length > 0, facts };
}

/** "Longitude W: 4.3": the letter stands with the word. */
function westInHead(coordinate: Coordinate, axis: Axis, _word: string, behind: string): Coordinate {
  if (coordinate.hemisphere !== "none") return coordinate;
  const letter = /^\s*[([]?\s*(?:deg(?:rees)?|°)?\s*([NSEWO]|west|east|south|north)\b/i.exec(behind)?.[1];
  if (!letter) return coordinate;
  const first = letter[0]!.toUpperCase();
  if (axis === "latitude" ? !"NS".includes(first) : !"EWO".includes(first)) return coordinate;
  return {
    ...coordinate,
    hemisphere: first === "O" ? "letter O" : "letter",
    sign: first === "O" ? null : "SW".includes(first) ? -1 : 1,
  };
}

/** A latitude and a longitude on one line, known by their letters, or after a word for position. */
function pairOf(line: HeaderLine): readonly [Coordinate, Coordinate] | "unordered" | null {
  const text = line.topics.has("position") && line.key !== null ? line.value : line.text;
  const found = findCoordinates(text);
  const latitude = found.find(({ axis }) => axis === "latitude");
  const longitude = found.find(({ axis }) => axis === "longitude");
  if (latitude && longitude) return [latitude, longitude];
  if (!line.topics.has("position") || line.key === null) return null;
  const [first, second] = found;
  if (!first || !second || first.axis !== null || second.axis !== null) return null;
  // beyond 90 it can only be the longitude
  if (first.degrees <= 90 && second.degrees > 90)
    return [
      { ...first, axis: "latitude" },
      { ...second, axis: "longitude" },
    ];
  if (first.degrees > 90 && second.degrees <= 90)
    return [
      { ...second, axis: "latitude" },
      { ...first, axis: "longitude" },
    ];
  return first.degrees <= 90 ? "unordered" : null;
}

function satellitesOf(line: HeaderLine, role: CoordinateFact["role"]): readonly SatelliteFact[] {
  const inText =
    /(\d{1,2})\s*(?:satellites?|sats?\b|SV\b)|\b(?:satellites?(?:\s+used)?|n?sats?|satelliten|satelites|satellitter|satelliter|satelliti)\W{0,4}(?:=|:|;|,|\t|\s)\s*(\d{1,2})\b/i.exec(
      line.text,
    );
  const digits = inText?.[1] ?? inText?.[2];
  const quality = /\b(?:[23]D(?:\s+fix)?|(?:[HP]?DOP)\s*[:=]?\s*[\d.]+)/i.exec(line.text)?.[0] ?? null;
  if (digits === undefined && quality === null) return [];
  return [{ role, satellites: digits === undefined ? null : toInteger(digits), quality, line }];
}
