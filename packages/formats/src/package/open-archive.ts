import { fail, type Result } from "@wherry/core";
import type { Source } from "@wherry/netcdf";
import { isTar, openTar } from "../tar/open-tar.ts";
import { openZip } from "../zip/open-zip.ts";
import type { Container } from "./container.ts";

/** Bytes by which the kind of an archive shows. */
const HEAD = 512;

const isZip = ([p, k, a, b]: Uint8Array): boolean =>
  p === 0x50 && k === 0x4b && ((a === 3 && b === 4) || (a === 5 && b === 6));

/** Opens a zip or tar archive in place, by its first bytes. Errors that the source throws are passed on. */
export async function openArchive(source: Source, path: string): Promise<Result<Container>> {
  const head = await source.read(0, Math.min(HEAD, source.size));
  if (isZip(head)) return openZip(source, path);
  if (isTar(head)) return openTar(source, path);
  return fail({
    code: "package/no-archive",
    message: `${path} is neither a zip nor a tar archive`,
    where: { file: path },
    remedy: "Unpack it if it was packed in another way, and name the folder.",
  });
}
