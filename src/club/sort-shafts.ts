import { invalid, type Outcome, type Problem, unavailable } from "../outcome/problem.ts";
import { assignInOrder } from "./assign-in-order.ts";
import { assignLeastCost } from "./assign-least-cost.ts";
import { checkList } from "./check-list.ts";
import { checkNumbers } from "./check-number.ts";
import { withoutDust } from "./without-dust.ts";

/** The shaft for one target. */
export interface ShaftChoice {
  /** Number of the shaft in the list of weights, from 1. */
  readonly shaft: number;
  /** Its weight in grams. */
  readonly weight: number;
  /** Its weight less the target's, in grams. */
  readonly difference: number;
  /** Its frequency less the target's, in cycles a minute, where frequencies were given. */
  readonly frequencyDifference?: number;
  /** Whether it keeps to the tolerances; TRUE where none were given. */
  readonly within: boolean;
}

/** Shafts given to targets. */
export interface ShaftSorting {
  /** One a target, in the targets' order. */
  readonly choices: readonly ShaftChoice[];
  /** Total of the squared differences, in grams squared. */
  readonly total: number;
  /** Numbers of the shafts left over, from 1. */
  readonly unused: readonly number[];
  /** Numbers of the chosen shafts that are out of tolerance, from 1. */
  readonly outOfTolerance: readonly number[];
}

/** What sorting goes by besides weight. */
export interface SortOptions {
  /** Grams a shaft may differ from its target. */
  readonly tolerance?: number;
  /** To sort by frequency as well: a measured figure a shaft and a wanted figure a target, cycles a minute. */
  readonly frequencies?: {
    readonly measured: readonly number[];
    readonly targets: readonly number[];
    /** Grams that are as bad as one cycle a minute; 1 when left out. */
    readonly gramsPerCycle?: number;
    /** Cycles a minute a shaft may differ from its target. */
    readonly tolerance?: number;
  };
}

/** Most pairs of a target and a shaft to choose among: a table of a hundred million is a second's work and fits memory. */
const mostPairs = 1e8;

/**
 * Gives measured shafts to target weights, each shaft at most once, so that the total squared difference is least.
 * Targets of several sets may stand one after the other; more shafts than targets leave some over.
 *
 * With frequencies, what is least is the total of (grams)^2 + (gramsPerCycle x cycles a minute)^2.
 */
export function sortShafts(
  weights: readonly number[],
  targets: readonly number[],
  options: SortOptions = {},
): Outcome<ShaftSorting> {
  const problem = checkSorting(weights, targets, options);
  if (problem) return problem;
  const { tolerance = Number.POSITIVE_INFINITY, frequencies } = options;
  const grams = frequencies?.gramsPerCycle ?? 1;
  const cycles = (target: number, shaft: number) =>
    frequencies ? frequencies.measured[shaft]! - frequencies.targets[target]! : 0;
  const cost = (target: number, shaft: number) =>
    (weights[shaft]! - targets[target]!) ** 2 + (grams * cycles(target, shaft)) ** 2;
  const chosen = frequencies
    ? assignLeastCost(targets.length, weights.length, cost)
    : assignInOrder(weights, targets);
  const choices = chosen.map((shaft, target): ShaftChoice => {
    const difference = withoutDust(weights[shaft]! - targets[target]!);
    const off = withoutDust(cycles(target, shaft));
    const within =
      Math.abs(difference) <= tolerance &&
      Math.abs(off) <= (frequencies?.tolerance ?? Number.POSITIVE_INFINITY);
    const choice = { shaft: shaft + 1, weight: weights[shaft]!, difference, within };
    return frequencies ? { ...choice, frequencyDifference: off } : choice;
  });
  const used = new Set(chosen);
  return {
    choices,
    total: chosen.reduce((sum, shaft, target) => sum + cost(target, shaft), 0),
    unused: weights.flatMap((_, shaft) => (used.has(shaft) ? [] : [shaft + 1])),
    outOfTolerance: choices.filter((choice) => !choice.within).map((choice) => choice.shaft),
  };
}

function checkSorting(
  weights: readonly number[],
  targets: readonly number[],
  { tolerance = 0, frequencies }: SortOptions,
): Problem | undefined {
  const lists = checkList("weights", weights, "grams") ?? checkList("targets", targets, "grams");
  if (lists) return lists;
  if (weights.length < targets.length) {
    const missing = targets.length - weights.length;
    const shafts = weights.length === 1 ? "1 shaft" : `${weights.length} shafts`;
    return unavailable(
      `weights has ${shafts} for ${targets.length} targets; ${missing} more ${missing === 1 ? "is" : "are"} needed.`,
    );
  }
  if (targets.length * (weights.length - targets.length + 1) > mostPairs) {
    return unavailable(
      `weights has ${weights.length} shafts for ${targets.length} targets, more than can be sorted at once; give a part of them.`,
    );
  }
  const problem = checkNumbers([
    [tolerance, { name: "tolerance", unit: "grams", least: 0 }],
    [frequencies?.gramsPerCycle ?? 1, { name: "gramsPerCycle", unit: "grams", least: 0 }],
    [frequencies?.tolerance ?? 0, { name: "frequency tolerance", unit: "cycles a minute", least: 0 }],
  ]);
  if (problem || !frequencies) return problem;
  const { measured, targets: wanted } = frequencies;
  if (measured.length !== weights.length || wanted.length !== targets.length) {
    return invalid(
      `frequencies has ${measured.length} measured and ${wanted.length} targets; ` +
        `it should have one a shaft (${weights.length}) and one a target (${targets.length}).`,
    );
  }
  return (
    checkList("measured frequencies", measured, "cycles a minute") ??
    checkList("target frequencies", wanted, "cycles a minute")
  );
}
