import { readFile } from "node:fs/promises";
import { fail, type Result, succeed } from "@wherry/core";
import { isIoError, problemFromIo } from "./problem-from-io.ts";

/** Line and column, from 1, of the place that the JSON parser names; nothing if it names none. */
function placeInText(text: string, message: string): { line?: number; column?: number } {
  const named = /line (\d+) column (\d+)/.exec(message);
  if (named) return { line: Number.parseInt(named[1]!, 10), column: Number.parseInt(named[2]!, 10) };
  const position = /position (\d+)/.exec(message)?.[1];
  const at =
    position === undefined
      ? /end of JSON/.test(message)
        ? text.length
        : null
      : Number.parseInt(position, 10);
  if (at === null) return {};
  const before = text.slice(0, at).split("\n");
  return { line: before.length, column: (before.at(-1) ?? "").length + 1 };
}

/** A JSON document of a person's; what is wrong with it is told with its line and column. */
export async function readJson(path: string): Promise<Result<unknown>> {
  let text: string;
  try {
    text = (await readFile(path, "utf8")).replace(/^\uFEFF/, "");
  } catch (error) {
    if (!isIoError(error)) throw error;
    return fail(problemFromIo(error, path));
  }
  try {
    return succeed(JSON.parse(text) as unknown);
  } catch (error) {
    const message = error instanceof Error ? error.message : "";
    return fail({
      code: "json/form",
      message: `the document is no JSON: ${message}`,
      where: { file: path, ...placeInText(text, message) },
      remedy: "Correct the JSON at this place.",
    });
  }
}
