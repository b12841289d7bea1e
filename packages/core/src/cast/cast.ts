import type { Place } from "../problem.ts";
import type { LayerMeans } from "./layer-means.ts";

/** How a fact about a cast is known. Only the facts that the documentation lists may be `assumed`. */
export type Certainty = "stated" | "implied" | "assumed" | "answered" | "unknown";

/** Why something is believed: the words or numbers that say so, and where they stand. */
export interface Evidence {
  /** What it is about: "time", "timeZone", "latitude", "longitude", "state", "column:<header>" … */
  readonly fact: string;
  readonly certainty: Certainty;
  /** In words for a person, quoting the source: `line 3 says "UTC+2"`. */
  readonly because: string;
  readonly where: Place;
}

/** A satellite fix or any other position. WGS 84 unless the evidence says otherwise. */
export interface Position {
  /** Decimal degrees north, -90 to 90. */
  readonly latitude: number;
  /** Decimal degrees east, -180 to 180. */
  readonly longitude: number;
  /** Number of satellites in the fix; null if not told. */
  readonly satellites: number | null;
  /** Words of the source on the quality of the fix; null if none. */
  readonly quality: string | null;
}

/** How a column stood in its source. */
export interface ColumnSource {
  readonly header: string;
  /** Unit as it stood ("µS/cm"), null if none. */
  readonly units: string | null;
  /** Column number in the table, from 0. */
  readonly index: number;
  /**
   * Decimal places printed (the largest over all values, in the source's unit). A stored value must let the
   * printed one be recovered at this precision.
   */
  readonly decimals: number;
  /** Most significant digits printed in any value. */
  readonly significantDigits: number;
  /** First and last value that is not missing, as printed but read as numbers; NaN if there is none. */
  readonly first: number;
  readonly last: number;
  /** True where the source stores single precision: unchanged values need no more. */
  readonly single?: boolean;
}

/** The source's own quality flags for a column, kept as received. */
export interface SourceFlags {
  /** Name of the scheme, such as "WOCE CTD"; "unknown" if the source does not tell. */
  readonly scheme: string;
  readonly header: string;
  /** One per row. */
  readonly values: readonly string[];
}

/**
 * One quantity of a cast. Arrays have one element per row.
 *
 * House units of `values`: pressure dbar, temperature degree_C (ITS-90), conductivity mS cm-1, depth m positive
 * down, practical salinity 1, density kg m-3, sound speed m s-1; anything else in the unit that `units` says.
 */
export interface Column {
  /**
   * Key in the cast and name of the variable in the products: "pressure", "depth", "temperature",
   * "conductivity", "salinity", "density", "sound_speed", … Other columns get a name made from their header.
   */
  readonly name: string;
  readonly standardName: string | null;
  readonly longName: string;
  /** UDUNITS spelling of the unit of `values`; null for numbers whose unit is not known. */
  readonly units: string | null;
  /** Missing is NaN. */
  readonly values: Float64Array;
  /** IODE primary flags; 2 (9 where missing) until quality tests have run. */
  readonly flags: Uint8Array;
  /** Null for a computed column. */
  readonly source: ColumnSource | null;
  readonly sourceFlags: SourceFlags | null;
  /** Result of every quality test that judged this column, by test name. */
  readonly tests: ReadonlyMap<string, Uint8Array>;
  /** For a computed column: what it was computed from and by which equation. */
  readonly method: {
    readonly from: readonly string[];
    readonly equation: string;
    readonly references: string;
  } | null;
  /** How the values came about, in the words of the product that they were read from. */
  readonly told?: string;
}

export type SegmentKind = "air" | "soak" | "down" | "bottom" | "up" | "stay" | "other";

/** Rows firstRow to lastRow (both included, counted from 0). Segments do not overlap and cover all rows. */
export interface Segment {
  readonly kind: SegmentKind;
  readonly firstRow: number;
  readonly lastRow: number;
}

