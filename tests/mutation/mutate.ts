import { tmpdir } from "node:os";
import { join } from "node:path";
import { Stryker } from "@stryker-mutator/core";
import { MUTATED_FOLDERS, TESTS_OF_MUTATION } from "./mutated-folders.ts";

export type Mutant = Awaited<ReturnType<Stryker["runMutationTest"]>>[number];

/** Every mutant of the files of a pattern, with what the tests of the folder made of it. */
export async function mutate(files: string, folder: string, flags: ReadonlySet<string>): Promise<Mutant[]> {
  process.env[TESTS_OF_MUTATION] = MUTATED_FOLDERS[folder]!.join(",");
  const mutants = await new Stryker({
    mutate: [files],
    testRunner: "vitest",
    plugins: ["@stryker-mutator/vitest-runner"],
    vitest: { configFile: "tests/mutation/vitest.config.ts", related: false },
    coverageAnalysis: "perTest",
    // What runs while a file is loaded: tables, which would need every test from a fresh start for each word.
    ignoreStatic: true,
    // The wording of a message is not what a test should pin.
    mutator: { excludedMutations: ["StringLiteral"] },
    // The tests run without types, so nothing has to be marked for the compiler.
    disableTypeChecks: false,
    // A busy machine must not pass for a mutant that hangs; true loops end sooner, by the count of their turns.
    timeoutMS: 20_000,
    concurrency: 1,
    incremental: flags.has("--again"),
    incrementalFile: `node_modules/.cache/mutation/${folder}.json`,
    dryRunOnly: flags.has("--count"),
    // Outside the project, or a run that was broken off would leave tests behind for others to find.
    tempDirName: join(tmpdir(), "mutation"),
    cleanTempDir: "always",
    reporters: process.stdout.isTTY ? ["progress"] : ["progress-append-only"],
    logLevel: flags.has("--count") ? "info" : "error",
    dryRunTimeoutMinutes: 60,
  } as ConstructorParameters<typeof Stryker>[0]).runMutationTest();
  return mutants.sort(
    (a, b) => a.fileName.localeCompare(b.fileName) || a.location.start.line - b.location.start.line,
  );
}
