import type { Place } from "@wherry/core";
import type { DatasetView } from "./dataset-view.ts";
import type { Edition } from "./edition.ts";
import type { Finding, Plain } from "./finding.ts";
import { citationIn, type Detail, holdsIn, levelIn, type Report, type Rule, type RuleText } from "./rule.ts";

const PLACES_SHOWN = 3;

/** Fills `{variable}`, `{found}` … of a message; a word that nothing is known for stays as it is. */
export function fillMessage(text: string, where: Place, detail: Detail): string {
  const words: Record<string, unknown> = {
    ...where,
    ...detail.fill,
    found: detail.found,
    expected: detail.expected,
  };
  return text.replace(/\{(\w+)\}/g, (all, word: string) => {
    const value = words[word];
    // a word of the rule's own may be left out
    if (value === "" && detail.fill?.[word] === "") return "";
    return value === undefined ? all : inWords(value as Plain);
  });
}

/** A value in a sentence: a list with commas, an empty text said to be so. */
export function inWords(value: Plain): string {
  if (value === null) return "nothing";
  if (value === "") return "an empty text";
  return Array.isArray(value) ? value.map(inWords).join(", ") : String(value);
}

/** "; 12 values, the first at 3, 8, 10 (counted from 0)" where a finding is about several values. */
function placesInWords(count: number, places: readonly number[]): string {
  if (places.length === 0) return count > 1 ? ` (${count} times)` : "";
  const shown = places.slice(0, PLACES_SHOWN).join(", ");
  if (count === 1) return ` (at index ${shown})`;
  return count > PLACES_SHOWN ? ` (${count} values, the first at index ${shown})` : ` (at index ${shown})`;
}

interface Draft {
  readonly where: Place;
  readonly key: string;
  readonly detail: Detail;
  count: number;
  readonly places: number[];
}

/** Runs one check of a rule: one finding per message and place, however often it was reported there. */
export async function gather(
  rule: RuleText,
  edition: Edition,
  check: (report: Report<string>) => void | Promise<void>,
): Promise<Finding[]> {
  const drafts = new Map<string, Draft>();
  await check((where, key, detail = {}) => {
    const { file, variable, attribute, dimension } = where;
    const at = JSON.stringify([key, file, variable, attribute, dimension]);
    const count = detail.count ?? Math.max(1, detail.places?.length ?? 0);
    const places = [...(detail.places ?? [])].slice(0, PLACES_SHOWN);
    const known = drafts.get(at);
    if (known === undefined) drafts.set(at, { where, key, detail, count, places });
    else {
      known.count += count;
      known.places.push(...places.slice(0, PLACES_SHOWN - known.places.length));
    }
  });
  return [...drafts.values()].map((draft) => toFinding(rule, edition, draft));
}

function toFinding(rule: RuleText, edition: Edition, { where, key, detail, count, places }: Draft): Finding {
  const text = rule.messages[key];
  if (text === undefined) throw new TypeError(`rule ${rule.id} has no message ${key}`);
  const [first] = places;
  return {
    rule: rule.id,
    level: detail.level ?? levelIn(rule, edition),
    basis: rule.basis,
    citation: citationIn(rule, edition),
    where: { ...where, ...(first === undefined ? {} : { index: first }) },
    key,
    message: fillMessage(text, where, detail) + placesInWords(count, places),
    why: rule.why,
    ...(detail.found === undefined ? {} : { found: detail.found }),
    ...(detail.expected === undefined ? {} : { expected: detail.expected }),
    remedy: fillMessage(rule.remedy, where, detail),
    count,
    places,
  };
}

/** Runs the rules that hold in the edition of the view, in the order given. */
export async function runRules(rules: readonly Rule[], view: DatasetView): Promise<Finding[]> {
  const findings: Finding[] = [];
  for (const rule of rules) {
    if (rule.status === "retired" || !holdsIn(rule, view.edition)) continue;
    findings.push(...(await gather(rule, view.edition, (report) => rule.check(view, report))));
  }
  return findings;
}
