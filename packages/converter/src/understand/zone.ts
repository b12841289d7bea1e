import { AMBIGUOUS_ZONES, ZONES } from "./vocabulary/zones.ts";
import { plainWords } from "./words.ts";

/** An offset from UTC as written. */
export interface ZoneReading {
  /** Minutes east of UTC that fit; one element if it is clear. */
  readonly minutes: readonly number[];
  /** The words that say so. */
  readonly words: string;
  /** Other words of the line leave open whether it is the clock's: "local time, UTC is two hours less". */
  readonly doubtful?: boolean;
}

const OFFSET = String.raw`[+\-−–]\s?\d{1,2}(?:[:.]?[0-5]\d)?\s?h?`;
// "UTC-3.5" and "UTC-3x" are no UTC
const ALONE = String.raw`(?![A-Za-z\d]|[+\-−–]\d|\s?[+\-−–]\s?\d{1,2}[.,]\d)`;
const PREFIX = "UTC|GMT|UT|TU|Z";
const ABBREVIATIONS = [...Object.keys(ZONES), ...Object.keys(AMBIGUOUS_ZONES)]
  .sort((a, b) => b.length - a.length)
  .join("|");

/** Directly after a time of day: "Z", "+02:00", " UTC+2", " (MESZ)". Sticky. A bare "+02" must not stand apart. */
const AFTER_TIME = new RegExp(
  String.raw`\s*(?:Uhr|uhr|hrs|h\b)?\s*[([]?\s*(?:(?:${PREFIX})\s?(?:${OFFSET})(?![\d.])|(?:${ABBREVIATIONS})${ALONE}|[+\-−]\d{2}:[0-5]\d(?![\d.:]))\s*[)\]]?|[+\-−]\d{2}(?:[0-5]\d)?(?![\d.:])`,
  "y",
);

// letters and words that among other words mean something else: depth z, the winds, sea surface temperature
const AMONG = ABBREVIATIONS.split("|")
  .filter((name) => !["Z", "WEST", "WET", "EST", "SST"].includes(name))
  .join("|");
/** Anywhere among words: needs "UTC" or an abbreviation in capitals. */
const AMONG_WORDS = new RegExp(
  String.raw`(?<![A-Za-z])(?:(?:UTC|GMT|UT|TU)\s?${OFFSET}(?!\d)|(?:${AMONG})${ALONE})`,
);
const FORMULA = /\bUTC\s*=\s*(?:local|LT|lokal)\w*(?:\s+time)?\s*([+\-−])\s*(\d{1,2})(?::(\d{2}))?/i;

/** Zone that follows a time of day at `at`; null if none does. */
export function zoneAfter(text: string, at: number): (ZoneReading & { readonly end: number }) | null {
  AFTER_TIME.lastIndex = at;
  const match = AFTER_TIME.exec(text);
  if (!match) return null;
  const reading = readZone(match[0].replace(/^\s*(?:Uhr|hrs|h)\b/i, ""));
  return reading && { ...reading, end: at + match[0].length };
}

