import { cfClause, defineRule } from "../../engine/rule.ts";
import type { VariableView } from "../../engine/variable-view.ts";
import { validRange } from "./valid-range.ts";

/** Type in which the unpacked values are: that of the packing attributes, else of the variable. */
const unpackedType = ({ attributes, type }: VariableView): string =>
  attributes.get("scale_factor")?.type ?? attributes.get("add_offset")?.type ?? type;

/** Smallest and largest unpacked value for which `keep` holds; null if there is none. */
function extremes(variable: VariableView, values: Float64Array, keep: (value: number) => boolean) {
  const scale = variable.numbers("scale_factor")?.[0] ?? 1;
  const offset = variable.numbers("add_offset")?.[0] ?? 0;
  let min = Number.POSITIVE_INFINITY;
  let max = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    if (Number.isNaN(value) || !keep(value)) continue;
    const unpacked = value * scale + offset;
    if (unpacked < min) min = unpacked;
    if (unpacked > max) max = unpacked;
  }
  return min > max ? null : ([min, max] as const);
}

/** Packed values are rounded by whoever unpacks them; others must be met exactly. */
const agrees = (stated: number, found: number, packed: boolean): boolean =>
  packed ? Math.abs(stated - found) <= 1e-6 * Math.max(Math.abs(found), 1e-30) : stated === found;

export const actualRange = defineRule({
  id: "cf/actual-range",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("2.5.1"),
  editions: { since: "1.7" },
  covers: ["CF-2.5.1-R4", "CF-2.5.1-R5", "CF-2.5.1-R6", "CF-2.5.1-R7"],
  title: "actual_range is the smallest and the largest value of the data, in their type",
  why: "Catalogues and plots take the extremes from this attribute instead of reading the data.",
  remedy: "Recompute actual_range of {variable} from its values, or remove the attribute.",
  messages: {
    type: "actual_range of {variable} has the type {found} instead of {expected}",
    length: "actual_range of {variable} has {found} values instead of 2",
    other: "actual_range of {variable} is {found}, its values run from {expected}",
    empty: "{variable} has an actual_range but no value that is not missing",
    outside: "actual_range of {variable} reaches beyond its valid range, {expected}",
  },
  passing: [
    "dimensions: n = 2 ; variables: float t(n) ; t:actual_range = 1.f, 2.f ; data: t = 2, 1 ;",
    { cdl: "variables: float t ; t:actual_range = 1., 2. ; data: t = 5 ;", edition: "1.6" },
  ],
  failing: [
    ["t:actual_range = 1., 2. ; data: t = 2, 1 ;", "type"] as const,
    ["t:actual_range = 1.f, 2.f, 3.f ; data: t = 2, 1 ;", "length"] as const,
    ["t:actual_range = 1.f, 3.f ; data: t = 2, 1 ;", "other"] as const,
    ["t:_FillValue = -9.f ; t:actual_range = 1.f, 3.f ; data: t = -9, -9 ;", "empty"] as const,
    ["t:valid_max = 1.f ; t:actual_range = 1.f, 2.f ; data: t = 2, 1 ;", "outside"] as const,
  ].map(([cdl, message]) => ({
    cdl: `dimensions: n = 2 ; variables: float t(n) ; ${cdl}`,
    where: { variable: "t", attribute: "actual_range" },
    message,
  })),
  async check(dataset, report) {
    for (const variable of dataset.all) {
      const attribute = variable.attributes.get("actual_range");
      if (attribute === undefined || variable.isText) continue;
      const where = { variable: variable.name, attribute: "actual_range" };
      const type = unpackedType(variable);
      const stated = variable.numbers("actual_range") ?? [];
      const [low, high] = stated;
      if (attribute.type !== type) report(where, "type", { found: attribute.type, expected: type });
      else if (stated.length !== 2 || low === undefined || high === undefined)
        report(where, "length", { found: stated.length, expected: 2 });
      else {
        const values = await dataset.data.numbers(variable.name);
        if (values === null) continue;
        const range = validRange(variable);
        const packed = type !== variable.type || variable.has("scale_factor");
        const all = extremes(variable, values, () => true);
        const valid = extremes(variable, values, (v) => range === null || (v >= range.min && v <= range.max));
        const fits = (found: readonly [number, number] | null) =>
          found !== null && agrees(low, found[0], packed) && agrees(high, found[1], packed);
        if (all === null) report(where, "empty", { found: stated });
        else if (!fits(all) && !fits(valid))
          report(where, "other", { found: stated, expected: `${(valid ?? all)[0]} to ${(valid ?? all)[1]}` });
        else if (range !== null && !packed && (low < range.min || high > range.max))
          report(where, "outside", { found: stated, expected: `${range.min} to ${range.max}` });
      }
    }
  },
});
