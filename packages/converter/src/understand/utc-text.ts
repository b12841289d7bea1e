import { secondsOf } from "./clock.ts";
import { toInteger } from "./zone.ts";

/** Epoch seconds as ISO 8601 UTC, to the millisecond where there is a fraction. */
export const writeUtc = (seconds: number): string =>
  new Date(Math.round(seconds * 1000)).toISOString().replace(/\.000Z$/, "Z");

/** "2024-05-20T09:00:00Z" or with an offset; a time without a zone is refused. */
export function readUtc(text: string): number | null {
  const match =
    /^(\d{4})-(\d\d)-(\d\d)[T ](\d\d):(\d\d)(?::(\d\d)(?:\.(\d{1,6}))?)?\s*(?:Z|UTC|([+-])(\d\d):?(\d\d))$/.exec(
      text,
    );
  if (!match) return null;
  const [y = 0, mo = 0, d = 0, h = 0, mi = 0, s = 0] = match
    .slice(1, 7)
    .map((part) => toInteger(part ?? "0"));
  if (mo < 1 || mo > 12 || d < 1 || d > 31 || h > 23 || mi > 59 || s > 60) return null;
  const fraction = match[7] ? toInteger(match[7]) / 10 ** match[7].length : 0;
  const offset =
    (toInteger(match[9] ?? "0") * 60 + toInteger(match[10] ?? "0")) * (match[8] === "-" ? -60 : 60);
  return secondsOf({ year: y, month: mo, day: d }, h * 3600 + mi * 60 + s + fraction) - offset;
}
