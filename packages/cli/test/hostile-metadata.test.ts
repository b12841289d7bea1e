import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { inTemporaryFolder, runWherry } from "@wherry/testkit";
import { expect, test } from "vitest";
import { exportText, lay } from "./survey-folder.ts";

// Texts that attack a page, a spreadsheet, a terminal or a record, all the way to the package.

const SCRIPT = '"><script>alert(1)</script><img src=x onerror=alert(2)>';
const sheet = (title: string) => `version: 1
created: 2025-06-02T08:00:00Z
survey:
  id: quay
  title: ${JSON.stringify(title)}
  summary: ${JSON.stringify(`${SCRIPT} \u202e ${"long ".repeat(200_000)}]]> & more`)}
  keywords: [${JSON.stringify(SCRIPT)}]
  comment: "=1+1, @SUM(A1)"
people:
  creator: { name: ${JSON.stringify(SCRIPT)}, type: group, institution: ${JSON.stringify(SCRIPT)} }
platforms:
  - { name: ${JSON.stringify(SCRIPT)} }
instruments:
  - { name: ${JSON.stringify(SCRIPT)}, comment: "=cmd|' /C calc'!A0" }
exchange: { expocode: 99ZZ20250513 }
casts:
  - { id: Q1, file: q1.csv, station: '=HYPERLINK("http://x.example","y")', notes: "@SUM(A1)${"x".repeat(500)}" }
`;
const filesBelow = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name));

test("markup, formulas, turned text and a megabyte go through as text, escaped in every form", () =>
  inTemporaryFolder(async (cwd) => {
    lay(cwd, { "casts/q1.csv": exportText({ name: `Q1 ${SCRIPT}` }), "survey.yaml": sheet(SCRIPT) });
    const converted = await runWherry(
      [
        "convert",
        "casts",
        "-s",
        "survey.yaml",
        "-o",
        "result",
        "--products",
        "full,binned,series,csv,report,soundspeed,whp",
      ],
      { cwd },
    );
    expect(converted.status, converted.stderr.slice(0, 2000)).toBe(0);
    expect(converted.stderr).toContain("turns the direction");
    expect(converted.stderr).not.toContain("\u202e");
    expect((await runWherry(["pack", "result", "-o", "bag"], { cwd })).status).not.toBe(4);
    const checked = await runWherry(["check", "bag", "--report", "check.html", "check.md", "check.xml"], {
      cwd,
    });
    expect(checked.status).not.toBe(4);

    const files = [...filesBelow(join(cwd, "bag")), join(cwd, "check.html")];
    const pages = files.filter((path) => /\.(html|svg)$/.test(path));
    expect(pages.length).toBeGreaterThan(2);
    for (const page of pages) {
      const text = readFileSync(page, "utf8");
      expect(text, page).not.toMatch(/<script>alert|<img src=x/);
    }
    for (const path of files.filter((name) => name.endsWith(".json"))) {
      expect(() => JSON.parse(readFileSync(path, "utf8")), path).not.toThrow();
    }
    for (const path of files.filter((name) => name.endsWith(".csv") && !name.includes("original"))) {
      const cells = readFileSync(path, "utf8");
      expect(cells, path).not.toMatch(/(^|,|\n)"?[=@]/);
    }
    const positions = readFileSync(join(cwd, "bag", "data", "quay_positions.csv"), "utf8");
    expect(positions).toContain(`"'=HYPERLINK(""http://x.example"",""y"")"`);
    const readMe = readFileSync(join(cwd, "bag", "data", "README.txt"), "utf8");
    expect(readMe).not.toMatch(/\u202e/);
    const record = readFileSync(join(cwd, "bag", "data", "quay_iso19115-3.xml"), "utf8");
    expect(record).not.toMatch(/<script|<img/);
    expect(record).toContain("&lt;script&gt;alert(1)&lt;/script&gt;");
    // labels of bag-info are ours alone: no text of the sheet begins a line of its own
    const labels = readFileSync(join(cwd, "bag", "bag-info.txt"), "utf8").match(/^\S[^:]*/gm);
    expect(labels).toEqual([
      "Source-Organization",
      "Contact-Name",
      "External-Description",
      "External-Identifier",
      "Bagging-Date",
      "Bag-Software-Agent",
      "Payload-Oxum",
    ]);
  }));

test("a control character in a sheet is refused with its place: 2", () =>
  inTemporaryFolder(async (cwd) => {
    lay(cwd, { "casts/q1.csv": exportText(), "survey.yaml": sheet("bell \u0007") });
    const run = await runWherry(["convert", "casts", "-s", "survey.yaml", "-o", "result"], { cwd });
    expect(run.status).toBe(2);
    expect(run.stderr).toContain("U+0007");
    expect(run.stderr).toContain("survey.yaml:5:");
  }));
