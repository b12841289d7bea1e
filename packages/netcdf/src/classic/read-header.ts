import type { Attribute, Source } from "../dataset.ts";
import { fail, type Problem, type Result, succeed } from "../problem.ts";
import { readExactly } from "../source.ts";
import { decodeText } from "../text.ts";
import { bytesPerValue } from "../types.ts";
import {
  type ClassicType,
  type ClassicVersion,
  countSize,
  highestTypeCode,
  offsetSize,
  tags,
  typeOfCode,
} from "./format.ts";
import { HeaderCursor, HeaderStop, MoreNeeded } from "./header-cursor.ts";

export interface HeaderDimension {
  readonly name: string;
  /** 0 for the record dimension. */
  readonly length: number;
}

export interface HeaderVariable {
  readonly name: string;
  readonly type: ClassicType;
  readonly dimensions: readonly HeaderDimension[];
  readonly record: boolean;
  readonly attributes: ReadonlyMap<string, Attribute>;
  readonly begin: number;
  /** Where the header says it. */
  readonly beginByte: number;
}

export interface ClassicHeader {
  readonly version: ClassicVersion;
  /** As the header says; null for a streaming file. */
  readonly records: number | null;
  readonly dimensions: readonly HeaderDimension[];
  readonly attributes: ReadonlyMap<string, Attribute>;
  readonly variables: readonly HeaderVariable[];
  /** Bytes of the header. */
  readonly end: number;
  /** Attributes that can't be said, each a problem of its own. */
  readonly problems: readonly Problem[];
}

const firstRead = 8192;

/**
 * The header of a classic file. As much of the file is read as the header takes, in growing steps.
 *
 * @source the grammar of the NetCDF Classic Format Specification (see format.ts)
 */
export async function readHeader(source: Source, version: ClassicVersion): Promise<Result<ClassicHeader>> {
  let length = Math.min(source.size, firstRead);
  for (;;) {
    const bytes = await readExactly(source, 0, length);
    if (!bytes.ok) return bytes;
    const cursor = new HeaderCursor(bytes.value, source.size, version);
    try {
      const header = parse(cursor);
      return succeed(header, cursor.warnings());
    } catch (stop) {
      if (stop instanceof HeaderStop) return fail(stop.problem);
      if (!(stop instanceof MoreNeeded)) throw stop;
      length = Math.min(source.size, Math.max(2 * length, stop.upTo));
    }
  }
}

function parse(cursor: HeaderCursor): ClassicHeader {
  const { version } = cursor;
  const problems: Problem[] = [];
  const records = cursor.recordCount();
  const dimensions = readDimensions(cursor);
  const attributes = readAttributes(cursor, problems);
  const variables = readVariables(cursor, dimensions, problems);
  return { version, records, dimensions, attributes, variables, end: cursor.at, problems };
}

/** Length of a list: its tag and nelems, or ABSENT. */
function listLength(cursor: HeaderCursor, tag: number, what: string, least: number): number {
  const at = cursor.at;
  const found = cursor.word(`the tag of the list of ${what}`);
  const count = cursor.countOf(what, least);
  if (found === tag || (found === 0 && count === 0)) return count;
  return cursor.stop(
    "tag",
    `the list of ${what} at byte ${at} starts with tag ${found}, expected ${tag}, or 0 and no elements`,
    { byte: at },
    "The header is damaged: fetch the file again from its source.",
  );
}

function readDimensions(cursor: HeaderCursor): HeaderDimension[] {
  const dimensions: HeaderDimension[] = [];
  const seen = new Set<string>();
  let record: string | null = null;
  const least = 2 * countSize(cursor.version);
  const count = listLength(cursor, tags.dimension, "dimensions", least);
  for (let id = 0; id < count; id++) {
    const byte = cursor.at;
    const name = cursor.name(`dimension ${id}`);
    const length = cursor.count(`the length of dimension ${name}`);
    const where = { byte, dimension: name };
    if (seen.has(name))
      cursor.stop("duplicate-name", `two dimensions are called ${name}, the second at byte ${byte}`, where);
    if (length === 0 && record !== null)
      cursor.stop(
        "record-dimensions",
        `${record} and ${name} (byte ${byte}) both have length 0, which marks the record dimension; a classic file has at most one`,
        where,
        "Write the file again with a library that checks this.",
      );
    if (length === 0) record = name;
    seen.add(name);
    dimensions.push({ name, length });
  }
  return dimensions;
}

