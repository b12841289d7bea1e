import { describe, expect, test } from "vitest";
import { readSheet } from "./read-sheet.ts";

const sheet = (survey: string, people = "") => `version: 1
created: 2025-06-02T08:00:00Z
survey:
  id: quay
${survey}${people}`;

const problems = (text: string) => {
  const read = readSheet(text, "survey.yaml");
  return read.ok ? [] : read.problems.map(({ code, where }) => `${code} ${where.line}`);
};

describe("access and licence", () => {
  const access = (license: string, rest: string) =>
    problems(sheet(`  license: ${license}\n  access: { ${rest} }\n`));

  test.each([
    ["CC-BY-4.0", "right: open"],
    ["CC-BY-4.0", 'right: embargoed, embargo_end: "2027-01-01"'],
    ["CC-BY-NC-4.0", "right: restricted"],
    ["on request", "right: metadata only, conditions: ask the station"],
  ])("%s with %s agree", (license, rest) => expect(access(license, rest)).toEqual([]));

  test.each([
    ["CC-BY-4.0", "right: restricted"],
    ["https://creativecommons.org/publicdomain/zero/1.0/", "right: metadata only"],
    ["All rights reserved", "right: open"],
    ["CC-BY-4.0", "right: embargoed"],
    ["CC-BY-4.0", 'right: open, embargo_end: "2027-01-01"'],
    ["CC-BY-4.0", 'right: embargoed, embargo_end: "2025-01-01"'],
  ])("%s with %s contradict each other", (license, rest) =>
    expect(access(license, rest)).toEqual(["sheet/access 6"]),
  );

  test("a licence id that the SPDX list does not have is told with the nearest", () => {
    const read = readSheet(sheet("  license: CC-BY-4\n"), "survey.yaml");
    expect(read.ok).toBe(false);
    if (read.ok) return;
    expect(read.problems[0].code).toBe("sheet/licence");
    expect(read.problems[0].remedy).toContain("CC-BY-4.0");
  });
});

describe("people", () => {
  const creator = (rest: string) =>
    problems(sheet("", `people:\n  creator:\n    name: Ines Invented\n${rest.replaceAll(/^/gm, "    ")}\n`));

  test("a person with an ORCID that holds, who agreed", () =>
    expect(creator("type: person\norcid: 0000-0002-1825-0097\nconsent: true")).toEqual([]));

  test.each([
    ["type: person\norcid: 0000-0002-1825-0098", "sheet/orcid 9"],
    ["type: group\norcid: 0000-0002-1825-0097", "sheet/orcid 9"],
    ["ror: https://ror.org/03yrm5c27", "sheet/ror 8"],
    ["type: person\nconsent: false", "sheet/consent 9"],
  ])("%s is refused", (rest, problem) => expect(creator(rest)).toEqual([problem]));
});
