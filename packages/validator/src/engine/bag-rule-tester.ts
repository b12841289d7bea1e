import { type Bag, type ContainedFile, openBag, sift } from "@wherry/formats";
import { bytesSource } from "@wherry/netcdf";
import type { BagExample } from "./bag-rule.ts";

/** A file in memory. */
export function memoryFile(path: string, content: Uint8Array): ContainedFile {
  return {
    path,
    size: content.length,
    use: async (work) => ({ ok: true, value: await work(bytesSource(content)), warnings: [] }),
    async each(take) {
      take(content);
      return { ok: true, value: null, warnings: [] };
    },
  };
}

/** The bag of an example. */
export async function bagOf({ files, form = "folder" }: BagExample): Promise<Bag> {
  const found = Object.entries(files).map(([path, text]) => memoryFile(path, new TextEncoder().encode(text)));
  const bag = await openBag(sift("example", form, found));
  if (!bag.ok) throw new TypeError(`the example is no bag: ${bag.problems[0].message}`);
  return bag.value;
}
