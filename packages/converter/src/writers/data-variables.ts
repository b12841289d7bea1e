import { brackishBelow, type Cast, type Column } from "@wherry/core";
import { type Attribute, type MemoryVariable, textAttribute } from "@wherry/netcdf";
import type { ColumnGroup } from "./column-groups.ts";
import { containerNames, type Equipment } from "./equipment.ts";
import { asWords } from "./flag-variables.ts";
import { attributes, fillAttribute, rangeAttribute, type Stored } from "./storage.ts";

/** How the rows of a product hang together. */
export interface RowLayout {
  /** Dimension of the rows. */
  readonly dimension: string;
  /** Names for the `coordinates` attribute of every variable on the rows. */
  readonly coordinates: string;
  /** The quantity that is the vertical coordinate; null if there is none. */
  readonly vertical: "depth" | "pressure" | null;
  /** Text for `cell_methods`; null for none. */
  readonly cellMethods: string | null;
  /** Before every long name, as "layer mean of ". */
  readonly prefix: string;
  /** Long name of the vertical coordinate; null for that of the quantity. */
  readonly verticalName: string | null;
  /** Whether the vertical coordinate is the nominal one and carries `axis`. */
  readonly verticalAxis: boolean;
  readonly equipment: Equipment;
}

/** Name of the vertical coordinate among the groups. */
export function verticalOf(groups: readonly ColumnGroup[]): RowLayout["vertical"] {
  if (groups.some(({ name }) => name === "depth")) return "depth";
  return groups.some(({ name }) => name === "pressure") ? "pressure" : null;
}

/** A measured or computed quantity. */
export function dataVariable(
  group: ColumnGroup,
  stored: Stored,
  casts: readonly Cast[],
  layout: RowLayout,
  ancillary: readonly string[],
): MemoryVariable {
  const { quantity } = group;
  return {
    name: group.name,
    type: stored.type,
    dimensions: [layout.dimension],
    data: stored.data,
    attributes: attributes(
      ["long_name", layout.prefix + longNameOf(group)],
      ["standard_name", quantity.standardName],
      ["units", quantity.units],
      ["units_metadata", temperatureKind(group, "on_scale")],
      fillAttribute(stored),
      rangeAttribute(stored),
      ["cell_methods", layout.cellMethods],
      ["source", sourceWords(group, casts)],
      ["references", referencesOf(group)],
      ["comment", quantity.unitsTold ? null : "the source tells no unit"],
      // what a column without a standard name measures is not known to anybody but its source
      [
        "coverage_content_type",
        quantity.standardName === "" ? "auxiliaryInformation" : "physicalMeasurement",
      ],
      ["coordinates", layout.coordinates],
      ["grid_mapping", "crs"],
      ["ancillary_variables", ancillary.join(" ")],
      ["platform", containerNames("platform", layout.equipment.platforms.length)],
      ["instrument", containerNames("instrument", layout.equipment.instruments.length)],
    ),
  };
}

/** The vertical coordinate of the rows. It gets a fill value only where a row has no vertical place. */
export function verticalVariable(
  group: ColumnGroup,
  stored: Stored,
  layout: RowLayout,
  more: { readonly comment: string | null; readonly bounds?: string; readonly ancillary?: readonly string[] },
): MemoryVariable {
  return {
    name: group.name,
    type: stored.type,
    dimensions: [layout.dimension],
    data: stored.data,
    attributes: attributes(
      ["long_name", layout.verticalName ?? longNameOf(group)],
      ["standard_name", group.quantity.standardName],
      ["units", group.quantity.units],
      ["positive", "down"],
      ["axis", layout.verticalAxis ? "Z" : null],
      stored.missing > 0 ? fillAttribute(stored) : null,
      ["bounds", more.bounds],
      rangeAttribute(stored),
      ["ancillary_variables", more.ancillary?.join(" ")],
      ["comment", more.comment],
      ["coverage_content_type", "coordinate"],
    ),
  };
}

/** A column that stands beside a quantity computed here: what its source had computed itself. */
export const isReceived = (name: string): boolean => name.endsWith("_received");

export const longNameOf = ({ name, quantity }: ColumnGroup): string =>
  isReceived(name) && !/receiv/.test(quantity.longName)
    ? `${quantity.longName}, as received from the source`
    : quantity.longName;

