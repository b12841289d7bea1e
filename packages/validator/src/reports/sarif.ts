import type { CheckedFile } from "../engine/check-file.ts";
import type { Finding, Level } from "../engine/finding.ts";
import { everyRule } from "../engine/registry.ts";
import type { RuleText } from "../engine/rule.ts";
import { citationInWords } from "./check-text.ts";

const LEVELS: Readonly<Record<Level, string>> = { error: "error", warning: "warning", advice: "note" };

const toUri = (path: string): string =>
  path
    .replaceAll("\\", "/")
    .split("/")
    .map(encodeURIComponent)
    .join("/")
    .replace(/^([A-Za-z])%3A\//, "file:///$1:/");

/** "temperature:units", the place inside a file that has no lines. */
const logicalName = ({ where: { variable, attribute, dimension } }: Finding): string | null => {
  if (variable === undefined && attribute === undefined && dimension === undefined) return null;
  return `${variable ?? ""}${attribute === undefined ? "" : `:${attribute}`}${dimension === undefined ? "" : `(${dimension})`}`;
};

function locationOf(finding: Finding, path: string) {
  const { line, column, byte } = finding.where;
  const region =
    line !== undefined
      ? { startLine: line, ...(column === undefined ? {} : { startColumn: column }) }
      : byte !== undefined
        ? { byteOffset: byte, byteLength: 0 }
        : undefined;
  const name = logicalName(finding);
  return {
    physicalLocation: {
      artifactLocation: { uri: toUri(path) },
      ...(region === undefined ? {} : { region }),
    },
    ...(name === null ? {} : { logicalLocations: [{ fullyQualifiedName: name, kind: "member" }] }),
  };
}

const resultOf = (finding: Finding, path: string, index: number, reason?: string) => ({
  ruleId: finding.rule,
  ruleIndex: index,
  level: LEVELS[finding.level],
  message: { text: `${finding.message}. ${finding.remedy}` },
  locations: [locationOf(finding, path)],
  ...(finding.count > 1 ? { occurrenceCount: finding.count } : {}),
  ...(reason === undefined
    ? {}
    : { suppressions: [{ kind: "external", status: "accepted", justification: reason }] }),
});

/**
 * The verdict on several files in the Static Analysis Results Interchange Format.
 *
 * @param options.version  version of the program
 * @param options.rules    rules beside those that ship
 * @source OASIS, SARIF 2.1.0 (2020)
 */
export function sarifDocument(
  files: readonly CheckedFile[],
  { version, rules = [] }: { version: string; rules?: readonly RuleText[] },
) {
  const known = new Map([...everyRule, ...rules].map((rule) => [rule.id, rule as RuleText]));
  const all: { finding: Finding; path: string; reason?: string }[] = files.flatMap((file) => [
    ...file.findings.map((finding) => ({ finding, path: file.path })),
    ...(file.waived ?? []).map(({ finding, waiver }) => ({
      finding,
      path: file.path,
      reason: `${waiver.reason} (${waiver.by})`,
    })),
  ]);
  const ids = [...new Set(all.map(({ finding }) => finding.rule))].sort();
  const described = ids.map((id) => {
    const rule = known.get(id);
    if (rule === undefined) return { id };
    return {
      id,
      shortDescription: { text: rule.title },
      fullDescription: { text: `${rule.why} (${citationInWords(rule.citation)})` },
      help: { text: rule.remedy },
      defaultConfiguration: { level: LEVELS[rule.level] },
    };
  });
  return {
    $schema: "https://docs.oasis-open.org/sarif/sarif/v2.1.0/os/schemas/sarif-schema-2.1.0.json",
    version: "2.1.0",
    runs: [
      {
        tool: { driver: { name: "wherry", version, rules: described } },
        columnKind: "utf16CodeUnits",
        artifacts: files.map(({ path }) => ({ location: { uri: toUri(path) } })),
        results: all.map(({ finding, path, reason }) =>
          resultOf(finding, path, ids.indexOf(finding.rule), reason),
        ),
      },
    ],
  };
}
