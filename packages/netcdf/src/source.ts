import type { Source } from "./dataset.ts";
import { fail, type Result, succeed } from "./problem.ts";

/** Random access to bytes in memory; reads give views, not copies. */
export const bytesSource = (bytes: Uint8Array): Source => ({
  size: bytes.length,
  read: (offset, length) => bytes.subarray(offset, offset + length),
});

/** Bytes of a source; what it throws, or a wrong number of bytes, is a problem. The range must lie inside it. */
export async function readExactly(
  source: Source,
  offset: number,
  length: number,
): Promise<Result<Uint8Array>> {
  try {
    const bytes = await source.read(offset, length);
    if (bytes.length === length) return succeed(bytes);
    return fail({
      code: "netcdf/source",
      message: `${length} bytes were read from byte ${offset}, the source gave ${bytes.length}`,
      where: { byte: offset },
      remedy: "Check whether the file was changed or cut while it was open.",
    });
  } catch (thrown) {
    return failed(offset, length, thrown);
  }
}

/** Fills `out` with the bytes of a source, without a copy in between where the source can. */
export async function fillExactly(source: Source, offset: number, out: Uint8Array): Promise<Result<void>> {
  if (source.readInto === undefined) {
    const bytes = await readExactly(source, offset, out.length);
    if (!bytes.ok) return bytes;
    out.set(bytes.value);
    return succeed(undefined);
  }
  try {
    await source.readInto(offset, out);
    return succeed(undefined);
  } catch (thrown) {
    return failed(offset, out.length, thrown);
  }
}

const failed = (offset: number, length: number, thrown: unknown) =>
  fail({
    code: "netcdf/source",
    message: `reading ${length} bytes from byte ${offset} failed: ${thrown instanceof Error ? thrown.message : String(thrown)}`,
    where: { byte: offset },
    remedy: "Check that the file is still there and can be read.",
  });
