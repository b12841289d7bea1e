import { plainOf, textOf } from "../../engine/attribute-value.ts";
import type { DatasetView } from "../../engine/dataset-view.ts";
import type { Level } from "../../engine/finding.ts";
import { defineRule, type FailingExample, type Rule } from "../../engine/rule.ts";
import { ACDD_ATTRIBUTES, type AcddAttribute, type Tier } from "./attribute-table.ts";
import { isPlaceholder } from "./forms.ts";

export const ABSENT_LEVEL: Readonly<Record<Tier, Level>> = {
  "highly recommended": "error",
  recommended: "warning",
  suggested: "advice",
};

/** ACDD is cited by tier: its page has no numbered clauses. */
export const acddTier = (tier: string) => ({
  document: "ACDD",
  edition: "1.3",
  clause: `global attributes, ${tier}`,
});

/** Older spellings of one attribute. */
const OTHER_SPELLING: Readonly<Record<string, string>> = { acknowledgement: "acknowledgment" };

const DEPTH = 'dimensions: z = 1 ; variables: float z(z) ; z:units = "m" ; z:positive = "down" ;';

const appliesTo = ({ applies }: AcddAttribute, dataset: DatasetView): boolean =>
  applies === "always" || (applies === "vertical" && dataset.coordinates.some(({ axis }) => axis === "Z"));

function examplesOf({ name, bad, tier, applies, allows }: AcddAttribute): FailingExample<Key>[] {
  const where = { attribute: name };
  const absent: FailingExample<Key>[] =
    applies === "always" || applies === "vertical" ? [{ cdl: DEPTH, where, message: "missing" }] : [];
  const empty: FailingExample<Key>[] =
    tier !== "suggested" && allows === undefined && bad === "5"
      ? [{ cdl: `:${name} = "TBD" ;`, where, message: "placeholder" }]
      : [];
  const malformed: FailingExample<Key>[] =
    bad === null ? [] : [{ cdl: `:${name} = ${bad} ; ${DEPTH}`, where, message: "form", level: "error" }];
  return [...absent, ...empty, ...malformed];
}

type Key = "missing" | "placeholder" | "form";

/** Presence and form of one global attribute. What it says against the data is the business of other rules. */
function attributeRule(entry: AcddAttribute): Rule {
  const { name, tier, form, good, tells, allows = [] } = entry;
  const failing = examplesOf(entry);
  const messages: Partial<Record<Key, string>> = {
    missing: "there is no global attribute {attribute}",
    placeholder: '{attribute} is "{found}", which says nothing',
    form: "{attribute} is {found}, expected {expected}",
  };
  const used = Object.fromEntries(
    Object.entries(messages).filter(([key]) => failing.some(({ message }) => message === key)),
  );
  return defineRule<string>({
    id: `acdd/${name.toLowerCase().replaceAll("_", "-")}`,
    status: "stable",
    since: "0.1.0",
    level: ABSENT_LEVEL[tier],
    basis: "reading",
    citation: acddTier(tier),
    covers: [`ACDD ${name}`],
    title: `The global attribute ${name} tells ${tells}`,
    why: `Catalogues and people learn from it ${tells}, without opening the data.`,
    remedy: `Set the global attribute ${name}, for example to ${good}.`,
    messages: used,
    passing: [`:${name} = ${good} ; ${DEPTH}`],
    failing,
    check(dataset, report) {
      if (!dataset.holdsToAcdd) return;
      const attribute = dataset.attributes.get(name) ?? dataset.attributes.get(OTHER_SPELLING[name] ?? "");
      const where = { attribute: name };
      const value = textOf(attribute)?.trim();
      if (attribute === undefined || value === "") {
        if (appliesTo(entry, dataset)) report(where, "missing");
      } else if (
        value !== undefined &&
        "placeholder" in used &&
        isPlaceholder(value) &&
        !allows.includes(value.toLowerCase())
      )
        report(where, "placeholder", { found: value });
      else {
        const fault = form(attribute);
        if (fault !== null)
          report(where, "form", { found: plainOf(attribute), expected: fault.expected, level: fault.level });
      }
    },
  });
}

/** One rule for each attribute of the table. `Conventions` has a rule of its own. */
export const attributeRules: readonly Rule[] = ACDD_ATTRIBUTES.map(attributeRule);
