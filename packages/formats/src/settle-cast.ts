import { type Cast, parseIsoTime, parseNumber } from "@wherry/core";
import { type Answered, type Asking, oneOfWords } from "./asking.ts";

/** When a cast started, where its source leaves that open. */
export function settleTime(
  asking: Asking,
  cast: { readonly id: string; readonly text: string; readonly line?: number; readonly example?: string },
): Answered<number> | null {
  return asking.settle({
    topic: "time",
    cast: cast.id,
    holds: [cast.id],
    text: cast.text,
    ...(cast.line === undefined ? {} : { line: cast.line }),
    candidates: [],
    example: cast.example ?? "2024-05-20T09:00:00Z",
    read: readMoment,
    form: "a time in UTC such as 2024-05-20T09:00:00Z",
  });
}

function readMoment(text: string): number | null {
  const parsed = parseIsoTime(text.trim());
  return parsed.ok && parsed.value.zoneMinutes !== null ? parsed.value.epochSeconds : null;
}

/** Where a cast was, where its source leaves that open. */
export function settlePosition(
  asking: Asking,
  cast: { readonly id: string; readonly text: string; readonly line?: number },
): Answered<{ readonly latitude: number; readonly longitude: number }> | null {
  return asking.settle({
    topic: "position",
    cast: cast.id,
    holds: [cast.id],
    text: cast.text,
    ...(cast.line === undefined ? {} : { line: cast.line }),
    candidates: [],
    example: "51.2, -4.3",
    read: readPosition,
    form: "latitude and longitude in decimal degrees, as in 51.2, -4.3",
  });
}

function readPosition(text: string): { latitude: number; longitude: number } | null {
  const parts = text.split(",").map((part) => parseNumber(part.trim()));
  const [latitude = Number.NaN, longitude = Number.NaN] = parts;
  const valid = parts.length === 2 && Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180;
  return valid ? { latitude, longitude } : null;
}

/**
 * What the times of casts stand for, where the format does not say: asked once for the whole file, answered for all of
 * them or for one.
 */
export function settleTimeRoles(
  casts: readonly Cast[],
  asking: Asking,
  { text, line }: { readonly text: string; readonly line?: number },
): readonly Cast[] {
  const isOpen = (cast: Cast) => !Number.isNaN(cast.time) && cast.timeRole === "unknown";
  const matter = {
    topic: "timeRole" as const,
    text,
    ...(line === undefined ? {} : { line }),
    candidates: ["start", "bottom", "end"],
    read: oneOfWords("start", "bottom", "end"),
    form: "start, bottom or end",
  };
  const answers = new Map(
    casts.filter(isOpen).map((cast) => [cast, asking.given({ ...matter, cast: cast.id })] as const),
  );
  const open = [...answers].filter(([, answer]) => answer === null).map(([cast]) => cast.id);
  if (open.length > 0) asking.settle({ ...matter, holds: open });
  return casts.map((cast): Cast => {
    const answer = answers.get(cast);
    if (!answer) return cast;
    const said = {
      fact: "timeRole",
      certainty: "answered" as const,
      because: answer.because,
      where: { file: cast.source.path },
    };
    return {
      ...cast,
      timeRole: answer.value,
      endTime: answer.value === "end" ? cast.time : cast.endTime,
      evidence: [...cast.evidence, said],
    };
  });
}
