import { tmpdir } from "node:os";
import { join } from "node:path";
import { Stryker } from "@stryker-mutator/core";
import { MUTATED_FOLDER } from "./mutated-folders.ts";

export type Mutant = Awaited<ReturnType<Stryker["runMutationTest"]>>[number];

/** Every mutant of the files of a pattern, with what the tests of the folder made of it. */
export async function mutate(files: string, folder: string, flags: ReadonlySet<string>): Promise<Mutant[]> {
  process.env[MUTATED_FOLDER] = folder;
  const mutants = await new Stryker({
    mutate: [files],
    testRunner: "one-thread",
    plugins: [join(import.meta.dirname, "one-thread-runner.ts")],
    testRunnerNodeArgs: ["--import", "tsx"],
    coverageAnalysis: "perTest",
    // What runs once while a file of `src` is loaded, such as a table: every test would have to look at each word of it.
    ignoreStatic: true,
    // The wording of a message is not what a test should pin.
    mutator: { excludedMutations: ["StringLiteral"] },
    // The tests run without types, so nothing has to be marked for the compiler.
    disableTypeChecks: false,
    // The runner ends what hangs itself, and sooner.
    timeoutMS: 300_000,
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
