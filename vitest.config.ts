import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

// Tests run the sources of every package, never a possibly stale build.
const conditions = ["wherry-source", "module", "node", "development|production"];

export default defineConfig({
  resolve: { conditions },
  ssr: { resolve: { conditions } },
  test: {
    include: ["src/**/*.test.ts", "test/**/*.test.ts", "*.test.ts"],
    setupFiles: [fileURLToPath(new URL("./tools/fixed-seed.ts", import.meta.url))],
    testTimeout: 300_000,
    maxWorkers: 2,
  },
});
