import type { Cast, Column, Evidence } from "@wherry/core";
import { allLines, evidence, type FileFacts } from "./file-facts.ts";
import { oneOf } from "./inquiry.ts";
import type { RawCast } from "./raw-cast.ts";

/** Names of levels that a depth can be counted from other than the water surface of the moment. */
const DATUM =
  /chart datum|lowest astronomical|mean (?:sea|high|low) (?:level|water)|\b(?:MSL|MLLW|NHN|NAP|SKN|DVR ?90|DNN|NN ?(?:1954|2000)|RH ?2000|N2000|TAW)\b|seekartennull|kartennull|normalnull|z[eé]ro (?:hydrographique|des cartes)|niveau moyen|nivel medio|n[ií]vel m[eé]dio|livello medio|cero hidrogr|zero hidrogr|middenstand|middelvand|middelvann|sj[øo]kartnull|medelvatten|keskivesi|me[ðd]alsj[áa]v|above (?:the )?(?:bed|bottom|sea ?floor)/i;
const SURFACE =
  /below (?:the )?(?:water |sea )?surface|unter (?:der )?(?:wasser)?oberfl|sous la surface|bajo la superficie|abaixo da superf[ií]cie|sotto la superficie|onder (?:het )?(?:water)?oppervlak|under (?:vand|hav|vatten)?(?:overflad|overflat|ytan)|pinnan alla|undir yfirbor/i;

/** Depth is below the surface where it begins near 0 and no datum is named; else that is asked. */
export function depthReference(
  cast: RawCast,
  depth: Column | null,
  kind: Cast["kind"],
  id: string,
  facts: FileFacts,
): readonly Evidence[] {
  if (!depth?.source || kind === "fixed-depth") return [];
  const turned = facts.inquiry.questions.some(
    ({ about, casts }) => about === "depthSign" && casts.includes(id),
  );
  if (turned) return [];
  const place = cast.headLine === null ? { file: facts.path } : { file: facts.path, line: cast.headLine };
  const words = [depth.source.header, ...allLines(cast).map(({ text }) => text)];
  const datum = words.find((text) => DATUM.test(text));
  const surface = words.find((text) => SURFACE.test(text));
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const value of depth.values) {
    if (value < least) least = value;
    if (value > most) most = value;
  }
  if (!datum && surface) return [evidence("verticalReference", "stated", `"${surface}"`, place)];
  if (!datum && least < 2.5 && most >= 0)
    return [
      evidence(
        "verticalReference",
        "assumed",
        `depth below the surface: ${depth.source.header} begins at ${Math.round(least * 100) / 100} m and no datum is named`,
        place,
      ),
    ];
  const settled = facts.inquiry.settle({
    topic: "verticalReference",
    holds: [id],
    text: datum
      ? `"${datum}": is "${depth.source.header}" measured from the water surface or from that datum?`
      : `From which vertical reference is the depth "${depth.source.header}" measured? It does not begin near 0.`,
    candidates: ["surface", "chart datum"],
    read: oneOf("surface", "chart datum", "deck", "bed"),
    form: "surface, chart datum, deck or bed",
  });
  return settled ? [evidence("verticalReference", "answered", settled.because, place)] : [];
}
