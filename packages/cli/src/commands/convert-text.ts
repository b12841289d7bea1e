import type { Converted } from "@wherry/survey";
import { harmless } from "../terminal.ts";

/** What a conversion did, as a person reads it: what was written, what was not, what to do next. */
export function convertText({
  out,
  files,
  casts,
  held,
  questions,
  findings,
  added,
  skipped,
}: Converted): string {
  const lines: string[] = [];
  const list = (title: string, items: readonly string[]) => {
    if (items.length > 0) lines.push(title, ...items.map((item) => `  ${harmless(item)}`));
  };
  list(
    "Found in the sources; whole rows were kept:",
    findings.map(({ message, where: { file, line } }) =>
      file === undefined || message.includes(file)
        ? message
        : `${file}${line === undefined ? "" : `:${line}`}: ${message}`,
    ),
  );
  list("Casts that the sheet did not list; its copy in the result does:", added);
  list("Skipped, no exports by their kind:", skipped);
  list(
    "Held back until you answer:",
    held.map(({ id, questions: about }) => `${id} (${about.join(", ")})`),
  );
  list(
    "Add under answers: in the sheet, with your answer:",
    questions.flatMap(({ text, answerWith }) => [`# ${text}`, answerWith]),
  );
  if (files.length > 0) {
    lines.push(`Wrote ${casts} casts to ${out}:`, ...files.map((name) => `  ${name}`));
    lines.push(`Next: wherry check ${out}`);
  } else lines.push("Nothing was written.");
  return `${lines.join("\n")}\n`;
}
