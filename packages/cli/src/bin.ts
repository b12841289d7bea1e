import process from "node:process";

// Newer Nodes keep what they compiled of a program in the folder of temporary files: half of a short run is compiling.
if (Number.parseInt(process.versions.node, 10) >= 22) {
  const { enableCompileCache } = (await import("node:module")) as { enableCompileCache?: () => unknown };
  enableCompileCache?.();
}
await import("./main.ts");
