import { type Column, Flag, flagSchemeOf, flagSchemes, primaryFlag } from "@wherry/core";
import type { ColumnContext, Note } from "./column-context.ts";
import { allLines } from "./file-facts.ts";
import type { HeaderLine } from "./header-lines.ts";
import type { RawCast, RawColumn } from "./raw-cast.ts";
import { plainWords } from "./words.ts";

/**
 * Flag columns go to the column left of them; alone they pass through as text. Their scheme is told by a legend in the
 * header or asked: until then what the source calls bad could pass for good.
 */
export function attachFlags(
  flagColumns: readonly RawColumn[],
  columns: Map<string, Column>,
  texts: Map<string, readonly string[]>,
  cast: RawCast,
  context: ColumnContext,
  note: Note,
): void {
  for (const flag of flagColumns) {
    const values = cast.rows.column(flag.index);
    const left = [...columns].filter(([, { source }]) => source !== null && source.index < flag.index).at(-1);
    if (!left || left[1].source?.index !== flag.index - 1) {
      texts.set(flag.head.header, values);
      continue;
    }
    const scheme = schemeOf(flag, left[1].source.header, new Set(values), cast, context, note);
    columns.set(left[0], { ...left[1], sourceFlags: { scheme, header: flag.head.header, values } });
  }
}

function schemeOf(
  column: RawColumn,
  judged: string,
  codes: ReadonlySet<string>,
  cast: RawCast,
  { facts, id }: ColumnContext,
  note: Note,
): string {
  const { header } = column.head;
  const legend = legendOf(allLines(cast));
  const told = legend && flagSchemes.find((scheme) => agrees(scheme, legend.meanings, codes));
  if (told && legend) {
    note(
      column,
      "stated",
      `line ${legend.line.number} says "${legend.line.text}": its codes mean what ${told} says`,
    );
    return told;
  }
  const answer = facts.inquiry.settle({
    topic: "flagScheme",
    column: header,
    holds: [id],
    text: `Which flag scheme do the marks under "${header}" belong to? They stand beside "${judged}". Answer unknown to keep them and not use them.`,
    ...(legend ? { line: legend.line.number } : {}),
    candidates: [...flagSchemes, "unknown"],
    example: "unknown",
    read: (value) => flagSchemeOf(value) ?? value,
    form: `the name of a flag scheme; known are ${flagSchemes.join(", ")}`,
  });
  return answer?.value ?? "unknown";
}

const MEANINGS: readonly (readonly [RegExp, Flag])[] = [
  [
    /^(?:not (?:checked|evaluated|judged|controlled)|no (?:qc|check|control)|unchecked|ungepruft|non controle|sin control)/,
    Flag.notEvaluated,
  ],
  [/^(?:missing|no data|fehlt|manquant|faltante|mancante|ontbreekt|mangler|saknas|puuttuu)/, Flag.missing],
  [
    /^(?:questionable|suspect|doubtful|dubious|probably bad|fraglich|zweifelhaft|verdachtig|douteux|dudos[oa]|duvidos[oa]|dubbi[oa]|twijfelachtig|tvivlsom|tvilsom|tveksam|epavarma)/,
    Flag.questionable,
  ],
  [
    /^(?:bad|wrong|faulty|reject|schlecht|falsch|mauvais|mal[oa]|mau|ruim|cattiv[oa]|slecht|fout|darlig|dalig|fel|huono)/,
    Flag.bad,
  ],
  [
    /^(?:good|ok|okay|accept|probably good|gut|bon|buen[oa]|bom|boa|buon[oa]|goed|god|bra|hyva|gott)/,
    Flag.good,
  ],
];

interface Legend {
  readonly line: HeaderLine;
  readonly meanings: ReadonlyMap<string, Flag>;
}

/** "Q: 1 = good, 4 = bad": a line with what two codes or more mean. */
function legendOf(lines: readonly HeaderLine[]): Legend | null {
  for (const line of lines) {
    const meanings = new Map<string, Flag>();
    for (const [, code = "", words = ""] of line.text.matchAll(
      /(?<![\w.])([0-9A-Z])\s*(?:=|:|-|means|is)\s*([A-Za-zÀ-ÿ][A-Za-zÀ-ÿ ]*)/g,
    )) {
      const found = MEANINGS.find(([pattern]) => pattern.test(plainWords(words)));
      if (found) meanings.set(code, found[1]);
    }
    if (meanings.size > 1) return { line, meanings };
  }
  return null;
}

/** Whether a scheme gives all codes of a column the meaning that the legend gives them. */
const agrees = (
  scheme: Parameters<typeof primaryFlag>[0],
  meanings: ReadonlyMap<string, Flag>,
  codes: ReadonlySet<string>,
): boolean =>
  [...codes].every(
    (code) => code === "" || (meanings.has(code) && primaryFlag(scheme, code)?.flag === meanings.get(code)),
  );
