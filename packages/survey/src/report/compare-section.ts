import { brokenAxisAt, overlayPicture, sectionPicture, temperatureSalinityPicture } from "@wherry/charts";
import type { CastSummary, SummaryLevels } from "./cast-summary.ts";
import { asMarkup, counted, html, listed, type Markup, nothing } from "./html.ts";
import { FEWEST, OFF_LINE, type StationLine, stationLines } from "./station-line.ts";
import { momentWords, numberWords } from "./words.ts";

type Names = ReadonlyMap<string, string>;

interface Layered {
  readonly cast: CastSummary;
  readonly label: string;
  readonly levels: SummaryLevels;
}

/** Quantities that are pictured by default, in this order. */
const FIRST = ["temperature", "salinity", "density"];
/** What is seen from others, or is none of the water's. */
const LEFT_OUT = ["pressure", "depth", "conductivity", "sound_speed"];

/** Most casts in one picture; more would be one dark patch, and megabytes. */
const MOST = 600;

/** Casts with layer means, evenly chosen where they are very many. */
function layered(
  casts: readonly CastSummary[],
  names: Names,
): { readonly shown: readonly Layered[]; readonly of: number } {
  const all = casts.flatMap((cast) =>
    cast.levels === null ? [] : [{ cast, label: names.get(cast.id) ?? cast.id, levels: cast.levels }],
  );
  const every = Math.ceil(all.length / MOST);
  return { shown: all.filter((_, k) => k % every === 0), of: all.length };
}

/** Quantities to picture: temperature, salinity, density, then whatever else the instrument measured. */
export function picturedQuantities(casts: readonly CastSummary[], most: number): readonly string[] {
  const others = casts.flatMap(({ quantities }) =>
    [...quantities]
      .filter(([name, { measured }]) => measured && !LEFT_OUT.includes(name) && !name.endsWith("_received"))
      .filter(([, { title }]) => title.includes(" / "))
      .map(([name]) => name),
  );
  const has = (name: string) =>
    casts.some(({ quantities }) => Number.isFinite(quantities.get(name)?.least ?? Number.NaN));
  return [...new Set([...FIRST, ...others])].filter(has).slice(0, most);
}

const placeTitle = (all: readonly Layered[]): string =>
  all.every(({ levels }) => levels.coordinate === "depth") ? "Depth / m" : "Sea pressure / dbar";

const titleOf = (casts: readonly CastSummary[], quantity: string): string =>
  casts.find(({ quantities }) => quantities.has(quantity))?.quantities.get(quantity)?.title ?? quantity;

/** All profiles over each other; one alone is seen with its cast. */
export function overlaySection(casts: readonly CastSummary[], names: Names): Markup | null {
  const { shown: all, of } = layered(casts, names);
  const quantities = picturedQuantities(casts, 6);
  if (all.length < 2 || quantities.length === 0) return null;
  const widths = [...new Set(all.map(({ levels }) => levels.width))];
  const svg = overlayPicture(
    all.map(({ label, levels }) => ({ label, place: levels.place, values: levels.values })),
    {
      scope: "overlay",
      title: `All ${all.length} profiles over each other`,
      description: `Layer means against depth: ${listed(quantities.map((name) => titleOf(casts, name)))}. Lines from light, the first cast in time, to dark, the last. The ranges stand in the table of casts, the levels with each cast.`,
      placeTitle: placeTitle(all),
      panels: quantities.map((quantity) => ({ quantity, title: titleOf(casts, quantity) })),
    },
  );
  const unit = placeTitle(all).split(" / ").at(-1);
  const layers = widths.length === 1 ? `layers of ${numberWords(widths[0]!, 2)} ${unit}` : "layers";
  return html`<figure class="beside">
${asMarkup(svg)}
<figcaption>
<p>Means over ${layers} of ${all.length === of ? `the ${counted(of, "profile")}` : `${all.length} of the ${of} profiles, evenly chosen in time`}, of values flagged good or not evaluated. The first cast in time is the lightest line, the last the darkest; the name stands at the lower end where there is room.</p>
${brokenAxis(all)}
</figcaption>
</figure>`;
}

function brokenAxis(all: readonly { readonly levels: SummaryLevels }[]): Markup {
  const at = brokenAxisAt(all.map(({ levels }) => levels.place.at(-1) ?? Number.NaN));
  return at === null
    ? nothing
    : html`<p>A few casts go much deeper than most: below ${at} the axis is compressed, from the heavier line down.</p>`;
}