/** What a processing step did. Parameters and counts are plain data: they are written to the processing record. */
export interface StepRecord {
  readonly step: string;
  readonly parameters: Readonly<
    Record<string, string | number | boolean | null | readonly (string | number)[]>
  >;
  readonly counts: Readonly<Record<string, number>>;
  /** A sentence for `history`, in the past tense. */
  readonly words: string;
}

/** What had already been done to the data when it came. */
export interface CastState {
  readonly processing:
    | "raw" // rows in time, nothing known to have been done
    | "averaged" // levels without times, or one value a metre
    | "unknown";
  /** The source says or shows that sea pressure is zero at the surface. */
  readonly pressureZeroed: boolean;
  readonly lagCorrected: boolean;
  /** One direction only, or the upcast turned round. */
  readonly direction: "both" | "down" | "up" | "up-reversed" | "unknown";
}

/**
 * What a product of this program tells of a cast beside its columns. Such a cast is finished: no step is done again, and
 * what stands here is written as it is.
 */
export interface Finished {
  /** Name of the file that the product was made from. */
  readonly sourceFile: string | null;
  /** What its list of casts told: station, sounding in m, wind, sea, observer, notes. */
  readonly listed: Readonly<Record<string, string | number>>;
  /** IODE primary flags of the position and the time of the cast; null where the product has none. */
  readonly positionFlag: number | null;
  readonly timeFlag: number | null;
  /** Standard uncertainties by column, in the unit of the product, with the words on how they arose. */
  readonly uncertainties: ReadonlyMap<string, { readonly values: Float64Array; readonly comment: string }>;
  /** Where the rows are layer means. */
  readonly layers: LayerMeans | null;
  /** Rows in the layers whose value was left out of the means; null where the product does not tell. */
  readonly rowsFlagged: number | null;
}

/** A cast as it goes through reading, cleaning and writing. Nothing in it is changed: steps give a new cast. */
export interface Cast {
  /** `[A-Za-z0-9._-]`, unique in the survey. */
  readonly id: string;
  readonly kind: "profile" | "fixed-depth";
  readonly state: CastState;
  /** Number of rows: the length of every array below. */
  readonly rows: number;
  /** Epoch seconds UTC of the moment that `timeRole` names; NaN if not known. */
  readonly time: number;
  readonly timeRole: "start" | "bottom" | "end" | "unknown";
  /** Epoch seconds UTC of the last row or the stated end; NaN if not known. */
  readonly endTime: number;
  /** Seconds since the first row, one per row; null if rows have no times. */
  readonly elapsed: Float64Array | null;
  readonly start: Position | null;
  readonly end: Position | null;
  /** Fixed-depth series: nominal depth in m and what it is measured from. */
  readonly fixedDepth: { readonly depth: number; readonly reference: string } | null;
  /** Facts about the instrument that the source tells. */
  readonly instrument: {
    readonly model: string | null;
    readonly serialNumber: string | null;
    readonly ratedPressure: number | null;
  };
  /** Header lines and free remarks of the source, as they stand. */
  readonly notes: readonly string[];
  readonly columns: ReadonlyMap<string, Column>;
  /** Columns of text that pass through, by header. */
  readonly texts: ReadonlyMap<string, readonly string[]>;
  /** Columns whose cells all became `time` and `elapsed`, by header: of their texts the ends are kept. */
  readonly timeColumns?: ReadonlyMap<string, { readonly first: string; readonly last: string }>;
  /** Line of the source file of each row, from 1; in netCDF its place along the dimension of rows, from 1. */
  readonly lines: Uint32Array;
  readonly source: { readonly path: string; readonly sha256: string };
  readonly evidence: readonly Evidence[];
  /** Subtracted from the source's pressure, dbar; NaN if not determined. */
  readonly pressureOffset: number;
  /** Empty until segmentation has run. */
  readonly segments: readonly Segment[];
  readonly steps: readonly StepRecord[];
  /** For a cast read from a product of this program. */
  readonly finished?: Finished;
}
