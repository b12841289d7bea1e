/** Corners of a geometry in well-known text: pairs as they are written. */
export interface Figure {
  readonly kind: string;
  readonly points: readonly (readonly [number, number])[];
  /** Rings of a polygon whose last corner is not the first. */
  readonly open: boolean;
}

const NUMBER = "[+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?";
const PAIR = `${NUMBER}\\s+${NUMBER}(?:\\s+${NUMBER}){0,2}`;
const LIST = `${PAIR}(?:\\s*,\\s*${PAIR})*`;
const RINGS = `\\(\\s*${LIST}\\s*\\)(?:\\s*,\\s*\\(\\s*${LIST}\\s*\\))*`;
const HEAD = "(?:\\s+(?:Z|M|ZM))?\\s*";

const FORMS: Readonly<Record<string, RegExp>> = {
  POINT: new RegExp(`^POINT${HEAD}\\(\\s*${PAIR}\\s*\\)$`, "i"),
  LINESTRING: new RegExp(`^LINESTRING${HEAD}\\(\\s*${LIST}\\s*\\)$`, "i"),
  MULTIPOINT: new RegExp(`^MULTIPOINT${HEAD}\\(\\s*(?:${LIST}|${RINGS})\\s*\\)$`, "i"),
  MULTILINESTRING: new RegExp(`^MULTILINESTRING${HEAD}\\(\\s*${RINGS}\\s*\\)$`, "i"),
  MULTIPOLYGON: new RegExp(
    `^MULTIPOLYGON${HEAD}\\(\\s*\\(\\s*${RINGS}\\s*\\)(?:\\s*,\\s*\\(\\s*${RINGS}\\s*\\))*\\s*\\)$`,
    "i",
  ),
  POLYGON: new RegExp(`^POLYGON${HEAD}\\(\\s*${RINGS}\\s*\\)$`, "i"),
};

/**
 * A point, line, polygon or several of a kind as text.
 *
 * @returns null if it is none of them
 * @source  OGC Simple Feature Access, part 1, well-known text (06-103r4), not verified
 */
export function readFigure(text: string): Figure | null {
  const trimmed = text.trim();
  const kind = Object.keys(FORMS).find((name) => FORMS[name]?.test(trimmed));
  if (kind === undefined) return null;
  const pairs = (list: string): [number, number][] =>
    list.split(",").map((each) => {
      const [a, b] = each.replace(/[()]/g, " ").trim().split(/\s+/).map(Number);
      return [a ?? Number.NaN, b ?? Number.NaN];
    });
  const inside = trimmed.slice(trimmed.indexOf("("));
  const rings = kind.endsWith("POLYGON") ? inside.split(/\)\s*,\s*\(/).map(pairs) : [pairs(inside)];
  const open =
    kind.endsWith("POLYGON") &&
    rings.some(
      (ring) => ring.length < 4 || ring[0]?.[0] !== ring.at(-1)?.[0] || ring[0]?.[1] !== ring.at(-1)?.[1],
    );
  return { kind, points: rings.flat(), open };
}
