import type { ColumnContext, Note, Settled } from "./column-context.ts";
import { oneOf } from "./inquiry.ts";
import type { QuantityId } from "./vocabulary/quantities.ts";

const YEAR_1978 = 252_460_800; // 1978-01-01T00:00:00Z
const YEAR_1990 = 631_152_000; // 1990-01-01T00:00:00Z

/** Temperature scale: as stated, else ITS-90 for data after 1990; older data are asked about. */
export function temperatureScale(
  each: Settled,
  { facts, id, time }: ColumnContext,
  note: Note,
): "ITS-90" | "IPTS-68" {
  const { header } = each.column.head;
  const said = each.unit?.says;
  if (said === "IPTS-68" || /\b(?:IPTS|ITS)-?68\b|\bt68\b/i.test(header)) {
    note(each.column, "stated", `"${header}" says IPTS-68; it is converted to ITS-90`);
    return "IPTS-68";
  }
  if (said === "ITS-90" || /\bITS-?90\b|\bt90\b/i.test(header)) {
    note(each.column, "stated", `"${header}" says ITS-90`);
    return "ITS-90";
  }
  if (Number.isNaN(time) || time >= YEAR_1990) {
    note(each.column, "assumed", "ITS-90: the data are younger than 1990 and nothing says otherwise");
    return "ITS-90";
  }
  const answer = facts.inquiry.settle({
    topic: "temperatureScale",
    holds: [id],
    text: `On which scale is "${header}"? The data are from before 1990.`,
    candidates: ["IPTS-68", "ITS-90"],
    read: oneOf("IPTS-68", "ITS-90"),
    form: "IPTS-68 or ITS-90",
  });
  if (answer) note(each.column, "answered", answer.because);
  return answer?.value ?? "ITS-90";
}

/** Practical Salinity where the unit is absent or says so; grams per kilogram and per mille are asked about. */
export function salinityScale(each: Settled, { facts, id, time }: ColumnContext, note: Note): QuantityId {
  const { header, unitText } = each.column.head;
  const { unit } = each;
  if (unit?.says === "PSS-78" && /PSS/i.test(unitText ?? "")) {
    note(each.column, "stated", `"${unitText}" is the Practical Salinity Scale`);
    return "salinity";
  }
  const doubtful =
    unit?.says === "per mille" || unit?.units === "g kg-1" || (!Number.isNaN(time) && time < YEAR_1978);
  if (!doubtful) {
    note(
      each.column,
      "assumed",
      `Practical Salinity: ${unitText === null ? "no unit is given" : `the unit is "${unitText}"`}`,
    );
    return "salinity";
  }
  const answer = facts.inquiry.settle({
    topic: "salinityScale",
    holds: [id],
    text: `Is "${header}" Practical Salinity or Absolute Salinity? ${unitText === null ? "The data are from before 1978." : `Its unit is "${unitText}".`}`,
    candidates: ["practical", "absolute"],
    read: oneOf("practical", "absolute"),
    form: "practical or absolute",
  });
  if (answer) note(each.column, "answered", answer.because);
  return answer?.value === "absolute" ? "absolute_salinity" : "salinity";
}
