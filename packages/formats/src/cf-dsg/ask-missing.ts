import { type Cast, type Evidence, temperatureFrom68Column } from "@wherry/core";
import { type Asking, oneOfWords } from "../asking.ts";
import { settlePosition, settleTime } from "../settle-cast.ts";
import { UNKNOWN_SCALE } from "./quantities.ts";

/** Asks for what the file of casts does not give: time, place, scale of old temperatures. Answers are put in. */
export const askMissing = (casts: readonly Cast[], asking: Asking): readonly Cast[] =>
  casts.map((cast) => withScale(withPosition(withTime(cast, asking), asking), asking));

const ITS_90 = Date.UTC(1990, 0, 1) / 1000;

/** Temperatures from before 1990 whose scale nothing tells. */
function withScale(cast: Cast, asking: Asking): Cast {
  const column = cast.columns.get("temperature");
  const isOpen = cast.evidence.some(
    ({ fact, because }) => fact === `column:${column?.source?.header}` && because.endsWith(UNKNOWN_SCALE),
  );
  if (!column || !isOpen || !(cast.time < ITS_90)) return cast;
  const answer = asking.settle({
    topic: "temperatureScale",
    holds: [cast.id],
    text: `On which scale is the temperature of ${new Date(cast.time * 1000).getUTCFullYear()}? The file does not say, and ITS-90 is of 1990.`,
    candidates: ["IPTS-68", "ITS-90", "unknown"],
    read: oneOfWords("IPTS-68", "ITS-90", "unknown"),
    form: "IPTS-68, ITS-90 or unknown",
  });
  if (!answer) return cast;
  const evidence = [...cast.evidence, answered(cast, "temperatureScale", answer.because)];
  if (answer.value !== "IPTS-68") return { ...cast, evidence };
  const values = new Float64Array(cast.rows);
  temperatureFrom68Column(column.values, values);
  return { ...cast, evidence, columns: new Map(cast.columns).set("temperature", { ...column, values }) };
}

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
