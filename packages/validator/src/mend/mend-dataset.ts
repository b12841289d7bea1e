import { formatIsoTime } from "@wherry/core";
import type { Attribute, Dataset } from "@wherry/netcdf";
import { textAttribute } from "@wherry/netcdf";
import { plainOf, textOf } from "../engine/attribute-value.ts";
import { type CheckContext, type CheckedDataset, judgeDataset } from "../engine/check-dataset.ts";
import type { Finding, Plain } from "../engine/finding.ts";
import { type Edit, withEdits } from "./edit.ts";
import { MENDERS } from "./menders.ts";

/** What was changed, and by which finding. */
export interface MendedAttribute {
  readonly rule: string;
  /** Null for an attribute of the file. */
  readonly variable: string | null;
  readonly attribute: string;
  /** Null where it was not there. */
  readonly from: Plain;
  /** Null where it was taken away. */
  readonly to: Plain;
  /** Types of both, as netCDF names them; null where there is nothing. */
  readonly fromType: string | null;
  readonly toType: string | null;
  /** What was found. */
  readonly message: string;
}

export interface MendedDataset {
  /** The data set as it is to be written. The one given, where nothing was mended. */
  readonly dataset: Dataset;
  readonly mended: readonly MendedAttribute[];
  /** How it is judged afterwards: what is left there, a person must decide. */
  readonly verdict: CheckedDataset;
}

/** One mend may make room for the next: a name for its unit, a unit for its axis. */
const ROUNDS = 8;

const attributesOf = (
  dataset: Dataset,
  variable: string | null,
): ReadonlyMap<string, Attribute> | undefined =>
  variable === null ? dataset.attributes : dataset.variables.get(variable)?.attributes;

const same = (a: Attribute | null | undefined, b: Attribute | null | undefined): boolean =>
  (a ?? null) === null || (b ?? null) === null
    ? (a ?? null) === (b ?? null)
    : a!.type === b!.type && String(a!.value) === String(b!.value);

interface Step {
  readonly finding: Finding;
  readonly edit: Edit;
}

/** The edits for what was found, one for each attribute. */
async function stepsFor(
  dataset: Dataset,
  { view, findings }: CheckedDataset,
  done: ReadonlySet<string>,
): Promise<Step[]> {
  const steps = new Map<string, Step>();
  for (const finding of findings) {
    for (const edit of (await MENDERS.get(finding.rule)?.(finding, view)) ?? []) {
      const place = JSON.stringify([edit.variable, edit.attribute]);
      const attributes = attributesOf(dataset, edit.variable);
      // two rules that want it differently would never end
      if (attributes === undefined || steps.has(place) || done.has(`${finding.rule} ${place}`)) continue;
      if (!same(attributes.get(edit.attribute), edit.to)) steps.set(place, { finding, edit });
    }
  }
  return [...steps.values()];
}

/**
 * Repairs what needs no judgement. Only attributes change; a line in `history` tells which.
 *
 * @param context  as for a check; `now` is the time in the history
 * @param program  name and version of the program, for the history
 */
export async function mendDataset(
  given: Dataset,
  context: CheckContext,
  program: string,
): Promise<MendedDataset> {
  let dataset = given;
  let judged = await judgeDataset(dataset, context);
  const mended: MendedAttribute[] = [];
  const done = new Set<string>();
  for (let round = 0; round < ROUNDS; round += 1) {
    const steps = await stepsFor(dataset, judged, done);
    if (steps.length === 0) break;
    for (const { finding, edit } of steps) {
      const { variable, attribute, to } = edit;
      done.add(`${finding.rule} ${JSON.stringify([variable, attribute])}`);
      mended.push({
        rule: finding.rule,
        variable,
        attribute,
        from: plainOf(attributesOf(dataset, variable)?.get(attribute)),
        to: plainOf(to ?? undefined),
        fromType: attributesOf(dataset, variable)?.get(attribute)?.type ?? null,
        toType: to?.type ?? null,
        message: finding.message,
      });
    }
    dataset = withEdits(
      dataset,
      steps.map(({ edit }) => edit),
    );
    judged = await judgeDataset(dataset, context);
  }
  if (mended.length === 0) return { dataset: given, mended, verdict: judged };
  dataset = withEdits(dataset, [historyOf(dataset, mended, formatIsoTime(context.now), program)]);
  return { dataset, mended, verdict: await judgeDataset(dataset, context) };
}

const owner = ({ variable, attribute }: MendedAttribute): string =>
  variable === null ? `:${attribute}` : `${variable}:${attribute}`;

/** Text in quotes, a number as it is. */
const shown = (value: Plain): string => (value === null ? "nothing" : JSON.stringify(value));

/** "t:units from "deg C" to "degC"". */
export const changeInWords = (change: MendedAttribute): string =>
  change.to === null
    ? `${owner(change)} ${shown(change.from)} removed`
    : change.from === null
      ? `${owner(change)} ${shown(change.to)} added`
      : shown(change.from) === shown(change.to)
        ? `${owner(change)} ${shown(change.to)} from ${change.fromType} to ${change.toType}`
        : `${owner(change)} from ${shown(change.from)} to ${shown(change.to)}`;

function historyOf(
  dataset: Dataset,
  mended: readonly MendedAttribute[],
  when: string,
  program: string,
): Edit {
  const line = `${when} ${program} mend: ${mended.map(changeInWords).join("; ")}`.normalize("NFC");
  const before = dataset.attributes.get("history");
  const text = textOf(before)?.trimEnd() ?? "";
  const value = text === "" ? line : `${text}\n${line}`;
  const to = before?.type === "string" ? { ...before, value: [value] } : textAttribute("history", value);
  return { variable: null, attribute: "history", to };
}
