import { parseIsoDuration } from "@wherry/core";
import { momentInWords } from "../../engine/moment-words.ts";
import { defineRule } from "../../engine/rule.ts";
import { acddTier } from "./attribute-rule.ts";
import { castCdl } from "./limits-example.ts";
import { statedMoment, timeSpan } from "./time-span.ts";

/** Seconds by which stated and stored times may differ. */
const TOLERANCE = 1;

export const timeCoverage = defineRule({
  id: "acdd/time-coverage",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "reading",
  citation: acddTier("recommended"),
  covers: ["ACDD time_coverage_start", "ACDD time_coverage_end", "ACDD time_coverage_duration"],
  title: "The time that the data cover is the time that the attributes state",
  why: "Catalogues search by these times; an hour off is often local time taken for UTC.",
  remedy: "Set {attribute} from the times in the file, or correct those.",
  messages: {
    start: "time_coverage_start is {found}, the first time in the data is {expected}",
    end: "time_coverage_end is {found}, the data end {expected}",
    duration: "time_coverage_duration is {found}, from start to end it is {expected} seconds",
    order: "time_coverage_end, {found}, lies before time_coverage_start",
  },
  passing: [
    castCdl(
      ':time_coverage_start = "2030-05-04T10:01:00Z" ; :time_coverage_end = "2030-05-04T10:01:30Z" ; :time_coverage_duration = "PT30S" ; :featureType = "profile" ;',
    ),
    castCdl(':time_coverage_start = "2030-05-04" ; :time_coverage_end = "2030-05-04" ;'),
  ],
  failing: [
    {
      cdl: castCdl(':time_coverage_start = "2030-05-04T11:01:00Z" ;'),
      where: { attribute: "time_coverage_start" },
      message: "start",
    },
    {
      cdl: castCdl(':time_coverage_end = "2030-05-04T10:00:00Z" ;'),
      where: { attribute: "time_coverage_end" },
      message: "end",
    },
    {
      cdl: ':time_coverage_start = "2030-05-04T11:01:00Z" ; :time_coverage_end = "2030-05-04T11:03:00Z" ; :time_coverage_duration = "PT2H" ;',
      where: { attribute: "time_coverage_duration" },
      message: "duration",
    },
    {
      cdl: ':time_coverage_start = "2030-05-04T11:01:00Z" ; :time_coverage_end = "2030-05-04T11:00:00Z" ;',
      where: { attribute: "time_coverage_end" },
      message: "order",
    },
  ],
  async check(dataset, report) {
    const [startText, endText] = [dataset.text("time_coverage_start"), dataset.text("time_coverage_end")];
    const [start, end] = [statedMoment(startText), statedMoment(endText)];
    const span = await timeSpan(dataset);
    if (start !== null && span !== null) {
      const early = start.to < span.earliest - TOLERANCE;
      if (early || start.from > span.first + TOLERANCE)
        report({ attribute: "time_coverage_start" }, "start", {
          found: startText ?? "",
          expected: momentInWords(span.first),
        });
    }
    if (start !== null && end !== null && end.to < start.from - TOLERANCE) {
      report({ attribute: "time_coverage_end" }, "order", { found: endText ?? "" });
      return;
    }
    if (end !== null && span !== null) {
      const early = end.to < span.last - TOLERANCE;
      if (early || end.from > span.latest + TOLERANCE)
        report({ attribute: "time_coverage_end" }, "end", {
          found: endText ?? "",
          expected: early
            ? `not before ${momentInWords(span.last)}`
            : `not after ${momentInWords(span.latest)}`,
        });
    }
    const durationText = dataset.text("time_coverage_duration")?.trim();
    const duration = durationText === undefined ? null : parseIsoDuration(durationText);
    if (start === null || end === null || !duration?.ok) return;
    // the shortest component given tells how exact the duration wants to be
    const exact =
      { D: 86400, H: 3600, M: 60, S: TOLERANCE, W: 604800 }[durationText?.at(-1) ?? "S"] ?? TOLERANCE;
    const [least, most] = [end.from - start.to - exact, end.to - start.from + exact];
    if (duration.value < least || duration.value > most)
      report({ attribute: "time_coverage_duration" }, "duration", {
        found: durationText ?? "",
        expected: end.from - start.from,
      });
  },
});
