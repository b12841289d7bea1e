import { plainOf } from "../../engine/attribute-value.ts";
import { cfClause, defineRule } from "../../engine/rule.ts";
import { flagCount } from "./flag-list.ts";

const WORD = /^[A-Za-z0-9_.+@-]+$/;

export const flagMeanings = defineRule({
  id: "cf/flag-meanings",
  status: "stable",
  since: "0.1.0",
  level: "error",
  basis: "clause",
  citation: cfClause("3.5"),
  covers: ["CF-3.5-R2", "CF-3.5-R3", "CF-3.5-R4", "CF-3.5-R5"],
  title: "flag_meanings has one word for each flag",
  why: "A flag without a meaning is a bare number: 2 is good in one scheme and not evaluated in another.",
  remedy: "Give flag_meanings of {variable} as many words as there are flags, blanks between them, _ within.",
  messages: {
    missing: "{variable} has {other} but no flag_meanings",
    text: "flag_meanings of {variable} is not one text but {found}",
    word: 'flag_meanings of {variable} has "{found}", which is not a word of letters, digits and _ . + @ -',
    count: "flag_meanings of {variable} has {found} words for {expected} entries of {other}",
  },
  passing: [
    `variables: byte q ; q:flag_values = 1b, 2b ; q:flag_meanings = "good not-so_good" ;`,
    `variables: byte q ; q:flag_masks = 1b, 2b ; q:flag_meanings = "a b" ;`,
  ],
  failing: [
    ["q:flag_values = 1b, 2b", "missing"] as const,
    ["q:flag_values = 1b, 2b ; q:flag_meanings = 1, 2", "text"] as const,
    [`q:flag_values = 1b, 2b ; q:flag_meanings = "good, bad"`, "word"] as const,
    [`q:flag_values = 1b, 2b ; q:flag_meanings = "good"`, "count"] as const,
    [`q:flag_masks = 1b, 2b ; q:flag_meanings = "a b c"`, "count"] as const,
  ].map(([cdl, message]) => ({
    cdl: `variables: byte q ; ${cdl} ;`,
    where: { variable: "q", attribute: "flag_meanings" },
    message,
  })),
  check(dataset, report) {
    for (const variable of dataset.all) {
      const lists = ["flag_values", "flag_masks"].flatMap((name) => variable.attributes.get(name) ?? []);
      const [first] = lists;
      const where = { variable: variable.name, attribute: "flag_meanings" };
      const attribute = variable.attributes.get("flag_meanings");
      if (first === undefined) continue;
      if (attribute === undefined) report(where, "missing", { fill: { other: first.name } });
      else if (variable.text("flag_meanings") === undefined)
        report(where, "text", { found: plainOf(attribute) });
      else {
        const words = variable.words("flag_meanings");
        const wrong = words.find((word) => !WORD.test(word));
        const unequal = lists.find((list) => flagCount(list) !== words.length);
        if (wrong !== undefined) report(where, "word", { found: wrong });
        else if (unequal !== undefined)
          report(where, "count", {
            found: words.length,
            expected: flagCount(unequal),
            fill: { other: unequal.name },
          });
      }
    }
  },
});
