import { look } from "./look.ts";
import { element, round, textElement } from "./svg.ts";

export const CAUTION =
  "Not for navigation or diving decisions: the local authority and licensed practice decide.";

export interface Frame {
  /** Begins the ids within the picture; unique in the page that holds several. */
  readonly scope: string;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  /** What it shows, and what can be read from it, for those who do not see it. */
  readonly title: string;
  readonly description: string;
}

export const scopeOf = (kind: string, id: string): string => `${kind}-${id.replace(/[^A-Za-z0-9_-]/g, "_")}`;

const style = (scope: string) => `#${scope} text{font-family:${look.font};fill:${look.ink}}
#${scope} .heading{font-size:20px;font-weight:600}
#${scope} .axis{font-size:12.5px;font-weight:600}
#${scope} .tick{font-size:12px;fill:${look.quiet}}
#${scope} .small{font-size:12px;fill:${look.quiet}}
#${scope} .onlines{font-size:11px;paint-order:stroke;stroke:${look.paper};stroke-width:3px;stroke-linejoin:round}
#${scope} .caution{font-size:12px;font-style:italic;fill:${look.ink}}`;

/** A stand-alone SVG document without an XML declaration, with title and description for screen readers. */
export const picture = (
  { scope, width, height, title, description }: Frame,
  children: readonly string[],
): string =>
  element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      id: scope,
      width,
      height,
      viewBox: `0 0 ${round(width)} ${round(height)}`,
      role: "img",
      "aria-labelledby": `${scope}-title ${scope}-desc`,
    },
    [
      textElement("title", { id: `${scope}-title` }, title),
      textElement("desc", { id: `${scope}-desc` }, description),
      `<style>${style(scope)}</style>`,
      element("rect", { width, height, fill: look.paper }),
      ...children,
    ],
  ).concat("\n");
