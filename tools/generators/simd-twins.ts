import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { graphOf } from "./simd/equation.ts";
import { moduleOf } from "./simd/module.ts";

const folder = join("packages", "core", "src", "seawater");

/** Each equation with the files that it and what it calls are in. */
const twins = {
  density: ["density.ts", "specific-volume.ts", "polynomial.ts", "entropy.ts"],
  soundSpeed: ["sound-speed.ts", "specific-volume.ts", "polynomial.ts", "entropy.ts"],
  onTheScale: ["practical-salinity.ts", "practical-salinity-scale.ts", "temperature-scale.ts"],
} as const;

/** Vector twins, for whole columns, of the equations whose plain form is slower than the C library's. */
export async function generateSimdTwins(root: string): Promise<string[]> {
  const lines: string[] = [];
  for (const [name, files] of Object.entries(twins)) {
    const sources = await Promise.all(files.map((file) => readFile(join(root, folder, file), "utf8")));
    const bytes = moduleOf(graphOf(name, sources), 3);
    lines.push(
      `  /** ${bytes.length} bytes. */\n  ${name}:\n    "${Buffer.from(bytes).toString("base64")}",`,
    );
  }
  const path = join(folder, "simd-twins.generated.ts");
  const head = `/*
 * Made by tools/generate.ts from the equations of the same names; do not edit.
 * WebAssembly modules in base64, for column-kernel.ts.
 */
`;
  await writeFile(
    join(root, path),
    `${head}\nexport const simdTwins = {\n${lines.join("\n")}\n} as const;\n`,
  );
  return [path];
}
