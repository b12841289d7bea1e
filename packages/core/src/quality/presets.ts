/**
 * Where a threshold comes from. "source": read in the published source. "quoted": read in a public document that
 * quotes the source. "memory": from memory, not verified. "house": our own choice, no source. "user": given by the
 * person who made the data.
 */
export type ThresholdStatus = "source" | "quoted" | "memory" | "house" | "user";

export interface Threshold<T> {
  readonly value: T;
  readonly unit: string;
  readonly status: ThresholdStatus;
}

type Range = readonly [number, number];

/** Ranges of a quantity: outside `sensor` bad, outside `expected` questionable. */
export interface PresetRange {
  readonly sensor: Threshold<Range>;
  readonly expected: Threshold<Range> | null;
}

export interface PresetSpike {
  readonly floor: Threshold<number>;
  /** Part of the median of the quantity, if larger than the floor; 0 for none. */
  readonly floorPart: Threshold<number>;
  readonly badAbove: Threshold<number> | null;
}

export interface DepthLimits {
  readonly shallow: Threshold<number>;
  readonly deep: Threshold<number>;
}

export type PresetName = "shelf" | "estuary" | "fresh" | "ocean";

export type JudgedQuantity = "temperature" | "conductivity" | "salinity" | "pressure";

/** Thresholds for one kind of water. Each carries its status, which goes into the metadata. */
export interface Preset {
  readonly name: PresetName;
  /** Tests without which a row is never 1, by quantity. */
  readonly required: Readonly<Record<JudgedQuantity, readonly string[]>>;
  readonly ranges: Readonly<Record<JudgedQuantity, PresetRange>>;
  /** The rule spike_return, by quantity. */
  readonly spikeReturn: Partial<Readonly<Record<JudgedQuantity, PresetSpike>>>;
  /** The published three-level test, by quantity: limits above 500 dbar (shallow) and below (deep). */
  readonly spikeVertical: Partial<Readonly<Record<JudgedQuantity, DepthLimits>>>;
  /** "published": strictly increasing, 4. "reversals": the processing step of that name, 3. */
  readonly pressureIncreasing: "published" | "reversals";
  /** "levels": published, 4 on temperature and salinity. "layers": layer means, 3 on salinity. */
  readonly densityInversion: { readonly form: "levels" | "layers"; readonly tolerance: Threshold<number> };
  /** "profile": published, all values equal, 4. "travel": both sensors still while pressure moves. */
  readonly stuck:
    | { readonly form: "profile" }
    | {
        readonly form: "travel";
        readonly fewestRows: Threshold<number>;
        readonly leastTravel: Threshold<number>;
        readonly leastPart: Threshold<number>;
        /** Coarsest print for a 4, conductivity as a part of its median; null: always 3. */
        readonly finePrint: {
          readonly temperature: Threshold<number>;
          readonly conductivityPart: Threshold<number>;
        } | null;
      };
  readonly freezingTolerance: Threshold<number>;
  readonly fewestSatellites: Threshold<number>;
  readonly largestSpeed: Threshold<number>;
  readonly adviceDistance: Threshold<number>;
  /** Null: not run. */
  readonly flatLineAfter: Threshold<number> | null;
  readonly rateDeviations: Threshold<number>;
  readonly rateWindow: Threshold<number>;
  /** Multiple of the sampling interval. */
  readonly longestGap: Threshold<number>;
}

const house = <T>(value: T, unit: string): Threshold<T> => ({ value, unit, status: "house" });
const memory = <T>(value: T, unit: string): Threshold<T> => ({ value, unit, status: "memory" });
const quoted = <T>(value: T, unit: string): Threshold<T> => ({ value, unit, status: "quoted" });
const source = <T>(value: T, unit: string): Threshold<T> => ({ value, unit, status: "source" });

const none = house(0, "1");
const deepest = Number.POSITIVE_INFINITY;
const sensors = {
  temperature: house<Range>([-5, 45], "degree_C"),
  conductivity: house<Range>([-0.05, 90], "mS cm-1"),
  salinity: house<Range>([0, 100], "1"),
};
const pressureSpike: PresetSpike = {
  floor: house(0.3, "dbar"),
  floorPart: none,
  badAbove: house(5, "dbar"),
};

