import type { VariableView } from "../../engine/variable-view.ts";

/** The range that valid_range or valid_min and valid_max give, open where they give no limit; null without them. */
export function validRange(variable: VariableView): { min: number; max: number } | null {
  const [low, high] = variable.numbers("valid_range") ?? [];
  const min = low ?? variable.numbers("valid_min")?.[0];
  const max = high ?? variable.numbers("valid_max")?.[0];
  if (min === undefined && max === undefined) return null;
  return { min: min ?? Number.NEGATIVE_INFINITY, max: max ?? Number.POSITIVE_INFINITY };
}
