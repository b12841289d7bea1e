import type { Cast, Evidence } from "@wherry/core";
import type { Asking } from "../asking.ts";
import { settlePosition, settleTime } from "../settle-cast.ts";

/** Asks for the time and the place of casts whose file has neither; what is answered is put in. */
export const askMissing = (casts: readonly Cast[], asking: Asking): readonly Cast[] =>
  casts.map((cast) => withPosition(withTime(cast, asking), asking));

function withTime(cast: Cast, asking: Asking): Cast {
  if (!Number.isNaN(cast.time) || cast.rows === 0) return cast;
  const answer = settleTime(asking, {
    id: cast.id,
    text: `The file gives no time for ${cast.id}. When did it start?`,
  });
  if (!answer) return cast;
  const said = answered(cast, "time", answer.because);
  return { ...cast, time: answer.value, timeRole: "start", evidence: [...cast.evidence, said] };
}

function withPosition(cast: Cast, asking: Asking): Cast {
  if (cast.start !== null || cast.rows === 0) return cast;
  const answer = settlePosition(asking, {
    id: cast.id,
    text: `The file gives no position for ${cast.id}. Where was it?`,
  });
  if (!answer) return cast;
  const start = { ...answer.value, satellites: null, quality: null };
  return { ...cast, start, evidence: [...cast.evidence, answered(cast, "position", answer.because)] };
}

const answered = (cast: Cast, fact: string, because: string): Evidence => ({
  fact,
  certainty: "answered",
  because,
  where: { file: cast.source.path },
});
