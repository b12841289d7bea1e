import type { DatasetView } from "../../engine/dataset-view.ts";
import type { Citation } from "../../engine/finding.ts";
import { defineRule, type FailingExample, type Report, type Rule } from "../../engine/rule.ts";
import {
  byEquation,
  type Candidate,
  type Columns,
  type Equation,
  nearestDisagreement,
  type Tolerance,
} from "../../physics/compare.ts";
import type { Kind, Quantity } from "../../physics/quantity.ts";
import { quantity, variablesOf } from "../../physics/quantity.ts";
import { layerTolerance, storageTolerance } from "../../physics/tolerance.ts";
import { UNIT_SLIPS } from "../../physics/unit-slips.ts";
import { houseClause, PHYSICS, rounded } from "./house.ts";

/** The ways in which a stored column may have been computed, and what it was computed from. */
export interface Ways {
  readonly candidates: readonly Candidate[];
  readonly inputs: readonly Quantity[];
  /** The inputs on the rows of the stored column. */
  readonly columns: Columns;
  /** Gives the column from its inputs, nearly enough to see an input in another unit than the file says. */
  readonly equation: Equation;
  /** Whether the file itself names the equation. */
  readonly named: boolean;
  /** Added to the tolerance row by row. */
  readonly perRow?: Float64Array;
}

type Key = "differs" | "column" | "unit";

interface Recomputed {
  readonly id: string;
  readonly kind: Kind;
  readonly title: string;
  readonly from: string;
  readonly citation?: Citation;
  /** For the choice of equation and its coefficients. */
  readonly margin: number;
  /** A difference up to this is a warning where the file does not name its equation. */
  readonly unnamed: number;
  readonly ways: (dataset: DatasetView, target: Quantity) => Promise<Ways | null>;
  readonly passing: readonly string[];
  readonly failing: readonly FailingExample<Key>[];
}

const UNIT = "the values of {variable} look like {unit}: with that {derived} comes out as it is stored";

const added = (a: Float64Array | null, b: Float64Array | undefined): Float64Array | null =>
  a === null || b === undefined ? (a ?? b ?? null) : a.map((value, i) => value + b[i]!);

/** The slip of a unit, of an input or of the column itself, with which nearly all values come out as stored. */
function slipOf(
  target: Quantity,
  { candidates, inputs, columns, equation }: Ways,
  tolerance: Tolerance,
): { variable: string; name: string } | null {
  const fits = (values: Float64Array, ways: readonly Candidate[]): boolean => {
    const left = nearestDisagreement(values, ways, tolerance);
    return left === null || left.rows.length <= left.of * 0.05;
  };
  for (const { name, mend } of UNIT_SLIPS[target.kind] ?? [])
    if (fits(target.values.map(mend), candidates)) return { variable: target.variable.name, name };
  for (const [index, input] of inputs.entries()) {
    const at = (name: string, change: (value: number) => number) => {
      const [a, b, c] = columns.map((values, i) => (i === index ? values.map(change) : values));
      return [byEquation(name, equation, [a!, b!, c!])];
    };
    // a column computed as if at the surface fits every small pressure: that is no slip of its unit
    if (
      input.kind === "pressure" &&
      fits(
        target.values,
        at("surface", () => 0),
      )
    )
      continue;
    for (const { name, mend } of UNIT_SLIPS[input.kind] ?? [])
      if (fits(target.values, at(name, mend))) return { variable: input.variable.name, name };
  }
  return null;
}

async function judge(dataset: DatasetView, report: Report<Key>, rule: Recomputed): Promise<void> {
  const { kind, margin, unnamed, ways, from } = rule;
  for (const variable of variablesOf(dataset, kind)) {
    const target = await quantity(dataset, kind, variable);
    if (target === null) continue;
    const found = await ways(dataset, target);
    if (found === null || found.candidates.length === 0) continue;
    const { candidates, inputs, named, perRow } = found;
    const tolerance = {
      fixed: margin + storageTolerance(target, inputs),
      perRow: added(await layerTolerance(dataset, target), perRow),
    };
    const differs = nearestDisagreement(target.values, candidates, tolerance);
    if (differs === null) continue;
    const slip = differs.systematic ? slipOf(target, found, tolerance) : null;
    if (slip !== null) {
      report({ variable: slip.variable }, "unit", { fill: { unit: slip.name, derived: variable.name } });
      return;
    }
    const { systematic, rows, of, stored, computed, equation } = differs;
    const by = Math.abs(stored - computed);
    const slight = by <= tolerance.fixed * 20 && !systematic;
    report({ variable: variable.name }, systematic ? "column" : "differs", {
      found: rounded(stored),
      expected: rounded(computed),
      places: rows,
      fill: { equation, from, of, by: rounded(by) },
      ...(slight || (!named && by <= unnamed) ? { level: "warning" as const } : {}),
    });
  }
}

/** A rule that computes a derived quantity again from what it was derived from. */
export const recomputedRule = (rule: Recomputed): Rule =>
  defineRule({
    ...PHYSICS,
    id: rule.id,
    level: "error",
    citation: rule.citation ?? houseClause("recomputation"),
    title: rule.title,
    why: "A derived value that does not follow from the measured ones was made from other data, in other units or by another equation than the file says.",
    remedy: `Correct the values or the unit of what is wrong, compute the derived value again from ${rule.from}, or state in its attributes how it was made.`,
    messages: {
      differs:
        "{variable} differs from what {equation} gives from {from}, by up to {by}: {found} where {expected} comes out",
      column:
        "most values of {variable} differ from what {equation} gives from {from}, by up to {by}: {found} where {expected} comes out",
      unit: UNIT,
    },
    passing: rule.passing,
    failing: rule.failing,
    check: (dataset, report) => judge(dataset, report, rule),
  });
