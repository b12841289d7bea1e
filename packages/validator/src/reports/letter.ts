import type { CheckedFile } from "../engine/check-file.ts";
import type { Finding, Level } from "../engine/finding.ts";
import { citationInWords, placeInWords } from "./check-text.ts";
import { findingGroups } from "./finding-groups.ts";
import { counted } from "./lines.ts";

const HEADS: Readonly<Record<Level, string>> = {
  error: "What has to be mended",
  warning: "What should be better",
  advice: "What would help",
};

/** Signs that Markdown would take for its own. */
const plain = (text: string): string => text.replace(/[\\`*_{}[\]<>#|]/g, (sign) => `\\${sign}`);

function paragraph([first, ...others]: readonly [Finding, ...Finding[]]): string[] {
  const { message, why, remedy, citation, rule, where } = first;
  const source = citation === null ? "the format of the file" : citationInWords(citation);
  const also = others.slice(0, 12).map((other) => placeInWords(other.where));
  const rest = others.length > 12 ? `, and ${others.length - 12} more` : "";
  return [
    `- **${plain(placeInWords(where))}**: ${plain(message)}. ${plain(why)}`,
    ...(also.length > 0 ? [`  The same at ${plain(also.join("; "))}${rest}.`] : []),
    `  *What to do:* ${plain(remedy)} (${plain(source)}; rule \`${rule}\`)`,
  ];
}

function section({ path, format, findings, waived = [] }: CheckedFile): string[] {
  const name = path.split(/[\\/]/).at(-1) ?? path;
  if (format === null)
    return [
      `## ${plain(name)}`,
      "",
      "This file could not be read:",
      "",
      ...findings.map(({ message, remedy }) => `- ${plain(message)}. ${plain(remedy)}`),
      "",
    ];
  const groups = findingGroups(findings);
  const parts = (["error", "warning", "advice"] as const).flatMap((level) => {
    const own = groups.filter(([first]) => first.level === level);
    return own.length === 0 ? [] : [`### ${HEADS[level]}`, "", ...own.flatMap(paragraph), ""];
  });
  const accepted = waived.map(
    ({ finding, waiver }) =>
      `- ${plain(finding.message)}: accepted by ${plain(waiver.by)}, ${plain(waiver.reason)}`,
  );
  return [
    `## ${plain(name)}`,
    "",
    ...(parts.length > 0 ? parts : ["Nothing was found that needs a change.", ""]),
    ...(accepted.length > 0 ? ["### What was accepted as it is", "", ...accepted, ""] : []),
  ];
}

/** The verdict as a letter in Markdown, to send to the person who made the files. */
export function letterText(files: readonly CheckedFile[]): string {
  const clean = files.filter(({ counts }) => counts.error + counts.warning === 0).length;
  const left = files.length - clean;
  const summary =
    left === 0
      ? "They are ready as far as such a check can tell."
      : `In ${left === files.length ? (left === 1 ? "it" : "all of them") : `${left} of them`} something should be changed first; each point below says where, why and how.`;
  return [
    "# About your files",
    "",
    `Thank you for the data. We went through ${counted(files.length, "file")}. ${summary}`,
    "",
    ...files.flatMap(section),
    "If a point seems wrong to you, please tell us: name the rule that stands with it.",
    "",
  ].join("\n");
}
