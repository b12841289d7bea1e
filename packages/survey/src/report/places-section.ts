import { mapPicture, type Shoreline } from "@wherry/charts";
import type { SurveySheet } from "@wherry/contracts";
import type { CastSummary } from "./cast-summary.ts";
import { asMarkup, counted, html, type Markup, nothing } from "./html.ts";
import { momentWords, numberWords, positionWords, rangeWords } from "./words.ts";

/** Most lines of the table of casts. */
const MOST = 2000;

/** Map of the stations. */
export function mapSection(
  casts: readonly CastSummary[],
  names: ReadonlyMap<string, string>,
  shoreline: Shoreline | null,
): Markup {
  const unplaced = casts.filter(({ start, end }) => (start ?? end) === null).length;
  const map = mapPicture(
    casts.map(({ id, kind, start, end }) => ({ label: names.get(id) ?? id, kind, start, end })),
    {
      scope: "map",
      title: "Map of the stations",
      description: `${counted(casts.length - unplaced, "position")} on a grid of latitude and longitude, joined in the order of time; the table of casts gives each position.`,
      shoreline,
    },
  );
  if (!map) return html`<p>No cast has a position, so there is no map.</p>`;
  const shore = {
    own: "Shore: the file given for this survey.",
    "Natural Earth 1:50m": "Shore: Natural Earth, 1:50 million, for orientation only.",
    none: "No shoreline is drawn: a coast of the whole world is too coarse for a map of this width. A file of your own (GeoJSON) is drawn with the option --shoreline.",
  }[map.land];
  return html`<figure class="beside">
${asMarkup(map.svg)}
<figcaption>
<p>Positions as fixed by satellite, WGS 84; north is up. ${shore} The globe shows where the survey lies.</p>
${map.unnamed > 0 ? html`<p>${counted(map.unnamed, "name")} had no room on the map; the table has all.</p>` : nothing}
${unplaced > 0 ? html`<p>${counted(unplaced, "cast")} without a position ${unplaced === 1 ? "is" : "are"} not on the map.</p>` : nothing}
</figcaption>
</figure>`;
}

/** What every cast is, in a line. */
export function castTable(
  casts: readonly CastSummary[],
  names: ReadonlyMap<string, string>,
  anchors: ReadonlyMap<string, string>,
  sheet: SurveySheet,
): Markup {
  const stations = new Map(sheet.casts?.map(({ id, station }) => [id, station ?? ""]));
  const numbered = casts.some(({ id }) => !id.endsWith(names.get(id) ?? id));
  const withStations = [...stations.values()].some((station) => station !== "");
  const rows = casts.slice(0, MOST).map((cast) => {
    const [T, S] = ["temperature", "salinity"].map((name) => cast.quantities.get(name));
    const measured = [...cast.quantities.values()].filter((each) => each.measured);
    const sum = (of: "questionable" | "bad") => measured.reduce((all, each) => all + each[of], 0);
    const anchor = anchors.get(cast.id);
    const name = anchor === undefined ? html`${cast.id}` : html`<a href="#${anchor}">${cast.id}</a>`;
    return html`<tr><th scope="row" class="w">${name}</th>${numbered ? html`<td>${names.get(cast.id) ?? ""}</td>` : nothing}${withStations ? html`<td>${stations.get(cast.id) ?? ""}</td>` : nothing}<td class="w">${momentWords(cast.time).replace(" UTC", "")}</td><td class="w">${positionWords(cast.start ?? cast.end)}</td><td class="n">${cast.rows}</td><td class="n">${numberWords(cast.deepest, 1)}</td><td class="n">${rangeWords(T?.least ?? NaN, T?.most ?? NaN, 2)}</td><td class="n">${rangeWords(S?.least ?? NaN, S?.most ?? NaN, 2)}</td><td class="n">${sum("questionable")}</td><td class="n">${sum("bad")}</td></tr>`;
  });
  return html`<div class="sheet"><table>
<caption>Ranges are of rows in water that are flagged neither questionable nor bad; the last two columns count measured values. Times are UTC, of the start where it is known.</caption>
<thead><tr><th scope="col">Cast</th>${numbered ? html`<th scope="col">Number</th>` : nothing}${withStations ? html`<th scope="col">Station</th>` : nothing}<th scope="col">Time</th><th scope="col">Position</th><th scope="col" class="n">Rows</th><th scope="col" class="n">Deepest /<br>dbar</th><th scope="col" class="n">Temperature /<br>°C</th><th scope="col" class="n">Practical<br>Salinity</th><th scope="col" class="n">Question-<br>able</th><th scope="col" class="n">Bad</th></tr></thead>
<tbody>
${rows}
</tbody></table></div>
${casts.length > MOST ? html`<p class="note">${casts.length - MOST} more casts are in the data set; the table ends here.</p>` : nothing}`;
}
