import type { CheckedFile } from "../engine/check-file.ts";
import type { Finding, Level } from "../engine/finding.ts";
import { citationInWords, placeInWords } from "./check-text.ts";
import { findingGroups } from "./finding-groups.ts";
import { counted } from "./lines.ts";
import { escaped } from "./markup.ts";

const WORDS: Readonly<Record<Level, string>> = { error: "Error", warning: "Warning", advice: "Advice" };

/** Weight shows in the line at the side (double, single, dotted) and in the word, never in colour alone. */
const STYLE = `
:root { --ink: #1d2733; --paper: #fbfaf6; --water: #2f5d73; --faint: #6b7680; }
@media (prefers-color-scheme: dark) { :root { --ink: #e6e4dc; --paper: #161d24; --water: #8fb9cc; --faint: #9aa5ad; } }
body { font: 1rem/1.5 Georgia, "Times New Roman", serif; color: var(--ink); background: var(--paper);
  max-width: 46rem; margin: 2rem auto; padding: 0 1rem; }
h1, h2 { font-weight: normal; line-height: 1.2; }
h2 { margin-top: 3rem; border-top: 1px solid var(--water); padding-top: .6rem; overflow-wrap: anywhere; }
.facts, .source { color: var(--faint); font-size: .9rem; }
article { margin: 1.4rem 0; padding: .1rem 0 .1rem 1rem; border-left: 1px solid var(--water); }
article.error { border-left: 6px double var(--water); }
article.advice { border-left: 2px dotted var(--water); }
article p { margin: .3rem 0; overflow-wrap: anywhere; }
code { font: .88em ui-monospace, monospace; }
`;

function article([first, ...others]: readonly [Finding, ...Finding[]]): string {
  const { level, where, message, why, remedy, citation, rule } = first;
  const also = others.slice(0, 12).map((other) => escaped(placeInWords(other.where)));
  const rest = others.length > 12 ? ` and ${others.length - 12} more` : "";
  const source = citation === null ? "the format of the file" : citationInWords(citation);
  return [
    `<article class="${level}">`,
    `<p><b>${WORDS[level]}</b> at ${escaped(placeInWords(where))}: ${escaped(message)}.</p>`,
    also.length > 0 ? `<p>The same at ${also.join("; ")}${rest}.</p>` : "",
    `<p>${escaped(why)}</p>`,
    `<p><i>What to do:</i> ${escaped(remedy)}</p>`,
    `<p class="source">${escaped(source)}; rule <code>${escaped(rule)}</code></p>`,
    "</article>",
  ]
    .filter((line) => line !== "")
    .join("\n");
}

function section(file: CheckedFile): string {
  const { path, format, edition, ruleSets, findings, counts, waived = [] } = file;
  const facts =
    format === null
      ? "This file cannot be read."
      : [
          format,
          ...(edition === null ? [] : [`CF ${edition}`]),
          `rules ${ruleSets.join(", ")}`,
          `${counted(counts.error, "error")}, ${counted(counts.warning, "warning")}, ${counted(counts.advice, "advice", "pieces of advice")}`,
        ].join("; ");
  const accepted = waived.map(
    ({ finding, waiver }) =>
      `<li>${escaped(finding.message)}: accepted by ${escaped(waiver.by)}, ${escaped(waiver.reason)}</li>`,
  );
  return [
    "<section>",
    `<h2>${escaped(path)}</h2>`,
    `<p class="facts">${escaped(facts)}</p>`,
    ...findingGroups(findings).map(article),
    ...(accepted.length > 0 ? ["<p>Accepted as it is:</p>", `<ul>${accepted.join("\n")}</ul>`] : []),
    "</section>",
  ].join("\n");
}

/** The verdict on several files as one page that needs nothing else: no script, no font, no picture from outside. */
export function htmlPage(files: readonly CheckedFile[]): string {
  const clean = files.filter(({ counts }) => counts.error + counts.warning === 0).length;
  const summary = `${counted(files.length, "file")} checked, ${clean === files.length ? "all" : clean} without error or warning`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>What was found in ${escaped(counted(files.length, "file"))}</title>
<style>${STYLE}</style>
</head>
<body>
<h1>What was found</h1>
<p>${escaped(summary)}.</p>
${files.map(section).join("\n")}
<p class="facts">No finding does not make data right. Sound speed and depth are not for navigation or diving: the hydrographic authority and licensed practice decide.</p>
</body>
</html>
`;
}
