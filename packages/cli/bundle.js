// Bundles the program into dist/wherry.js; libraries that are loaded only when needed become chunks beside it.
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { build } from "esbuild";
import { directImports } from "./direct-imports.js";

const inSurvey = createRequire(new URL("../survey/package.json", import.meta.url));
const { version } = JSON.parse(readFileSync("package.json", "utf8"));

// The parser of commands can start programs of their own as commands, which loads a good part of Node; ours has none.
const withoutChildProcesses = {
  name: "without-child-processes",
  setup: ({ onResolve, onLoad }) => {
    onResolve({ filter: /^node:child_process$/ }, ({ importer }) =>
      /[\\/]commander[\\/]/.test(importer) ? { path: "none", namespace: "none" } : undefined,
    );
    onLoad({ filter: /.*/, namespace: "none" }, () => ({ contents: "module.exports = {};" }));
  },
};

// chunks have their content in their name: those of earlier builds would stay
rmSync("dist/chunks", { recursive: true, force: true });

const { outputFiles } = await build({
  entryPoints: {
    wherry: "src/bin.ts",
    "chunks/thread": "../survey/src/thread.ts",
    "chunks/check-thread": "../survey/src/check-thread.ts",
    // The pool looks for the frame of its threads beside its own code, as the program does for what they run.
    "chunks/worker": join(dirname(inSurvey.resolve("piscina")), "worker.js"),
  },
  outdir: "dist",
  bundle: true,
  splitting: true,
  chunkNames: "chunks/[name]-[hash]",
  platform: "node",
  target: "node20.19",
  format: "esm",
  conditions: ["wherry-source"],
  plugins: [directImports, withoutChildProcesses],
  // A native extra of the pool that is not needed: thread priorities.
  external: ["@napi-rs/nice"],
  legalComments: "linked",
  logLevel: "warning",
  define: { WHERRY_VERSION: JSON.stringify(version) },
  write: false,
});

// CommonJS libraries inside an ES module still call require().
const FOR_COMMONJS = [
  'import { createRequire as __createRequire } from "node:module";',
  'import { dirname as __dirnameOf } from "node:path";',
  'import { fileURLToPath as __pathOf } from "node:url";',
  "const require = __createRequire(import.meta.url);",
  "const __dirname = __dirnameOf(__pathOf(import.meta.url));\n",
].join(" ");
mkdirSync("dist/chunks", { recursive: true });
for (const { path, text, contents } of outputFiles) {
  const calls = path.endsWith(".js") && /\brequire\b|\b__dirname\b/.test(text);
  writeFileSync(path, calls ? FOR_COMMONJS + text : contents);
}

// The notices of what the bundle holds go with it.
const notices = readdirSync("..")
  .map((name) => `../${name}/NOTICE`)
  .filter(existsSync);
writeFileSync("dist/NOTICE", notices.map((path) => readFileSync(path, "utf8")).join("\n"));
