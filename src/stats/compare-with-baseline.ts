import { mean, sampleStandardDeviation } from "simple-statistics";
import { invalid, isProblem, type Outcome, unavailable } from "../outcome/problem.ts";
import { type BaselineLimits, dunnettLimits, holmWelchLimits } from "./baseline-limits.ts";
import { confidenceProblem } from "./confidence-problem.ts";
import { finite } from "./finite.ts";
import { hedgesG } from "./hedges-g.ts";
import { hodgesLehmann } from "./hodges-lehmann.ts";
import { type Numbers, present } from "./present.ts";
import { type SharedSpread, sharedSpread } from "./shared-spread.ts";

/** Every group beside one baseline group. */
export interface BaselineComparison {
  /** How the limits were found; "none" when there is too little to find any. */
  readonly method: "dunnett" | "holm-welch" | "none";
  /** Why that way, in a sentence. */
  readonly reason: string;
  readonly spread: SharedSpread;
  /** One for each group, in the order given. */
  readonly rows: readonly BaselineRow[];
}

export interface BaselineRow extends BaselineLimits {
  readonly n: number;
  /** null for a group without values. */
  readonly mean: number | null;
  /** n - 1; null below two values. */
  readonly sd: number | null;
  /** Hedges' g: the difference counted in the spread of the two groups; null for the baseline or too few values. */
  readonly g: number | null;
  /** The difference by Hodges and Lehmann, which a stray shot hardly moves; null for the baseline. */
  readonly shift: number | null;
}

/**
 * The honest comparison: every group's mean minus the baseline's, with limits that all hold together (95 % unless
 * told otherwise) and probabilities adjusted for the number of groups.
 *
 * Groups that share one spread are compared by Dunnett's method, made for exactly this question and the narrowest
 * that keeps the promise; pooling the spread is what makes three shots a group worth anything. Where the spreads
 * differ, each difference stands on the two groups' own spreads: Welch's limits, widened by Bonferroni so that all
 * hold together, and Holm's adjusted probabilities. Holm alone has no limits that stay two-sided and hold together;
 * his probabilities are the sharper of the two, so p may fall below 0.05 while the limits still touch nought.
 * `sharedSpread` decides which, and says why.
 *
 * A group with a single value takes no part beyond its mean: no limits, no probability. Differences, g and shift
 * are positive when the group is higher than the baseline; they are null in the baseline's own row.
 */
export function compareWithBaseline(
  groups: readonly Numbers[],
  baseline: number,
  confidence = 0.95,
): Outcome<BaselineComparison> {
  const problem = confidenceProblem(confidence);
  if (problem) return problem;
  const known = groups.map(present);
  const control = known[baseline];
  if (control === undefined) {
    return invalid(
      `The baseline is group ${baseline}; it must be a whole number from 0 to ${groups.length - 1}.`,
    );
  }
  if (control.length === 0) return unavailable("The baseline has no values to compare with.");
  const spread = sharedSpread(known);
  const find = spread.shared ? dunnettLimits : holmWelchLimits;
  const limits = find(known, baseline, confidence);
  const rows = known.map((group, i) => ({
    n: group.length,
    mean: group.length > 0 ? mean(group) : null,
    sd: group.length > 1 ? sampleStandardDeviation(group) : null,
    ...(limits[i] ?? noLimits(i === baseline || group.length === 0 ? null : mean(group) - mean(control))),
    g: i === baseline ? null : orNull(hedgesG(group, control)),
    shift: i === baseline ? null : orNull(hodgesLehmann(group, control)),
  }));
  if (limits.every((row) => row === null)) {
    const reason =
      "There are no limits: they need two values or more of the baseline and of another group, and some spread.";
    return finite({ method: "none" as const, reason, spread, rows });
  }
  return finite({
    method: spread.shared ? ("dunnett" as const) : "holm-welch",
    reason: spread.reason,
    spread,
    rows,
  });
}

function noLimits(difference: number | null): BaselineLimits {
  return { difference, low: null, high: null, p: null };
}

function orNull(outcome: Outcome<number>): number | null {
  return isProblem(outcome) ? null : outcome;
}
