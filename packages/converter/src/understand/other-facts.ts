import { parseDecimal } from "@wherry/core";
import { type HeaderLine, topicsOfLine } from "./header-lines.ts";
import { denies, type HeaderTopic, headerTopics } from "./vocabulary/header-words.ts";
import { readUnit } from "./vocabulary/unit-spellings.ts";
import { wordsOf } from "./words.ts";

export interface Stated<T> {
  readonly value: T;
  readonly line: HeaderLine;
}

/** The name a line gives to its cast: "=== CAST 07 ===", "Cast: C-12". Station names are not cast names. */
export function statedCastName(lines: readonly HeaderLine[]): Stated<string> | null {
  for (const line of lines) {
    if (
      !line.topics.has("cast") ||
      line.topics.has("start") ||
      line.topics.has("end") ||
      line.topics.has("model")
    )
      continue;
    if (line.key !== null) {
      const value = line.value.trim();
      if (line.topics.has("time") || line.topics.has("date") || line.topics.has("averaged")) continue;
      if (/^[A-Za-z0-9._-]{1,60}$/.test(value)) return { value, line };
      continue;
    }
    const match =
      /(?:cast|profile?|perfil|profilo|profiel|dip|drop|lowering|lance|haul)\s*(?:id|no|nr|number|#|n[°º])?\.?\s*[:#]?\s*([A-Za-z0-9._-]*\d[A-Za-z0-9._-]*)/i.exec(
        line.text,
      );
    if (match?.[1]) return { value: match[1], line };
  }
  return null;
}

export interface InstrumentFacts {
  readonly model: Stated<string> | null;
  readonly serialNumber: Stated<string> | null;
  /** dbar. */
  readonly ratedPressure: Stated<number> | null;
}

/** Instrument, its serial number and the pressure it is rated to, from the keys of the header. */
export function instrumentFacts(lines: readonly HeaderLine[]): InstrumentFacts {
  let model: Stated<string> | null = null;
  let serialNumber: Stated<string> | null = null;
  let ratedPressure: Stated<number> | null = null;
  for (const line of lines) {
    const { topics, key, value } = line;
    const rating = topics.has("rating") || (key === null && /\brated\b/i.test(line.text));
    if (rating) ratedPressure ??= ratingOf(line);
    if (key === null || rating) {
      const inline =
        /\b(?:serial(?:\s+(?:number|no\.?))?|s\/n|seriennummer|serienummer)\W{0,3}([A-Za-z0-9][A-Za-z0-9._/-]*\d[A-Za-z0-9._/-]*)/i.exec(
          line.text,
        );
      if (inline?.[1]) serialNumber ??= { value: inline[1], line };
      continue;
    }
    if (topics.has("serial")) {
      const text = /[A-Za-z0-9][\w./ -]*/.exec(value)?.[0]?.trim();
      if (text) serialNumber ??= { value: text, line };
    } else if (
      topics.has("model") &&
      !topics.has("sensorDepth") &&
      !topics.has("elsewhere") &&
      !topics.has("time") &&
      !topics.has("date")
    ) {
      const inline =
        /[,;(\s]+(?:serial(?:\s+(?:number|no\.?))?|s\/n|no\.|nr\.?|n°)\W{0,3}([A-Za-z0-9][A-Za-z0-9._/-]*)\)?\s*$/i.exec(
          value,
        );
      if (inline?.[1]) serialNumber ??= { value: inline[1], line };
      const name = (inline ? value.slice(0, inline.index) : value).trim();
      if (/[A-Za-z]/.test(name)) model ??= { value: name, line };
    }
  }
  return { model, serialNumber, ratedPressure };
}

/** A rating in m is that pressure in dbar, near enough for a rating. */
function ratingOf(line: HeaderLine): Stated<number> | null {
  const match = /(\d+(?:[.,]\d+)?)\s*(dbar|db|bar|m|metres?|meters?|MPa|psi)\b/.exec(
    line.key === null ? line.text : `${line.value} ${/\(([^)]*)\)/.exec(line.key)?.[1] ?? ""}`,
  );
  if (!match) return null;
  const number = parseDecimal(match[1]!.replace(",", "."), { decimal: "." });
  const unit = readUnit(match[2]!);
  const factor =
    unit?.units === "bar" ? 10 : unit?.units === "MPa" ? 100 : unit?.units === "psi" ? 0.6894757293168 : 1;
  return Number.isNaN(number) ? null : { value: number * factor, line };
}

export interface SensorDepth {
  readonly depth: number;
  /** What the words name as its zero; null if they name none. */
  readonly reference: string | null;
  readonly line: HeaderLine;
}

