import { fail, type Problem, type Result } from "@wherry/core";
import {
  type Answer,
  readTesacBathy,
  readWhpExchangeFile,
  readWhpExchangeZip,
  readWodAscii,
  type UnderstoodFile,
} from "@wherry/formats";
import { readDelimitedText } from "./delimited-text.ts";
import { recognise } from "./recognise.ts";
import { understandOpenFormat } from "./understand-open-format.ts";

export interface UnderstandContext {
  /** SHA-256 of the bytes, 64 hexadecimal digits. */
  readonly sha256: string;
  /** Answers of the survey sheet and of notes; those for other files are passed over. */
  readonly answers: readonly Answer[];
}

const READERS = {
  "whp-exchange-ctd": readWhpExchangeFile,
  zip: readWhpExchangeZip,
  "wod-ascii": readWodAscii,
  "tesac-bathy": readTesacBathy,
} as const;

/**
 * What a file holds: its casts with the evidence for each fact, and questions for what is ambiguous.
 *
 * @param bytes the whole file
 * @param path  its name, as products, evidence and answers call it
 * @returns     problems (codes understand/empty, understand/binary, understand/no-numbers,
 *              understand/not-a-text-export, whp-exchange/…, wod-ascii/…, tesac-bathy/…, zip/…) where nothing can be read, and answers/… where an answer
 *              has the wrong form or fits nothing. Damage that did not stop the reading stands in `findings` and
 *              again in the warnings.
 */
export function understandFile(
  bytes: Uint8Array,
  path: string,
  context: UnderstandContext,
): Result<UnderstoodFile> {
  const recognised = recognise(bytes, path);
  if (recognised.kind === "other") return fail(recognised.problem);
  if (recognised.kind !== "text") return understandOpenFormat(READERS[recognised.kind], bytes, path, context);
  return readDelimitedText(bytes, path, context);
}

/** Whether problems lie in the answers and not in the file: wrong usage (exit 2), not an unreadable file (exit 3). */
export const concernsAnswers = (problem: Problem): boolean => problem.code.startsWith("answers/");
