import { crc32 } from "node:zlib";
import { fail, type Result, succeed } from "@wherry/core";
import { inflateSync } from "fflate";
import { packedBytes, type ZipMember } from "./zip-directory.ts";

/** The bytes of a member, held against the size and the CRC-32 that the directory states. */
export function unpack(bytes: Uint8Array, member: ZipMember, file: string): Result<Uint8Array> {
  const packed = packedBytes(bytes, member, file);
  if (!packed.ok) return packed;
  const { name, size, offset } = member;
  const damaged = (what: string) =>
    fail({
      code: "zip/damaged",
      message: `${name} is damaged: ${what}`,
      where: { file: `${file}/${name}`, byte: offset },
      remedy: "Get the archive again.",
    });
  let content = packed.value;
  if (member.method === "deflated")
    try {
      // into an array of the stated size, so that no more memory is taken whatever the packed bytes say
      content = inflateSync(packed.value, { out: new Uint8Array(size) });
    } catch {
      return damaged("its packed bytes make no sense");
    }
  if (content.length !== size) return damaged(`it has ${content.length} bytes, the directory states ${size}`);
  if (crc32(content) !== member.crc)
    return damaged("its checksum (CRC-32) is not the one that the directory states");
  return succeed(content);
}
