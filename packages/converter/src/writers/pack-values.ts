import {
  type Attribute,
  type Dataset,
  type MemoryVariable,
  memoryDataset,
  numberAttribute,
} from "@wherry/netcdf";

/** Stands for missing; no packed value reaches it. */
const FILL = -32768;
const LARGEST = 32767;
const MOST_DECIMALS = 6;

/**
 * The same data set with values in two bytes where that loses nothing (CF section 8.1): every value, unpacked in
 * double precision and brought back to the type it had, is the value it was. Coordinates stay as they are.
 */
export async function packValues(dataset: Dataset): Promise<Dataset> {
  const variables: MemoryVariable[] = [];
  for (const { name, type, dimensions, attributes } of dataset.variables.values()) {
    const result = await dataset.read(name);
    if (!result.ok) throw new RangeError(result.problems[0].message);
    const plain: MemoryVariable = {
      name,
      type,
      dimensions,
      attributes: [...attributes.values()],
      data: result.value,
    };
    const isData = attributes.has("coordinates") && (type === "float" || type === "double");
    variables.push((isData ? packed(plain, attributes) : null) ?? plain);
  }
  return memoryDataset({
    dimensions: [...dataset.dimensions.values()],
    attributes: [...dataset.attributes.values()],
    variables,
  });
}

function packed(variable: MemoryVariable, attributes: ReadonlyMap<string, Attribute>): MemoryVariable | null {
  const values = variable.data as Float32Array | Float64Array;
  const fill = attributes.get("_FillValue")?.value as ArrayLike<number> | undefined;
  const missing = fill?.[0];
  for (let decimals = 0; decimals <= MOST_DECIMALS; decimals++) {
    const scale = Number(`1e-${decimals}`);
    const data = wholes(values, scale, missing);
    if (data === null) continue;
    return { ...variable, type: "short", data, attributes: packedAttributes(variable, data, scale) };
  }
  return null;
}

/** Null if one of the values can't be had back. */
function wholes(
  values: Float32Array | Float64Array,
  scale: number,
  missing: number | undefined,
): Int16Array | null {
  const back = values instanceof Float32Array ? Math.fround : (value: number) => value;
  const data = new Int16Array(values.length);
  for (let k = 0; k < values.length; k++) {
    const value = values[k]!;
    if (value === missing) {
      data[k] = FILL;
      continue;
    }
    const whole = Math.round(value / scale);
    if (!(Math.abs(whole) <= LARGEST) || back(whole * scale) !== value) return null;
    data[k] = whole;
  }
  return data;
}

function packedAttributes({ attributes = [] }: MemoryVariable, data: Int16Array, scale: number): Attribute[] {
  const told = data.filter((whole) => whole !== FILL);
  return [
    ...attributes.map((attribute) => {
      if (attribute.name === "_FillValue") return numberAttribute("_FillValue", "short", FILL);
      if (attribute.name !== "actual_range") return attribute;
      const ends = [told.reduce((a, b) => Math.min(a, b)), told.reduce((a, b) => Math.max(a, b))];
      return numberAttribute(
        "actual_range",
        "double",
        ends.map((whole) => whole * scale),
      );
    }),
    numberAttribute("scale_factor", "double", scale),
  ];
}
