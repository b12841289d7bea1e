import { type Cast, type Column, convertUnits, type Evidence, Flag, type LayerMeans } from "@wherry/core";
import type { Dataset, Variable } from "@wherry/netcdf";
import { textOf } from "./attributes.ts";
import type { CastValues } from "./cast-values.ts";
import { ownLayers } from "./own-layers.ts";

/** A product of this program, by the lines that it writes into `history`. */
export const isOwnProduct = ({ attributes }: Dataset): boolean =>
  /^\S+ wherry \S+: /m.test(textOf(attributes, "history") ?? "");

/**
 * Casts of a product of this program as finished ones: what the product tells beside the quantities goes where the
 * writers find it, so that writing them again changes no number.
 *
 * @param casts  as read by the rules of CF
 * @param places place in the layout of each
 */
export async function finishCasts(
  casts: readonly Cast[],
  places: readonly number[],
  dataset: Dataset,
  from: CastValues,
): Promise<Cast[]> {
  const perCast = new Map(from.at("cast").map((variable) => [variable.name, variable]));
  const numbers = async (name: string) => {
    const variable = perCast.get(name);
    const values = variable ? await from.numbers(variable, null) : null;
    return places.map((place) => values?.[place] ?? Number.NaN);
  };
  const texts = async (name: string) => {
    const variable = perCast.get(name);
    const values = variable ? await from.texts(variable) : null;
    return places.map((place) => values?.[place] ?? null);
  };
  const sourceFile = await texts("source_file");
  const listed: [string, readonly (string | number | null)[]][] = [];
  for (const [name, key] of LISTED_TEXTS) listed.push([key, await texts(name)]);
  listed.push(["sounding", (await numbers("sounding")).map(known)]);
  const [positionFlag, timeFlag, rowsAbove, rowsFlagged] = await Promise.all(
    ["position_qc", "time_qc", "rows_above_layers", "rows_flagged"].map(numbers),
  );
  const finished: Cast[] = [];
  for (const [index, cast] of casts.entries()) {
    const parts = partsOf(cast, dataset);
    const layers: LayerMeans | null =
      parts.lines === null && cast.kind === "profile"
        ? await ownLayers(cast, parts, {
            dataset,
            from,
            place: places[index]!,
            rowsAbove: rowsAbove![index]!,
          })
        : null;
    finished.push({
      ...cast,
      columns: parts.columns,
      texts: parts.texts,
      lines: parts.lines ?? cast.lines,
      timeRole: roleOf(cast, perCast.get("time")),
      fixedDepth: fixedDepthOf(cast, perCast.get("nominal_depth")),
      evidence: [...scaleEvidence(cast, dataset), ...cast.evidence, finishedEvidence(cast)],
      state: { ...cast.state, processing: layers ? "averaged" : cast.state.processing },
      finished: {
        sourceFile: sourceFile[index]!,
        listed: Object.fromEntries(
          listed.flatMap(([key, values]) => (values[index] == null ? [] : [[key, values[index]]])),
        ),
        positionFlag: known(positionFlag![index]),
        timeFlag: known(timeFlag![index]),
        uncertainties: parts.uncertainties,
        layers,
        rowsFlagged: known(rowsFlagged![index]),
      },
    });
  }
  return finished;
}

/** Variables of products and the keys of a sheet's list of casts that they come from. */
const LISTED_TEXTS = [
  ["station", "station"],
  ["wind", "wind"],
  ["sea", "sea"],
  ["observer", "observer"],
  ["remarks", "notes"],
] as const;

const known = (value: number | undefined) => (value === undefined || Number.isNaN(value) ? null : value);

/** The columns of a cast apart by what they are in a product. */
export interface ProductParts {
  /** The quantities. */
  readonly columns: ReadonlyMap<string, Column>;
  readonly texts: Cast["texts"];
  /** Lines of the first source; null in layer means. */
  readonly lines: Uint32Array | null;
  readonly uncertainties: Map<string, { values: Float64Array; comment: string }>;
  /** What stands beside the quantities of layers, by the name of its variable. */
  readonly others: ReadonlyMap<string, Column>;
}

function partsOf(cast: Cast, dataset: Dataset): ProductParts {
  const columns = new Map<string, Column>();
  const others = new Map<string, Column>();
  const uncertainties: ProductParts["uncertainties"] = new Map();
  const names = new Map([...cast.columns].map(([name, { source }]) => [source?.header ?? name, name]));
  let lines: Uint32Array | null = null;
  for (const [name, column] of cast.columns) {
    const header = column.source?.header ?? name;
    const [, base = "", role] = /^(.*)_(uncertainty|count|sd)$/.exec(header) ?? [];
    const { attributes = new Map() } = dataset.variables.get(header) ?? {};
    if (header === "source_line") lines = Uint32Array.from(column.values, (line) => line || 0);
    else if (role === "uncertainty" && names.has(base))
      uncertainties.set(names.get(base)!, {
        values: column.values,
        comment: textOf(attributes, "comment") ?? "",
      });
    // of the means of bursts, which are rows of a series, counts and spreads stay columns
    else if (
      (role && names.has(base) && cast.kind === "profile") ||
      /_bounds_(?:lower|upper)$|^layer_thickness$/.test(header)
    )
      others.set(header, column);
    else columns.set(name, ownColumn(column, header, cast, dataset));
  }
  return { columns, texts: ownTexts(cast, dataset), lines, uncertainties, others };
}

