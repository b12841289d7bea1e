import { type NameAnswer, type VocabularyVersion, vocabularies } from "@wherry/survey";
import { Command } from "commander";
import type { Context } from "../command.ts";
import { Exit } from "../exit.ts";

export function vocabularyCommand({ terminal, finish }: Context): Command {
  return new Command("vocabulary")
    .summary("versions of the vocabularies, and what a standard name is")
    .description(
      "Shows the versions of the vocabularies that files are written and judged by; looks up standard names.",
    )
    .argument("[name...]", "standard names to look up")
    .option("--vocabulary <file>", "a CF standard-name table in place of the shipped one")
    .option("--json", "write one JSON document to standard output")
    .addHelpText("after", "\nExample:\n  $ wherry vocabulary sea_water_practical_salinity")
    .action(async (names: string[], options: { vocabulary?: string; json?: boolean }) => {
      const result = await vocabularies(names, options.vocabulary);
      if (!result.ok) {
        result.problems.forEach(terminal.problem);
        return finish(Exit.unreadable);
      }
      const { versions, names: answers } = result.value;
      terminal.out(
        options.json === true
          ? `${JSON.stringify({ version: 1, vocabularies: versions, names: answers }, null, 2)}\n`
          : [...(names.length > 0 ? answers.map(answerLine) : versions.map(versionLine)), ""].join("\n"),
      );
      finish(answers.some(({ found }) => found === null) ? Exit.findings : Exit.clean);
    });
}

const versionLine = ({ name, version, date, entries, file }: VocabularyVersion): string =>
  [
    `${name.padEnd(18)} ${version.padEnd(12)}`,
    entries === null ? null : `${entries} entries`,
    date === null ? null : `of ${date.slice(0, 10)}`,
    file === null ? null : `from ${file}`,
  ]
    .filter((part) => part !== null)
    .join("  ")
    .trimEnd();

function answerLine({ asked, found, near }: NameAnswer): string {
  if (found === null)
    return `${asked}: not in the table${near.length > 0 ? `; spelt nearly so: ${near.join(", ")}` : ""}`;
  const { canonicalUnits, aliasOf, alsoAliasOf } = found;
  const current = [aliasOf, ...alsoAliasOf].filter((name) => name !== null).join(" or ");
  return `${asked}: canonical unit ${canonicalUnits ?? "none"}${current === "" ? "" : `; an alias, now ${current}`}`;
}