const REFERENCES: readonly (readonly [RegExp, string])[] = [
  [
    /below (?:the )?(?:water |sea )?surface|unter (?:der )?(?:wasser)?oberfl|sous la surface|bajo la superficie|onder (?:het )?wateroppervlak|under (?:havoverflaten|ytan|overfladen)/i,
    "surface",
  ],
  [
    /chart datum|lowest astronomical|\bLAT\b(?!\s*[:=]?\s*\d)|mean sea level|\bMSL\b|seekartennull|z[eé]ro hydrographique|\bNAP\b/i,
    "datum",
  ],
  [/below (?:the )?(?:deck|pier|quay|jetty)|unter (?:dem )?(?:deck|steg|kai)/i, "deck"],
  [/above (?:the )?(?:bed|bottom|sea ?floor)|[uü]ber (?:dem )?grund/i, "bed"],
];

/** Depth at which a sensor was held, with its reference if the words give one. */
export function sensorDepth(lines: readonly HeaderLine[]): SensorDepth | null {
  for (const line of lines) {
    const keyed = line.key !== null && line.topics.has("sensorDepth");
    if (!keyed && !topicsOfLine(line).has("sensorDepth")) continue;
    const word =
      /(?:sensor|instrument|fixed|mooring|nominal|measuring)? ?depth|profondeur|immersion|tiefe|diepte|dybde|djup|hung at|held at/i;
    const text = keyed ? line.value : line.text.slice(Math.max(0, line.text.search(word)));
    const unitInKey =
      !keyed || line.key === null ? undefined : /[([]\s*([a-zA-Z]+)\s*[\])]/.exec(line.key)?.[1];
    const match = /(\d+(?:[.,]\d+)?)\s*(m|metres?|meters?|mètres?|ft|feet|cm)?\b/.exec(text);
    const spelling = match?.[2] ?? unitInKey;
    if (!match || !spelling) continue;
    const factor =
      readUnit(spelling)?.units === "ft" ? 0.3048 : readUnit(spelling)?.units === "cm" ? 0.01 : 1;
    const depth = parseDecimal(match[1]!.replace(",", "."), { decimal: "." }) * factor;
    const reference = REFERENCES.find(([pattern]) => pattern.test(line.text))?.[1] ?? null;
    if (Number.isFinite(depth)) return { depth, reference, line };
  }
  return null;
}

/** First line whose words are about a topic and do not deny it. */
export function lineAbout(lines: readonly HeaderLine[], topic: HeaderTopic): HeaderLine | null {
  return (
    lines.find((line) => {
      const phrase = topicsOfLine(line).get(topic);
      return phrase !== undefined && !denies(wordsOf(line.text), phrase);
    }) ?? null
  );
}

/** Missing markers that a header or note names: "99.99 = no reading", "missing value: -999". */
export function namedMissingMarkers(lines: readonly HeaderLine[]): readonly Stated<string>[] {
  const found: Stated<string>[] = [];
  const MARKER = String.raw`[-+]?\d+(?:[.,]\d+)?(?:[eE][+-]?\d+)?|\*+|-{1,3}|[A-Za-z#/]{1,5}|\?+`;
  for (const line of lines) {
    if (!topicsOfLine(line).has("missing")) continue;
    const before = new RegExp(
      String.raw`(?:^|[\s:;,("'])(${MARKER})["')]?\s*(?:=|:|means?|is|stands for|for|bedeutet|signifie)\s*["'(]?([A-Za-zÀ-ÿ][A-Za-zÀ-ÿ ]*)`,
      "g",
    );
    let hit = false;
    for (const match of line.text.matchAll(before)) {
      if (!headerTopics(wordsOf(match[2]!)).has("missing") || /[A-Za-z]{4,}/.test(match[1]!)) continue;
      found.push({ value: match[1]!, line });
      hit = true;
    }
    if (hit) continue;
    const value = (
      line.key !== null && line.topics.has("missing")
        ? line.value
        : (/(?:=|:|\bas\b|\bby\b|\bis\b|\bare\b|\bmarked\b|\bgeschrieben\b|\bpar\b|\bcon\b|\bals\b)\s*["'(]?([^\s"')]+)/.exec(
            line.text,
          )?.[1] ?? "")
    )
      .trim()
      .replace(/^["'(]|["').,;]$/g, "");
    for (const part of value.split(/\s*(?:,\s|;|\bor\b|\band\b)\s*/)) {
      const bare = part.trim().replace(/^["']|["']$/g, "");
      if (new RegExp(`^(?:${MARKER})$`).test(bare)) found.push({ value: bare, line });
    }
  }
  return found;
}
