import type { HeldCast } from "@wherry/converter";
import { type Problem, parseNumber, type StepRecord } from "@wherry/core";
import type { OpenQuestion } from "../hold-back.ts";
import type { CastSummary } from "./cast-summary.ts";
import { counted, html, listed, type Markup, nothing, sentence } from "./html.ts";

/** Most places told of one kind of finding, and wordings of one step. */
const FEW = 4;

/** Findings of reading, open questions, and what the quality tests flagged. */
export function findingsSection(
  casts: readonly CastSummary[],
  problems: readonly Problem[],
  held: readonly HeldCast[],
  questions: readonly OpenQuestion[],
): Markup {
  const groups = new Map<string, Problem[]>();
  for (const problem of problems) {
    const key = JSON.stringify([problem.code, problem.message, problem.remedy ?? ""]);
    groups.set(key, [...(groups.get(key) ?? []), problem]);
  }
  const items = [...groups.values()].map((group) => {
    const { message, remedy } = group[0]!;
    const places = [...new Set(group.map(placeWords))].filter((words) => words !== "");
    const more = places.length > FEW ? ` and ${places.length - FEW} more` : "";
    return html`<li>${sentence(message)}${places.length > 0 ? ` At ${places.slice(0, FEW).join("; ")}${more}.` : ""}${remedy === undefined ? "" : ` ${remedy}`}</li>`;
  });
  const open = questions.map(
    ({ text, answerWith, casts: waiting }) =>
      html`<li>${text} Waiting: ${listed(waiting)}. Answer with: <code>${answerWith}</code></li>`,
  );
  return html`${
    items.length > 0
      ? html`<ul class="findings">
${items}
</ul>`
      : html`<p>Reading the files and the sheet left no finding.</p>`
  }
${
  held.length > 0
    ? html`<p>${counted(held.length, "cast")} held back by open questions: ${listed(held.map(({ id }) => id))}.</p>
<ul class="findings">
${open}
</ul>`
    : nothing
}
${testTable(casts)}`;
}

/** Files by their last name: in which folder they lay is no one's business in fifty years. */
function placeWords({ where: { file, line, column, variable } }: Problem): string {
  return [
    ...(file === undefined ? [] : [file.split(/[/\\]/).at(-1)!]),
    ...(line === undefined ? [] : [`line ${line}`]),
    ...(column === undefined ? [] : [`column ${column}`]),
    ...(variable === undefined ? [] : [variable]),
  ].join(", ");
}

/** How many values each test judged questionable or bad, and in how many casts. */
function testTable(casts: readonly CastSummary[]): Markup {
  const counts = new Map<
    string,
    { test: string; quantity: string; questionable: number; bad: number; casts: number }
  >();
  for (const { quantities } of casts)
    for (const [name, { name: words, tests }] of quantities)
      for (const [test, [questionable, bad]] of tests) {
        if (test === "inputs") continue;
        const key = `${test} ${name}`;
        const before = counts.get(key) ?? { test, quantity: words, questionable: 0, bad: 0, casts: 0 };
        counts.set(key, {
          ...before,
          questionable: before.questionable + questionable,
          bad: before.bad + bad,
          casts: before.casts + 1,
        });
      }
  if (counts.size === 0) return html`<p>No quality test found a value questionable or bad.</p>`;
  const rows = [...counts.values()].map(
    ({ test, quantity, ...each }) =>
      html`<tr><th scope="row">${test === "manual" ? "judged by a person" : test.replaceAll("_", " ")}</th><td>${quantity}</td><td class="n">${each.questionable}</td><td class="n">${each.bad}</td><td class="n">${each.casts}</td></tr>`,
  );
  return html`<div class="sheet"><table>
<caption>Values that a quality test found questionable or bad. A value can be found so by several tests; computed quantities take the flags of what they are computed from.</caption>
<thead><tr><th scope="col">Test</th><th scope="col">Quantity</th><th scope="col" class="n">Questionable</th><th scope="col" class="n">Bad</th><th scope="col" class="n">Casts</th></tr></thead>
<tbody>
${rows}
</tbody></table></div>`;
}

/** What was done to the data, step by step, with counts over all casts. */
export function stepsSection(casts: readonly CastSummary[], record: string): Markup {
  const steps = new Map<string, { records: StepRecord[]; ids: string[] }>();
  for (const { id, steps: own } of casts)
    for (const step of own) {
      const entry = steps.get(step.step) ?? { records: [], ids: [] };
      entry.records.push(step);
      if (entry.ids.at(-1) !== id) entry.ids.push(id);
      steps.set(step.step, entry);
    }
  const rows = [...steps].map(
    ([step, { records, ids }]) =>
      html`<tr><th scope="row">${step}</th><td class="n">${ids.length}</td><td>${wordsOf(records)}</td><td>${countsOf(records)}</td></tr>`,
  );
  return html`<p>In the order of the work, for ${counted(casts.length, "cast")}. Every parameter stands in <code>${record}</code>; the source files are kept byte for byte.</p>
<div class="sheet"><table>
<thead><tr><th scope="col">Step</th><th scope="col" class="n">Casts</th><th scope="col">What was done</th><th scope="col">Counted over all</th></tr></thead>
<tbody>
${rows}
</tbody></table></div>`;
}

/** Sentences that differ in numbers alone are told as one, with the smallest and the largest of each number. */
function wordsOf(records: readonly StepRecord[]): string {
  const groups = new Map<string, string[][]>();
  for (const { words } of records) {
    const form = words.replace(NUMBER, GAP);
    groups.set(form, [...(groups.get(form) ?? []), words.match(NUMBER) ?? []]);
  }
  const most = [...groups].sort((a, b) => b[1].length - a[1].length);
  const told = most.slice(0, FEW).map(([form, numbers]) => {
    let at = -1;
    const words = form.replaceAll(GAP, () => {
      at++;
      return rangeOf(numbers.map((each) => each[at]!));
    });
    return most.length === 1 ? words : `${words} (${numbers.length})`;
  });
  const rest = most.slice(FEW).reduce((sum, [, numbers]) => sum + numbers.length, 0);
  return `${told.join("; ")}${rest > 0 ? `; otherwise for ${rest} more` : ""}`;
}

const NUMBER = /(?<![\w.-])-?\d+(?:\.\d+)?(?!\w)/g;
/** Stands for a number; no sentence has it. */
const GAP = "\u0000";

function rangeOf(numbers: readonly string[]): string {
  const sorted = [...numbers].sort((a, b) => parseNumber(a) - parseNumber(b));
  const [least, most] = [sorted[0]!, sorted.at(-1)!];
  return least === most ? least : `${least} to ${most}`;
}

function countsOf(records: readonly StepRecord[]): string {
  const sums = new Map<string, number>();
  for (const { counts } of records)
    for (const [name, count] of Object.entries(counts))
      if (SUMMED(name)) sums.set(name, (sums.get(name) ?? 0) + count);
  return [...sums]
    .filter(([, sum]) => sum !== 0)
    .map(([name, sum]) => `${countWords(name)} ${sum}`)
    .join("; ");
}

/** Places and largest values make no sum. */
const SUMMED = (name: string): boolean => name !== "deepestRow" && name !== "maxPressure";

/** "airRowsAtStart" as "air rows at start". */
const countWords = (name: string): string =>
  name
    .replaceAll(".", ": ")
    .replaceAll("_", " ")
    .replace(/[a-z][A-Z]/g, ([a, b]) => `${a} ${b!.toLowerCase()}`);