/** A quantity with what the product says of it; flags that a product gives are those of the cast. */
function ownColumn(column: Column, header: string, cast: Cast, dataset: Dataset): Column {
  const { attributes = new Map() } = dataset.variables.get(header) ?? {};
  const comment = textOf(attributes, "comment");
  const source = textOf(attributes, "source");
  const references =
    textOf(attributes, "references") ?? (header === "depth" ? remainingReferences(dataset) : "");
  const told = source === null ? {} : { told: source };
  const flags = Uint8Array.from(column.sourceFlags?.values ?? [], (code) => Number(code) || Flag.missing);
  const own: Column = {
    ...column,
    ...told,
    units: comment === "the source tells no unit" ? null : column.units,
    flags: flags.length === column.values.length ? flags : column.flags,
    sourceFlags: ownSourceFlags(header, cast, dataset),
  };
  // the vertical coordinate tells in a comment what others tell in `source`
  const computed = source ?? (header === "depth" ? comment : null);
  if (!computed?.startsWith("comput")) return own;
  const equation = computed.replace(
    /; negative in air(?=;|$)|; where pressure is missing.*$|; each layer reaches .*? its centre/g,
    "",
  );
  return { ...own, source: null, method: { from: [], equation, references } };
}

/** What the file refers to and no variable claims; the vertical coordinate's own are among them. */
function remainingReferences(dataset: Dataset): string {
  const list = (attributes: Variable["attributes"]) => textOf(attributes, "references")?.split("; ") ?? [];
  const claimed = new Set([...dataset.variables.values()].flatMap(({ attributes }) => list(attributes)));
  return list(dataset.attributes)
    .filter((each) => !claimed.has(each))
    .join("; ");
}

/** Flags that the product kept from its own source. */
function ownSourceFlags(header: string, cast: Cast, dataset: Dataset): Column["sourceFlags"] {
  const name = `${header}_source_flag`;
  const codes = cast.texts.get(name);
  const { attributes = new Map(), type } = dataset.variables.get(name) ?? {};
  const [, schemes, column] =
    /^scheme: (.*); column (.*) of the source$/.exec(textOf(attributes, "comment") ?? "") ?? [];
  if (!codes || schemes === undefined || column === undefined) return null;
  const scheme = schemes === "not told by the source" ? "unknown" : schemes;
  const meanings = textOf(attributes, "flag_meanings")?.split(" ") ?? [];
  // single letters are stored as their numbers, and told by their meanings
  const isLetters = type !== "char" && meanings.some((word) => /^code_(?!(?:minus_)?\d+$)/.test(word));
  const values = codes.map((code) => (isLetters && code !== "" ? String.fromCharCode(Number(code)) : code));
  return { scheme, header: column, values };
}

/** Texts that passed through, under the names that they had in the source. */
function ownTexts({ texts }: Cast, dataset: Dataset): Cast["texts"] {
  const own = new Map<string, readonly string[]>();
  for (const [name, cells] of texts) {
    if (!name.startsWith("text_")) continue;
    const words = textOf(dataset.variables.get(name)?.attributes ?? new Map(), "long_name") ?? "";
    own.set(/^text of column (.*) of the source$/.exec(words)?.[1] ?? name, cells);
  }
  return own;
}

/** What the time stands for, where the casts of the product differ in it. */
function roleOf(cast: Cast, time: Variable | undefined): Cast["timeRole"] {
  const comment = time ? textOf(time.attributes, "comment") : null;
  if (cast.timeRole !== "unknown" || comment === null) return cast.timeRole;
  const own =
    comment.split("; ").find((part) =>
      part
        .replace(/^.*?: /, "")
        .split(", ")
        .includes(cast.id),
    ) ?? "";
  return /first row/.test(own)
    ? "start"
    : /bottom/.test(own)
      ? "bottom"
      : /\bend\b/.test(own)
        ? "end"
        : "unknown";
}

/** A nominal depth that was only the median of the rows is found again from them. */
function fixedDepthOf({ fixedDepth }: Cast, nominal: Variable | undefined): Cast["fixedDepth"] {
  const comment = nominal ? (textOf(nominal.attributes, "comment") ?? "") : "";
  if (fixedDepth === null || comment.startsWith("median")) return null;
  const [, reference] = /^reference: (.*)$/.exec(comment) ?? [];
  return reference === undefined ? fixedDepth : { ...fixedDepth, reference };
}

/** How the product knows the scale of its temperature: an assumption stays one. */
function scaleEvidence(cast: Cast, dataset: Dataset): Evidence[] {
  const temperature = dataset.variables.get("temperature");
  const source = temperature ? textOf(temperature.attributes, "source") : null;
  if (source === null || !/I(?:TS|PTS)-/.test(source)) return [];
  return [
    {
      fact: "temperatureScale",
      certainty: source.includes("assumed") ? "assumed" : source.includes("states") ? "stated" : "implied",
      because: `source of temperature says ${source}`,
      where: { file: cast.source.path, variable: "temperature", attribute: "source" },
    },
  ];
}

const finishedEvidence = (cast: Cast): Evidence => ({
  fact: "state",
  certainty: "stated",
  because: "history says that this program made the file: nothing is done to the data again",
  where: { file: cast.source.path, attribute: "history" },
});

/** Values of a column of the product in the unit of the cast's column of the quantity. */
export function inUnitsOf(values: Float64Array, from: Column | undefined, to: Column): Float64Array {
  const units = from?.units ?? null;
  if (units === null || to.units === null || units === to.units) return values;
  const factor = convertUnits(1, units, to.units) - convertUnits(0, units, to.units);
  return values.map((value) => value * factor);
}
