import type { Attribute, DataArray, Dataset, NcType } from "../dataset.ts";
import { fillValue } from "../fill-value.ts";
import { memoryDataset } from "../memory.ts";
import type { Constant } from "./constant.ts";
import { type Complaint, isComplaint } from "./constant-value.ts";
import { type Axis, growUnlimited, layOut } from "./lay-out.ts";

export interface DraftVariable {
  readonly name: string;
  readonly type: NcType;
  readonly axes: readonly Axis[];
  readonly attributes: Map<string, Attribute>;
  /** Where its values stand in the text, or else its declaration. */
  at: number;
  items: readonly Constant[];
  data: DataArray | null;
}

/** What was read so far; names of groups are prefixed as in a dataset. */
export interface Draft {
  readonly dimensions: Map<string, Axis>;
  readonly variables: Map<string, DraftVariable>;
  readonly attributes: Map<string, Attribute>;
}

/** A variable may hold this many values that the text doesn't give; a short text must not ask for gigabytes. */
const MOST_SILENT_VALUES = 2 ** 24;

/** Lays the values out once all are known; reports what is wrong with them. */
export function finish(draft: Draft, complain: (complaint: Complaint, variable: string) => void): void {
  for (const { type, axes, items } of draft.variables.values()) growUnlimited(type, axes, items);
  let silent = 0;
  for (const variable of draft.variables.values()) {
    const { name, type, axes, items } = variable;
    const size = axes.reduce((product, { length }) => product * length, 1);
    silent += Math.max(size - items.length, 0);
    if (silent > MOST_SILENT_VALUES && size > items.length) {
      const message = `${name} has room for ${size} values, of which the text gives ${items.length}`;
      complain({ at: variable.at, message }, name);
      continue;
    }
    const data = layOut(type, axes, fillValue(type, variable.attributes), items);
    if (isComplaint(data)) complain(data, name);
    else variable.data = data;
  }
}

/** The dataset of a finished draft. */
export const datasetOf = (draft: Draft): Dataset =>
  memoryDataset({
    dimensions: [...draft.dimensions.values()],
    attributes: [...draft.attributes.values()],
    variables: [...draft.variables.values()].map(({ name, type, axes, attributes, data }) => ({
      name,
      type,
      dimensions: axes.map((axis) => axis.name),
      attributes: [...attributes.values()],
      data: data ?? [],
    })),
  });
