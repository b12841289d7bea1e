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
import { type ByteSource, bytesOf, openText, whole } from "./encoding.ts";
import type { ExtraName } from "./extra-names.ts";
import { recognise } from "./recognise.ts";
import { understandOpenFormat } from "./understand-open-format.ts";

export interface UnderstandContext {
  /** SHA-256 of the bytes, 64 hexadecimal digits. */
  readonly sha256: string;
  /** Answers, those of who comes first in front; those for other files are passed over. */
  readonly answers: readonly Answer[];
  /** Names of quantities that the person's notes add to those known here. */
  readonly names?: readonly ExtraName[];
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
 * @param file  all its bytes; or access to them, by which a text export is read through a window of a megabyte. What
 *              is held of it then is what the casts hold: 9 bytes a number, 12 a row, and the cells of its text columns;
 *              looking for dips and for rows in air takes as much again while it lasts
 * @param path  its name, as products, evidence and answers call it
 * @returns     problems (codes understand/empty, understand/binary, understand/no-numbers, understand/too-large,
 *              understand/not-a-text-export, whp-exchange/…, wod-ascii/…, tesac-bathy/…, zip/…) where nothing can be read, and answers/… where an answer
 *              has the wrong form or fits nothing. Damage that did not stop the reading stands in `findings` and
 *              again in the warnings.
 */
export function understandFile(
  file: Uint8Array | ByteSource,
  path: string,
  context: UnderstandContext,
): Result<UnderstoodFile> {
  const source = file instanceof Uint8Array ? whole(file) : file;
  if (source.size > LARGEST_FILE)
    return fail({
      code: "understand/too-large",
      message: `${path} has ${source.size} bytes, more than the ${LARGEST_FILE} that are read`,
      where: { file: path },
      remedy: "Split the file.",
    });
  const top = bytesOf(source, 0, Math.min(source.size, TOP));
  const recognised = recognise(top, path);
  if (recognised.kind === "other") return fail(recognised.problem);
  const own = ofThisKind(top, context);
  if (recognised.kind === "text") return readDelimitedText(source, path, own);
  return understandOpenFormat(READERS[recognised.kind], bytesOf(source, 0, source.size), path, own);
}

/** Lines are found again by 32-bit offsets. */
const LARGEST_FILE = 2 ** 32 - 1;

/** Bytes at the top of a file in which the words are looked for that tell its kind. */
const TOP = 1 << 16;

/** What of the answers and names is for files of this kind. */
function ofThisKind(top: Uint8Array, context: UnderstandContext): UnderstandContext {
  const { answers, names = [] } = context;
  if (![...answers, ...names].some(({ filesWith }) => filesWith !== undefined)) return context;
  const { bytes } = openText(top);
  const text = bytes.decode(0, bytes.size);
  const isFor = ({ filesWith }: { readonly filesWith?: string }) =>
    filesWith === undefined || text.includes(filesWith);
  return { ...context, answers: answers.filter(isFor), names: names.filter(isFor) };
}

/** Whether problems lie in the answers and not in the file: wrong usage (exit 2), not an unreadable file (exit 3). */
export const concernsAnswers = (problem: Problem): boolean => problem.code.startsWith("answers/");
