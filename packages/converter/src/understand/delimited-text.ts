import {
  type Cast,
  type Evidence,
  fail,
  type Problem,
  parseDecimal,
  type Result,
  succeed,
} from "@wherry/core";
import type { UnderstoodFile } from "@wherry/formats";
import { type Block, findBlocks } from "./blocks.ts";
import { buildColumns } from "./build-columns.ts";
import { castIds } from "./cast-ids.ts";
import { castPosition } from "./cast-position.ts";
import { castShape } from "./cast-shape.ts";
import { castTime } from "./cast-time.ts";
import type { Moment } from "./clock.ts";
import { decimalOf, guessDecimal } from "./decimal-sign.ts";
import { findLayout, type RowLayout } from "./delimiter.ts";
import { depthReference } from "./depth-reference.ts";
import { type ByteSource, openText } from "./encoding.ts";
import { allLines, evidence, type FileFacts, settleOrder } from "./file-facts.ts";
import { meaningOfO } from "./header-lines.ts";
import { Inquiry, oneOf } from "./inquiry.ts";
import { TextLines } from "./lines.ts";
import type { NumberStyleOfFile } from "./number-column.ts";
import { instrumentFacts, namedMissingMarkers } from "./other-facts.ts";
import { compareOwnDerived } from "./own-derived.ts";
import { askPressureInAir } from "./pressure-kind.ts";
import { headsOfBlock, markShared, type RawCast, rawCasts, shareLines } from "./raw-cast.ts";
import { tableOf } from "./read-table.ts";
import { splitDips } from "./split-dips.ts";
import { headerMoments } from "./time-facts.ts";
import type { UnderstandContext } from "./understand-file.ts";
import { languagesOfName } from "./vocabulary/quantity-words.ts";

/** More tables than this in one file are no casts; reading on would only take long. */
const MOST_BLOCKS = 1000;

/**
 * Understands a delimited or fixed-column text with a block of metadata lines.
 *
 * @returns the casts with evidence for each fact and questions for what is open; problems if the text holds no
 *          rows of numbers, or if an answer has the wrong form
 */
export function readDelimitedText(
  file: ByteSource,
  path: string,
  context: UnderstandContext,
): Result<UnderstoodFile> {
  const { bytes, encoding, because } = openText(file);
  const text = new TextLines(bytes);
  const layout = findLayout(bytes);
  const { blocks, below } = layout
    ? findBlocks(text, layout, guessDecimal(bytes, layout))
    : { blocks: [], below: [] };
  if (!layout || blocks.length === 0) return fail(isBlank(text) ? onlyBlank(path) : noNumbers(path));

  if (blocks.length > MOST_BLOCKS)
    return fail({
      code: "understand/too-many-tables",
      message: `${path} holds ${blocks.length} tables with words between them, more than a file of casts has`,
      where: { file: path, line: (blocks[1]?.rowLines[0] ?? 0) + 1 },
      remedy: "Split the file, or export the casts with one table each.",
    });

  const inquiry = new Inquiry(path, context.answers);
  const reading = decimalOf(blocks, text, layout);
  const lines = shareLines(blocks, below);
  const everyLine = [...lines.shared, ...lines.own.flat()];
  const named = [...namedMissingMarkers(everyLine).map(({ value }) => value), ...answeredMarkers(inquiry)];
  const style: NumberStyleOfFile = {
    decimal: reading.decimal,
    named: named.map((text) => ({ text, value: parseDecimal(text, { decimal: reading.decimal }) })),
  };
  const person = { inquiry, names: context.names ?? [] };
  const found: RawCast[] = [];
  for (const [i, block] of blocks.entries()) {
    const heads = headsOfBlock(block, layout);
    const own = { own: lines.own[i] ?? [], shared: lines.shared, texts: lines.texts[i] ?? [] };
    found.push(...rawCasts(block, tableOf(block, text, layout, style), heads, own, style, person));
  }
  const casts = markShared(found);
  const ids = castIds(casts, path);
  const facts = fileFacts(casts, ids, inquiry, path, context);
  const findings = damage(blocks, text, path);
  const fileEvidence = layoutEvidence(because, layout, path);
  if (reading.doubtful) askDecimal(inquiry, ids);
  const markers = new Set<string>(named);
  const dips = new Map<string, readonly string[]>();
  const built = casts.flatMap((cast, i) => {
    const whole = buildCast(cast, ids[i]!, facts, fileEvidence, findings, markers);
    const parts = splitDips(whole, cast, facts);
    dips.set(
      whole.id,
      parts.map(({ id }) => id),
    );
    return parts;
  });
  const problems = inquiry.problems([...ids, ...built.map(({ id }) => id)]);
  const [first, ...others] = problems;
  if (first) return fail(first, ...others);
  findings.push(...inquiry.unused());
  return succeed(
    {
      path,
      format: "delimited text",
      sha256: context.sha256,
      encoding,
      lineEnding: text.ending,
      delimiter: layout.delimiter,
      decimal: reading.decimal,
      missingMarkers: [...markers].filter((marker) => marker !== ""),
      casts: built,
      questions: inquiry.questions.map((question) => ({
        ...question,
        casts: question.casts.flatMap((id) => dips.get(id) ?? id),
      })),
      findings,
      answersUsed: inquiry.used,
    },
    findings,
  );
}

