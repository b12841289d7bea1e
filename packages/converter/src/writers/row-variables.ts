import type { Cast } from "@wherry/core";
import { type MemoryDimension, type MemoryVariable, numberAttribute } from "@wherry/netcdf";
import { joined, type RowPlaces } from "./column-groups.ts";
import { type RowLayout, rowAttributes } from "./data-variables.ts";
import { segmentVariable } from "./segment-variable.ts";
import { attributes, charData, fillAttribute, INT_FILL, store } from "./storage.ts";

/** What is told of each row beside its quantities: segment, elapsed time, line of the source, texts. */
export function rowVariables(
  casts: readonly Cast[],
  places: RowPlaces,
  layout: RowLayout,
): { readonly variables: readonly MemoryVariable[]; readonly dimensions: readonly MemoryDimension[] } {
  const segment = segmentVariable(casts, places, layout.dimension, layout.coordinates);
  const isSeries = layout.dimension === "time" || casts.every(({ kind }) => kind === "fixed-depth");
  const texts = textVariables(casts, places, layout);
  return {
    dimensions: texts.dimensions,
    variables: [
      ...(segment === null ? [] : [segment]),
      ...(isSeries ? [] : elapsedVariable(casts, places, layout)),
      {
        name: "source_line",
        type: "int",
        dimensions: [layout.dimension],
        data: Int32Array.from(joined(places, (cast) => casts[cast]!.lines, INT_FILL)),
        attributes: attributes(
          ["long_name", "line of the source file, the first line is 1"],
          ["units", "1"],
          numberAttribute("_FillValue", "int", INT_FILL),
          ...rowAttributes(layout, "auxiliaryInformation"),
        ),
      },
      ...texts.variables,
    ],
  };
}

function elapsedVariable(casts: readonly Cast[], places: RowPlaces, layout: RowLayout): MemoryVariable[] {
  if (casts.every(({ elapsed }) => elapsed === null)) return [];
  const stored = store(
    joined(places, (cast) => casts[cast]!.elapsed),
    "double",
  );
  return [
    {
      name: "elapsed",
      type: "double",
      dimensions: [layout.dimension],
      data: stored.data,
      attributes: attributes(
        ["long_name", "time since the first row of the cast record"],
        ["units", "s"],
        fillAttribute(stored),
        ...rowAttributes(layout, "auxiliaryInformation"),
      ),
    },
  ];
}

/** Columns whose cells were read as times: what they say stands in `elapsed` or `time`. */
const becameTimes = ({ elapsed, evidence }: Cast, header: string): boolean =>
  elapsed !== null &&
  evidence.some(({ fact }) => fact === `elapsedColumn:${header}` || fact === `timeColumn:${header}`);

/** Columns of text, as they stand in the source. */
function textVariables(
  casts: readonly Cast[],
  places: RowPlaces,
  layout: RowLayout,
): { variables: MemoryVariable[]; dimensions: MemoryDimension[] } {
  const headers = new Set(
    casts.flatMap((cast) => [...cast.texts.keys()].filter((header) => !becameTimes(cast, header))),
  );
  const variables: MemoryVariable[] = [];
  const dimensions: MemoryDimension[] = [];
  const taken = new Set<string>();
  for (const header of headers) {
    const all = new Array<string>(places.total).fill("");
    for (const [cast, offset] of places.offsets.entries())
      for (const [row, text] of (casts[cast]!.texts.get(header) ?? []).entries()) all[offset + row] = text;
    const plain = header
      .toLowerCase()
      .replaceAll(/[^a-z0-9]+/g, "_")
      .replaceAll(/^_+|_+$/g, "");
    let name = `text_${plain || "column"}`;
    for (let n = 2; taken.has(name); n++) name = `text_${plain || "column"}_${n}`;
    taken.add(name);
    const { data, length } = charData(all);
    dimensions.push({ name: `${name}_length`, length });
    variables.push({
      name,
      type: "char",
      dimensions: [layout.dimension, `${name}_length`],
      data,
      attributes: attributes(
        ["long_name", `text of column ${header} of the source`],
        ...rowAttributes(layout, "auxiliaryInformation"),
      ),
    });
  }
  return { variables, dimensions };
}