/** First zone that stands among the words of a line. */
export function zoneAmong(text: string): ZoneReading | null {
  const formula = FORMULA.exec(text);
  if (formula) {
    const [words, sign, hours = "0", minutes = "0"] = formula;
    const size = toInteger(hours) * 60 + toInteger(minutes);
    return size > 15 * 60 ? null : { minutes: [sign === "+" ? -size : size], words };
  }
  const relative = RELATIVE.exec(text);
  if (relative) {
    const [words, hours = "0", minutes = "0", side = ""] = relative;
    const size = toInteger(hours) * 60 + toInteger(minutes);
    if (size <= 15 * 60) return { minutes: [side.toLowerCase() === "behind" ? -size : size], words };
  }
  const match = AMONG_WORDS.exec(text);
  const reading = match && readZone(match[0]);
  if (!match || !reading) return null;
  // the tz database counts Etc/GMT+2 westward
  if (/Etc\/$/i.test(text.slice(0, match.index)))
    return { ...reading, minutes: reading.minutes.map((minutes) => -minutes) };
  const around = ` ${plainWords(text.slice(0, match.index))} | ${plainWords(text.slice(match.index + match[0].length))} `;
  const bare = /^(?:UTC|GMT|UT|TU)$/i.test(match[0]);
  const doubtful =
    UNSURE.test(around) ||
    (bare && APART.test(around)) ||
    winterInSummer(reading, around) ||
    /^\s*[([]?\?/.test(text.slice(match.index + match[0].length));
  return doubtful ? { ...reading, doubtful } : reading;
}

/** "2 h ahead of UTC" */
const RELATIVE =
  /(?<![\d.,])(\d{1,2})(?::(\d{2}))?\s*(?:h|hrs?|hours?)\s+(ahead|behind|before)\s+(?:of\s+)?(?:UTC|GMT|UT)(?![A-Za-z])/i;
const UNSURE =
  / (?:not|no|never|probably|presumably|perhaps|maybe|likely|supposedly|unsure|uncertain|assumed|nicht|kein|keine|wahrscheinlich|vermutlich|vielleicht|pas|non|probablement|peut etre|sin|probablemente|quizas|tal vez|nao|provavelmente|talvez|forse|probabilmente|niet|waarschijnlijk|misschien|ikke|inte|ej|sandsynligvis|sannsynligvis|sannolikt|kanske|kanskje|ei|ekki|luultavasti|liklega) /;
/** Whether words beside the name of a winter time say that summer time is in force. */
export const winterInSummer = ({ minutes, words }: ZoneReading, around: string): boolean =>
  minutes[0] !== 0 && !SUMMER_ZONE.test(words) && SUMMER.test(` ${plainWords(around)} `);

const SUMMER =
  / (?:dst|daylight|summer time|sommerzeit|heure d ete|ete|verano|verao|ora legale|estiva|zomertijd|sommertid|sommartid|kesaaika) /;
const SUMMER_ZONE = /^(?:CEST|MESZ|EEST|OESZ|WEST|HAEC|BST|IST|\w+DT)$|[+\-−–]/;
const APART =
  / (?:local|lokal|locale|ortszeit|lokalzeit|hours?|stunden?|heures?|horas?|ore|uur|uren|timer|timmar|minus|plus|less|more|behind|ahead|difference|differenz) /;

/**
 * A zone that stands alone: "UTC+2", "+02:00", "CEST". A bare number ("-7") is read as hours only where
 * `bareHours` says that the words around it call it an offset from UTC.
 */
export function readZone(text: string, bareHours = false): ZoneReading | null {
  const words = text.trim().replace(/^[([]\s*|\s*[)\]]$/g, "");
  const bare = words.replace(/[−–]/g, "-");
  const named = bare.toUpperCase();
  if (Object.hasOwn(ZONES, named)) return { minutes: [ZONES[named]!], words };
  if (Object.hasOwn(AMBIGUOUS_ZONES, named)) return { minutes: AMBIGUOUS_ZONES[named]!, words };
  const match = /^(UTC|GMT|UT|TU|Z)?\s*([+-])?\s*(\d{1,2})(?:[:.]?([0-5]\d))?\s*(?:h|hours?)?$/i.exec(bare);
  if (!match) return null;
  const [, prefix, sign, hours = "", minutes] = match;
  if (!sign && prefix && prefix.toUpperCase() !== "Z") return null;
  if (!prefix && !bareHours && !(sign && (minutes !== undefined || hours.length === 2))) return null;
  const size = toInteger(hours) * 60 + toInteger(minutes ?? "0");
  if (size > 14 * 60) return null;
  return { minutes: [sign === "-" ? -size : size], words };
}

/** "+02:00" for 120. */
export function writeZone(minutes: number): string {
  const size = Math.abs(minutes);
  const two = (n: number) => String(n).padStart(2, "0");
  return `${minutes < 0 ? "-" : "+"}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}

/** Digits to a number; the caller has made sure that there are only digits. */
export function toInteger(digits: string): number {
  let value = 0;
  for (const digit of digits) value = value * 10 + (digit.charCodeAt(0) - 48);
  return value;
}
