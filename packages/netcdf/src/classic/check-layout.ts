import type { Problem } from "../problem.ts";
import { type Placement, padded, recordStride, valueBytes } from "./format.ts";
import type { ClassicHeader, HeaderVariable } from "./read-header.ts";

export interface CheckedLayout {
  /** Records of which every byte is in the file. */
  readonly records: number;
  /** Bytes from one record to the next. */
  readonly stride: number;
  /** Placement of each variable of the header, in its order. */
  readonly placements: readonly Placement[];
  /** Why the file can't be read: placements that can't be true. */
  readonly fatal: readonly Problem[];
  /** What is missing of the data. */
  readonly missing: readonly Problem[];
  readonly warnings: readonly Problem[];
}

interface Extent {
  readonly variable: HeaderVariable;
  readonly begin: number;
  readonly end: number;
}

const remedy = "The file is damaged or cut short: fetch it again from its source.";

/**
 * Compares what a header claims with the size of the file.
 *
 * Variables may stand in any order, but neither in the header nor in each other. A file that ends early keeps
 * its whole records; the rest is named as missing.
 */
export function checkLayout(header: ClassicHeader, fileSize: number): CheckedLayout {
  const placements = header.variables.map(({ type, dimensions, record, begin }): Placement => {
    const shape = dimensions.map(({ length }) => length);
    return { record, begin, bytes: valueBytes(type, shape, record) };
  });
  const recordPlacements = placements.filter(({ record }) => record);
  const stride = recordStride(recordPlacements);
  const whole = recordPlacements.length === 0 ? 0 : wholeRecords(recordPlacements, stride, fileSize);
  const claimed = header.records ?? whole;
  const records = recordPlacements.length === 0 ? claimed : Math.min(claimed, whole);

  const missing: Problem[] = [];
  if (records < claimed)
    missing.push({
      code: "netcdf/records-missing",
      message: `the header claims ${claimed} records of ${stride} bytes; the file of ${fileSize} bytes holds ${records} whole, which are used`,
      where: { byte: fileSize },
      remedy,
    });
  for (const [i, { record, begin, bytes }] of placements.entries()) {
    const { name } = header.variables[i]!;
    if (!record && begin + bytes > fileSize)
      missing.push({
        code: "netcdf/data-missing",
        message: `${name} takes ${bytes} bytes from byte ${begin}; the file ends at byte ${fileSize}`,
        where: { byte: begin, variable: name },
        remedy,
      });
  }
  return {
    records,
    stride,
    placements,
    missing,
    fatal: impossiblePlaces(header, placements, stride, records),
    warnings: missing.length > 0 ? [] : endWarnings(header, placements, stride, records, fileSize),
  };
}

function wholeRecords(placements: readonly Placement[], stride: number, fileSize: number): number {
  return placements.reduce((least, { begin, bytes }) => {
    const room = fileSize - begin - bytes;
    return Math.min(least, room < 0 ? 0 : Math.floor(room / stride) + 1);
  }, Number.POSITIVE_INFINITY);
}

/** Variables that no file could hold, that start inside the header, or share bytes with one another. */
function impossiblePlaces(
  header: ClassicHeader,
  placements: readonly Placement[],
  stride: number,
  records: number,
): Problem[] {
  const problems: Problem[] = [];
  const extents: Extent[] = [];
  const firstRecord: Extent[] = [];
  for (const [i, { record, begin, bytes }] of placements.entries()) {
    const variable = header.variables[i]!;
    if (bytes > Number.MAX_SAFE_INTEGER)
      problems.push({
        code: "netcdf/too-large",
        message: `the dimensions of ${variable.name} multiply to more than 2^53 bytes, more than any file holds`,
        where: { byte: variable.beginByte, variable: variable.name },
        remedy,
      });
    if (begin < header.end && (!record || records > 0))
      problems.push({
        code: "netcdf/begin",
        message: `${variable.name} begins at byte ${begin}, inside the header, which ends at byte ${header.end}`,
        where: { byte: variable.beginByte, variable: variable.name },
        remedy,
      });
    if (!record) extents.push({ variable, begin, end: begin + bytes });
    else if (records > 0) firstRecord.push({ variable, begin, end: begin + bytes });
  }
  const inRecord = overlaps(firstRecord, "in the first record");
  const [first] = firstRecord;
  if (first && problems.length + inRecord.length === 0) {
    const begin = firstRecord.reduce((least, extent) => Math.min(least, extent.begin), first.begin);
    const end = firstRecord.reduce((most, extent) => Math.max(most, extent.end), first.end);
    if (records > 1 && end - begin > stride)
      problems.push({
        code: "netcdf/overlap",
        message: `the first record reaches from byte ${begin} to ${end}, more than the ${stride} bytes that its variables take: records would overlap`,
        where: { byte: first.variable.beginByte },
        remedy,
      });
    extents.push({ ...first, begin, end: end + (records - 1) * stride });
  }
  return firstFew([...problems, ...inRecord, ...overlaps(extents, "with all their values")]);
}

/** A damaged header may give a problem for each of very many variables: the first say enough. */
function firstFew(problems: Problem[]): Problem[] {
  const more = problems.length - 20;
  const next = problems[20];
  if (next === undefined) return problems;
  return [
    ...problems.slice(0, 20),
    { code: "netcdf/more", message: `${more} more problems of this kind`, where: next.where, remedy },
  ];
}

function overlaps(extents: readonly Extent[], where: string): Problem[] {
  const inOrder = extents.toSorted((a, b) => a.begin - b.begin);
  return inOrder.flatMap((extent, i) => {
    const before = inOrder[i - 1];
    if (!before || extent.begin >= before.end) return [];
    return {
      code: "netcdf/overlap",
      message: `${extent.variable.name} begins at byte ${extent.begin}, but ${before.variable.name} takes bytes ${before.begin} to ${before.end} (${where})`,
      where: { byte: extent.variable.beginByte, variable: extent.variable.name },
      remedy,
    };
  });
}

function endWarnings(
  header: ClassicHeader,
  placements: readonly Placement[],
  stride: number,
  records: number,
  fileSize: number,
): Problem[] {
  const ends = placements.map(({ record, begin, bytes }) => {
    if (!record) return begin + padded(bytes);
    return records === 0 ? 0 : begin + (records - 1) * stride + Math.min(padded(bytes), stride);
  });
  const end = ends.reduce((most, one) => Math.max(most, one), header.end);
  if (end > fileSize)
    return [
      {
        code: "netcdf/end-padding",
        message: `the padding after the last value is missing: the file has ${fileSize} bytes, expected ${end}; all values are there`,
        where: { byte: fileSize },
        remedy: "Nothing is lost, but check that the file was fetched whole.",
      },
    ];
  const rest = fileSize - end;
  if (header.records === null && rest > 0 && stride > 0)
    return [
      {
        code: "netcdf/partial-record",
        message: `${rest} bytes follow the ${records} whole records of ${stride} bytes from byte ${end}; they are not used`,
        where: { byte: end },
        remedy: "Check whether writing the last record was interrupted.",
      },
    ];
  return [];
}
