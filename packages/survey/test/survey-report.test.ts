import type { SurveySheet } from "@wherry/contracts";
import type { Cast } from "@wherry/core";
import { inventCast } from "@wherry/testkit";
import type { CheckedFile, Finding } from "@wherry/validator";
import { describe, expect, test } from "vitest";
import { processSurvey } from "../src/process-survey.ts";
import { type ReportFacts, surveyReport } from "../src/report/survey-report.ts";
import { startWorkers } from "../src/workers.ts";

const morning = Date.UTC(2025, 4, 13, 6) / 1000;
const fix = (latitude: number, longitude: number) => ({ latitude, longitude, satellites: 9, quality: null });

/** Casts a quarter of an hour apart on a line from west to east, a kilometre and a half between them. */
const castsOnALine = (count: number, more: (k: number) => Partial<Cast> = () => ({})): readonly Cast[] =>
  Array.from({ length: count }, (_, k) => ({
    ...inventCast({ seed: k + 1, offset: 0.1 }).cast,
    id: `LINE-${String(k + 1).padStart(2, "0")}`,
    ...{ time: morning + 900 * k, timeRole: "start" as const },
    start: fix(46.3, -4.2 + 0.02 * k),
    end: fix(46.3002, -4.2 + 0.02 * k),
    ...more(k),
  }));

const plainSheet: SurveySheet = { version: 1, survey: { id: "line", title: "Casts on a line (invented)" } };

async function reportOf(
  casts: readonly Cast[],
  sheet: SurveySheet = plainSheet,
  more: Partial<ReportFacts> = {},
): Promise<string> {
  const done = await processSurvey(sheet, casts, await startWorkers(1), {});
  return surveyReport(done.casts, done.layers, {
    ...{ sheet, created: "2025-06-02T08:00:00Z", software: "wherry 0.1.0", record: "line_processing.json" },
    ...{ held: [], questions: [], findings: [], shoreline: null, checked: [] },
    ...more,
  });
}

const VOID = new Set(["meta", "br"]);

