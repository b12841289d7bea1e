import { defaultFill } from "./classic/format.ts";
import type { Attribute, DataArray, NcType } from "./dataset.ts";
import { encodeText } from "./text.ts";
import { isArrayOf } from "./types.ts";

/**
 * The value that stands for "nothing written" in a variable, as an array of one: its `_FillValue`, if that is
 * one value of the variable's own type, else the default of the netCDF library. Text has the empty text.
 */
export function fillValue(type: NcType, attributes: ReadonlyMap<string, Attribute>): DataArray {
  const given = attributes.get("_FillValue");
  if (given?.type === type) {
    if (typeof given.value === "string") {
      const bytes = given.bytes ?? encodeText(given.value);
      if (bytes.length === 1) return bytes.slice();
    } else if (given.value.length === 1 && isArrayOf(type, given.value)) return given.value.slice();
  }
  return type === "string" ? [""] : defaultFill(type);
}
