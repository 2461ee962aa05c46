import { INSTRUMENTER_CONSTANTS, type InstrumenterContext } from "@stryker-mutator/api/core";
import { declareClassPlugin, PluginKind } from "@stryker-mutator/api/plugin";
import {
  type DryRunResult,
  DryRunStatus,
  determineHitLimitReached,
  type MutantRunOptions,
  type MutantRunResult,
  MutantRunStatus,
  type TestResult,
  type TestRunner,
  TestStatus,
  toMutantRunResult,
} from "@stryker-mutator/api/test-runner";
import { bundleTests, type TestFile } from "./bundle-tests.ts";
import { callWithin, ranTooLong } from "./call-within.ts";
import type { CollectedTest } from "./collect-tests.ts";
import { MUTATED_FOLDER, MUTATED_FOLDERS } from "./mutated-folders.ts";

/**
 * A changed loop counts as endless after a hundred times the turns that all tests together take; a tenth of that will
 * do, and saves most of the time that such changes cost.
 */
const SOONER = 10;
/** A test hangs when it takes so many times as long as usual, and this many milliseconds on top. */
const PATIENCE = 10;
const LEAST = 3000;
const HOUR = 3_600_000;

/**
 * How Stryker runs tests here: without a fresh thread for every mutant, which takes longer than most of the tests
 * that reach it. The script with tests and code is gathered afresh instead, so that nothing is kept from one to the next.
 */
class OneThreadRunner implements TestRunner {
  private readonly state = sharedState();
  /** Milliseconds that each test took, and each file to load, while nothing was changed. */
  private readonly usual = new Map<string, number>();
  private start: () => readonly TestFile[] = () => [];

  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    const folder = process.env[MUTATED_FOLDER] ?? "";
    this.start = await bundleTests(`src/${folder}`, MUTATED_FOLDERS[folder]!);
  }

  async dryRun(): Promise<DryRunResult> {
    this.state.mutantCoverage = { static: {}, perTest: {} };
    const tests = await this.run(this.start(), { limit: () => HOUR });
    for (const { id, timeSpentMs } of tests) this.usual.set(id, timeSpentMs);
    return { status: DryRunStatus.Complete, tests, mutantCoverage: this.state.mutantCoverage };
  }

  async mutantRun(options: MutantRunOptions): Promise<MutantRunResult> {
    const { state } = this;
    const active = options.activeMutant.id;
    state.hitCount = 0;
    state.hitLimit = options.hitLimit && Math.ceil(options.hitLimit / SOONER);
    state.activeMutant = options.mutantActivation === "static" ? active : undefined;
    try {
      const files = this.start();
      state.activeMutant = active;
      const tests = await this.run(files, {
        only: options.testFilter && new Set(options.testFilter),
        bail: !options.disableBail,
        limit: (id) => PATIENCE * (this.usual.get(id) ?? LEAST) + LEAST,
      });
      const hang = determineHitLimitReached(state.hitCount, state.hitLimit);
      return toMutantRunResult(hang ?? { status: DryRunStatus.Complete, tests });
    } catch (error) {
      if (ranTooLong(error)) return { status: MutantRunStatus.Timeout };
      return { status: MutantRunStatus.Error, errorMessage: String(error) };
    } finally {
      state.activeMutant = undefined;
    }
  }

  /** Nearly all changes are noticed by the first tests that reach them, so these should not be the slow ones. */
  private quickestFirst(tests: readonly CollectedTest[]): CollectedTest[] {
    const time = ({ id }: CollectedTest) => this.usual.get(id) ?? 0;
    return tests.toSorted((one, other) => time(one) - time(other));
  }

  private async run(
    files: readonly TestFile[],
    { only, bail, limit }: { only?: ReadonlySet<string>; bail?: boolean; limit: (id: string) => number },
  ): Promise<TestResult[]> {
    const results: TestResult[] = [];
    const step = async (id: string, act: () => unknown) => {
      const began = performance.now();
      const about = () => ({ id, name: id, timeSpentMs: performance.now() - began });
      this.state.currentTestId = id;
      try {
        await callWithin(limit(id), act);
        results.push({ ...about(), status: TestStatus.Success });
        return true;
      } catch (error) {
        if (ranTooLong(error)) throw error;
        results.push({ ...about(), status: TestStatus.Failed, failureMessage: String(error) });
        return false;
      } finally {
        this.state.currentTestId = undefined;
      }
    };
    const tests: CollectedTest[] = [];
    for (const { file, load } of files) {
      if (only && ![...only].some((id) => id.startsWith(`${file} > `))) continue;
      // What a file works out outside its tests, any of its tests may look at.
      const loading = `${file} > loads`;
      const loaded = await step(loading, () => {
        tests.push(...load().filter(({ id }) => !only || only.has(id) || only.has(loading)));
      });
      if (!loaded && bail) return results;
    }
    for (const { id, run } of this.quickestFirst(tests)) {
      if (!(await step(id, run)) && bail) return results;
    }
    return results;
  }
}

/** What the altered code asks: which change is switched on, and for whom to count. */
function sharedState(): InstrumenterContext {
  const all = globalThis as unknown as Record<string, InstrumenterContext>;
  all[INSTRUMENTER_CONSTANTS.NAMESPACE] ??= {};
  return all[INSTRUMENTER_CONSTANTS.NAMESPACE]!;
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, "one-thread", OneThreadRunner)];
