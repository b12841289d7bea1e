import { type HeaderLine, topicsOfLine } from "./header-lines.ts";
import { wordsOf } from "./words.ts";
import { toInteger } from "./zone.ts";

/** Words of a header that take something back: "approx.", "clock fast by 4 min". */

const APPROXIMATE = new Set(
  "approx approximate approximately about ca circa estimated roughly nominal nominally guess guessed environ env approximatif approximative ungefahr etwa geschatzt zirka aprox aproximado aproximada aproximadamente estimada estimado estimative stimata stimato approssimativo approssimativa ongeveer geschat omkring cirka ungefar uppskattad omtrent anslatt anslaet noin arviolta arvioitu aaetlad".split(
    " ",
  ),
);

/** Whether words call what follows them, or what they follow in brackets, no more than near. */
export const isApproximate = (before: string, after: string): boolean =>
  wordsOf(before)
    .slice(-4)
    .some((word) => APPROXIMATE.has(word)) ||
  /[~≈]\s*$/.test(before) ||
  [...after.matchAll(/[([]([^)\]]*)/g)].some(([, inside = ""]) =>
    wordsOf(inside).some((word) => APPROXIMATE.has(word)),
  ) ||
  /^\s*(?:\?|\(\?\))/.test(after);

export interface ClockError {
  readonly line: HeaderLine;
  /** Seconds to add to the clock's times; both signs where the words do not tell. */
  readonly corrections: readonly number[];
}

const FAST =
  /\b(?:fast|ahead|gain(?:s|ed|ing)?|vor(?:gegangen)?|avance|avanzad[oa]|adelantad[oa]|adiantad[oa]|avanti|voor|foran|fort|fore|edella)\b/;
const SLOW =
  /\b(?:slow|behind|los(?:es|t|ing)|late|nach(?:gegangen)?|retard|atrasad[oa]|retrasad[oa]|indietro|ritardo|achter|bagud|bagefter|etter|efter|sakte|jaljessa)\b/;
const UNSIGNED =
  /\b(?:error|drift(?:ed)?|off|wrong|fehler|abweichung|gangfehler|erreur|derive|deriva|errore|afwijking|fejl|feil|fel|virhe)\b/;
const DURATION =
  /(\d+(?:[.,]\d+)?)\s*(h|hrs?|hours?|heures?|horas?|ore|stunden?|std|min|mins|minutes?|minuten|minutos?|minuti|minuter|minutter|s|sec|secs|seconds?|secondes?|sek|sekunden|segundos?|secondi|seconden|sekunder)\b/gi;

/** A line that says that the clock was wrong, and by how much. */
export function clockError(lines: readonly HeaderLine[]): ClockError | null {
  for (const line of lines) {
    const topics = topicsOfLine(line);
    if (!topics.has("clock") && !(topics.has("time") && wordsOf(line.text).length <= 10)) continue;
    // a clock two hours ahead of UTC is of another zone, not wrong
    if (/(?<![A-Za-z])(?:UTC|GMT|local|lokal|locale|zone|Ortszeit)(?![A-Za-z])/i.test(line.text)) continue;
    const words = ` ${wordsOf(line.text).join(" ")} `;
    const sign = FAST.test(words) ? -1 : SLOW.test(words) ? 1 : UNSIGNED.test(words) ? 0 : null;
    if (sign === null) continue;
    const seconds = durationIn(line.text);
    if (!(seconds > 0)) continue;
    return { line, corrections: sign === 0 ? [-seconds, seconds] : [sign * seconds] };
  }
  return null;
}

/** Seconds of "4 min 12 s" or "00:04:12"; 0 if there is no duration. */
function durationIn(text: string): number {
  let seconds = 0;
  for (const [, number = "0", unit = "s"] of text.matchAll(DURATION)) {
    const [whole = "0", fraction = ""] = number.split(/[.,]/);
    const value = toInteger(whole) + (fraction === "" ? 0 : toInteger(fraction) / 10 ** fraction.length);
    seconds += value * (/^(?:h|st|or)/i.test(unit) ? 3600 : /^m/i.test(unit) ? 60 : 1);
  }
  if (seconds > 0) return seconds;
  const clock = /(?<!\d)(\d{1,2}):(\d{2})(?::(\d{2}))?(?!\d)/.exec(text);
  if (!clock) return 0;
  const [a, b, c] = [clock[1]!, clock[2]!, clock[3]].map((part) =>
    part === undefined ? NaN : toInteger(part),
  );
  return Number.isNaN(c) ? a! * 60 + b! : a! * 3600 + b! * 60 + c!;
}
