import { crc32 } from "node:zlib";
import { fail, type Result, succeed } from "@wherry/core";
import { inflateSync } from "fflate";
import { packedBytes, type ZipMember } from "./zip-directory.ts";

/** The bytes of a member of an archive in memory, held against the size and the CRC-32 that the directory states. */
export function unpack(bytes: Uint8Array, member: ZipMember, file: string): Result<Uint8Array> {
  const packed = packedBytes(bytes, member, file);
  return packed.ok ? unpackMember(packed.value, member, file) : packed;
}

/** The bytes of a member from its packed bytes, held against the size and the CRC-32 that the directory states. */
export function unpackMember(packed: Uint8Array, member: ZipMember, file: string): Result<Uint8Array> {
  const { name, size, offset } = member;
  const damaged = (what: string) =>
    fail({
      code: "zip/damaged",
      message: `${name} is damaged: ${what}`,
      where: { file: `${file}/${name}`, byte: offset },
      remedy: "Get the archive again.",
    });
  let content = packed;
  if (member.method === "deflated")
    try {
      // into an array of the stated size, so that no more memory is taken whatever the packed bytes say
      content = inflateSync(packed, { out: new Uint8Array(size) });
    } catch {
      return damaged("its packed bytes make no sense");
    }
  if (content.length !== size) return damaged(`it has ${content.length} bytes, the directory states ${size}`);
  if (crc32(content) !== member.crc)
    return damaged("its checksum (CRC-32) is not the one that the directory states");
  return succeed(content);
}
