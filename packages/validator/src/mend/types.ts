import type { NcType } from "@wherry/netcdf";
import { isTextType, numbersOf } from "../engine/attribute-value.ts";
import { validRange } from "../rules/cf/valid-range.ts";
import { attributeAt, type Mender, setNumbers, setText } from "./edit.ts";

/** The numbers of an attribute in the type of its variable, where that holds them exactly. */
export const ofVariableType: Mender = (finding, dataset) => {
  const type = dataset.variables.get(finding.where.variable ?? "")?.type;
  const values = numbersOf(attributeAt(finding, dataset));
  if (finding.key !== "type" || type === undefined || isTextType(type) || values === undefined) return [];
  return setNumbers(finding, type, values);
};

/** Smallest and largest of the values that are neither missing nor outside the valid range. */
export const actualRange: Mender = async (finding, dataset) => {
  const variable = dataset.variables.get(finding.where.variable ?? "");
  if (variable === undefined || variable.has("scale_factor") || variable.has("add_offset")) return [];
  const values = await dataset.data.numbers(variable.name);
  const range = validRange(variable);
  let [min, max] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of values ?? []) {
    if (Number.isNaN(value) || (range !== null && (value < range.min || value > range.max))) continue;
    min = Math.min(min, value);
    max = Math.max(max, value);
  }
  const { variable: name = null, attribute = "" } = finding.where;
  return min > max
    ? [{ variable: name, attribute, to: null }]
    : setNumbers(finding, variable.type, [min, max]);
};

/** Several strings in one, blanks between. */
export const oneString: Mender = (finding, dataset) => {
  const attribute = attributeAt(finding, dataset);
  if (attribute?.type !== "string" || typeof attribute.value === "string") return [];
  return setText(finding, dataset, Array.from(attribute.value as string[], (text) => text.trim()).join(" "));
};

/** A string as characters, where it is one. */
export const characters: Mender = (finding, dataset) => {
  const { variable = null, attribute: name = "" } = finding.where;
  const attribute = attributeAt(finding, dataset);
  const [text, ...others] = attribute?.type === "string" ? (attribute.value as string[]) : [];
  const type: NcType = "char";
  return text === undefined || others.length > 0 || text.includes("\0")
    ? []
    : [{ variable, attribute: name, to: { name, type, value: text } }];
};

/** Text in normal form C. What is no UTF-8 is left: which encoding it is in, a person must tell. */
export const normalForm: Mender = (finding, dataset) => {
  const value = attributeAt(finding, dataset)?.value;
  const text = typeof value === "string" ? value : (value as string[] | undefined)?.[0];
  return finding.key === "normal" && typeof text === "string"
    ? setText(finding, dataset, text.normalize("NFC"))
    : [];
};
