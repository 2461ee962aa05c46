import { mean, sum } from "simple-statistics";
import { invalid, type Outcome, unavailable } from "../outcome/problem.ts";
import { confidenceProblem } from "./confidence-problem.ts";
import { dunnettFactor } from "./dunnett-factor.ts";
import { dunnettUpperTail } from "./dunnett-upper-tail.ts";
import { finite } from "./finite.ts";
import { type Numbers, present } from "./present.ts";
import { sumOfSquares } from "./sum-of-squares.ts";

/** Differences from one baseline group with limits that all hold together. */
export interface Dunnett {
  /** Degrees of freedom of the shared spread. */
  readonly df: number;
  readonly pooledSd: number;
  /** Limits are the difference plus and minus this many standard errors. */
  readonly factor: number;
  /** One for each group, in the order given; null for the baseline itself. */
  readonly differences: readonly (BaselineDifference | null)[];
}

/** How far one group lies from the baseline, with limits that hold for all groups together. */
export interface BaselineDifference {
  /** Mean of the group minus mean of the baseline. */
  readonly difference: number;
  readonly standardError: number;
  readonly low: number;
  readonly high: number;
  /** Two-sided, adjusted for the number of groups. */
  readonly p: number;
}

/**
 * Every group against one baseline, with limits that are all true together at the stated confidence, and adjusted
 * probabilities (Dunnett 1955, JASA 50, 1096-1121; unequal group sizes: Dunnett 1964, Biometrics 20, 482-491). It
 * supposes that all groups spread alike: the spread is pooled over all of them. For one group beside the baseline
 * it is Student's t.
 */
export function dunnett(groups: readonly Numbers[], baseline: number, confidence = 0.95): Outcome<Dunnett> {
  const problem = confidenceProblem(confidence);
  if (problem) return problem;
  const known = groups.map(present);
  const control = known[baseline];
  if (control === undefined) {
    return invalid(`The baseline is group ${baseline}; it must be one of 0 to ${groups.length - 1}.`);
  }
  if (groups.length < 2 || known.some((group) => group.length === 0)) {
    return unavailable("A comparison with a baseline needs a second group, and a value in every group.");
  }
  const df = sum(known.map((group) => group.length - 1));
  if (df < 1) return unavailable("Every group has a single value, so nothing tells how far values spread.");
  const pooledSd = Math.sqrt(sum(known.map(sumOfSquares)) / df);
  if (pooledSd === 0)
    return unavailable("All values within each group are the same; nothing measures chance.");
  const sizes = known.filter((_, i) => i !== baseline).map((group) => group.length);
  const factor = dunnettFactor(sizes, control.length, df, confidence);
  const differences = known.map((group, i) => {
    if (i === baseline) return null;
    const difference = mean(group) - mean(control);
    const standardError = pooledSd * Math.sqrt(1 / group.length + 1 / control.length);
    return {
      difference,
      standardError,
      low: difference - factor * standardError,
      high: difference + factor * standardError,
      p: dunnettUpperTail(Math.abs(difference) / standardError, sizes, control.length, df),
    };
  });
  return finite({ df, pooledSd, factor, differences });
}
