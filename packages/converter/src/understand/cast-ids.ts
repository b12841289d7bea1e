import { statedCastName } from "./other-facts.ts";
import type { RawCast } from "./raw-cast.ts";

const VALID = /^[A-Za-z0-9._-]{1,100}$/;

/**
 * Ids of a file's casts: the stated name where it has the right characters and no other cast of the file has it,
 * else the file's stem, with -1, -2 where there are several.
 */
export function castIds(casts: readonly RawCast[], path: string): readonly string[] {
  const stem = stemOf(path);
  const stated = casts.map(
    (cast) =>
      cast.columnName ??
      statedCastName(cast.own)?.value ??
      (casts.length === 1 ? (statedCastName(cast.shared)?.value ?? null) : null),
  );
  const taken = new Set<string>();
  return casts.map((_, i) => {
    const name = stated[i];
    const unique =
      name != null &&
      VALID.test(name) &&
      stated.filter((other) => other?.toLowerCase() === name.toLowerCase()).length === 1;
    let id = unique ? name : casts.length === 1 ? stem : `${stem}-${i + 1}`;
    for (let n = 2; taken.has(id); n++) id = `${stem}-${i + 1}-${n}`;
    taken.add(id);
    return id;
  });
}

/** File name without folders and extension, in the characters of an id. */
export function stemOf(path: string): string {
  const name = path.split(/[/\\]/).at(-1) ?? path;
  const stem = name.replace(/(.)\.[^.]*$/, "$1");
  return (
    stem
      .normalize("NFD")
      .replace(/[\u0300-\u036f]/g, "")
      .replace(/[^A-Za-z0-9._-]+/g, "_")
      .slice(0, 90) || "cast"
  );
}
