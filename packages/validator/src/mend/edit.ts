import { type Attribute, type Dataset, numberAttribute, textAttribute, type Variable } from "@wherry/netcdf";
import { isTextType } from "../engine/attribute-value.ts";
import type { DatasetView } from "../engine/dataset-view.ts";
import type { Finding } from "../engine/finding.ts";

/** A change of one attribute. */
export interface Edit {
  /** Null for the attributes of the file. */
  readonly variable: string | null;
  readonly attribute: string;
  /** What it is to be; null to remove it. */
  readonly to: Attribute | null;
}

/**
 * How what a rule found is mended without judgement: whatever a careful person would write there is this and nothing
 * else. Without edits a person must decide. It must not look at what the rule did not report.
 */
export type Mender = (finding: Finding, dataset: DatasetView) => readonly Edit[] | Promise<readonly Edit[]>;

/** The attribute that a finding is about. */
export function attributeAt({ where }: Finding, dataset: DatasetView): Attribute | undefined {
  const { variable, attribute = "" } = where;
  const attributes =
    variable === undefined ? dataset.attributes : dataset.variables.get(variable)?.attributes;
  return attributes?.get(attribute);
}

/** Text in the place of a finding, in the type that the attribute has. */
export function setText(finding: Finding, dataset: DatasetView, text: string): Edit[] {
  const { variable = null, attribute = "" } = finding.where;
  const asString = attributeAt(finding, dataset)?.type === "string";
  const to = asString
    ? { name: attribute, type: "string" as const, value: [text] }
    : textAttribute(attribute, text);
  return [{ variable, attribute, to }];
}

/** Numbers of a type in the place of a finding; no edit if the type cannot hold them exactly. */
export function setNumbers({ where }: Finding, type: Attribute["type"], values: readonly number[]): Edit[] {
  const { variable = null, attribute = "" } = where;
  if (isTextType(type)) return [];
  try {
    const whole = type === "int64" || type === "uint64" ? values.map(BigInt) : values;
    const to = numberAttribute(attribute, type as Parameters<typeof numberAttribute>[1], whole);
    const kept = Array.from(to.value as ArrayLike<number | bigint>, Number);
    return kept.every((value, i) => Object.is(value, values[i])) ? [{ variable, attribute, to }] : [];
  } catch (error) {
    if (error instanceof RangeError) return [];
    throw error;
  }
}

/** Takes the attribute of a finding away. */
export const remove = ({ where }: Finding): Edit[] => [
  { variable: where.variable ?? null, attribute: where.attribute ?? "", to: null },
];

function changed(
  attributes: ReadonlyMap<string, Attribute>,
  edits: readonly Edit[],
): ReadonlyMap<string, Attribute> {
  const result = new Map(attributes);
  for (const { attribute, to } of edits) {
    if (to === null) result.delete(attribute);
    else result.set(attribute, to);
  }
  return result;
}

/** The data set with some attributes changed; all else, the values above all, is the same. */
export function withEdits(dataset: Dataset, edits: readonly Edit[]): Dataset {
  const of = (name: string | null) => edits.filter(({ variable }) => variable === name);
  const variables = new Map<string, Variable>(
    [...dataset.variables].map(([name, variable]) => [
      name,
      { ...variable, attributes: changed(variable.attributes, of(name)) },
    ]),
  );
  return {
    kind: dataset.kind,
    dimensions: dataset.dimensions,
    attributes: changed(dataset.attributes, of(null)),
    variables,
    problems: dataset.problems,
    read: (name, slab) => dataset.read(name, slab),
  };
}
