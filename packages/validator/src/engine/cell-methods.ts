/** One entry of `cell_methods`: "depth: mean where sea (interval: 1 m)". */
export interface CellMethod {
  readonly names: readonly string[];
  readonly method: string;
  /** What stands in brackets behind it, without them; null if nothing. */
  readonly remark: string | null;
  /** "within" or "over" days or years: a climatology. */
  readonly climatological: boolean;
}

/** Where the text leaves the grammar. */
export interface CellMethodsFault {
  readonly at: string;
  readonly because: "name" | "method" | "clause" | "bracket";
}

const WORD = /^[^\s()]+/;

/** The bracket that begins a text, inner ones included; null if it does not close. */
function bracket(text: string): string | null {
  let depth = 0;
  for (let i = 0; i < text.length; i += 1) {
    if (text[i] === "(") depth += 1;
    if (text[i] === ")") depth -= 1;
    if (depth === 0) return text.slice(0, i + 1);
  }
  return null;
}

/**
 * Takes `cell_methods` apart (CF 7.3, 7.4): `name: [name: ...] method [where type [over type]] [within | over days |
 * years] [(remark)]`, repeated.
 */
export function parseCellMethods(text: string): CellMethod[] | CellMethodsFault {
  const entries: CellMethod[] = [];
  let rest = text.trim();
  const take = (): string => {
    const [word = ""] = WORD.exec(rest) ?? [];
    rest = rest.slice(word.length).trimStart();
    return word;
  };
  while (rest !== "") {
    const at = rest;
    const names: string[] = [];
    while (/^[^\s()]+:(?=\s|$)/.test(rest)) names.push(take().slice(0, -1));
    if (names.length === 0) return { at, because: "name" };
    const method = take();
    if (method === "") return { at, because: "method" };
    let climatological = false;
    while (/^(?:where|over|within)\s/.test(rest)) {
      const clause = take();
      const what = take();
      if (what === "" || what.endsWith(":")) return { at, because: "clause" };
      if (clause !== "where" && /^(?:days|years)$/.test(what)) climatological = true;
      else if (clause === "within") return { at, because: "clause" };
    }
    let remark: string | null = null;
    if (rest.startsWith("(")) {
      const inside = bracket(rest);
      if (inside === null) return { at, because: "bracket" };
      remark = inside.slice(1, -1).trim();
      rest = rest.slice(inside.length).trimStart();
    }
    entries.push({ names, method, remark, climatological });
  }
  return entries;
}
