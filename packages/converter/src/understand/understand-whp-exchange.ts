import { fail, type Result, succeed } from "@wherry/core";
import { type Answer, readWhpExchange, type UnderstoodFile } from "@wherry/formats";
import { stemOf } from "./cast-ids.ts";
import { Inquiry, oneOf } from "./inquiry.ts";
import { readUtc } from "./utc-text.ts";

/** Reads a WHP-Exchange CTD file and settles its open facts from the answers. */
export function understandWhpExchange(
  bytes: Uint8Array,
  path: string,
  { sha256, answers }: { readonly sha256: string; readonly answers: readonly Answer[] },
): Result<UnderstoodFile> {
  const id = stemOf(path);
  const inquiry = new Inquiry(path, answers);
  const read = readWhpExchange(bytes, path, { sha256, id });
  if (!read.ok) return read;
  const file = read.value;
  const casts = file.casts.map((cast) => {
    let { time, timeRole, endTime } = cast;
    const found = [...cast.evidence];
    const say = (fact: string, because: string) =>
      found.push({ fact, certainty: "answered" as const, because, where: { file: path } });
    if (Number.isNaN(time)) {
      const question = file.questions.find(({ about }) => about === "time");
      const settled = inquiry.settle({
        topic: "time",
        cast: cast.id,
        holds: [cast.id],
        text: question?.text ?? "",
        ...(question?.where.line === undefined ? {} : { line: question.where.line }),
        candidates: [],
        example: "2024-05-20T09:00:00Z",
        read: readUtc,
        form: "a time in UTC such as 2024-05-20T09:00:00Z",
      });
      if (settled) {
        time = settled.value;
        timeRole = "start";
        say("time", settled.because);
      }
      return { ...cast, time, timeRole, evidence: found };
    }
    const question = file.questions.find(({ about }) => about === "timeRole");
    const settled = inquiry.settle({
      topic: "timeRole",
      holds: [cast.id],
      text: question?.text ?? "",
      ...(question?.where.line === undefined ? {} : { line: question.where.line }),
      candidates: question?.candidates ?? [],
      read: oneOf("start", "bottom", "end"),
      form: "start, bottom or end",
    });
    if (settled) {
      timeRole = settled.value;
      if (timeRole === "end") endTime = time;
      say("timeRole", settled.because);
    }
    return { ...cast, timeRole, endTime, evidence: found };
  });
  const [first, ...others] = inquiry.problems(casts.map((cast) => cast.id));
  if (first) return fail(first, ...others);
  const findings = [...file.findings, ...inquiry.unused()];
  return succeed({ ...file, casts, questions: inquiry.questions, findings }, [
    ...read.warnings,
    ...inquiry.unused(),
  ]);
}
