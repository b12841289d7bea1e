import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { root } from "@wherry/testkit";
import { test } from "vitest";
import type { Attribute, DataArray, Dataset } from "../src/dataset.ts";
import { encodeText } from "../src/text.ts";
import { unwrap } from "./content.ts";

// What the netCDF library says, by way of its own programs and its Python interface (Debian's).

const PYTHON = "/usr/bin/python3";

type Values = readonly (number | string)[] | string | null;

export interface LibraryContents {
  readonly model?: string;
  readonly dimensions: readonly { name: string; length: number; unlimited: boolean }[];
  readonly attributes: readonly { name: string; type: string; value: Values }[];
  readonly variables: readonly {
    name: string;
    type: string;
    enum?: boolean;
    dimensions: readonly string[];
    attributes: LibraryContents["attributes"];
    values: Values;
  }[];
}

const missing: string | null = (() => {
  if (spawnSync("ncgen", ["-h"]).error) return "ncgen (Debian: netcdf-bin) is not installed";
  const python = spawnSync(PYTHON, ["-c", "import netCDF4"]);
  return python.status === 0 ? null : "Python's netCDF4 (Debian: python3-netcdf4) is not installed";
})();

/** A test that needs the netCDF library; where it is absent it is skipped and says so. */
export function testWithLibrary(name: string, run: () => void | Promise<void>): void {
  if (missing === null) test(name, run);
  else test(name, (context) => context.skip(`skipped: ${missing}`));
}

/** Contents of files as the library reads them (tools/netcdf_contents.py). */
export function libraryContents(paths: readonly string[]): LibraryContents[] {
  const script = join(root, "tools", "netcdf_contents.py");
  const out = execFileSync(PYTHON, [script, ...paths], { encoding: "utf8", maxBuffer: 2 ** 28 });
  return (JSON.parse(out) as { files: LibraryContents[] }).files;
}

export type GeneratorKind = "nc3" | "nc4" | "nc5";

/** Contents of what the library's generator makes of CDL texts. */
export function generatedContents(
  texts: readonly { text: string; kind: GeneratorKind }[],
): LibraryContents[] {
  const folder = mkdtempSync(join(tmpdir(), "wherry-cdl-"));
  try {
    const paths = texts.map(({ text, kind }, i) => {
      const path = join(folder, `${i}.nc`);
      writeFileSync(join(folder, `${i}.cdl`), text);
      const made = spawnSync("ncgen", ["-k", kind, "-o", path, join(folder, `${i}.cdl`)], {
        encoding: "utf8",
      });
      if (made.status !== 0) throw new Error(`ncgen -k ${kind}: ${made.status} ${made.stderr}\n${text}`);
      return path;
    });
    return libraryContents(paths);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const hex = (bytes: Uint8Array): string => Buffer.from(bytes).toString("hex");

function plainNumber(value: number | bigint): number | string {
  if (typeof value === "bigint") return String(value);
  return Number.isFinite(value) ? value : String(value);
}

const plainValues = (data: DataArray): readonly (number | string)[] =>
  Array.isArray(data) ? data : Array.from(data as ArrayLike<number | bigint>, plainNumber);

const plainAttributes = (attributes: ReadonlyMap<string, Attribute>): LibraryContents["attributes"] =>
  [...attributes.values()].map(({ name, type, value, bytes }) => ({
    name,
    type,
    value: typeof value === "string" ? hex(bytes ?? encodeText(value)) : plainValues(value),
  }));

/** A dataset of ours in the same shape. */
export async function plainContents(dataset: Dataset): Promise<LibraryContents> {
  const variables = [];
  for (const { name, type, dimensions, attributes } of dataset.variables.values()) {
    const data = unwrap(await dataset.read(name));
    variables.push({
      name,
      type,
      dimensions,
      attributes: plainAttributes(attributes),
      values: type === "char" ? hex(data as Uint8Array) : plainValues(data),
    });
  }
  return {
    dimensions: [...dataset.dimensions.values()],
    attributes: plainAttributes(dataset.attributes),
    variables,
  };
}

/** The library's contents without what a dataset of ours has no place for. */
export function comparable({ dimensions, attributes, variables }: LibraryContents): LibraryContents {
  const said = ({ type }: { type: string }) => type !== "other";
  return {
    dimensions,
    attributes: attributes.filter(said),
    variables: variables.filter(said).map(({ enum: _, ...variable }) => ({
      ...variable,
      attributes: variable.attributes.filter(said),
    })),
  };
}
