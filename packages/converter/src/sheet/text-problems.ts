import type { Problem } from "@wherry/core";
import { type Locate, nameOf, type SheetPath } from "./schema-problems.ts";

/** Control characters other than line feed and tab, halves of pairs, and code points that are no characters. */
const FORBIDDEN = /[^\P{Cc}\n\t]|\p{Cs}|\p{Noncharacter_Code_Point}/u;

/** Characters that turn the direction of what follows: honest in some languages, a way to show another name in others. */
const TURNING = /[\u202a-\u202e\u2066-\u2069]/u;

/**
 * Texts of a sheet that no record may have (XML 1.0, section 2.2; netCDF readers end at a NUL), and texts that may not
 * be what they look like.
 */
export function textProblems(
  sheet: unknown,
  locate: Locate,
): { readonly forbidden: Problem[]; readonly doubtful: Problem[] } {
  const forbidden: Problem[] = [];
  const doubtful: Problem[] = [];
  const visit = (value: unknown, path: SheetPath): void => {
    if (Array.isArray(value)) for (const [index, own] of value.entries()) visit(own, [...path, index]);
    else if (typeof value === "object" && value !== null)
      for (const [key, own] of Object.entries(value)) visit(own, [...path, key]);
    // a file is called what it is called
    else if (typeof value === "string" && !(path[0] === "casts" && path[2] === "file")) {
      const found = FORBIDDEN.exec(value)?.[0];
      if (found !== undefined)
        forbidden.push({
          code: "sheet/control-character",
          message: `${nameOf(path)} holds the character ${codePoint(found)}, which records for archives must not have`,
          where: locate(path, "value"),
          remedy: "Write the text again without it.",
        });
      else if (TURNING.test(value))
        doubtful.push({
          code: "sheet/direction",
          message: `${nameOf(path)} holds a character that turns the direction of the text (${codePoint(TURNING.exec(value)![0])}): it may not read as it is stored`,
          where: locate(path, "value"),
          remedy: "Remove it unless the language needs it.",
        });
    }
  };
  visit(sheet, []);
  return { forbidden, doubtful };
}

const codePoint = (text: string): string =>
  `U+${text.codePointAt(0)!.toString(16).toUpperCase().padStart(4, "0")}`;
