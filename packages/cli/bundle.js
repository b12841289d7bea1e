// Bundles the program into dist/wherry.js; libraries that are loaded only when needed become chunks beside it.
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { build } from "esbuild";

const { version } = JSON.parse(readFileSync("package.json", "utf8"));

await build({
  entryPoints: { wherry: "src/bin.ts" },
  outdir: "dist",
  bundle: true,
  splitting: true,
  chunkNames: "chunks/[name]-[hash]",
  platform: "node",
  target: "node20.19",
  format: "esm",
  conditions: ["wherry-source"],
  legalComments: "linked",
  logLevel: "warning",
  define: { WHERRY_VERSION: JSON.stringify(version) },
  banner: {
    // CommonJS libraries inside an ES module still call require().
    js: 'import { createRequire as __createRequire } from "node:module"; const require = __createRequire(import.meta.url);',
  },
});

// The notices of what the bundle holds go with it.
const notices = readdirSync("..")
  .map((name) => `../${name}/NOTICE`)
  .filter(existsSync);
writeFileSync("dist/NOTICE", notices.map((path) => readFileSync(path, "utf8")).join("\n"));
