import type { DataArray, Dataset, Variable } from "../dataset.ts";
import { fillValue } from "../fill-value.ts";
import { failOr, type Problem, type Result } from "../problem.ts";
import { bytesOf, swapToBigEndian } from "./byte-order.ts";
import { contentProblems, storedName } from "./check-content.ts";
import {
  type ClassicType,
  type ClassicVersion,
  type Placement,
  padded,
  recordStride,
  valueBytes,
} from "./format.ts";
import { headerBytes } from "./write-header.ts";

export interface PlannedVariable extends Placement {
  readonly variable: Variable;
  /** Bytes behind the values, or behind those of one record: fill values up to a multiple of 4. */
  readonly padding: Uint8Array;
}

export interface FilePlan {
  readonly header: Uint8Array;
  /** Bytes of the file, but for padding that a gapless record leaves away. */
  readonly length: number;
  readonly records: number;
  /** Bytes from one record to the next. */
  readonly stride: number;
  readonly fixed: readonly PlannedVariable[];
  readonly recordVariables: readonly PlannedVariable[];
}

/**
 * Where everything of a dataset goes in a classic file, or all reasons why it can't be said in one.
 *
 * Fixed variables come first, then the records, each in the dataset's order and without gaps.
 */
export function planFile(dataset: Dataset, version: ClassicVersion): Result<FilePlan> {
  const content = contentProblems(dataset, version);
  const [first, ...others] = content;
  if (first) return { ok: false, problems: [first, ...others] };

  const recordDimension = [...dataset.dimensions.values()].find(({ unlimited }) => unlimited);
  const records = recordDimension?.length ?? 0;
  const variables = [...dataset.variables.values()];
  const sizes = variables.map(({ type, shape, dimensions }): Placement => {
    const record = recordDimension !== undefined && dimensions[0] === recordDimension.name;
    return { record, begin: 0, bytes: valueBytes(type as ClassicType, shape, record) };
  });
  const stride = recordStride(sizes.filter(({ record }) => record));
  const header = headerBytes(dataset, version, records, sizes);
  let end = header.length;
  const placements = [...sizes];
  for (const record of [false, true]) {
    for (const [i, size] of sizes.entries()) {
      if (size.record !== record) continue;
      placements[i] = { ...size, begin: end };
      end += padded(size.bytes);
    }
  }
  const problems = [
    ...sizeProblems(variables, sizes, version),
    ...beginProblems(variables, placements, version),
  ];

  const planned = placements.map((placement, i): PlannedVariable => {
    const variable = variables[i]!;
    const gapless = placement.record && stride === placement.bytes;
    const { bytes } = placement;
    return { ...placement, variable, padding: gapless ? new Uint8Array(0) : paddingOf(variable, bytes) };
  });
  return failOr(
    problems,
    () => ({
      header: header.finish(placements.map(({ begin }) => begin)),
      length: end,
      records,
      stride,
      fixed: planned.filter(({ record }) => !record),
      recordVariables: planned.filter(({ record }) => record),
    }),
    renamings(dataset),
  );
}

/** "In data, padding uses the variable's fill value." */
function paddingOf({ type, attributes }: Variable, bytes: number): Uint8Array {
  if (padded(bytes) === bytes) return new Uint8Array(0);
  const fill = fillValue(type, attributes) as Exclude<DataArray, string[]>;
  swapToBigEndian(fill);
  const pattern = bytesOf(fill);
  const padding = new Uint8Array(padded(bytes) - bytes);
  for (let i = 0; i < padding.length; i++) padding[i] = pattern[i % pattern.length]!;
  return padding;
}

/**
 * A variable (or one record of it) has less than 2^31 bytes in CDF-1 and 2^32 in CDF-2, since vsize and the
 * next begin are numbers of that size; only the last of the fixed variables, if no record variable follows, or
 * the last of the record variables may be larger.
 *
 * @source NetCDF User's Guide, "NetCDF Classic Format Limitations", "NetCDF 64-bit Offset Format Limitations"
 */
function sizeProblems(
  variables: readonly Variable[],
  sizes: readonly Placement[],
  version: ClassicVersion,
): Problem[] {
  if (version === 5) return [];
  const most = version === 1 ? 2 ** 31 - 4 : 2 ** 32 - 4;
  const lastRecord = sizes.findLastIndex(({ record }) => record);
  const last = lastRecord >= 0 ? lastRecord : sizes.length - 1;
  return sizes.flatMap(({ record, bytes }, i) => {
    if (bytes <= most || i === last) return [];
    const { name } = variables[i]!;
    return {
      code: "netcdf/size-limit",
      message: `${name} takes ${bytes} bytes${record ? " per record" : ""}; in CDF-${version} only the last variable may take more than ${most}`,
      where: { variable: name },
      remedy: version === 1 ? "Write version 2 or 5, or put it last." : "Write version 5, or put it last.",
    };
  });
}

function beginProblems(
  variables: readonly Variable[],
  placements: readonly Placement[],
  version: ClassicVersion,
): Problem[] {
  const most = version === 1 ? 2 ** 31 - 1 : Number.MAX_SAFE_INTEGER;
  return placements.flatMap(({ begin, bytes }, i) => {
    if (begin <= most && begin + bytes <= Number.MAX_SAFE_INTEGER) return [];
    const { name } = variables[i]!;
    return {
      code: "netcdf/size-limit",
      message: `${name} would begin at byte ${begin} and take ${bytes} bytes; CDF-${version} reaches to byte ${most}`,
      where: { variable: name },
      remedy: version === 1 ? "Write version 2 or 5." : "Split the dataset.",
    };
  });
}

function renamings(dataset: Dataset): Problem[] {
  const names = [...dataset.dimensions.keys(), ...dataset.variables.keys()];
  return [...new Set(names)]
    .filter((name) => storedName(name) !== name)
    .map((name) => ({
      code: "netcdf/name-form",
      message: `the name ${name} was written in Unicode normal form C, as the format asks`,
      where: { variable: name },
    }));
}
