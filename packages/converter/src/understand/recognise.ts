import type { Problem } from "@wherry/core";
import { recogniseTesacBathy, recogniseWodAscii, recogniseZip } from "@wherry/formats";

/** What a file is by its first bytes. */
export type Recognised =
  | { readonly kind: "text" }
  | { readonly kind: "whp-exchange-ctd" | "zip" | "wod-ascii" | "tesac-bathy" }
  | { readonly kind: "other"; readonly problem: Problem };

const text = (bytes: Uint8Array, length: number, from = 0) =>
  String.fromCharCode(...bytes.subarray(from, from + length));

interface Signature {
  readonly name: string;
  readonly remedy: string;
  matches(bytes: Uint8Array): boolean;
}

const begins =
  (...starts: readonly string[]) =>
  (bytes: Uint8Array) =>
    starts.some((start) => text(bytes, start.length) === start);

const CHECK = "Use `wherry check` to judge it; raw text exports are what is understood here.";

/** Signatures from the format documents; order matters only where one contains another. */
const SIGNATURES: readonly Signature[] = [
  { name: "a netCDF file", remedy: CHECK, matches: begins("CDF\x01", "CDF\x02", "CDF\x05") },
  { name: "a netCDF-4 or HDF5 file", remedy: CHECK, matches: begins("\x89HDF\r\n\x1a\n") },
  { name: "a gzip file", remedy: "Unpack it first.", matches: begins("\x1f\x8b") },
  {
    name: "a BUFR message",
    remedy: "BUFR is not read; ask for the data in another form.",
    matches: begins("BUFR"),
  },
  {
    name: "a PDF document",
    remedy: "Export the data as text.",
    matches: begins("%PDF-"),
  },
  {
    name: "a WHP-Exchange bottle file",
    remedy: "Bottle data are not casts of a CTD; use the CTD file of the station.",
    matches: begins("BOTTLE"),
  },
  {
    name: "an older WOCE fixed-width CTD file",
    remedy: "It holds neither position nor time of day; ask for the WHP-Exchange form of the cast.",
    matches: (bytes) => /^EXPOCODE .*WHP-?ID/.test(text(bytes, 200)),
  },
];

/** Judges a file by its first bytes. Anything that is not recognised is taken for text. */
export function recognise(bytes: Uint8Array, file: string): Recognised {
  if (bytes.length === 0)
    return other("understand/empty", `${file} is empty`, file, "Export the cast again from the instrument.");
  if (text(bytes, 3) === "CTD" && /^CTD\s*[,\r\n]/.test(text(bytes, 8))) return { kind: "whp-exchange-ctd" };
  if (recogniseZip(bytes)) return { kind: "zip" };
  if (recogniseWodAscii(bytes)) return { kind: "wod-ascii" };
  if (recogniseTesacBathy(bytes)) return { kind: "tesac-bathy" };
  const found = SIGNATURES.find((signature) => signature.matches(bytes));
  if (found)
    return other(
      "understand/not-a-text-export",
      `${file} is ${found.name}, not a text export`,
      file,
      found.remedy,
    );
  if (isBinary(bytes))
    return other(
      "understand/binary",
      `${file} holds binary data, not text`,
      file,
      "Export the cast as text from the program that made this file.",
    );
  return { kind: "text" };
}

function other(code: string, message: string, file: string, remedy: string): Recognised {
  return { kind: "other", problem: { code, message, where: { file }, remedy } };
}

/** Control characters that no text has, more than one in a hundred of the first 64 KiB. */
function isBinary(bytes: Uint8Array): boolean {
  if ((bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff)) return false;
  let end = bytes.length;
  while (end > 0 && (bytes[end - 1] === 0 || bytes[end - 1] === 0x1a)) end--;
  if (end === 0) return true;
  const length = Math.min(end, 65_536);
  let controls = 0;
  let evenNuls = 0;
  let oddNuls = 0;
  for (let i = 0; i < length; i++) {
    const byte = bytes[i]!;
    if (byte >= 32) continue;
    if (byte === 0 && i % 2 === 0) evenNuls++;
    if (byte === 0 && i % 2 === 1) oddNuls++;
    if (byte !== 9 && byte !== 10 && byte !== 12 && byte !== 13) controls++;
  }
  const utf16 = Math.max(evenNuls, oddNuls) > 0.45 * length && Math.min(evenNuls, oddNuls) < 0.03 * length;
  return !utf16 && controls > 0.01 * length;
}
