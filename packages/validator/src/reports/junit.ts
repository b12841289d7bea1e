import type { CheckedFile } from "../engine/check-file.ts";
import type { Finding } from "../engine/finding.ts";
import { placeInWords } from "./check-text.ts";
import { escaped } from "./markup.ts";

/** One case: a rule that found something in a file, all its places in the text. */
function testCase(path: string, rule: string, findings: readonly Finding[]): string[] {
  const [first] = findings;
  if (first === undefined) return [];
  const told = findings
    .map(({ level, where, message, remedy }) => `${level} at ${placeInWords(where)}: ${message}\n  ${remedy}`)
    .join("\n");
  const head = `    <testcase classname="${escaped(path)}" name="${escaped(rule)}"`;
  // advice is told, but nothing fails for it
  if (findings.every(({ level }) => level === "advice"))
    return [`${head}>`, `      <system-out>${escaped(told)}</system-out>`, "    </testcase>"];
  const failing = findings.find(({ level }) => level !== "advice") ?? first;
  return [
    `${head}>`,
    `      <failure type="${failing.level}" message="${escaped(failing.message)}">${escaped(told)}</failure>`,
    "    </testcase>",
  ];
}

function suite(file: CheckedFile): { tests: number; failures: number; errors: number; lines: string[] } {
  const { path, format, findings } = file;
  const groups = new Map<string, Finding[]>();
  for (const finding of findings) groups.set(finding.rule, [...(groups.get(finding.rule) ?? []), finding]);
  const failures = [...groups.values()].filter((own) => own.some(({ level }) => level !== "advice")).length;
  const open = (tests: number, failed: number, errors: number) =>
    `  <testsuite name="${escaped(path)}" tests="${tests}" failures="${failed}" errors="${errors}">`;
  if (format === null) {
    const message = escaped(findings.map((finding) => finding.message).join("; "));
    const lines = [
      open(1, 0, 1),
      `    <testcase classname="${escaped(path)}" name="readable">`,
      `      <error type="unreadable" message="${message}"/>`,
      "    </testcase>",
      "  </testsuite>",
    ];
    return { tests: 1, failures: 0, errors: 1, lines };
  }
  const cases = [...groups].flatMap(([rule, own]) => testCase(path, rule, own));
  const clean = [`    <testcase classname="${escaped(path)}" name="no finding"/>`];
  const tests = Math.max(1, groups.size);
  return {
    tests,
    failures,
    errors: 0,
    lines: [open(tests, failures, 0), ...(cases.length > 0 ? cases : clean), "  </testsuite>"],
  };
}

/** The verdict on several files as XML that test servers read: a suite for each file, a case for each rule that found. */
export function junitText(files: readonly CheckedFile[]): string {
  const suites = files.map(suite);
  const sum = (key: "tests" | "failures" | "errors") => suites.reduce((total, each) => total + each[key], 0);
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<testsuites name="wherry check" tests="${sum("tests")}" failures="${sum("failures")}" errors="${sum("errors")}">`,
    ...suites.flatMap(({ lines }) => lines),
    "</testsuites>",
    "",
  ].join("\n");
}
