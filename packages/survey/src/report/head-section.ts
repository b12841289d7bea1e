import { extentOf } from "@wherry/charts";
import type { SurveySheet } from "@wherry/contracts";
import type { CastSummary } from "./cast-summary.ts";
import { counted, html, listed, type Markup, nothing } from "./html.ts";
import { countWords, momentWords, numberWords, rangeWords } from "./words.ts";

export interface HeadFacts {
  readonly sheet: SurveySheet;
  readonly created: string;
  readonly software: string;
  /** In the order of time. */
  readonly casts: readonly CastSummary[];
  readonly held: number;
  readonly findings: number;
}

export const CAUTION =
  "Sound speed, depth and everything else here are not for navigation or diving decisions: the hydrographic authority and licensed practice decide.";

/** Title, what it is, the survey in a few sentences, and who stands behind it. */
export function headSection(facts: HeadFacts, contents: Markup): Markup {
  const { survey } = facts.sheet;
  return html`<header>
<div class="leadline"></div>
<div class="beside">
<div>
<h1>${survey.title ?? survey.id}</h1>
${survey.summary === undefined ? nothing : html`<p>${survey.summary}</p>`}
${inShort(facts)}
${survey.comment === undefined ? nothing : html`<p>${survey.comment}</p>`}
<p class="caution" role="note">${CAUTION}</p>
${contents}
</div>
${factList(facts)}
</div>
</header>`;
}

function inShort({ casts, held, findings }: HeadFacts): Markup {
  const profiles = casts.filter(({ kind }) => kind === "profile");
  const series = casts.length - profiles.length;
  const kinds = [
    ...(profiles.length > 0 ? [counted(profiles.length, "cast")] : []),
    ...(series > 0 ? [`${series} series at a fixed depth`] : []),
  ];
  const times = casts.map(({ time }) => time).filter((time) => Number.isFinite(time));
  const [first, last] = (extentOf(times) ?? []).map(momentWords);
  const when =
    first === undefined ? "" : first === last ? `, made ${first}` : ` between ${first} and ${last}`;
  const deepest = extentOf(casts.map((cast) => cast.deepest))?.[1];
  const range = (quantity: string, unit: string) => {
    const all = casts.flatMap((cast) => cast.quantities.get(quantity) ?? []);
    const found = extentOf(all.flatMap(({ least, most }) => [least, most]));
    return found ? [`${rangeWords(...found, 1)}${unit}`] : [];
  };
  const ranges = [
    ...range("temperature", " °C").map((words) => `temperature from ${words}`),
    ...range("salinity", "").map((words) => `Practical Salinity from ${words}`),
  ];
  const measured = casts.flatMap(({ quantities }) =>
    [...quantities.values()].filter((each) => each.measured),
  );
  const sum = (of: "rows" | "questionable" | "bad" | "missing") =>
    measured.reduce((all, each) => all + each[of], 0);
  return html`<p>${listed(kinds) || "No cast"}${when}${deepest === undefined ? "" : `, down to ${numberWords(deepest, 1)} dbar`}${ranges.length > 0 ? `; ${listed(ranges)}` : ""}.
Of ${countWords(sum("rows"))} measured values ${countWords(sum("questionable"))} are flagged questionable and ${countWords(sum("bad"))} bad, ${sum("missing") === 0 ? "none is" : `${countWords(sum("missing"))} are`} missing; nothing was deleted.
${findings > 0 ? `Reading the files and the sheet left ${counted(findings, "finding")}.` : "Files and sheet were read without a finding."}
${held > 0 ? `${counted(held, "cast")} still ${held === 1 ? "waits" : "wait"} for an answer and ${held === 1 ? "is" : "are"} not shown.` : ""}</p>`;
}

function factList({ sheet, created, software }: HeadFacts): Markup {
  const { survey, people, platforms = [], instruments = [] } = sheet;
  const probes = instruments.map(({ name, model, serial_number: serial, calibration_date: calibrated }) =>
    [
      name,
      ...(model === undefined ? [] : [model]),
      ...(serial === undefined ? [] : [`serial number ${serial}`]),
      ...(calibrated === undefined ? [] : [`calibrated ${calibrated}`]),
    ].join(", "),
  );
  const facts: [string, string][] = [
    [
      "Data set",
      `${survey.id}${survey.product_version === undefined ? "" : `, version ${survey.product_version}`}`,
    ],
    ["Made", `${created.slice(0, 10)} with ${software}`],
    ["Creator", people?.creator?.name ?? ""],
    ["Institution", survey.institution ?? people?.creator?.institution ?? ""],
    ["Project", survey.project ?? ""],
    ["Water", survey.sea_name ?? ""],
    ["From", platforms.map(({ name }) => name).join("; ")],
    ["With", probes.join("; ")],
    ["Licence", survey.license ?? ""],
  ];
  const told = facts
    .filter(([, words]) => words !== "")
    .map(([name, words]) => html`<dt>${name}</dt><dd>${words}</dd>`);
  return html`<dl class="facts">
${told}
</dl>`;
}
