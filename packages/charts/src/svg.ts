type Value = string | number | undefined;

/** Text that may stand in SVG: markup signs escaped, signs that XML does not allow replaced. */
export function escapeText(text: string): string {
  // most texts are paths of numbers, which need nothing
  if (/^[\w .,#:;%()/+-]*$/.test(text)) return text;
  return text
    .replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, "\uFFFD")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}

/** A coordinate with at most one decimal, the same on every machine. */
export function round(value: number): string {
  const text = value.toFixed(1).replace(/\.0$/, "");
  return text === "-0" ? "0" : text;
}

function attributes(values: Readonly<Record<string, Value>>): string {
  return Object.entries(values)
    .filter(([, value]) => value !== undefined)
    .map(([name, value]) => ` ${name}="${typeof value === "number" ? round(value) : escapeText(value!)}"`)
    .join("");
}

/** An element with children that are already SVG. */
export function element(
  name: string,
  values: Readonly<Record<string, Value>>,
  children: readonly string[] = [],
): string {
  const start = `<${name}${attributes(values)}`;
  if (children.length === 0) return `${start}/>`;
  return `${start}>\n${children.join("\n")}\n</${name}>`;
}

/** An element that holds text. */
export const textElement = (name: string, values: Readonly<Record<string, Value>>, text: string): string =>
  `<${name}${attributes(values)}>${escapeText(text)}</${name}>`;
