import type { Column } from "@wherry/core";

const NAMES: Readonly<Record<string, string>> = {
  temperature: "Temperature",
  salinity: "Practical Salinity",
  density: "Density",
  sound_speed: "Sound speed",
  conductivity: "Conductivity",
  pressure: "Sea pressure",
  depth: "Depth",
};

const SUPERSCRIPTS: Readonly<Record<string, string>> = {
  "-": "⁻",
  ...Object.fromEntries([..."⁰¹²³⁴⁵⁶⁷⁸⁹"].map((sign, digit) => [String(digit), sign])),
};

/** A unit as it is printed: "kg m-3" is kg m⁻³, "degree_C" is °C; "" for a plain number. */
export function printedUnits(units: string | null): string {
  if (units === null || units === "1" || units === "") return "";
  return units
    .replace(/\b(?:degree_Celsius|degrees?_C|degC)\b/g, "°C")
    .replace(/\bu(?=(?:mol|g|S|E)\b)/g, "µ")
    .replace(/(?<=[A-Za-z)])-?\d+/g, (power) => [...power].map((sign) => SUPERSCRIPTS[sign]).join(""));
}

/** Name of a quantity for an axis. */
export const quantityName = ({ name, longName }: Column): string =>
  NAMES[name] ?? `${longName.charAt(0).toUpperCase()}${longName.slice(1)}`;

/** "Temperature / °C", "Practical Salinity". */
export function axisTitle(column: Column): string {
  const units = printedUnits(column.units);
  return units === "" ? quantityName(column) : `${quantityName(column)} / ${units}`;
}
