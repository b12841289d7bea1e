import type { CheckedFile, Finding, Level } from "@wherry/validator";
import { counted, html, listed, type Markup, nothing } from "./html.ts";

/** Most findings told; each is told once for all files. */
const MOST = 40;

const WORDS: Readonly<Record<Level, string>> = { error: "Error", warning: "Warning", advice: "Advice" };

/** What `wherry check` says of the files beside the page; null: they were too many or too large to check here. */
export function rulesSection(checked: readonly CheckedFile[] | null): Markup {
  if (checked === null)
    return html`<p>The data set is too large to be checked along the way: <code>wherry check</code> tells whether it meets an archive's rules.</p>`;
  if (checked.length === 0) return nothing;
  const sum = (level: Level) => checked.reduce((total, { counts }) => total + counts[level], 0);
  const sets = [...new Set(checked.flatMap(({ ruleSets }) => ruleSets))];
  const groups = grouped(checked);
  const rest = groups.length - MOST;
  return html`<p>${counted(checked.length, "netCDF file")} checked by ${listed(sets)}: ${listed([counted(sum("error"), "error"), counted(sum("warning"), "warning"), sum("advice") === 1 ? "1 piece of advice" : counted(sum("advice"), "advice", "pieces of advice")])}.</p>
${
  groups.length === 0
    ? nothing
    : html`<ul class="findings">
${groups
  .slice(0, MOST)
  .map(
    ({ finding: { level, message, remedy, rule }, files }) =>
      html`<li><b>${WORDS[level]}</b>: ${message.replace(/[.]$/, "")}. ${remedy} <span class="note">In ${files.length === checked.length && files.length > 1 ? "every file" : `${listed(files.slice(0, 3))}${files.length > 3 ? ` and ${files.length - 3} more` : ""}`}; rule <code>${rule}</code></span></li>`,
  )}
</ul>`
}
${rest > 0 ? html`<p>${counted(rest, "further finding")}: <code>wherry check</code> tells all.</p>` : nothing}`;
}

/** Findings of one rule with one message, worst first, with the files that have them. */
function grouped(
  checked: readonly CheckedFile[],
): readonly { readonly finding: Finding; readonly files: string[] }[] {
  const groups = new Map<string, { finding: Finding; files: string[] }>();
  for (const level of ["error", "warning", "advice"] as const)
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