function readType(cursor: HeaderCursor, what: string): ClassicType {
  const byte = cursor.at;
  const code = cursor.word(`the type of ${what}`);
  const type = code > highestTypeCode(cursor.version) ? undefined : typeOfCode.get(code);
  return (
    type ??
    cursor.stop(
      "type",
      `${what} has type code ${code} at byte ${byte}, expected 1 to ${highestTypeCode(cursor.version)} in a CDF-${cursor.version} file`,
      { byte },
      "The header is damaged: fetch the file again from its source.",
    )
  );
}

function readAttributes(
  cursor: HeaderCursor,
  problems: Problem[],
  variable?: string,
): ReadonlyMap<string, Attribute> {
  const owner = variable === undefined ? "the file" : variable;
  const attributes = new Map<string, Attribute>();
  const least = 2 * countSize(cursor.version) + 4;
  const count = listLength(cursor, tags.attribute, `attributes of ${owner}`, least);
  for (let id = 0; id < count; id++) {
    const byte = cursor.at;
    const name = cursor.name(`attribute ${id} of ${owner}`);
    const what = `attribute ${name} of ${owner}`;
    const type = readType(cursor, what);
    const length = cursor.countOf(`values of ${what}`, bytesPerValue(type));
    const { bytes, data } = cursor.values(type, length, what);
    if (attributes.has(name)) {
      problems.push({
        code: "netcdf/duplicate-name",
        message: `${owner} has two attributes called ${name}, the second at byte ${byte}; the first is used`,
        where: { byte, attribute: name, ...(variable === undefined ? {} : { variable }) },
        remedy: "Rename or delete one of them.",
      });
    } else if (type === "char") {
      attributes.set(name, textOf(name, bytes));
    } else {
      attributes.set(name, { name, type, value: data });
    }
  }
  return attributes;
}

function textOf(name: string, bytes: Uint8Array): Attribute {
  let end = bytes.length;
  while (end > 0 && bytes[end - 1] === 0) end--;
  const { text, utf8 } = decodeText(bytes.subarray(0, end));
  return { name, type: "char", value: text, ...(utf8 ? {} : { bytes: Uint8Array.from(bytes) }) };
}

function readVariables(
  cursor: HeaderCursor,
  dimensions: readonly HeaderDimension[],
  problems: Problem[],
): HeaderVariable[] {
  const size = countSize(cursor.version);
  // name, rank, list of attributes, type, vsize, begin
  const least = size + size + (4 + size) + 4 + size + offsetSize(cursor.version);
  const count = listLength(cursor, tags.variable, "variables", least);
  return Array.from({ length: count }, (_, id): HeaderVariable => {
    const name = cursor.name(`variable ${id}`);
    const rank = cursor.countOf(`dimensions of ${name}`, size);
    const own = Array.from({ length: rank }, (_, axis): HeaderDimension => {
      const byte = cursor.at;
      const dimensionId = cursor.count(`dimension ${axis} of ${name}`);
      const dimension = dimensions[dimensionId];
      const where = { byte, variable: name };
      if (!dimension)
        return cursor.stop(
          "dimension-id",
          `${name} names dimension ${dimensionId} at byte ${byte}; the file has ${dimensions.length}`,
          where,
          "The header is damaged: fetch the file again from its source.",
        );
      if (dimension.length === 0 && axis > 0)
        return cursor.stop(
          "record-position",
          `${name} has the record dimension ${dimension.name} in place ${axis + 1} (byte ${byte}); it may only come first`,
          where,
          "The header is damaged: fetch the file again from its source.",
        );
      return dimension;
    });
    const attributes = readAttributes(cursor, problems, name);
    const type = readType(cursor, `variable ${name}`);
    // vsize repeats what type and shape say, and can't hold big sizes ("Note on vsize")
    cursor.skip(size, `vsize of ${name}`);
    const beginByte = cursor.at;
    const begin = cursor.offset(`the begin of ${name}`);
    return { name, type, dimensions: own, record: own[0]?.length === 0, attributes, begin, beginByte };
  });
}
