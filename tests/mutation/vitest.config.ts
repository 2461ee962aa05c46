import { defineConfig } from "vitest/config";
import { TESTS_OF_MUTATION } from "./mutated-folders.ts";

/** How Stryker has vitest run tests: those of one folder, one after the other in one thread, with fewer draws. */
export default defineConfig({
  resolve: {
    alias: [{ find: /^fast-check$/, replacement: new URL("fewer-draws.ts", import.meta.url).pathname }],
  },
  test: {
    include: (process.env[TESTS_OF_MUTATION] ?? "").split(","),
    setupFiles: ["tests/mutation/skip-slow.ts"],
    testTimeout: 600_000,
    // A fresh thread for every file takes longer than the tests in it; each mutant has a fresh thread all the same.
    isolate: false,
  },
});
