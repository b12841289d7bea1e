import { formatIsoTime, type Result, succeed } from "@wherry/core";
import type { Attribute, Dataset, Variable } from "@wherry/netcdf";
import { floatText } from "../writers/number-text.ts";

/** What a product tells of itself. */
export interface ProductFacts {
  /** Name of the file. */
  readonly file: string;
  /** Kind of netCDF, as `classic`. */
  readonly kind: Dataset["kind"];
  /** Global attributes with one value each. */
  readonly attributes: ReadonlyMap<string, string | number>;
  readonly variables: readonly VariableFacts[];
  readonly casts: readonly CastFacts[];
}

export interface VariableFacts {
  readonly name: string;
  readonly longName: string;
  readonly standardName: string | null;
  readonly units: string | null;
  /** `coverage_content_type`. */
  readonly content: string;
}

/** A cast of a product; numbers that it does not tell are NaN, texts "". */
export interface CastFacts {
  readonly id: string;
  readonly kind: "profile" | "timeSeries";
  readonly station: string;
  /** Epoch seconds. */
  readonly time: number;
  readonly endTime: number;
  readonly latitude: number;
  readonly longitude: number;
  readonly endLatitude: number;
  readonly endLongitude: number;
  readonly positionFlag: number;
  readonly timeFlag: number;
  readonly sourceFile: string;
}

/** Order of casts; one without a time comes last. */
export const earliest = ({ time }: CastFacts): number =>
  Number.isNaN(time) ? Number.POSITIVE_INFINITY : time;

/** Moment of a cast as text; "" if it is not known. */
export const momentText = (time: number): string => (Number.isNaN(time) ? "" : formatIsoTime(time));

/**
 * Reads what a product of ours tells of itself and of its casts; its rows are not read.
 *
 * @param dataset open product
 */
export async function productFacts(file: string, dataset: Dataset): Promise<Result<ProductFacts>> {
  const attributes = new Map<string, string | number>();
  for (const [name, attribute] of dataset.attributes) {
    const value = plain(attribute);
    if (value !== null) attributes.set(name, value);
  }
  const casts = await castsOf(dataset);
  if (!casts.ok) return casts;
  return succeed({
    file,
    kind: dataset.kind,
    attributes,
    variables: [...dataset.variables.values()].flatMap(variableFacts),
    casts: casts.value,
  });
}

function plain({ type, value }: Attribute): string | number | null {
  if (typeof value === "string") return value;
  const [first] = value;
  // 0.1 in single precision is no longer number than it was
  if (type === "float" && value.length === 1) return Number(floatText(Number(first)));
  return value.length === 1 && (typeof first === "number" || typeof first === "string") ? first : null;
}

const textOf = (variable: Variable, name: string): string | null => {
  const value = variable.attributes.get(name)?.value;
  return typeof value === "string" ? value : null;
};

/** Variables that hold data; containers and bounds have no content type. */
function variableFacts(variable: Variable): VariableFacts[] {
  const content = textOf(variable, "coverage_content_type");
  if (content === null) return [];
  return [
    {
      name: variable.name,
      longName: textOf(variable, "long_name") ?? variable.name,
      standardName: textOf(variable, "standard_name"),
      units: textOf(variable, "units"),
      content,
    },
  ];
}

/** Names of the variables that tell of casts, and what they mean here. */
const NUMBERS = {
  endTime: "end_time",
  latitude: "latitude",
  longitude: "longitude",
  endLatitude: "end_latitude",
  endLongitude: "end_longitude",
  positionFlag: "position_qc",
  timeFlag: "time_qc",
} as const;

async function castsOf(dataset: Dataset): Promise<Result<CastFacts[]>> {
  const identity = [...dataset.variables.values()].find((variable) => variable.attributes.has("cf_role"));
  if (identity === undefined) return succeed([]);
  const kind = textOf(identity, "cf_role") === "timeseries_id" ? "timeSeries" : "profile";
  // an archive that asks for numbers has the ids in a variable of their own
  const named = [
    identity,
    ...["cast_id", "station_name"].flatMap((name) => dataset.variables.get(name) ?? []),
  ];
  const ids = await texts(dataset, (named.find(({ type }) => type === "char") ?? identity).name);
  if (!ids.ok) return ids;
  const count = ids.value.length;
  const columns = new Map<string, Float64Array>();
  for (const [key, name] of Object.entries(NUMBERS)) {
    const read = await numbers(dataset, name, count);
    if (!read.ok) return read;
    columns.set(key, read.value);
  }
  const station = await texts(dataset, "station");
  const source = await texts(dataset, "source_file");
  const time = await numbers(dataset, "time", count);
  if (!station.ok) return station;
  if (!source.ok) return source;
  if (!time.ok) return time;
  const column = (key: keyof typeof NUMBERS, index: number) => columns.get(key)![index]!;
  return succeed(
    ids.value.map((id, index) => ({
      id,
      kind,
      station: station.value[index] ?? "",
      time: time.value[index]!,
      endTime: column("endTime", index),
      latitude: column("latitude", index),
      longitude: column("longitude", index),
      endLatitude: column("endLatitude", index),
      endLongitude: column("endLongitude", index),
      positionFlag: column("positionFlag", index),
      timeFlag: column("timeFlag", index),
      sourceFile: source.value[index] ?? "",
    })),
  );
}

/** Numbers of a variable, one for each cast; of a series, which has times for its rows, the first. NaN is missing. */
async function numbers(dataset: Dataset, name: string, count: number): Promise<Result<Float64Array>> {
  const variable = dataset.variables.get(name);
  const out = new Float64Array(count).fill(Number.NaN);
  if (variable === undefined || variable.type === "char" || variable.type === "string") return succeed(out);
  const read = await dataset.read(name);
  if (!read.ok) return read;
  const fill = Number(variable.attributes.get("_FillValue")?.value[0] ?? Number.NaN);
  for (let k = 0; k < Math.min(count, read.value.length); k++) {
    const value = Number(read.value[k]);
    if (value !== fill) out[k] = value;
  }
  return succeed(out);
}

const decoder = new TextDecoder();

/** Texts of a char variable, whose last dimension is the length. */
async function texts(dataset: Dataset, name: string): Promise<Result<string[]>> {
  const variable = dataset.variables.get(name);
  if (variable === undefined) return succeed([]);
  const read = await dataset.read(name);
  if (!read.ok) return read;
  const data = read.value;
  if (!(data instanceof Uint8Array)) return succeed(Array.from(data as ArrayLike<unknown>, String));
  const length = variable.shape.at(-1) ?? 1;
  return succeed(
    Array.from({ length: length === 0 ? 0 : data.length / length }, (_, index) =>
      decoder.decode(data.subarray(index * length, (index + 1) * length)).replace(/\0.*$/s, ""),
    ),
  );
}