/** `units_metadata` of temperatures (CF section 3.1.2); null for anything else. */
export function temperatureKind({ quantity }: ColumnGroup, kind: "on_scale" | "difference"): string | null {
  const isTemperature = /^(degrees?_?(C|F|celsius|fahrenheit)|K|kelvin|°C|celsius)$/i.test(quantity.units);
  return isTemperature ? `temperature: ${kind}` : null;
}

/** Quantities that are computed unless the source brought them. */
const COMPUTABLE = new Set(["depth", "salinity", "density", "sound_speed"]);

/** How the values came about, for `source`. */
export function sourceWords(group: ColumnGroup, casts: readonly Cast[]): string {
  const words = group.columns.flatMap((column, index) =>
    column === null ? [] : sourceOfColumn(column, casts[index]!),
  );
  const different = [...new Set(words)];
  return different.length < 2 ? (different[0] ?? "") : different.join("; in other casts ");
}

function sourceOfColumn(column: Column, cast: Cast): string {
  if (column.told !== undefined) return column.told;
  if (column.source === null) {
    const from = column.method?.from ?? [];
    return from.length === 0 ? "computed" : `computed from ${listed(from.map(asWords))}`;
  }
  if (isReceived(column.name) || COMPUTABLE.has(column.name)) return "as received from the source";
  if (column.standardName === "sea_water_pressure_due_to_sea_water" && !Number.isNaN(cast.pressureOffset))
    return cast.pressureOffset === 0
      ? "measured; zero at the surface as it came"
      : "measured; the atmospheric offset of the cast (pressure_offset) is subtracted";
  if (column.standardName === "sea_water_temperature") return temperatureSource(column, cast);
  return "measured";
}

/** How a measured temperature came to be on ITS-90, by the evidence that its reader left. */
function temperatureSource(column: Column, cast: Cast): string {
  const scale = cast.evidence.find(
    ({ fact, because }) =>
      fact === "temperatureScale" ||
      (fact === `column:${column.source?.header}` && /\bI(TS|PTS)-?(90|68)\b/i.test(because)),
  );
  if (scale === undefined) return "measured";
  if (scale.certainty === "assumed") return "measured; scale ITS-90 assumed, data after 1990";
  if (/IPTS-?68/i.test(scale.because)) return "measured on IPTS-68, converted to ITS-90";
  return scale.certainty === "stated" ? "measured on ITS-90, as the source states" : "measured on ITS-90";
}

/** As `a, b and c`. */
export const listed = (items: readonly string[]): string =>
  items.length < 2 ? items.join("") : `${items.slice(0, -1).join(", ")} and ${items.at(-1)}`;

/** Equation and its sources, for `references`; null for measured quantities. */
export function referencesOf(group: ColumnGroup): string | null {
  const texts = group.columns.map((column) => column?.method?.references ?? "");
  return [...new Set(texts.filter((text) => text !== ""))].join("; ") || null;
}

/** How depth was found, for the `comment` of a coordinate, which has no `source` attribute. */
export function depthComment(group: ColumnGroup): string | null {
  const ways = group.columns.flatMap((column) => {
    if (column === null) return [];
    if (column.source !== null) return "as received from the source";
    const { method } = column;
    if (method === null) return "computed";
    return /^comput/.test(method.equation)
      ? method.equation
      : `computed from ${listed(method.from.map(asWords))}: ${generalWords(method.equation)}`;
  });
  return [...new Set(ways)].join("; in other casts ") || null;
}

/** The number of one cast in words that hold for every cast decided alike; the record of processing has it. */
const generalWords = (equation: string): string =>
  equation.replace(/mean salinity (\d+(?:\.\d+)?)/, (_, mean: string) =>
    Number.parseFloat(mean) < brackishBelow
      ? `mean salinity below ${brackishBelow}`
      : `mean salinity ${brackishBelow} or more`,
  );

/** Attributes that every variable on the rows carries when it describes the rows and is not a quantity. */
export const rowAttributes = (layout: RowLayout, content: string): Attribute[] => [
  textAttribute("coverage_content_type", content),
  textAttribute("coordinates", layout.coordinates),
];
