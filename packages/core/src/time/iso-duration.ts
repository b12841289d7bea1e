import { fail, type Result, succeed } from "../problem.ts";
import { parseNumber } from "../text/number.ts";

/**
 * A length of time as ISO 8601 text, such as PT1H30M, P2DT3H, PT0.5S.
 *
 * @param seconds 0 or more, finite; rounded to microseconds. A day counts 24 hours.
 * @throws        RangeError for anything else
 * @source        ISO 8601:2004, 4.4.3.2
 */
export function formatIsoDuration(seconds: number): string {
  if (!Number.isFinite(seconds) || seconds < 0) throw new RangeError(`no duration: ${seconds}`);
  let whole = Math.floor(seconds);
  let micro = Math.round((seconds - whole) * 1e6);
  if (micro === 1e6) [whole, micro] = [whole + 1, 0];
  const days = Math.floor(whole / 86400);
  const hours = Math.floor(whole / 3600) % 24;
  const minutes = Math.floor(whole / 60) % 60;
  const fraction = micro > 0 ? `.${String(micro).padStart(6, "0").replace(/0+$/, "")}` : "";
  const second = whole % 60;
  const clock = [
    hours > 0 ? `${hours}H` : "",
    minutes > 0 ? `${minutes}M` : "",
    second > 0 || fraction !== "" ? `${second}${fraction}S` : "",
  ].join("");
  if (days === 0 && clock === "") return "PT0S";
  return `P${days > 0 ? `${days}D` : ""}${clock === "" ? "" : `T${clock}`}`;
}

const DURATION =
  /^P(?:(?<w>\d+(?:[.,]\d+)?)W|(?:(?<y>\d+(?:[.,]\d+)?)Y)?(?:(?<mo>\d+(?:[.,]\d+)?)M)?(?:(?<d>\d+(?:[.,]\d+)?)D)?(?:T(?:(?<h>\d+(?:[.,]\d+)?)H)?(?:(?<m>\d+(?:[.,]\d+)?)M)?(?:(?<s>\d+(?:[.,]\d+)?)S)?)?)$/;

/**
 * Seconds of an ISO 8601 duration.
 *
 * @returns time/not-a-duration if the text is none; time/nominal-duration if it counts years or months, whose length
 *          is not fixed
 */
export function parseIsoDuration(text: string): Result<number> {
  const refuse = (code: string, message: string) => fail({ code: `time/${code}`, message, where: {} });
  const found = DURATION.exec(text)?.groups;
  const parts = Object.values(found ?? {}).filter((part) => part !== undefined);
  const decimalBeforeLast = parts.slice(0, -1).some((part) => /[.,]/.test(part));
  if (!found || parts.length === 0 || text.endsWith("T") || decimalBeforeLast)
    return refuse("not-a-duration", `"${text.slice(0, 60)}" is no duration of ISO 8601`);
  const part = (key: string) => parseNumber((found[key] ?? "0").replace(",", "."));
  if (part("y") > 0 || part("mo") > 0)
    return refuse("nominal-duration", `${text} counts years or months, which have no fixed length`);
  const days = part("w") * 7 + part("d");
  return succeed(days * 86400 + part("h") * 3600 + part("m") * 60 + part("s"));
}
