/**
 * Makes every generated file of the repository again:
 *
 *   npx tsx --conditions=wherry-source tools/generate.ts [NAME...] [--strict]
 *
 * Without names all generators run. One that needs a program or data set that this machine lacks is left out
 * with its reason; with --strict (as in CI) that is a failure.
 */
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { generateContractTypes } from "./generators/contract-types.ts";
import { generateDemoPicture } from "./generators/demo-picture.ts";
import { generateProcessingReference } from "./generators/processing-reference.ts";
import { generateQuantitiesReference } from "./generators/quantities-reference.ts";
import { generateRecordsReference } from "./generators/records-reference.ts";
import { generateRuleReference } from "./generators/rule-reference.ts";
import { generateSheetReference } from "./generators/sheet-reference.ts";
import { generateShippedSchemas } from "./generators/shipped-schemas.ts";
import { generateSimdTwins } from "./generators/simd-twins.ts";
import { generateStandardNames, generateWordLists } from "./generators/vocabularies.ts";

interface Generator {
  readonly name: string;
  /** Paths outside the repository without which it cannot run, and where they come from. */
  readonly needs?: { readonly paths: readonly string[]; readonly from: string };
  /** Writes files and gives their paths. */
  run(root: string): Promise<string[]> | string[];
}

/** Runs a script that writes its own files and prints their paths, one a line. */
const script =
  (program: string, ...args: string[]) =>
  (cwd: string): string[] => {
    const done = spawnSync(program, args, { cwd, encoding: "utf8", stdio: ["ignore", "pipe", "inherit"] });
    if (done.error) throw done.error;
    if (done.status !== 0) throw new Error(`${[program, ...args].join(" ")} ended with ${done.status}`);
    return done.stdout.split("\n").filter((line) => line !== "");
  };

const generators: readonly Generator[] = [
  { name: "anomaly-ratio-table", run: script("python3", "tools/pack_anomaly_ratio.py") },
  { name: "simd-twins", run: generateSimdTwins },
  { name: "contract-types", run: generateContractTypes },
  { name: "shipped-schemas", run: generateShippedSchemas },
  {
    name: "units-table",
    needs: { paths: ["/usr/share/xml/udunits/udunits2.xml"], from: "Debian package libudunits2-data" },
    run: script("python3", "tools/make_units_table.py"),
  },
  { name: "standard-names", run: generateStandardNames },
  { name: "word-lists", run: generateWordLists },
  { name: "quantities-reference", run: generateQuantitiesReference },
  { name: "rule-reference", run: generateRuleReference },
  { name: "processing-reference", run: generateProcessingReference },
  { name: "records-reference", run: generateRecordsReference },
  { name: "sheet-reference", run: generateSheetReference },
  { name: "demo-picture", run: generateDemoPicture },
];

async function main(args: readonly string[]): Promise<number> {
  const strict = args.includes("--strict");
  const wanted = args.filter((arg) => arg !== "--strict");
  const unknown = wanted.filter((name) => !generators.some((generator) => generator.name === name));
  if (unknown.length > 0) {
    console.error(
      `no generator named ${unknown.join(", ")}; there are ${generators.map((g) => g.name).join(", ")}`,
    );
    return 2;
  }
  const root = join(dirname(fileURLToPath(import.meta.url)), "..");
  let code = 0;
  for (const { name, needs, run } of generators) {
    if (wanted.length > 0 && !wanted.includes(name)) continue;
    const missing = needs?.paths.filter((path) => !existsSync(path)) ?? [];
    if (needs && missing.length > 0) {
      console.error(`${name}: left out, ${missing.join(", ")} is not there (${needs.from})`);
      if (strict) code = 1;
      continue;
    }
    for (const path of await run(root)) console.log(`${name}: ${path}`);
  }
  return code;
}

process.exitCode = await main(process.argv.slice(2));
