import { defineRule } from "../../engine/rule.ts";
import { flagged } from "./flag-example.ts";

const codesOf = (values: readonly number[], meanings: readonly string[], wanted: RegExp): Set<number> =>
  new Set(values.filter((_, index) => wanted.test(meanings[index] ?? "")));

const MISSING = /^(?:missing(?:_(?:value|data))?|no_data|value_missing)$/i;
const GOOD = /^(?:good(?:_(?:value|data))?|probably_good(?:_(?:value|data))?|pass(?:ed)?|correct)$/i;

export const missing = defineRule({
  id: "flags/missing",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "house",
  citation: {
    document: "IOC Manuals and Guides 54, volume 3",
    edition: "2013",
    clause: "primary level flags",
  },
  covers: [],
  title: "What is missing is flagged missing, and only that",
  why: "A good flag on nothing, or a missing flag on a value, shows that flags and data come from different rows.",
  remedy: "Align the flags of {variable} with its values.",
  messages: {
    good: "{variable} has missing values that {flag} calls good",
    value: "{variable} has values that {flag} calls missing",
  },
  passing: [
    flagged({ v: "1, 2, -9", q: "1, 2, 9" }),
    // bad values may have been removed; a scheme without a code for missing says nothing
    flagged({ v: "1, 2, -9", q: "1, 2, 4" }),
    flagged({ v: "1, 2, -9", q: "1, 1, 1" }, 'q:flag_values = 1b, 4b ; q:flag_meanings = "good bad" ;'),
  ],
  failing: [
    { cdl: flagged({ v: "1, -9, 3", q: "1, 1, 1" }), where: { variable: "v" }, message: "good" },
    { cdl: flagged({ v: "1, 2, 3", q: "1, 9, 1" }), where: { variable: "v" }, message: "value" },
  ],
  async check(dataset, report) {
    for (const variable of dataset.all) {
      if (variable.isText || variable.role === "flag") continue;
      for (const flag of dataset.listed(variable, "ancillary_variables")) {
        const codes = flag.numbers("flag_values");
        if (codes === undefined || flag.isText || flag.has("flag_masks")) continue;
        if (flag.dimensions.join() !== variable.dimensions.join()) continue;
        const meanings = flag.words("flag_meanings");
        const none = codesOf(codes, meanings, MISSING);
        const good = codesOf(codes, meanings, GOOD);
        const flags = none.size === 0 ? null : await dataset.data.numbers(flag.name);
        const held = flags === null ? null : await dataset.data.numbers(variable.name);
        if (flags === null || held === null) continue;
        const calledGood: number[] = [];
        const calledMissing: number[] = [];
        for (let i = 0; i < held.length; i += 1) {
          const absent = Number.isNaN(held[i]!);
          if (absent && good.has(flags[i]!)) calledGood.push(i);
          if (!absent && none.has(flags[i]!)) calledMissing.push(i);
        }
        const where = { variable: variable.name };
        if (calledGood.length > 0) report(where, "good", { places: calledGood, fill: { flag: flag.name } });
        if (calledMissing.length > 0)
          report(where, "value", { places: calledMissing, fill: { flag: flag.name } });
      }
    }
  },
});
