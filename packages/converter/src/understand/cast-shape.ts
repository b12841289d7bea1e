import { type Cast, type CastState, type Column, type Evidence, median } from "@wherry/core";
import { evidence, type FileFacts } from "./file-facts.ts";
import { type HeaderLine, topicsOfLine } from "./header-lines.ts";
import { extentOf } from "./number-column.ts";
import { lineAbout, sensorDepth } from "./other-facts.ts";

export interface CastShape {
  readonly kind: Cast["kind"];
  readonly fixedDepth: Cast["fixedDepth"];
  readonly state: CastState;
  readonly evidence: readonly Evidence[];
}

/** What the rows and the header tell about a cast's course. */
export interface ShapeInput {
  readonly id: string;
  readonly lines: readonly HeaderLine[];
  readonly vertical: Column | null;
  readonly elapsed: Float64Array | null;
  /** The source's rows have times, even if their zone or date is still open. */
  readonly timed: boolean;
}

/** Whether rows belong to a profile or to one depth, and what had been done to them before they came. */
export function castShape(input: ShapeInput, facts: FileFacts): CastShape {
  const found: Evidence[] = [];
  const place = (line?: number) => (line === undefined ? { file: facts.path } : { file: facts.path, line });
  const stated = sensorDepth(input.lines);
  const steady = input.vertical ? staysAtOneDepth(input.vertical.values, input.elapsed) : null;
  const series = lineAbout(input.lines, "series");
  const fixed = input.vertical ? steady !== null : input.timed && (stated !== null || series !== null);
  if (!fixed) {
    if (!input.vertical) askVertical();
    return { kind: "profile", fixedDepth: null, state: stateOf(input, found, place), evidence: found };
  }
  const because = input.vertical
    ? `${input.vertical.source?.header ?? "the vertical column"} stays within ${steady!.spread.toFixed(2)} of ${steady!.middle.toFixed(2)} in most rows`
    : stated
      ? `rows have times and no depth, and line ${stated.line.number} says "${stated.line.text}"`
      : `rows have times and no depth, and line ${series!.number} says "${series!.text}"`;
  found.push(evidence("kind", "implied", because, place(stated?.line.number ?? series?.number)));
  const state: CastState = { ...stateOf(input, found, place), direction: "unknown" };
  return { kind: "fixed-depth", fixedDepth: fixedDepth(), state, evidence: found };

  function fixedDepth(): Cast["fixedDepth"] {
    if (input.vertical && stated?.reference !== "surface") {
      found.push(
        evidence("fixedDepth", "implied", `the median of ${input.vertical.source?.header}`, place()),
      );
      return { depth: Math.round(steady!.middle * 100) / 100, reference: "sea surface" };
    }
    const depth =
      stated?.depth ??
      facts.inquiry.settle({
        topic: "fixedDepth",
        cast: input.id,
        holds: [input.id],
        text: "At what depth in m was the sensor held? The file gives no depth.",
        candidates: [],
        example: "1.0",
        read: (value) =>
          /^\d{1,4}(?:\.\d+)?$/.test(value) ? Math.round(toMetres(value) * 1000) / 1000 : null,
        form: "a depth in m such as 1.2",
      })?.value;
    if (depth === undefined) return null;
    if (stated)
      found.push(
        evidence(
          "fixedDepth",
          "stated",
          `line ${stated.line.number} says "${stated.line.text}"`,
          place(stated.line.number),
        ),
      );
    if (stated?.reference === "surface") {
      found.push(
        evidence(
          "verticalReference",
          "stated",
          `line ${stated.line.number} says "${stated.line.text}"`,
          place(stated.line.number),
        ),
      );
      return { depth, reference: "sea surface" };
    }
    const settled = facts.inquiry.settle({
      topic: "verticalReference",
      cast: input.id,
      holds: [input.id],
      text: `The sensor's depth is given as ${depth} m. From which vertical reference is it measured: the water surface, the deck or pier, a chart datum, or the bed?`,
      ...(stated ? { line: stated.line.number } : {}),
      candidates: ["surface", "deck", "chart datum", "bed"],
      read: (value) =>
        ["surface", "deck", "chart datum", "bed"].find((word) => word === value.toLowerCase()) ?? null,
      form: "surface, deck, chart datum or bed",
    });
    if (settled) found.push(evidence("verticalReference", "answered", settled.because, place()));
    return {
      depth,
      reference: settled ? (settled.value === "surface" ? "sea surface" : settled.value) : "unknown",
    };
  }

  function askVertical(): void {
    if (
      facts.inquiry.questions.some(
        ({ about, casts }) =>
          /^(?:quantity|units|pressureKind|verticalReference)/.test(about) && casts.includes(input.id),
      )
    )
      return;
    const given = facts.inquiry.given({ topic: "fixedDepth", cast: input.id, read: (value) => value });
    if (given) return;
    facts.inquiry.settle({
      topic: "quantity",
      cast: input.id,
      holds: [input.id],
      text: "No column is understood as pressure or depth. Which one is it?",
      candidates: [],
      example: "depth [m] in column 1",
      read: (): null => null,
      form: 'an answer to "quantity:<head of the column>", such as "depth [m]"',
    });
  }
}