/** Marks of missing values in all columns that a person names, with blanks or commas between them. */
const answeredMarkers = (inquiry: Inquiry): readonly string[] =>
  inquiry.given({ topic: "missingMarker", read: (text) => text.split(/[,\s]+/).filter(Boolean) })?.value ??
  [];

function buildCast(
  cast: RawCast,
  id: string,
  facts: FileFacts,
  fileEvidence: readonly Evidence[],
  findings: Problem[],
  markers: Set<string>,
): Cast {
  const lines = allLines(cast);
  const when = castTime(cast, id, facts);
  const columns = buildColumns(cast, {
    id,
    facts,
    time: when.time,
    timeColumns: when.timeColumns,
    rowsTimed: when.elapsed !== null && when.unreadRows.length === 0,
  });
  findings.push(...columns.findings);
  for (const marker of columns.markers) markers.add(marker);
  const where = castPosition(cast, id, facts, when);
  const vertical = columns.columns.get("pressure") ?? columns.columns.get("depth") ?? null;
  const timed = [...when.timeColumns].length > 0;
  const shape = castShape({ id, lines, vertical, elapsed: when.elapsed, timed }, facts);
  const reference = depthReference(cast, columns.columns.get("depth") ?? null, shape.kind, id, facts);
  const instrument = instrumentFacts(lines);
  const about: Evidence[] = [];
  for (const [fact, stated] of Object.entries(instrument))
    if (stated)
      about.push(
        evidence(fact, "stated", `line ${stated.line.number} says "${stated.line.text}"`, {
          file: facts.path,
          line: stated.line.number,
        }),
      );
  if (when.unreadRows.length > 0 && when.unreadRows.length < cast.rows.length)
    findings.push(unreadTimes(cast, when.unreadRows, facts.path));
  const built: Cast = {
    id,
    kind: shape.kind,
    state: shape.state,
    rows: cast.rows.length,
    time: when.time,
    timeRole: when.timeRole,
    endTime: when.endTime,
    elapsed: when.elapsed,
    start: where.start,
    end: where.end,
    fixedDepth: shape.fixedDepth,
    instrument: {
      model: instrument.model?.value ?? null,
      serialNumber: instrument.serialNumber?.value ?? null,
      ratedPressure: instrument.ratedPressure?.value ?? null,
    },
    notes: cast.notes,
    columns: columns.columns,
    texts: columns.texts,
    timeColumns: columns.timeColumns,
    lines: cast.lines,
    source: { path: facts.path, sha256: facts.sha256 },
    evidence: [
      ...fileEvidence,
      ...when.evidence,
      ...where.evidence,
      ...columns.evidence,
      ...reference,
      ...shape.evidence,
      ...about,
    ],
    pressureOffset: NaN,
    segments: [],
    steps: [],
  };
  const asked = askPressureInAir(built, facts);
  const compared = compareOwnDerived(asked);
  findings.push(...compared.findings);
  return { ...asked, evidence: [...asked.evidence, ...compared.evidence] };
}

