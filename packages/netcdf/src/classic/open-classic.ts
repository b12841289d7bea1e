import type { Dataset, Dimension, Source, Variable } from "../dataset.ts";
import { noVariable } from "../memory.ts";
import { failOr, type Problem, type Result } from "../problem.ts";
import { checkSlab } from "../slab.ts";
import { checkLayout } from "./check-layout.ts";
import { type ClassicVersion, kindOfVersion } from "./format.ts";
import { readHeader } from "./read-header.ts";
import { readValues, type StoredVariable } from "./read-values.ts";

/**
 * Opens a classic file (CDF-1, CDF-2 or CDF-5): reads its header, no values.
 *
 * A file that was cut short opens: fixed variables keep their shape, and reading what is missing fails; the
 * record dimension is as long as the records that are whole. `problems` names what is missing. The number of
 * records of a streaming file is taken from the file's size.
 *
 * @param source the whole file, starting with its magic
 */
export async function openClassic(source: Source, version: ClassicVersion): Promise<Result<Dataset>> {
  const read = await readHeader(source, version);
  if (!read.ok) return read;
  const header = read.value;
  const layout = checkLayout(header, source.size);
  const problems: Problem[] = [...layout.missing, ...header.problems];

  const dimensions = new Map(
    header.dimensions.map(({ name, length }): [string, Dimension] => {
      const unlimited = length === 0;
      return [name, { name, length: unlimited ? layout.records : length, unlimited }];
    }),
  );
  const variables = new Map<string, Variable>();
  const stored = new Map<string, StoredVariable>();
  for (const [i, found] of header.variables.entries()) {
    const { name, type, attributes } = found;
    if (variables.has(name)) {
      problems.push({
        code: "netcdf/duplicate-name",
        message: `two variables are called ${name}; the first is used`,
        where: { byte: found.beginByte, variable: name },
        remedy: "Rename one of them.",
      });
      continue;
    }
    const shape = found.dimensions.map(({ length }) => (length === 0 ? layout.records : length));
    variables.set(name, {
      name,
      type,
      dimensions: found.dimensions.map((dimension) => dimension.name),
      shape,
      attributes,
    });
    stored.set(name, { name, type, shape, stride: layout.stride, ...layout.placements[i]! });
  }

  const dataset = (): Dataset => ({
    kind: kindOfVersion[version],
    dimensions,
    attributes: header.attributes,
    variables,
    problems,
    async read(name, slab) {
      const variable = variables.get(name);
      const place = stored.get(name);
      if (!variable || !place) return noVariable(name);
      const inside = checkSlab(variable, slab);
      return inside.ok ? readValues(source, place, inside.value) : inside;
    },
  });
  return failOr(layout.fatal, dataset, [...read.warnings, ...layout.warnings]);
}
