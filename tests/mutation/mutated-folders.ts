/** The variable that hands the patterns of test files, with commas between, from `run.ts` to `vitest.config.ts`. */
export const TESTS_OF_MUTATION = "TESTS_OF_MUTATION";

/** The folders of `src` under mutation, and the tests that hold each. */
export const MUTATED_FOLDERS: Readonly<Record<string, readonly string[]>> = {
  club: ["tests/club/**/*.test.ts"],
  shots: ["tests/shots/**/*.test.ts"],
  stats: ["tests/stats/**/*.test.ts"],
  flight: ["tests/flight/**/*.test.ts"],
  sheets: ["tests/sheets/**/*.test.ts"],
};
