import { isTextType, numbersOf, textOf } from "./attribute-value.ts";
import type { DatasetView } from "./dataset-view.ts";
import type { Plain } from "./finding.ts";
import type { VariableView } from "./variable-view.ts";

/** Attributes by name: text, a number, or a list of either. Numbers beyond 2^53 lose digits. */
export type PlainAttributes = Readonly<Record<string, Plain>>;

/** A variable's header as plain data. */
export interface PlainVariable {
  readonly name: string;
  readonly type: string;
  readonly dimensions: readonly string[];
  readonly shape: readonly number[];
  /** "data", "flag", "coordinate", "auxiliary", "label", "bounds", "count", "index" or "container". */
  readonly role: string;
  /** "X", "Y", "Z", "T" for coordinates, else null. */
  readonly axis: string | null;
  /** Whether another variable names it in `ancillary_variables`. */
  readonly ancillary: boolean;
  readonly attributes: PlainAttributes;
}

/** A file's header as plain data: what the schemas of rule documents are held against. */
export interface PlainHeader {
  /** Name of the file without folders. */
  readonly file: string;
  readonly kind: string;
  readonly dimensions: Readonly<Record<string, { readonly length: number; readonly unlimited: boolean }>>;
  readonly attributes: PlainAttributes;
  /** In the order of the file. */
  readonly variables: readonly PlainVariable[];
}

function plainAttributes(attributes: VariableView["attributes"]): PlainAttributes {
  const entries = [...attributes.values()].map((attribute): [string, Plain] => {
    const list = isTextType(attribute.type)
      ? (textOf(attribute) ?? (attribute.value as string[]))
      : (numbersOf(attribute) ?? []);
    const [only] = list;
    return [attribute.name, Array.isArray(list) && list.length === 1 && only !== undefined ? only : list];
  });
  // a name such as __proto__ is data too
  return Object.assign(Object.create(null), Object.fromEntries(entries)) as PlainAttributes;
}

export const plainVariable = (dataset: DatasetView, variable: VariableView): PlainVariable => ({
  name: variable.name,
  type: variable.type,
  dimensions: [...variable.allDimensions],
  shape: [...variable.shape],
  role: variable.role,
  axis: variable.axis,
  ancillary: dataset.ancillary.has(variable),
  attributes: plainAttributes(variable.attributes),
});

export const plainHeader = (dataset: DatasetView): PlainHeader => ({
  file: dataset.path.split(/[\\/]/).at(-1) ?? "",
  kind: dataset.kind,
  dimensions: Object.fromEntries(
    [...dataset.dimensions.values()].map(({ name, length, unlimited }) => [name, { length, unlimited }]),
  ),
  attributes: plainAttributes(dataset.attributes),
  variables: dataset.all.map((variable) => plainVariable(dataset, variable)),
});