/** Temperature against salinity. */
export function waterSection(casts: readonly CastSummary[], names: Names): Markup | null {
  const all = layered(casts, names).shown.filter(({ levels }) =>
    levels.SA.some((value, k) => Number.isFinite(value) && Number.isFinite(levels.CT[k])),
  );
  if (all.length === 0) return null;
  const svg = temperatureSalinityPicture(
    all.map(({ label, levels: { SA, CT } }) => ({ label, SA, CT })),
    {
      scope: "diagram",
      title: "Temperature against salinity, with lines of equal density",
      description: `Layer means of ${counted(all.length, "profile")}: Conservative Temperature against Absolute Salinity, on dashed lines of equal potential density anomaly. Casts from light to dark in the order of time.`,
    },
  );
  return html`<figure class="beside">
${asMarkup(svg)}
<figcaption>
<p>Each dot is a layer mean; dots of a cast are joined from the surface down. Tints as above, in the order of time.</p>
<p>Dashed: potential density anomaly for the reference pressure 0 dbar, kg m⁻³ (TEOS-10, 75 terms). Absolute Salinity from Practical Salinity by position; in river water it is a little too low.</p>
</figcaption>
</figure>`;
}

const CRITERION = `at least ${FEWEST} places, none farther from a straight line than ${100 * OFF_LINE} % of its length`;

/** Distance against depth, where stations form a line. */
export function lineSection(casts: readonly CastSummary[], names: Names): Markup | null {
  const lines = stationLines(casts.filter(({ kind }) => kind === "profile"));
  if (lines.length === 0) return null;
  return html`${lines.map((line, k) => oneLine(line, k, casts, names, lines.length > 1))}`;
}

/** What a section is made of, said where there is none. */
export const noLine = `Stations form no line (${CRITERION}), so there is no section.`;

function oneLine(
  { stations, length, farthest, repeated }: StationLine,
  index: number,
  casts: readonly CastSummary[],
  names: Names,
  several: boolean,
): Markup {
  const labels = stations.map(({ cast }) => names.get(cast.id) ?? cast.id);
  const [first, last] = [labels[0]!, labels.at(-1)!];
  const quantities = ["temperature", "salinity"].filter((name) =>
    stations.some(({ cast }) => cast.levels?.values.has(name)),
  );
  const times = stations.map(({ cast }) => cast.time).filter((time) => Number.isFinite(time));
  const pictures = quantities.map((quantity) => {
    const title = titleOf(casts, quantity);
    return sectionPicture(
      stations.map(({ cast, distance }, k) => ({
        label: labels[k]!,
        distance,
        place: cast.levels!.place,
        values:
          cast.levels!.values.get(quantity) ?? new Float64Array(cast.levels!.place.length).fill(Number.NaN),
      })),
      {
        scope: `line-${index + 1}-${quantity}`,
        title: `Section from ${first} to ${last}: ${title}`,
        description: `${title} against distance and depth at ${counted(stations.length, "station")} over ${numberWords(length, 2)} km. Columns of tones are measured, lines of equal value are interpolated between neighbours. The levels stand with each cast.`,
        quantityTitle: title,
        placeTitle: stations[0]!.cast.levels!.coordinate === "depth" ? "Depth / m" : "Sea pressure / dbar",
        distanceTitle: `Distance from ${first} / km`,
      },
    );
  });
  const span =
    times.length === 0
      ? ""
      : ` They were made between ${momentWords(Math.min(...times))} and ${momentWords(Math.max(...times))}: no picture of one moment where the tide runs.`;
  return html`<div class="beside">
<div>
${several ? html`<h3>From ${first} to ${last}</h3>` : nothing}
${pictures.map((svg) => html`<figure>${asMarkup(svg)}</figure>`)}
</div>
<div class="note">
${index > 0 ? nothing : html`<p>Measured: the column of tones under each station (layer means). Between neighbouring stations the lines of equal value come from linear interpolation at equal depth; none is drawn below the shallower of the two. The dotted line joins the deepest layers, it is not the bottom.</p>`}
${brokenAxis(stations.map(({ cast }) => ({ levels: cast.levels! })))}
<p>${counted(stations.length, "station")} on ${numberWords(length, 2)} km from west to east (south to north on a meridian), at most ${numberWords(farthest, 2)} km off the straight line.${span}</p>
${repeated.length > 0 ? html`<p>Left out, made at a place that another cast stands for: ${listed(repeated.map(({ id }) => names.get(id) ?? id))}. The first cast in time stands for its place.</p>` : nothing}
${index > 0 ? nothing : html`<p>A section is drawn where stations form a line: ${CRITERION}; else for stretches of casts that follow each other in time in one direction.</p>`}
</div>
</div>`;
}
