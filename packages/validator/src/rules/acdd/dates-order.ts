import { momentInWords } from "../../engine/moment-words.ts";
import { defineRule } from "../../engine/rule.ts";
import { acddTier } from "./attribute-rule.ts";
import { castCdl } from "./limits-example.ts";
import { statedMoment, timeSpan } from "./time-span.ts";

/** A clock that runs ahead is no reason for an error. */
const HOUR = 3600;

export const datesOrder = defineRule({
  id: "acdd/dates-order",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "reading",
  citation: acddTier("recommended"),
  covers: ["ACDD date_created", "ACDD date_modified", "ACDD date_issued", "ACDD date_metadata_modified"],
  title: "Dates of the data set follow each other and are not in the future",
  why: "A date of making before the last measurement, or after today, shows a wrong clock or a copied header.",
  remedy: "Correct {attribute}.",
  messages: {
    future: "date_created is {found}, which is later than now",
    before: "date_created is {found}, the data go on until {expected}",
    order: "{attribute} is {found}, before date_created",
  },
  passing: [
    castCdl(':date_created = "2030-05-05T00:00:00Z" ; :date_modified = "2030-05-05T00:00:00Z" ;'),
  ].map((cdl) => ({ cdl, now: "2030-06-01T00:00:00Z" })),
  failing: [
    {
      cdl: ':date_created = "2031-05-05T00:00:00Z" ;',
      where: { attribute: "date_created" },
      message: "future",
    },
    {
      cdl: castCdl(':date_created = "2030-05-03T00:00:00Z" ;'),
      now: "2030-06-01T00:00:00Z",
      where: { attribute: "date_created" },
      message: "before",
      level: "warning",
    },
    {
      cdl: ':date_created = "2029-05-03T00:00:00Z" ; :date_modified = "2029-05-01" ;',
      where: { attribute: "date_modified" },
      message: "order",
      level: "advice",
    },
  ],
  async check(dataset, report) {
    const text = dataset.text("date_created");
    const created = statedMoment(text);
    if (text === undefined || created === null) return;
    const where = { attribute: "date_created" };
    const span = await timeSpan(dataset);
    if (created.from > dataset.now + HOUR) report(where, "future", { found: text });
    else if (span !== null && created.to < span.last)
      report(where, "before", { found: text, expected: momentInWords(span.last), level: "warning" });
    for (const attribute of ["date_modified", "date_issued", "date_metadata_modified"]) {
      const found = dataset.text(attribute);
      const moment = statedMoment(found);
      if (found !== undefined && moment !== null && moment.to < created.from)
        report({ attribute }, "order", { found, level: "advice" });
    }
  },
});