const toMetres = (text: string) => {
  const [whole = "0", fraction = ""] = text.split(".");
  return (
    [...(whole + fraction)].reduce((sum, digit) => sum * 10 + digit.charCodeAt(0) - 48, 0) /
    10 ** fraction.length
  );
};

/**
 * Four rows in five within half a metre of the median, none far deeper, over two minutes or more: the sensor was
 * held. A cast passes through its depths.
 */
function staysAtOneDepth(
  values: Float64Array,
  elapsed: Float64Array | null,
): { readonly middle: number; readonly spread: number } | null {
  const duration = elapsed?.findLast((value) => !Number.isNaN(value)) ?? 0;
  if (!(duration >= 120)) return null;
  // a tide lifts a held sensor's depth slowly, over hours
  const slow = duration > 3 * 3600 ? 6 : 0;
  const { max } = extentOf(values);
  // where the median were so small that the deepest row is too far from it, or most rows are not near it, the sensor
  // was not held; this needs no median
  const leastMiddle = Math.min((max - slow) / 1.3, (max - 0.5 - slow) / 1.25);
  const leastNear = leastMiddle - Math.max(0.5, 0.05 * leastMiddle) - slow;
  if (shareFrom(values, leastNear) < 0.8) return null;
  const middle = median(values);
  const band = Math.max(0.5, 0.05 * middle);
  const off = new Float64Array(values.length);
  let rows = 0;
  let near = 0;
  for (let row = 0; row < values.length; row++) {
    off[row] = Math.abs(values[row]! - middle);
    if (Number.isNaN(off[row]!)) continue;
    rows++;
    if (off[row]! <= band + slow) near++;
  }
  if (rows < 20 || near < 0.8 * rows || max > middle * 1.25 + band + slow) return null;
  const spread = median(off);
  return { middle, spread };
}

/** Share of the values that are not missing which are at least `from`. */
function shareFrom(values: Float64Array, from: number): number {
  let all = 0;
  let at = 0;
  for (let row = 0; row < values.length; row++) {
    if (values[row]! >= from) at++;
    if (!Number.isNaN(values[row]!)) all++;
  }
  return at / all;
}

function stateOf(
  { lines, vertical, timed, elapsed }: ShapeInput,
  found: Evidence[],
  place: (line?: number) => { file: string; line?: number },
): CastState {
  const say = (fact: string, line: HeaderLine) =>
    found.push(evidence(fact, "stated", `line ${line.number} says "${line.text}"`, place(line.number)));
  const averaged = lineAbout(lines, "averaged");
  const zeroed = lineAbout(lines, "zeroed");
  const lag = lineAbout(lines, "lag");
  const downcast = lineAbout(lines, "downcast");
  const upcast = lineAbout(lines, "upcast");
  if (zeroed) say("pressureZeroed", zeroed);
  if (lag) say("lagCorrected", lag);
  if (averaged) say("state", averaged);
  const course = vertical ? courseOf(vertical.values) : "both";
  let processing: CastState["processing"] = timed ? "raw" : "unknown";
  if (averaged) processing = "averaged";
  else if (!timed && course !== "both") {
    processing = "averaged";
    found.push(evidence("state", "implied", "the rows are levels in order and have no times", place()));
  } else if (timed)
    found.push(
      evidence("state", "implied", "the rows have times and nothing says that they were averaged", place()),
    );
  let direction: CastState["direction"] = "unknown";
  if (downcast && !upcast) direction = "down";
  else if (upcast && !downcast) direction = topicsOfLine(upcast).has("reversed") ? "up-reversed" : "up";
  else if (processing === "raw") direction = course;
  const [first, last] = [elapsed?.find(isKnown) ?? NaN, elapsed?.findLast(isKnown) ?? NaN];
  if (last < first) {
    direction = course === "down" ? "up-reversed" : "unknown";
    found.push(evidence("direction", "implied", "the rows stand in turned order: their times fall", place()));
  }
  if (downcast && !upcast) say("direction", downcast);
  if (upcast && !downcast) say("direction", upcast);
  return { processing, pressureZeroed: zeroed !== null, lagCorrected: lag !== null, direction };
}

const isKnown = (value: number) => !Number.isNaN(value);

/** Strictly one way over ten rows or more: waves leave no raw cast without a step back. */
function courseOf(values: Float64Array): "both" | "down" | "up" {
  let rows = 0;
  let down = true;
  let up = true;
  let last = NaN;
  for (let row = 0; row < values.length && (down || up); row++) {
    const value = values[row]!;
    if (Number.isNaN(value)) continue;
    if (value <= last) down = false;
    if (value >= last) up = false;
    last = value;
    rows++;
  }
  if (rows < 3) return "both";
  return down ? "down" : up ? "up" : "both";
}
