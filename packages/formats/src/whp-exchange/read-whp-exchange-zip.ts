import { type Cast, fail, type Problem, type Result, succeed } from "@wherry/core";
import type { ReadContext, Recognition } from "../asking.ts";
import { fileStem } from "../file-stem.ts";
import type { Question, UnderstoodFile } from "../understood.ts";
import { unpack } from "../zip/unpack.ts";
import { readZipDirectory, type ZipMember } from "../zip/zip-directory.ts";
import { settleRoles, settleTimes } from "./read-settled.ts";
import { readWhpExchange } from "./read-whp-exchange.ts";

/** What is unpacked at the most: far more than any cruise holds, far less than fills a memory. */
const MOST_MEMBERS = 5000;
const LARGEST_MEMBER = 2 ** 26;
const LARGEST_TOTAL = 2 ** 29;

/** By the first bytes of a zip archive; whether its members are casts is seen in reading. */
export function recogniseZip(bytes: Uint8Array): Recognition | null {
  const [p, k, a, b] = bytes;
  const member = a === 3 && b === 4;
  const empty = a === 5 && b === 6;
  return p === 0x50 && k === 0x4b && (member || empty)
    ? { format: "zip archive", because: "it begins with the signature PK of a zip archive" }
    : null;
}

/**
 * Casts of a zip archive of WHP-Exchange CTD files (`*_ct1.zip`), one for each `*_ct1.csv` member.
 *
 * The archive must be flat: a member with a path is a problem of the whole archive. Other members are skipped with a
 * warning, a damaged member or one that breaks the format is a finding, and the other casts are read. Sizes are limited
 * before anything is unpacked, and checksums are compared.
 *
 * @source WHP-Exchange Format 1.2.1 (2024), CTD Specific: archives of CTD files
 */
export function readWhpExchangeZip(
  bytes: Uint8Array,
  path: string,
  { sha256, asking }: ReadContext,
): Result<UnderstoodFile> {
  const directory = readZipDirectory(bytes, path);
  if (!directory.ok) return directory;
  if (!directory.value.some(({ name }) => /_ct1\.csv$/i.test(name)))
    return fail(noCasts(path, directory.value));
  const refusal = refusalOf(directory.value, path);
  if (refusal) return fail(refusal);
  const wanted = directory.value.filter(({ name }) => /_ct1\.csv$/i.test(name));
  const others = directory.value.filter((member) => !wanted.includes(member));
  const warnings: Problem[] = others.map(({ name }) => ({
    code: "whp-exchange/other-member",
    message: `${name} is not a CTD file of the format (*_ct1.csv) and is skipped`,
    where: { file: `${path}/${name}` },
    remedy: "Nothing needs to be done if it is a note or a table of the cruise.",
  }));
  const findings: Problem[] = [];
  const casts: Cast[] = [];
  const questions: Question[] = [];
  const files: UnderstoodFile[] = [];
  const used = new Set<string>();
  for (const member of wanted) {
    const id = uniqueId(fileStem(member.name), used);
    const unpacked = unpack(bytes, member, path);
    const read = unpacked.ok
      ? readWhpExchange(unpacked.value, `${path}/${member.name}`, { sha256, id })
      : unpacked;
    if (!read.ok) {
      findings.push(...read.problems);
      continue;
    }
    warnings.push(...read.warnings.filter((warning) => !read.value.findings.includes(warning)));
    findings.push(...read.value.findings);
    questions.push(...read.value.questions);
    files.push(read.value);
    casts.push(...read.value.casts.map((cast) => ({ ...cast, source: { path, sha256 } })));
  }
  const [first, ...rest] = findings;
  if (casts.length === 0 && first) return fail(first, ...rest);
  const settled = settleRoles(settleTimes(casts, questions, asking), questions, asking);
  const endings = new Set(files.map(({ lineEnding }) => lineEnding));
  const encodings = new Set(files.map(({ encoding }) => encoding));
  return succeed(
    {
      path,
      format: `WHP-Exchange CTD, zip archive of ${wanted.length} ${wanted.length === 1 ? "cast" : "casts"}`,
      sha256,
      encoding: encodings.size === 1 ? [...encodings][0]! : null,
      lineEnding: endings.size === 1 ? [...endings][0]! : "mixed",
      delimiter: ",",
      decimal: ".",
      missingMarkers: ["-999"],
      casts: settled,
      questions: [],
      findings,
    },
    [...warnings, ...findings],
  );
}

/** Why an archive is not unpacked at all; null if it may be. */
function refusalOf(members: readonly ZipMember[], path: string): Problem | null {
  const problem = (code: string, message: string, remedy: string, name?: string): Problem => ({
    code: `zip/${code}`,
    message,
    where: { file: name === undefined ? path : `${path}/${name}` },
    remedy,
  });
  const withPath = members.find(({ name }) => /[/\\]|^[A-Za-z]:|^\.\.?$|\0/.test(name) || name === "");
  if (withPath)
    return problem(
      "path",
      `the archive holds "${withPath.name.replaceAll("\0", "?").slice(0, 100)}": an archive of casts is flat, without folders or paths`,
      "Pack the files again without folders.",
    );
  const names = members.map(({ name }) => name.toLowerCase());
  const twice = members.find(({ name }, i) => names.indexOf(name.toLowerCase()) !== i);
  if (twice)
    return problem("twice", `${twice.name} stands twice in the archive`, "Pack the files again.", twice.name);
  if (members.length > MOST_MEMBERS)
    return problem(
      "too-many",
      `the archive holds ${members.length} files, more than ${MOST_MEMBERS}`,
      "Divide it.",
    );
  const large = members.find(({ size }) => size > LARGEST_MEMBER);
  if (large)
    return problem(
      "too-large",
      `${large.name} would have ${large.size} bytes, more than the ${LARGEST_MEMBER} that are unpacked`,
      "No cast is so large. Get the archive from its origin.",
      large.name,
    );
  const total = members.reduce((sum, { size }) => sum + size, 0);
  if (total > LARGEST_TOTAL)
    return problem(
      "too-large",
      `the archive would have ${total} bytes, more than ${LARGEST_TOTAL}`,
      "Divide it.",
    );
  return null;
}

function noCasts(path: string, members: readonly ZipMember[]): Problem {
  const names = members.map(({ name }) => name);
  // the container of spreadsheets and documents, by their published package formats
  const isDocument = names.includes("[Content_Types].xml") || names[0] === "mimetype";
  const holds = names.length > 0 ? `it holds ${names.slice(0, 5).join(", ")}` : "it is empty";
  return {
    code: "understand/not-a-text-export",
    message: `${path} is a zip archive without WHP-Exchange CTD files (*_ct1.csv): ${holds}`,
    where: { file: path },
    remedy: isDocument
      ? "If it is a spreadsheet, save the table as CSV."
      : "Unpack it and name the files in it.",
  };
}

function uniqueId(wanted: string, used: Set<string>): string {
  let id = wanted;
  for (let n = 2; used.has(id); n++) id = `${wanted}-${n}`;
  used.add(id);
  return id;
}
