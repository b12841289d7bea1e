import type { Shoreline } from "@wherry/charts";
import type { SurveySheet } from "@wherry/contracts";
import type { HeldCast } from "@wherry/converter";
import type { Cast, LayerMeans, Problem } from "@wherry/core";
import type { CheckedFile } from "@wherry/validator";
import type { OpenQuestion } from "../hold-back.ts";
import { castCard } from "./cast-cards.ts";
import { type CastSummary, summarise } from "./cast-summary.ts";
import { lineSection, noLine, overlaySection, waterSection } from "./compare-section.ts";
import { CAUTION, headSection } from "./head-section.ts";
import { asMarkup, counted, html, type Markup } from "./html.ts";
import { pageStyle } from "./page-style.ts";
import { castTable, mapSection } from "./places-section.ts";
import { findingsSection, stepsSection } from "./record-section.ts";
import { rulesSection } from "./rules-section.ts";
import { shortNames } from "./short-names.ts";

export interface ReportFacts {
  readonly sheet: SurveySheet;
  /** Moment of writing, ISO 8601 UTC. */
  readonly created: string;
  /** Program and version. */
  readonly software: string;
  readonly held: readonly HeldCast[];
  readonly questions: readonly OpenQuestion[];
  readonly findings: readonly Problem[];
  readonly shoreline: Shoreline | null;
  /** Verdicts on the files beside the page; null if they were not checked. */
  readonly checked: readonly CheckedFile[] | null;
  /** Name of the processing record. */
  readonly record: string;
}

/** Most casts that are drawn one by one: about as many megabytes as a browser opens without a pause. */
const MOST_CARDS = 300;

/**
 * The survey on one page, as HTML that needs nothing else: no script, no font, no picture from outside.
 *
 * @param casts  processed
 * @param layers layer means of the profiles, by cast id
 */
export function surveyReport(
  casts: readonly Cast[],
  layers: ReadonlyMap<string, LayerMeans>,
  facts: ReportFacts,
): string {
  const all = casts.map((cast) => ({ cast, summary: summarise(cast, layers.get(cast.id)) })).sort(byTime);
  const summaries = all.map(({ summary }) => summary);
  const { names, without } = shortNames(summaries.map(({ id }) => id));
  const listedCasts = new Map(facts.sheet.casts?.map((listed) => [listed.id, listed]));
  const drawn = choose(all);
  const anchors = new Map(drawn.map(({ cast }, k) => [cast.id, `cast-${k + 1}`]));
  const cards = (kind: Cast["kind"]) =>
    drawn
      .filter(({ cast }) => cast.kind === kind)
      .map(({ cast, summary }) => castCard(cast, summary, anchors.get(cast.id)!, listedCasts.get(cast.id)));
  const named =
    without === null
      ? "In pictures casts are numbered in the order of time."
      : without === ""
        ? ""
        : `In pictures casts are named without “${without}”.`;
  const profiles = cards("profile");
  const series = cards("fixed-depth");
  const sections: (readonly [string, string, Markup | null])[] = [
    ["where", "Where", mapSection(summaries, names, facts.shoreline)],
    [
      "casts",
      "The casts",
      html`${named === "" ? html`` : html`<p>${named}</p>`}${castTable(summaries, names, anchors, facts.sheet)}`,
    ],
    [
      "findings",
      "Findings",
      html`${findingsSection(summaries, facts.findings, facts.held, facts.questions)}
${rulesSection(facts.checked)}`,
    ],
    ["together", "All profiles together", overlaySection(summaries, names)],
    ["water", "Temperature against salinity", waterSection(summaries, names)],
    [
      "section",
      "Along the line of stations",
      lineSection(summaries, names) ?? (profiles.length > 1 ? html`<p>${noLine}</p>` : null),
    ],
    ["series", "At a fixed depth", series.length > 0 ? html`${SERIES_KEY}${series}` : null],
    [
      "one-by-one",
      "Cast by cast",
      profiles.length > 0 ? html`${KEY}${cardsLeftOut(all.length, drawn.length)}${profiles}` : null,
    ],
    ["done", "What was done to the data", stepsSection(summaries, facts.record)],
  ];
  const shown = sections.filter((each): each is readonly [string, string, Markup] => each[2] !== null);
  const contents = html`<nav aria-label="Contents"><ol>
${shown.map(([id, title]) => html`<li><a href="#${id}">${title}</a></li>`)}
</ol></nav>`;
  const { survey } = facts.sheet;
  const head = headSection(
    { ...facts, casts: summaries, held: facts.held.length, findings: facts.findings.length },
    contents,
  );
  return html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${survey.title ?? survey.id}: quick look</title>
<style>${asMarkup(pageStyle(survey.id))}</style>
</head>
<body>
${head}
<main>
${shown.map(
  ([id, title, body]) => html`<section class="plate" id="${id}">
<h2>${title}</h2>
${body}
</section>`,
)}
</main>
<footer>
<p>${CAUTION} Pictures show what is in the data set; lines are thinned for drawing by what the eye can't see (a quarter of a pixel), and no extreme is lost. Made by ${facts.software}, ${facts.created}.</p>
</footer>
</body>
</html>
`.markup;
}

interface Summarised {
  readonly cast: Cast;
  readonly summary: CastSummary;
}

/** By time, those without one last; by id where times are equal. */
function byTime({ cast: a }: Summarised, { cast: b }: Summarised): number {
  const [ta, tb] = [a, b].map(({ time }) => (Number.isNaN(time) ? Number.POSITIVE_INFINITY : time));
  if (ta !== tb) return ta! < tb! ? -1 : 1;
  return a.id < b.id ? -1 : 1;
}

/** All casts where they are few; else those with flagged values first. */
function choose(all: readonly Summarised[]): readonly Summarised[] {
  if (all.length <= MOST_CARDS) return all;
  const flagged = ({ summary, cast }: Summarised) =>
    cast.kind === "fixed-depth" ||
    [...summary.quantities.values()].some(
      ({ measured, questionable, bad }) => measured && questionable + bad > 0,
    );
  const chosen = new Set(
    [...all.filter(flagged), ...all.filter((each) => !flagged(each))].slice(0, MOST_CARDS),
  );
  return all.filter((each) => chosen.has(each));
}

const cardsLeftOut = (casts: number, drawn: number): Markup =>
  drawn === casts
    ? html``
    : html`<p>${counted(casts, "cast")} are too many to draw one by one: ${drawn} are, first those with values flagged questionable or bad. The table and the pictures of all casts hold every one.</p>`;

const KEY = html`<p class="note key">Solid: downcast. Dashed: upcast. Dotted: soak, bottom stop and other rows; rows in air are not drawn against depth. Open diamond: questionable. Cross: bad. Arrow at the side: flagged, beyond the scale. A line breaks where a value is missing or bad. Hatched: below the deepest row.</p>`;

const SERIES_KEY = html`<p class="note key">Solid: the stay at depth. Dotted: lowering, hoisting and other rows; rows in air are not drawn. Open diamond: questionable. Cross: bad; at the edge of a panel it lies beyond the scale. Pressure grows downward.</p>`;
