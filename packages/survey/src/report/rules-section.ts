import type { CheckedFile, Finding, Level } from "@wherry/validator";
import { counted, html, listed, type Markup, nothing } from "./html.ts";

/** Most findings told; each is told once for all files. */
const MOST = 40;

const HEADING = html`<h3 class="apart">By the rules</h3>
`;

const WORDS: Readonly<Record<Level, string>> = { error: "Error", warning: "Warning", advice: "Advice" };

/** What `wherry check` says of the files beside the page; null: they were too many or too large to check here. */
export function rulesSection(checked: readonly CheckedFile[] | null): Markup {
  if (checked === null)
    return html`${HEADING}<p>The data set is too large to be checked along the way: <code>wherry check</code> tells whether it meets an archive's rules.</p>`;
  if (checked.length === 0) return nothing;
  const sum = (level: Level) => checked.reduce((total, { counts }) => total + counts[level], 0);
  const sets = [...new Set(checked.flatMap(({ ruleSets }) => ruleSets))];
  const told = (levels: readonly Level[]) => {
    const groups = grouped(checked, levels);
    const items = groups.slice(0, MOST).map((group) => item(group, checked.length));
    const rest = groups.length - items.length;
    return html`<ul class="findings">
${items}
</ul>
${rest > 0 ? html`<p>${counted(rest, "further finding")}: <code>wherry check</code> tells all.</p>` : nothing}`;
  };
  const advice = counted(sum("advice"), "piece of advice", "pieces of advice");
  return html`${HEADING}<p>${counted(checked.length, "netCDF file")} checked by ${listed(sets)}: ${listed([counted(sum("error"), "error"), counted(sum("warning"), "warning"), advice])}.</p>
${sum("error") + sum("warning") > 0 ? told(["error", "warning"]) : nothing}
${sum("advice") > 0 ? html`<details><summary>Advice</summary>${told(["advice"])}</details>` : nothing}`;
}

/** A finding with the files that have it. */
const item = ({ finding: { level, message, remedy, rule }, files }: Group, all: number): Markup => {
  const where =
    files.length === all && all > 1
      ? "every file"
      : `${listed(files.slice(0, 3))}${files.length > 3 ? ` and ${files.length - 3} more` : ""}`;
  return html`<li><b>${WORDS[level]}</b>: ${message.replace(/[.]$/, "")}. ${remedy} <span class="note">In ${where}; rule <code>${rule}</code></span></li>`;
};

interface Group {
  readonly finding: Finding;
  readonly files: string[];
}

/** Findings of one rule with one message, worst first, with the files that have them. */
function grouped(checked: readonly CheckedFile[], levels: readonly Level[]): readonly Group[] {
  const groups = new Map<string, Group>();
  for (const level of levels)
    for (const { path, findings } of checked)
      for (const finding of findings) {
        if (finding.level !== level) continue;
        const key = JSON.stringify([finding.rule, finding.message]);
        const group = groups.get(key) ?? { finding, files: [] };
        if (group.files.at(-1) !== path) group.files.push(path);
        groups.set(key, group);
      }
  return [...groups.values()];
}
