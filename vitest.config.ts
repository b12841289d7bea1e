import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

// Tests run the sources of every package, never a possibly stale build.
const conditions = ["wherry-source", "module", "node", "development|production"];

const inTools = (name: string) => fileURLToPath(new URL(`./tools/${name}`, import.meta.url));

export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: {
    include: ["src/**/*.test.ts", "test/**/*.test.ts", "*.test.ts"],
    reporters: ["default", inTools("skip-reasons.ts")],
    setupFiles: [inTools("fixed-seed.ts")],
    testTimeout: 300_000,
    hookTimeout: 300_000,
    maxWorkers: 2,
  },
});
