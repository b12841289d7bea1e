import { crc32 } from "node:zlib";
import { fail, type Problem, type Result, succeed } from "@wherry/core";
import { bytesSource, type Source } from "@wherry/netcdf";
import { Inflate } from "fflate";
import {
  type ContainedFile,
  type Container,
  done,
  eachPiece,
  LIMITS,
  partOf,
  shown,
  sift,
  tooLarge,
  tooMany,
  unsafe,
} from "../package/container.ts";
import { unpackMember } from "./unpack.ts";
import {
  END_REACH,
  LOCAL_LENGTH,
  packedStart,
  readZipEnd,
  readZipEntries,
  type ZipMember,
} from "./zip-directory.ts";

/**
 * A zip archive read in place: only its directory is read here; stored members are random access into the archive,
 * deflated ones are unpacked when they are opened, never to more than their stated size.
 *
 * @returns problems zip/directory (damaged, encrypted, in parts), package/too-many, package/too-large (unpacks to
 *          more than LIMITS allow), zip/overlap (members share their bytes, as in an archive that is a bomb)
 */
export async function openZip(archive: Source, path: string): Promise<Result<Container>> {
  const from = Math.max(0, archive.size - END_REACH);
  const end = readZipEnd(await archive.read(from, archive.size - from), from, path);
  if (!end.ok) return end;
  const excess = tooMany(path, end.value.count);
  if (excess) return fail(excess);
  const { start, length } = end.value;
  const members = readZipEntries(await archive.read(start, length), end.value, path);
  if (!members.ok) return members;
  const bomb = bombOf(members.value, start, path);
  if (bomb) return fail(bomb);
  const plain = members.value
    .filter(({ isLink }) => !isLink)
    .map((member) => memberFile(archive, member, path));
  // folders are sifted too: their paths tell of the archive
  const { files, refused } = sift(path, "zip", plain);
  const links = members.value
    .filter(({ isLink }) => isLink)
    .map(({ name }) => unsafe(path, name, "it is a link to another file"));
  return succeed({
    path,
    form: "zip",
    files: files.filter((file) => !file.path.endsWith("/")),
    refused: [...refused, ...links],
  });
}

/** Ends the unpacking of a member that is damaged. */
class Unreadable extends Error {}

/** Why the archive as a whole is not unpacked; null if it may be. */
function bombOf(members: readonly ZipMember[], directory: number, path: string): Problem | null {
  const total = members.reduce((sum, { size, method }) => sum + (method === "deflated" ? size : 0), 0);
  if (total > LIMITS.unpacked)
    return {
      code: "package/too-large",
      message: `the archive would unpack to ${total} bytes, more than ${LIMITS.unpacked}`,
      where: { file: path },
      remedy: "Unpack it yourself if you trust its sender, and check the folder.",
    };
  const ordered = [...members].sort((a, b) => a.offset - b.offset);
  for (const [index, { name, offset, compressedSize }] of ordered.entries()) {
    const next = ordered[index + 1]?.offset ?? directory;
    if (offset + LOCAL_LENGTH + compressedSize > next)
      return {
        code: "zip/overlap",
        message: `${shown(name)} shares its bytes with what follows it in the archive: no honest archive does`,
        where: { file: path, byte: offset },
        remedy: "Do not unpack this archive. Ask its sender for another one.",
      };
  }
  return null;
}

function memberFile(archive: Source, member: ZipMember, path: string): ContainedFile {
  const { name, offset, size, method, compressedSize } = member;
  const where = { file: `${path}/${shown(name)}`, byte: offset };
  const damaged = (what: string): Problem => ({
    code: "zip/damaged",
    message: `${shown(name)} is damaged: ${what}`,
    where,
    remedy: "Get the archive again.",
  });
  /** The packed bytes of the member, as a source. */
  const packed = async (): Promise<Result<Source>> => {
    const header = await archive.read(offset, Math.max(0, Math.min(LOCAL_LENGTH, archive.size - offset)));
    const start = packedStart(header, member, archive.size, path);
    if (!start.ok) return start;
    return method === "stored" && compressedSize !== size
      ? fail(damaged(`it is stored in ${compressedSize} bytes, the directory states ${size}`))
      : succeed(partOf(archive, start.value, compressedSize));
  };
  return {
    path: name,
    size,
    async use(work) {
      const source = await packed();
      if (!source.ok) return source;
      if (method === "stored") return succeed(await work(source.value));
      if (size > LIMITS.inMemory) return fail(tooLarge(`${path}/${shown(name)}`, size));
      const content = unpackMember(await source.value.read(0, compressedSize), member, path);
      return content.ok ? succeed(await work(bytesSource(content.value))) : content;
    },
    async each(take) {
      const source = await packed();
      if (!source.ok) return source;
      let length = 0;
      let crc = 0;
      const pass = (bytes: Uint8Array) => {
        length += bytes.length;
        if (length > size) throw new RangeError("more bytes than stated");
        crc = crc32(bytes, crc);
        take(bytes);
      };
      if (method === "stored") await eachPiece(source.value, pass);
      else {
        const inflate = new Inflate(pass);
        try {
          let left = compressedSize;
          await eachPiece(source.value, (bytes) => {
            left -= bytes.length;
            try {
              inflate.push(bytes, left === 0);
            } catch {
              throw new Unreadable();
            }
          });
        } catch (thrown) {
          if (!(thrown instanceof Unreadable)) throw thrown;
          const excess = length > size;
          return fail(
            damaged(
              excess ? `it unpacks to more than the ${size} bytes stated` : "its packed bytes make no sense",
            ),
          );
        }
      }
      if (length !== size) return fail(damaged(`it has ${length} bytes, the directory states ${size}`));
      return crc === member.crc
        ? done
        : fail(damaged("its checksum (CRC-32) is not the one that the directory states"));
    },
  };
}
