import { flagSchemeOf, primaryFlag } from "@wherry/core";
import type { DatasetView } from "../../engine/dataset-view.ts";
import { defineRule } from "../../engine/rule.ts";
import type { VariableView } from "../../engine/variable-view.ts";
import { flagged } from "./flag-example.ts";

const SAYS = ["references", "conventions", "Conventions", "comment", "long_name", "source", "flag_scheme"];

/** Meaning words by the primary flag that they stand for. */
const WORDS: readonly (readonly [RegExp, number])[] = [
  [/^(?:good|pass(?:ed)?|good_(?:value|data)|correct)$/i, 1],
  [/^(?:not_evaluated|unknown|not_tested|no_qc(?:_performed)?|no_quality_control)$/i, 2],
  [/^(?:suspect|questionable|doubtful|probably_bad(?:_.*)?)$/i, 3],
  [/^(?:bad|fail(?:ed)?|bad_(?:value|data)|wrong|erroneous)$/i, 4],
  [/^(?:missing(?:_.*)?|no_data)$/i, 9],
];

const isQuality = (variable: VariableView): boolean =>
  /^(?:aggregate_)?quality_flag$|^status_flag$/.test(variable.standardName ?? "");

const isNamed = (dataset: DatasetView, variable: VariableView): boolean =>
  dataset.ancillary.has(variable) && /(?:^|_)(?:qc|flag|flags|quality)(?:$|_)/i.test(variable.name);

export const scheme = defineRule({
  id: "flags/scheme",
  status: "stable",
  since: "0.1.0",
  level: "warning",
  basis: "house",
  citation: {
    document: "IOC Manuals and Guides 54, volume 3",
    edition: "2013",
    clause: "primary level flags",
  },
  covers: [],
  title: "Flags belong to a scheme that the file explains",
  why: "The same number means different things: 2 is not evaluated in one scheme, probably good in another, good in a third.",
  remedy: "Give {variable} flag_values and flag_meanings, and name the scheme in its references.",
  messages: {
    bare: "{variable} holds the flag 2 and does not explain it: not evaluated, probably good or good, by the scheme",
    unexplained: "{variable} has flags without flag_meanings",
    other: "{variable} names the scheme {scheme}, but explains {code} as {found}, which is {expected} there",
  },
  passing: [
    flagged({ v: "1, 2, 3", q: "1, 2, 1" }),
    flagged(
      { v: "1, 2, 3", q: "1, 2, 1" },
      'q:references = "QARTOD" ; q:flag_values = 1b, 2b, 3b, 4b, 9b ; q:flag_meanings = "pass not_evaluated suspect fail missing" ;',
    ),
  ],
  failing: [
    { cdl: flagged({ v: "1, 2, 3", q: "1, 2, 1" }, ""), where: { variable: "q" }, message: "bare" },
    {
      cdl: flagged({ v: "1, 2, 3", q: "1, 4, 1" }, ""),
      where: { variable: "q" },
      message: "unexplained",
      level: "advice",
    },
    {
      cdl: flagged(
        { v: "1, 2, 3", q: "1, 2, 1" },
        'q:references = "IODE" ; q:flag_values = 1b, 4b ; q:flag_meanings = "bad good" ;',
      ),
      where: { variable: "q", attribute: "flag_meanings" },
      message: "other",
    },
  ],
  async check(dataset, report) {
    for (const variable of dataset.all) {
      if (variable.isText || !(isQuality(variable) || isNamed(dataset, variable))) continue;
      const where = { variable: variable.name };
      const values = variable.numbers("flag_values") ?? [];
      const meanings = variable.words("flag_meanings");
      if (meanings.length === 0) {
        if (!/^(?:byte|short|int|ubyte|ushort|uint)$/.test(variable.type)) continue;
        const held = await dataset.data.numbers(variable.name);
        if (held?.includes(2) === true) report(where, "bare");
        else report(where, "unexplained", { level: "advice" });
        continue;
      }
      const told = SAYS.map((attribute) => variable.text(attribute) ?? "").join(" ");
      const named = flagSchemeOf(told);
      // these two use the words in their plain sense
      if (named !== "IODE primary level" && named !== "QARTOD") continue;
      for (const [index, value] of values.entries()) {
        const meaning = meanings[index] ?? "";
        const meant = WORDS.find(([pattern]) => pattern.test(meaning))?.[1];
        const there = primaryFlag(named, String(value))?.flag;
        if (meant === undefined || there === undefined || meant === there) continue;
        const expected = ["", "good", "not evaluated", "questionable", "bad"][there] ?? "missing";
        report({ ...where, attribute: "flag_meanings" }, "other", {
          found: meaning,
          expected,
          fill: { scheme: named, code: value },
        });
        break;
      }
    }
  },
});
