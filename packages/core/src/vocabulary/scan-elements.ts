import type { Problem } from "../problem.ts";

/** An element in the order of its start tag. */
export interface ScannedElement {
  /** Names from the root, joined by "/". */
  readonly path: string;
  readonly attributes: ReadonlyMap<string, string>;
  /** Text directly in it, without blanks at the ends. */
  readonly content: string;
  /** Line of the start tag, from 1. */
  readonly line: number;
}

const TOKEN =
  /<!--[\s\S]*?-->|<\?[\s\S]*?\?>|<!\[CDATA\[([\s\S]*?)\]\]>|<(\/?)([A-Za-z_][\w:.-]*)((?:\s+[\w:.-]+\s*=\s*(?:"[^"<]*"|'[^'<]*'))*)\s*(\/?)>|[^<]+|</g;
const ATTRIBUTE = /([\w:.-]+)\s*=\s*(?:"([^"]*)"|'([^']*)')/g;
const ENTITIES: Readonly<Record<string, string>> = { lt: "<", gt: ">", amp: "&", quot: '"', apos: "'" };

function decode(text: string): string | null {
  let good = true;
  const decoded = text.replace(/&(?:#(\d{1,7})|#x([\dA-Fa-f]{1,6})|(\w+));|&/g, (_, decimal, hex, name) => {
    if (decimal || hex) {
      const code = Number.parseInt(decimal ?? hex, decimal ? 10 : 16);
      if (code > 0 && code <= 0x10ffff) return String.fromCodePoint(code);
    }
    if (name && name in ENTITIES) return ENTITIES[name]!;
    good = false;
    return "";
  });
  return good ? decoded : null;
}

/**
 * Elements of a simple XML document: tags, attributes, text, comments, CDATA, the five named entities and character
 * references. No document type, no namespaces. Stops at the first thing that is not well-formed.
 */
export function scanElements(text: string): { elements: ScannedElement[]; problems: Problem[] } {
  const elements: { path: string; attributes: Map<string, string>; content: string; line: number }[] = [];
  const open: { name: string; element: (typeof elements)[number] }[] = [];
  let line = 1;
  let rootSeen = false;
  const stop = (message: string) => ({
    elements,
    problems: [{ code: "vocabulary/xml", message, where: { line } }],
  });
  for (const token of text.matchAll(TOKEN)) {
    const [whole, cdata, closing, name, attributeText = "", selfClosed] = token;
    const inside = open.at(-1);
    if (name !== undefined && closing) {
      if (inside?.name !== name)
        return stop(inside ? `</${name}> where </${inside.name}> is due` : `</${name}> closes nothing`);
      inside.element.content = inside.element.content.trim();
      open.pop();
    } else if (name !== undefined) {
      if (!inside && rootSeen) return stop(`<${name}> follows the end of the document`);
      rootSeen = true;
      const attributes = new Map<string, string>();
      for (const [, key = "", double, single] of attributeText.matchAll(ATTRIBUTE)) {
        const value = decode(double ?? single ?? "");
        if (value === null) return stop(`an unknown entity in ${key}`);
        attributes.set(key, value);
      }
      const element = {
        path: inside ? `${inside.element.path}/${name}` : name,
        attributes,
        content: "",
        line,
      };
      elements.push(element);
      if (!selfClosed) open.push({ name, element });
    } else if (cdata !== undefined) {
      if (inside) inside.element.content += cdata;
    } else if (whole === "<") return stop("a tag that cannot be read");
    else if (!whole.startsWith("<")) {
      const words = decode(whole);
      if (words === null) return stop("an unknown entity, or an & that should be &amp;");
      if (inside) inside.element.content += words;
      else if (words.trim() !== "") return stop("text outside the document");
    }
    for (let at = whole.indexOf("\n"); at >= 0; at = whole.indexOf("\n", at + 1)) line++;
  }
  const unclosed = open.at(-1);
  return unclosed
    ? stop(`<${unclosed.name}> of line ${unclosed.element.line} is never closed`)
    : { elements, problems: [] };
}
