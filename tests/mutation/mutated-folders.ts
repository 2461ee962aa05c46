/** The variable that hands the folder from `run.ts` to the process that runs the tests. */
export const MUTATED_FOLDER = "MUTATED_FOLDER";

/** The folders of `src` under mutation, and the folders of tests that hold each. */
export const MUTATED_FOLDERS: Readonly<Record<string, readonly string[]>> = {
  club: ["tests/club"],
  shots: ["tests/shots"],
  stats: ["tests/stats"],
  flight: ["tests/flight"],
  sheets: ["tests/sheets"],
};
