/** Kind of unit that can measure a quantity. */
export type UnitKind =
  | "pressure"
  | "length"
  | "temperature"
  | "conductivity"
  | "salinity"
  | "density"
  | "speed"
  | "time"
  | "mass-concentration"
  | "molar-per-mass"
  | "molar-per-volume"
  | "volume-ratio"
  | "percent"
  | "turbidity"
  | "voltage"
  | "none";

/** A measured quantity: how it is called in casts and products, and in which unit. */
export interface Quantity {
  /** Key of the column in the cast. */
  readonly name: string;
  readonly standardName: string | null;
  readonly longName: string;
  /** Unit kinds that fit; the first is the usual one. */
  readonly kinds: readonly UnitKind[];
  /** UDUNITS spelling of the unit of `values` in a cast; null: as in the source. */
  readonly houseUnits: string | null;
  /** Unit in which products store it, where that differs from the house unit. */
  readonly productUnits?: string;
}

/**
 * Standard names are those of the CF standard-name table, version 83. What has none is kept and passed through.
 * Oxygen and chlorophyll take their standard name from the unit, see `quantityByUnit`.
 */
export const QUANTITIES = {
  pressure: {
    name: "pressure",
    standardName: "sea_water_pressure_due_to_sea_water",
    longName: "sea pressure",
    kinds: ["pressure"],
    houseUnits: "dbar",
  },
  absolute_pressure: {
    name: "pressure",
    standardName: "sea_water_pressure",
    longName: "absolute pressure",
    kinds: ["pressure"],
    houseUnits: "dbar",
  },
  depth: {
    name: "depth",
    standardName: "depth",
    longName: "depth below the surface",
    kinds: ["length"],
    houseUnits: "m",
  },
  temperature: {
    name: "temperature",
    standardName: "sea_water_temperature",
    longName: "temperature of sea water",
    kinds: ["temperature"],
    houseUnits: "degree_C",
  },
  conductivity: {
    name: "conductivity",
    standardName: "sea_water_electrical_conductivity",
    longName: "electrical conductivity of sea water",
    kinds: ["conductivity"],
    houseUnits: "mS cm-1",
    productUnits: "S m-1",
  },
  specific_conductance: {
    name: "specific_conductance",
    standardName: null,
    longName: "electrical conductivity referred to 25 degrees Celsius",
    kinds: ["conductivity"],
    houseUnits: "mS cm-1",
    productUnits: "S m-1",
  },
  unsettled_conductivity: {
    name: "conductivity_of_unknown_kind",
    standardName: null,
    longName: "electrical conductivity, in situ or referred to 25 degrees Celsius",
    kinds: ["conductivity"],
    houseUnits: "mS cm-1",
    productUnits: "S m-1",
  },
  salinity: {
    name: "salinity",
    standardName: "sea_water_practical_salinity",
    longName: "Practical Salinity",
    kinds: ["salinity"],
    houseUnits: "1",
  },
  absolute_salinity: {
    name: "absolute_salinity",
    standardName: "sea_water_absolute_salinity",
    longName: "Absolute Salinity",
    kinds: ["salinity"],
    houseUnits: "g kg-1",
  },
  density: {
    name: "density",
    standardName: "sea_water_density",
    longName: "density of sea water",
    kinds: ["density"],
    houseUnits: "kg m-3",
  },
  sigma_t: {
    name: "sigma_t",
    standardName: "sea_water_sigma_t",
    longName: "sigma-t of sea water",
    kinds: ["density", "none"],
    houseUnits: "kg m-3",
  },
  sound_speed: {
    name: "sound_speed",
    standardName: "speed_of_sound_in_sea_water",
    longName: "speed of sound in sea water",
    kinds: ["speed"],
    houseUnits: "m s-1",
  },
  oxygen: {
    name: "oxygen",
    standardName: null,
    longName: "dissolved oxygen",
    kinds: ["mass-concentration", "molar-per-mass", "molar-per-volume", "volume-ratio", "percent", "none"],
    houseUnits: null,
  },
  turbidity: {
    name: "turbidity",
    standardName: "sea_water_turbidity",
    longName: "turbidity of sea water",
    kinds: ["turbidity", "none"],
    houseUnits: "1",
  },
  chlorophyll: {
    name: "chlorophyll",
    standardName: null,
    longName: "chlorophyll",
    kinds: ["mass-concentration", "voltage", "none"],
    houseUnits: null,
  },
  fluorescence: {
    name: "fluorescence",
    standardName: null,
    longName: "fluorescence",
    kinds: ["voltage", "mass-concentration", "none"],
    houseUnits: null,
  },
  ph: { name: "ph", standardName: null, longName: "pH", kinds: ["none"], houseUnits: null },
  battery: {
    name: "battery_voltage",
    standardName: null,
    longName: "battery voltage",
    kinds: ["voltage", "percent", "none"],
    houseUnits: null,
  },
  sample: {
    name: "sample_number",
    standardName: null,
    longName: "sample number",
    kinds: ["none"],
    houseUnits: null,
  },
} as const satisfies Record<string, Quantity>;

export type QuantityId = keyof typeof QUANTITIES;

/** Standard name and unit that follow from the unit in which an amount of something dissolved is given. */
export const DISSOLVED: Partial<
  Record<QuantityId, Partial<Record<UnitKind, { readonly standardName: string; readonly units: string }>>>
> = {
  oxygen: {
    "mass-concentration": { standardName: "mass_concentration_of_oxygen_in_sea_water", units: "kg m-3" },
    "molar-per-mass": { standardName: "moles_of_oxygen_per_unit_mass_in_sea_water", units: "umol kg-1" },
    "molar-per-volume": {
      standardName: "mole_concentration_of_dissolved_molecular_oxygen_in_sea_water",
      units: "mmol m-3",
    },
    "volume-ratio": { standardName: "volume_fraction_of_oxygen_in_sea_water", units: "1e-3" },
    percent: { standardName: "fractional_saturation_of_oxygen_in_sea_water", units: "percent" },
  },
  chlorophyll: {
    "mass-concentration": { standardName: "mass_concentration_of_chlorophyll_in_sea_water", units: "kg m-3" },
  },
};
