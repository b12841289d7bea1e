import { Flag } from "./flag.ts";
import { caughtAny } from "./flags-of-test.ts";

/**
 * Aggregate flag of a quantity from the results of its tests.
 *
 * @param values   the quantity; a missing value is 9, always
 * @param tests    results by test name, one flag per row
 * @param required tests without which a row is never 1; an empty list never gives 1
 * @returns 9, else the worst of the tests (4 before 3), else 1 if every required test ran and passed, else 2
 * @source house, after the worst-flag principle of QARTOD
 */
export function aggregate(
  values: Float64Array,
  tests: ReadonlyMap<string, Uint8Array>,
  required: readonly string[],
): Uint8Array {
  const rows = values.length;
  const flags = new Uint8Array(rows);
  const complete = required.length > 0 && required.every((name) => tests.has(name));
  flags.fill(complete ? Flag.good : Flag.notEvaluated);
  if (complete)
    for (const name of required) {
      const result = tests.get(name)!;
      for (let k = 0; k < rows; k++) if (result[k] !== Flag.good) flags[k] = Flag.notEvaluated;
    }
  for (const result of tests.values()) worsen(flags, result);
  for (let k = 0; k < rows; k++) if (Number.isNaN(values[k]!)) flags[k] = Flag.missing;
  return flags;
}

/** Puts the 3 and 4 of one more test over flags that are better; a missing value stays 9. */
export function worsen(out: Uint8Array, result: Uint8Array): void {
  if (!caughtAny(result)) return;
  for (let k = 0; k < out.length; k++) {
    const flag = result[k]!;
    if (flag > out[k]! && flag <= Flag.bad && flag >= Flag.questionable) out[k] = flag;
  }
}
