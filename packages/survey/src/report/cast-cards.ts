import { castPicture, seriesPicture } from "@wherry/charts";
import type { ListedCast } from "@wherry/contracts";
import type { Cast } from "@wherry/core";
import type { CastSummary, QuantitySummary } from "./cast-summary.ts";
import { asMarkup, counted, html, type Markup, nothing } from "./html.ts";
import { momentWords, numberWords, placesOf, positionWords, rangeWords } from "./words.ts";

/** Most lines of a table of levels. */
const MOST_LEVELS = 24;

/** One cast: pictures, what is said about it, and the numbers. */
export function castCard(
  cast: Cast,
  summary: CastSummary,
  anchor: string,
  listed: ListedCast | undefined,
): Markup {
  const isSeries = cast.kind === "fixed-depth";
  const names = isSeries ? ["temperature", "salinity", "density", "pressure"] : cardQuantities(cast);
  const columns = names.flatMap((name) => cast.columns.get(name) ?? []);
  const told = names.flatMap((name) => {
    const quantity = summary.quantities.get(name);
    return quantity ? [quantityWords(name, quantity)] : [];
  });
  const description = `${told.join(". ")}. Values in the table below.`;
  const svg = isSeries
    ? seriesPicture(cast, {
        ...{ scope: `${anchor}-picture`, columns, description },
        title: `Series ${cast.id} at a fixed depth`,
      })
    : castPicture(cast, { scope: `${anchor}-picture`, columns, description });
  const place = [listed?.station ?? "", momentWords(cast.time), positionWords(cast.start ?? cast.end)];
  return html`<article class="cast" id="${anchor}">
<header><h3>${cast.id}</h3><p class="note">${place.filter((words) => words !== "").join(" · ")}</p></header>
<div class="beside">
<figure>${asMarkup(svg)}</figure>
<dl class="facts">
<dt>Flagged or missing</dt><dd>${flagWords(summary)}</dd>
<dt>Rows</dt><dd>${cast.rows}${Number.isFinite(summary.deepest) ? `, down to ${numberWords(summary.deepest, 2)} dbar` : ""}</dd>
${Number.isFinite(cast.pressureOffset) ? html`<dt>Pressure offset taken off</dt><dd>${numberWords(cast.pressureOffset, 3)} dbar</dd>` : nothing}
${listed?.notes === undefined ? nothing : html`<dt>Log</dt><dd>${listed.notes}</dd>`}
<dt>Source</dt><dd>${cast.source.path}</dd>
</dl>
</div>
${isSeries ? seriesNumbers(summary, names) : levelNumbers(summary, names)}
<details><summary>What was done to ${cast.id}</summary>
<ol class="note">
${summary.steps.map(({ words }) => html`<li>${words}</li>`)}
</ol></details>
</article>`;
}

/** Most quantities of a cast that are drawn. */
const MOST_QUANTITIES = 6;

/** Temperature, salinity and density, and what else a cast measured. */
function cardQuantities(cast: Cast): readonly string[] {
  const others = [...cast.columns.values()]
    .filter(({ source, units, standardName }) => source !== null && units !== null && standardName !== null)
    .map(({ name }) => name)
    .filter(
      (name) =>
        !["pressure", "depth", "time", "conductivity", "sound_speed"].includes(name) &&
        !name.endsWith("_received"),
    );
  return [...new Set(["temperature", "salinity", "density", ...others])]
    .filter((name) => cast.columns.get(name)?.values.some((value) => Number.isFinite(value)))
    .slice(0, MOST_QUANTITIES);
}

const quantityWords = (name: string, { title, least, most, questionable, bad }: QuantitySummary): string =>
  `${title}: ${rangeWords(least, most, placesOf(name))}, ${questionable} questionable, ${bad} bad`;

function flagWords({ quantities }: CastSummary): string {
  const own = [...quantities].filter(([key, { measured }]) => measured || key === "salinity");
  const parts = own.flatMap(([, { name, questionable, bad, missing }]) => {
    const counts = [
      ...(questionable > 0 ? [`${questionable} questionable`] : []),
      ...(bad > 0 ? [`${bad} bad`] : []),
      ...(missing > 0 ? [`${missing} missing`] : []),
    ];
    return counts.length > 0 ? [`${name}: ${counts.join(", ")}`] : [];
  });
  return parts.length > 0 ? parts.join("; ") : "nothing";
}

function levelNumbers({ id, levels, quantities }: CastSummary, names: readonly string[]): Markup {
  if (levels === null) return nothing;
  const every = Math.max(1, Math.ceil(levels.place.length / MOST_LEVELS));
  const shown = [...levels.place.keys()].filter((k) => k % every === 0);
  const head = levels.coordinate === "depth" ? "Depth / m" : "Sea pressure / dbar";
  const rows = shown.map(
    (k) =>
      html`<tr><th scope="row" class="n">${numberWords(levels.place[k]!, 2)}</th>${names.map(
        (name) =>
          html`<td class="n">${numberWords(levels.values.get(name)?.[k] ?? Number.NaN, placesOf(name) + 1)}</td>`,
      )}<td class="n">${levels.count[k] ?? 0}</td></tr>`,
  );
  return html`<details><summary>Numbers of ${id}</summary>
<div class="sheet"><table>
<caption>Layer means${every > 1 ? `, one layer in ${every}; all stand in the binned data set` : ""}.</caption>
<thead><tr><th scope="col" class="n">${head}</th>${names.map((name) => html`<th scope="col" class="n">${quantities.get(name)?.title ?? name}</th>`)}<th scope="col" class="n">Rows</th></tr></thead>
<tbody>
${rows}
</tbody></table></div></details>`;
}

function seriesNumbers({ id, quantities }: CastSummary, names: readonly string[]): Markup {
  const rows = names.flatMap((name) => {
    const quantity = quantities.get(name);
    if (!quantity) return [];
    const { title, least, most, questionable, bad, missing } = quantity;
    return html`<tr><th scope="row">${title}</th><td class="n">${numberWords(least, 3)}</td><td class="n">${numberWords(most, 3)}</td><td class="n">${questionable}</td><td class="n">${bad}</td><td class="n">${missing}</td></tr>`;
  });
  return html`<details><summary>Numbers of ${id}</summary>
<div class="sheet"><table>
<caption>Over rows in water; every row stands in the data set of the series (${counted(quantities.get("temperature")?.rows ?? 0, "row")}).</caption>
<thead><tr><th scope="col">Quantity</th><th scope="col" class="n">Smallest</th><th scope="col" class="n">Largest</th><th scope="col" class="n">Questionable</th><th scope="col" class="n">Bad</th><th scope="col" class="n">Missing</th></tr></thead>
<tbody>
${rows}
</tbody></table></div></details>`;
}
