import type { Column } from "@wherry/core";

/** How a quantity that products know by name is described and stored. */
export interface Quantity {
  /** Name of the cast's column and of the product's variable. */
  readonly name: string;
  readonly standardName: string;
  readonly longName: string;
  /** Unit in the products. */
  readonly units: string;
  /** House unit of core in units of the product: the stored value is the house value divided by this. */
  readonly divisor: number;
  /** Whether layer means carry a standard deviation. */
  readonly spread: boolean;
}

/**
 * The quantities of a cast, in the order of the products. Standard names from CF Standard Name Table 83; units
 * of the products as in the reference files, conductivity in S m-1 from the house unit mS cm-1.
 */
export const QUANTITIES: readonly Quantity[] = [
  {
    name: "depth",
    standardName: "depth",
    longName: "depth below the water surface",
    units: "m",
    divisor: 1,
    spread: false,
  },
  {
    name: "pressure",
    standardName: "sea_water_pressure_due_to_sea_water",
    longName: "sea pressure, zero at the water surface",
    units: "dbar",
    divisor: 1,
    spread: false,
  },
  {
    name: "pressure",
    standardName: "sea_water_pressure",
    longName: "absolute pressure, the atmosphere's included",
    units: "dbar",
    divisor: 1,
    spread: false,
  },
  {
    name: "temperature",
    standardName: "sea_water_temperature",
    longName: "in-situ temperature, ITS-90",
    units: "degree_C",
    divisor: 1,
    spread: true,
  },
  {
    name: "conductivity",
    standardName: "sea_water_electrical_conductivity",
    longName: "electrical conductivity, in situ",
    units: "S m-1",
    divisor: 10,
    spread: true,
  },
  {
    name: "salinity",
    standardName: "sea_water_practical_salinity",
    longName: "Practical Salinity, PSS-78",
    units: "1",
    divisor: 1,
    spread: true,
  },
  {
    name: "density",
    standardName: "sea_water_density",
    longName: "in-situ density",
    units: "kg m-3",
    divisor: 1,
    spread: false,
  },
  {
    name: "sound_speed",
    standardName: "speed_of_sound_in_sea_water",
    longName: "speed of sound",
    units: "m s-1",
    divisor: 1,
    spread: false,
  },
];

/** Place of a quantity in the order of the products; columns that are not known by name come last. */
export function orderOf(name: string): number {
  const place = QUANTITIES.findIndex((quantity) => quantity.name === name);
  return place < 0 ? QUANTITIES.length : place;
}

/**
 * How a column is described. A conductivity in house units is stored in S m-1 under whatever name; anything
 * else that is not in the table keeps its own words and unit.
 */
export function quantityOf(column: Column): Quantity & { readonly unitsTold: boolean } {
  const known = QUANTITIES.find(
    ({ name, standardName }) => name === column.name && standardName === column.standardName,
  );
  if (known) return { ...known, unitsTold: true };
  const isConductivity = column.units === "mS cm-1" || column.units === "mS/cm";
  return {
    name: column.name,
    standardName: column.standardName ?? "",
    longName: column.longName,
    units: isConductivity ? "S m-1" : (column.units ?? "1"),
    divisor: isConductivity ? 10 : 1,
    spread: true,
    unitsTold: column.units !== null,
  };
}