function fileFacts(
  casts: readonly RawCast[],
  ids: readonly string[],
  inquiry: Inquiry,
  path: string,
  { sha256, names = [] }: UnderstandContext,
): FileFacts {
  const heads = casts.flatMap(({ columns }) =>
    columns.map(({ head }) => [head.name, ...languagesOfName(head.name)]),
  );
  const lines = [...new Set(casts.flatMap((cast) => allLines(cast)))];
  const language = inquiry.given({ topic: "language", read: (value) => value.toLowerCase() });
  const letterO = language
    ? meaningOfO([], [[`${language.value} (${language.because})`, language.value]])
    : meaningOfO(lines, heads);
  const moments: Moment[] = headerMoments(lines).map(({ moment }) => moment);
  for (const cast of casts) {
    for (const column of cast.columns) {
      // rows of one day share their dates
      let last: Moment["dates"] | null = null;
      for (const moment of column.moments ?? []) {
        if (!moment || moment.dates === last) continue;
        last = moment.dates;
        moments.push(moment);
      }
    }
  }
  const texts = [
    ...lines.map(({ text, number }) => ({ text, line: number })),
    ...casts.flatMap(({ columns }) =>
      columns.map(({ head }) => ({ text: `${head.header} ${head.unitText ?? ""}` })),
    ),
  ];
  const order = settleOrder(moments, inquiry, path, ids, letterO?.sign === 1, texts);
  return { path, sha256, inquiry, names, letterO, ...order };
}

function isBlank(text: TextLines): boolean {
  while (text.add());
  for (let i = 0; i < text.count; i++) if (text.text(i).trim() !== "") return false;
  return true;
}

const onlyBlank = (file: string): Problem => ({
  code: "understand/empty",
  message: `${file} holds only blank lines`,
  where: { file },
  remedy: "Export the cast again from the instrument.",
});

const noNumbers = (file: string): Problem => ({
  code: "understand/no-numbers",
  message: `${file} holds no rows of numbers`,
  where: { file },
  remedy:
    "A cast needs at least two columns of numbers; see whether the export was cut off after its header.",
});

function layoutEvidence(because: string, layout: RowLayout, file: string): readonly Evidence[] {
  return [
    evidence("encoding", "implied", because, { file }),
    evidence("delimiter", "implied", layout.because, { file }),
  ];
}

function askDecimal(inquiry: Inquiry, casts: readonly string[]): void {
  inquiry.settle({
    topic: "decimalSign",
    holds: casts,
    text: "Is the comma in the numbers a decimal sign? Each has three digits behind it, so it could also group thousands.",
    candidates: ["comma"],
    read: oneOf("comma"),
    form: "comma",
  });
}

/** Rows that were kept out, with their lines. */
function damage(blocks: readonly Block[], text: TextLines, file: string): Problem[] {
  const findings: Problem[] = [];
  const short = blocks.flatMap(({ shortRows }) => shortRows).sort((a, b) => a - b);
  const [first] = short;
  if (first !== undefined)
    findings.push({
      code: "understand/row-width",
      message: `${short.length === 1 ? "a row has" : `${short.length} rows have`} too few or too many values and ${short.length === 1 ? "is" : "are"} kept out: line ${listed(short)}`,
      where: { file, line: first },
      remedy: "Look whether the record was damaged; all whole rows are kept.",
    });
  const cut = blocks.at(-1)?.cutRow ?? null;
  if (cut !== null)
    findings.push({
      code: "understand/cut-off",
      message: `the file ends in the middle of line ${cut}, which is kept out`,
      where: { file, line: cut },
      remedy:
        "Look whether the record was cut off, by a dead battery or a broken transfer; all whole rows are kept.",
    });
  if (text.bytes.trailingControls > 8)
    findings.push({
      code: "understand/trailing-bytes",
      message: `${text.bytes.trailingControls} NUL or Ctrl-Z characters stand at the end of the file`,
      where: { file },
      remedy: "The recorder may have been stopped while it wrote; compare the last rows with the instrument.",
    });
  return findings;
}

const listed = (lines: readonly number[]) =>
  lines.length <= 12 ? lines.join(", ") : `${lines.slice(0, 12).join(", ")} and ${lines.length - 12} more`;

function unreadTimes(cast: RawCast, rows: readonly number[], file: string): Problem {
  const lines = rows.map((row) => cast.lines[row] ?? 0);
  return {
    code: "understand/row-time",
    message: `the time of ${rows.length === 1 ? "a row" : `${rows.length} rows`} is missing or not a time: line ${listed(lines)}`,
    where: { file, line: lines[0] ?? 1 },
    remedy: "The rows are kept without a time of their own.",
  };
}
