/** An element with its attributes and what is in it; a text is a child as any other. */
export interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (Element | string)[];
}

type Child = Element | string | null | undefined | readonly Child[];

/**
 * An element, or null where nothing is in it: a record has no empty elements.
 *
 * @param children texts, elements and lists of them; what is null or "" is left out
 */
export function element(name: string, ...children: readonly Child[]): Element | null {
  return withAttributes(name, {}, ...children);
}

/** The same with attributes; an element that has some may be empty. */
export function withAttributes(
  name: string,
  attributes: Readonly<Record<string, string>>,
  ...children: readonly Child[]
): Element | null {
  const own = flat(children);
  if (own.length === 0 && Object.keys(attributes).length === 0) return null;
  return { name, attributes, children: own };
}

const flat = (children: readonly Child[]): (Element | string)[] =>
  children.flatMap((child) => {
    if (child === null || child === undefined || child === "") return [];
    return Array.isArray(child) ? flat(child as readonly Child[]) : [child as Element | string];
  });

/** A document of one root element, indented; texts keep their own line ends. */
export const xmlText = (root: Element): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n${lines(root, "")}`;

function lines({ name, attributes, children }: Element, indent: string): string {
  const opening = `${name}${Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${escaped(value)}"`)
    .join("")}`;
  if (children.length === 0) return `${indent}<${opening}/>\n`;
  if (children.every((child) => typeof child === "string"))
    return `${indent}<${opening}>${children.map(escaped).join("")}</${name}>\n`;
  const inner = children.map((child) =>
    typeof child === "string" ? `${indent}  ${escaped(child)}\n` : lines(child, `${indent}  `),
  );
  return `${indent}<${opening}>\n${inner.join("")}${indent}</${name}>\n`;
}

/**
 * Characters that no XML document may have, not even as a reference.
 *
 * @source Extensible Markup Language (XML) 1.0, fifth edition, section 2.2, production 2
 */
const FORBIDDEN = /[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu;

/** A text with markup made harmless; what XML forbids becomes the replacement character. */
export const escaped = (text: string): string =>
  text
    .replace(FORBIDDEN, "\ufffd")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;")
    // a carriage return would be read as a line feed
    .replaceAll("\r", "&#13;");