const shelf: Preset = {
  name: "shelf",
  required: {
    temperature: ["gross_range", "spike_return"],
    conductivity: ["gross_range", "spike_return"],
    salinity: ["gross_range", "spike_return"],
    pressure: ["gross_range"],
  },
  ranges: {
    temperature: { sensor: sensors.temperature, expected: quoted([-2, 30], "degree_C") },
    conductivity: { sensor: sensors.conductivity, expected: null },
    salinity: { sensor: sensors.salinity, expected: quoted([0, 38], "1") },
    pressure: { sensor: memory([-5, deepest], "dbar"), expected: house([-1, deepest], "dbar") },
  },
  spikeReturn: {
    temperature: { floor: house(0.05, "degree_C"), floorPart: none, badAbove: house(6, "degree_C") },
    conductivity: { floor: house(0.1, "mS cm-1"), floorPart: none, badAbove: house(10, "mS cm-1") },
    salinity: { floor: house(0.1, "1"), floorPart: none, badAbove: house(10, "1") },
    pressure: pressureSpike,
  },
  spikeVertical: {},
  pressureIncreasing: "reversals",
  densityInversion: { form: "layers", tolerance: source(0.03, "kg m-3") },
  stuck: {
    form: "travel",
    fewestRows: house(10, "1"),
    leastTravel: house(5, "dbar"),
    leastPart: house(0.2, "1"),
    finePrint: { temperature: house(0.005, "degree_C"), conductivityPart: house(0.001, "1") },
  },
  freezingTolerance: house(0.1, "degree_C"),
  fewestSatellites: house(4, "1"),
  largestSpeed: house(20, "m s-1"),
  adviceDistance: house(20, "km"),
  flatLineAfter: house(12, "1"),
  rateDeviations: memory(3, "1"),
  rateWindow: memory(25, "h"),
  longestGap: house(1.5, "1"),
};

const travel = shelf.stuck.form === "travel" ? shelf.stuck : null;

const estuary: Preset = {
  ...shelf,
  name: "estuary",
  ranges: {
    ...shelf.ranges,
    temperature: { sensor: sensors.temperature, expected: house([-2, 35], "degree_C") },
    salinity: { sensor: sensors.salinity, expected: house([0, 42], "1") },
  },
  spikeReturn: {
    ...shelf.spikeReturn,
    conductivity: {
      floor: house(0.1, "mS cm-1"),
      floorPart: house(0.003, "1"),
      badAbove: house(10, "mS cm-1"),
    },
  },
  stuck: { ...travel!, leastTravel: house(2, "dbar") },
};

const fresh: Preset = {
  ...estuary,
  name: "fresh",
  ranges: {
    ...shelf.ranges,
    temperature: { sensor: sensors.temperature, expected: house([-0.5, 35], "degree_C") },
    salinity: { sensor: sensors.salinity, expected: house([0, 5], "1") },
  },
  spikeReturn: {
    ...shelf.spikeReturn,
    conductivity: { floor: house(0, "mS cm-1"), floorPart: house(0.02, "1"), badAbove: null },
    salinity: { floor: house(0, "1"), floorPart: house(0.02, "1"), badAbove: null },
  },
  densityInversion: { form: "layers", tolerance: house(0.01, "kg m-3") },
  stuck: { ...travel!, leastTravel: house(2, "dbar"), finePrint: null },
};

const ocean: Preset = {
  ...shelf,
  name: "ocean",
  required: {
    temperature: ["gross_range", "spike_vertical"],
    conductivity: ["gross_range"],
    salinity: ["gross_range", "spike_vertical", "density_inversion"],
    pressure: ["gross_range", "pressure_increasing"],
  },
  ranges: {
    temperature: { sensor: sensors.temperature, expected: memory([-2.5, 40], "degree_C") },
    conductivity: { sensor: sensors.conductivity, expected: null },
    salinity: { sensor: sensors.salinity, expected: memory([2, 41], "1") },
    pressure: { sensor: memory([-5, deepest], "dbar"), expected: memory([-2.4, deepest], "dbar") },
  },
  spikeReturn: { pressure: pressureSpike },
  spikeVertical: {
    temperature: { shallow: quoted(6, "degree_C"), deep: quoted(2, "degree_C") },
    salinity: { shallow: quoted(0.9, "1"), deep: quoted(0.3, "1") },
  },
  pressureIncreasing: "published",
  densityInversion: { form: "levels", tolerance: source(0.03, "kg m-3") },
  stuck: { form: "profile" },
  flatLineAfter: null,
};

/** The presets, by name. Rules and reasons: docs/reference. */
export const presets: Readonly<Record<PresetName, Preset>> = { shelf, estuary, fresh, ocean };

/** Numbers of spike_return that no preset changes. */
export const spikeReturnShared = {
  gradientFactor: house(2, "1"),
  windowRows: house(5, "1"),
  longest: house(2, "1"),
  /** dbar between rows, at least; `noiseFactor` times the noise of the pressure if larger. */
  spacingFloor: house(0.02, "dbar"),
  noiseFactor: house(3, "1"),
} as const;
