import { readdirSync, readFileSync } from "node:fs";
import { basename, extname, join } from "node:path";
import { parseCdl } from "@wherry/netcdf";
import { testData } from "@wherry/testkit";
import { describe, expect, test } from "vitest";
import { checkDataset, checkFile, type Finding } from "../src/index.ts";

/** The samples are of 2023 to 2025; any later moment will do. */
const NOW = Date.parse("2026-11-24T00:00:00Z") / 1000;

const filesIn = (folder: string, extension: string): string[] =>
  readdirSync(folder)
    .filter((name) => extname(name) === extension)
    .map((name) => join(folder, name));

const told = ({ level, rule, where, message }: Finding): string =>
  `${level} ${rule} at ${where.variable ?? ""}:${where.attribute ?? ""}: ${message}`;

const heavy = (findings: readonly Finding[]): string[] =>
  findings.filter(({ level }) => level !== "advice").map(told);

async function findingsOf(path: string): Promise<readonly Finding[]> {
  if (extname(path) !== ".cdl")
    return (await checkFile(readFileSync(path), { path: basename(path), now: NOW })).findings;
  const parsed = parseCdl(readFileSync(path, "utf8"));
  if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join("; "));
  return checkDataset(parsed.value, { path: `${basename(path, ".cdl")}.nc`, now: NOW });
}

describe("files that are right give no error and no warning", () => {
  const right = [
    ...filesIn(testData("reference-products"), ".cdl"),
    ...filesIn(testData("cf-examples"), ".cdl"),
    ...filesIn(testData("samples", "dsg_own"), ".nc"),
  ];
  test.each(right.map((path) => ({ name: basename(path), path })))("$name", async ({ path }) => {
    expect(heavy(await findingsOf(path))).toEqual([]);
  });
});

interface Planted {
  readonly clean: boolean;
  readonly defect: string | null;
  readonly level?: "error" | "warning";
  readonly match?: readonly (readonly string[])[];
  readonly allowed?: readonly { readonly variable?: string; readonly attribute?: string }[];
}

const planted = JSON.parse(readFileSync(testData("samples", "planted", "manifest.json"), "utf8")) as {
  files: Record<string, Planted>;
};

/** All words of one group stand in the finding's variable, attribute or message. */
function hits(finding: Finding, match: readonly (readonly string[])[]): boolean {
  const text =
    `${finding.where.variable ?? ""} ${finding.where.attribute ?? ""} ${finding.message}`.toLowerCase();
  const words = new Set(text.split(/[^a-z0-9_]+/));
  return match.some((group) => group.every((word) => words.has(word.toLowerCase())));
}

const isAllowed = ({ where }: Finding, allowed: Planted["allowed"] = []): boolean =>
  allowed.some(
    ({ variable, attribute }) =>
      (variable === undefined || variable === where.variable) &&
      (attribute === undefined || attribute === where.attribute),
  );

describe("planted defects are found, and nothing else", () => {
  test.each(Object.entries(planted.files).map(([name, entry]) => ({ name, ...entry })))(
    "$name: $defect",
    async ({ name, clean, match = [], allowed, level }) => {
      const findings = await findingsOf(testData("samples", "planted", name));
      if (clean) {
        expect(heavy(findings)).toEqual([]);
        return;
      }
      const hit = findings.filter((finding) => hits(finding, match));
      expect(hit.map((finding) => finding.level)).toContain(level);
      expect(
        heavy(findings.filter((finding) => !hit.includes(finding) && !isAllowed(finding, allowed))),
      ).toEqual([]);
    },
  );
});