/** Names of elements that are open at the end; throws where tags cross. Text with a bare < would be seen as a tag. */
function openElements(page: string): readonly string[] {
  const open: string[] = [];
  for (const [, end, name, , selfClosed] of page
    .replace(/<!doctype html>/, "")
    .replace(/<style>[^<]*<\/style>/g, "")
    .matchAll(/<(\/?)([A-Za-z][\w]*)((?:\s[\w:-]+(?:="[^"<]*")?)*)\s*(\/?)>|<(?!\/?[A-Za-z])/g)) {
    if (name === undefined) throw new Error("a bare < stands in the page");
    if (end) {
      if (open.pop() !== name) throw new Error(`</${name}> closes another element`);
    } else if (!selfClosed && !VOID.has(name)) open.push(name);
  }
  return open;
}

const count = (page: string, pattern: RegExp) => [...page.matchAll(pattern)].length;

describe("a survey on a line", async () => {
  const page = await reportOf(castsOnALine(6));

  test("is one well-formed page that asks for nothing outside itself", () => {
    expect(openElements(page)).toEqual([]);
    expect(page).not.toMatch(/<(?:script|link|img|iframe|object|embed|image|use)\b/i);
    expect(page).not.toMatch(/(?:src|href|xlink:href)="(?!#)/);
    expect(page.replaceAll('xmlns="http://www.w3.org/2000/svg"', "")).not.toMatch(
      /url\((?!#)|@import|https?:/,
    );
    expect(page).not.toMatch(/NaN|Infinity|undefined|\[object/);
  });

  test("ids are unique, and what refers to one finds it", () => {
    const ids = [...page.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const wanted = [...page.matchAll(/href="#([^"]+)"|url\(#([^)]+)\)|aria-labelledby="([^"]+)"/g)].flatMap(
      ([, a, b, c]) => (a ?? b ?? c!).split(" "),
    );
    expect(wanted.filter((id) => !ids.includes(id))).toEqual([]);
  });

  test("has every section, and a title and a description for each picture", () => {
    for (const id of ["where", "casts", "findings", "together", "water", "section", "one-by-one", "done"])
      expect(page).toContain(`<section class="plate" id="${id}">`);
    const pictures = count(page, /<svg /g);
    // map, overlay, diagram, two sections, six casts
    expect(pictures).toBe(11);
    expect(count(page, /<title id=/g)).toBe(pictures);
    expect(count(page, /<desc id="[^"]+">[^<]{30,}<\/desc>/g)).toBe(pictures);
    expect(count(page, /<table>/g)).toBeGreaterThanOrEqual(6 + 3);
  });

  test("says what it is not for, on screen and on paper", () => {
    expect(count(page, /not for navigation or diving/g)).toBeGreaterThanOrEqual(3);
  });

  test("tells the section's criterion and length: five steps of 0.02 degrees at 46.3 N", () => {
    // a degree of longitude on the sphere of 6371 km: 111.19 km times the cosine of the latitude
    const length = 5 * 0.02 * 111.195 * Math.cos((46.3 * Math.PI) / 180);
    expect(page).toContain(`6 stations on ${length.toFixed(2)} km`);
    expect(page).toContain("at least 4 places, none farther from a straight line than 10 % of its length");
  });

  test("is the same text again", async () => {
    expect(await reportOf(castsOnALine(6))).toBe(page);
  });
});

test("flags in the table are those of the casts", async () => {
  const casts = castsOnALine(4);
  const done = await processSurvey(plainSheet, casts, await startWorkers(1), {});
  const page = await reportOf(casts);
  for (const cast of done.casts) {
    const measured = [...cast.columns.values()].filter(({ source }) => source !== null);
    const flagged = (wanted: number) =>
      measured.reduce((sum, { flags }) => sum + flags.filter((flag) => flag === wanted).length, 0);
    const row = page.slice(page.indexOf(`>${cast.id}</a></th>`)).split("</tr>")[0]!;
    const cells = [...row.matchAll(/<td[^>]*>([^<]*)<\/td>/g)].map(([, cell]) => cell);
    expect(cells.slice(-2)).toEqual([String(flagged(3)), String(flagged(4))]);
  }
});

test("text of people and files stays text, and turns nothing round", async () => {
  const hostile = `"><script>alert(1)</script><img src=x onerror=alert(1)>&amp;'\u0000`;
  const turned = "\u202Eevil\u202C";
  const casts = castsOnALine(2, (k) => ({
    source: { path: `${hostile}.csv`, sha256: "" },
    id: `cast.${k}`,
  }));
  const page = await reportOf(
    casts,
    {
      version: 1,
      survey: {
        id: "line",
        title: hostile,
        summary: `${turned} ${"long ".repeat(200_000)}`,
        comment: "</style>",
      },
      casts: [{ id: "cast.0", file: "a", station: turned, notes: hostile }],
    },
    {
      findings: [{ code: "x/y", message: hostile, where: { file: hostile, line: 3 }, remedy: turned }],
      held: [{ id: "h", questions: ["time"] }],
      questions: [{ text: hostile, answerWith: `- {value: ${hostile}}`, casts: ["h"] }],
    },
  );
  expect(openElements(page)).toEqual([]);
  expect(page).not.toMatch(/<script|<img|onerror=(?!alert\(1\)&gt;)/);
  expect(page).not.toContain("\u0000");
  expect(count(page, /<bdi>[^<]*\u202E[^<]*<\/bdi>/g)).toBe(count(page, /\u202E/g));
  expect(page.length).toBeLessThan(400_000);
  expect(page).toContain("1000007 characters, not all shown");
  expect(page).toContain("1 cast still waits for an answer");
});

test("what the rules say of the files stands once, with the files it concerns", async () => {
  const finding: Finding = {
    ...{ rule: "cf/x", citation: null, where: {}, key: "k" },
    ...{ message: "there is <no> unit", why: "w", remedy: "Give one.", count: 1, places: [] },
    level: "error",
    basis: "clause",
  };
  const file = (path: string, findings: readonly Finding[]): CheckedFile => ({
    ...{ path, format: "netCDF classic", edition: "1.13", editionChoice: null, ruleSets: ["cf"] as const },
    ...{ findings, counts: { error: findings.length, warning: 0, advice: 0 } },
  });
  const files = [file("a.nc", [finding]), file("b.nc", []), file("c.nc", [finding])];
  const page = await reportOf(castsOnALine(1), plainSheet, { checked: files });
  expect(page).toContain("3 netCDF files checked by cf: 2 errors, no warning and no piece of advice");
  expect(count(page, /there is &lt;no&gt; unit/g)).toBe(1);
  expect(page).toContain("In a.nc and c.nc; rule <code>cf/x</code>");
  const unchecked = await reportOf(castsOnALine(1), plainSheet, { checked: null });
  expect(unchecked).toContain("too large to be checked along the way");
});

test("casts without positions, times or quantities still make a page that says so", async () => {
  const [cast] = castsOnALine(1) as readonly [Cast];
  const bare: Cast = {
    ...cast,
    ...{ id: "bare", time: Number.NaN, timeRole: "unknown", start: null, end: null, elapsed: null },
    columns: new Map([...cast.columns].filter(([name]) => name === "pressure")),
  };
  const page = await reportOf([bare]);
  expect(openElements(page)).toEqual([]);
  expect(page).toContain("No cast has a position, so there is no map.");
  expect(page).not.toMatch(/NaN|Infinity|undefined/);
  const none = await reportOf([]);
  expect(openElements(none)).toEqual([]);
  expect(none).not.toMatch(/NaN|Infinity|undefined/);
});

test("of very many casts not all are drawn one by one, and the page says which", async () => {
  const page = await reportOf(castsOnALine(320));
  expect(count(page, /<article class="cast"/g)).toBe(300);
  expect(page).toContain("320 casts are too many to draw one by one: 300 are");
  expect(count(page, /<th scope="row" class="w">/g)).toBe(320);
  // a browser opens this without a pause; common practice, no source
  expect(page.length).toBeLessThan(10_000_000);
}, 60_000);
