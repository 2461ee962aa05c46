import { mean, sum } from "simple-statistics";
import { invalid, isProblem, type Outcome, unavailable } from "../outcome/problem.ts";
import { confidenceProblem } from "./confidence-problem.ts";
import { finite } from "./finite.ts";
import { leastSquares } from "./least-squares.ts";
import type { Numbers } from "./present.ts";
import { tQuantile } from "./t-quantile.ts";
import { tUpperTail } from "./t-upper-tail.ts";

/** How a measurement goes with one or more others. */
export interface Regression {
  readonly n: number;
  readonly df: number;
  readonly residualSd: number;
  /** Share of the variation that the line accounts for; 0 when there is no variation at all. */
  readonly rSquared: number;
  readonly intercept: Coefficient;
  /** One for each column, in the order given: change of y for one more of it, the others held. */
  readonly slopes: readonly Coefficient[];
}

/** One figure of a fitted line with how sure it is. */
export interface Coefficient {
  readonly value: number;
  readonly standardError: number;
  readonly low: number;
  readonly high: number;
  /** Two-sided, against no effect. */
  readonly p: number;
}

/**
 * Linear least squares of `y` on one or more columns, with an intercept, and limits by Student's t (95 % unless told
 * otherwise). Rows with any figure missing are left out. There must be more rows than coefficients, and no column
 * may follow from the others.
 *
 * Checked against the NIST Statistical Reference Datasets (Norris, Longley). Columns are centred first, so that the
 * intercept's share of the trouble never enters the solution.
 */
export function regression(y: Numbers, columns: readonly Numbers[], confidence = 0.95): Outcome<Regression> {
  const problem = confidenceProblem(confidence);
  if (problem) return problem;
  if (columns.length === 0) return invalid("A regression needs at least one column beside y.");
  const rows = Array.from(y, (value, i) => [
    value,
    ...columns.map((column) => column[i] ?? Number.NaN),
  ]).filter((row) => row.every(Number.isFinite));
  const n = rows.length;
  const df = n - columns.length - 1;
  if (df < 1) {
    return unavailable(
      `A regression on ${columns.length} column(s) needs ${columns.length + 2} full rows; there are ${n}.`,
    );
  }
  const means = rows[0]!.map((_, j) => mean(rows.map((row) => row[j]!)));
  const [centredY, ...centred] = means.map((centre, j) => rows.map((row) => row[j]! - centre));
  const fit = leastSquares(centredY!, centred);
  if (isProblem(fit)) return fit;
  const variance = fit.residualSum / df;
  const factor = tQuantile((1 + confidence) / 2, df);
  const coefficient = (value: number, share: number): Coefficient => {
    const standardError = Math.sqrt(variance * share);
    const t = Math.abs(value) / standardError;
    return {
      value,
      standardError,
      low: value - factor * standardError,
      high: value + factor * standardError,
      p: standardError > 0 ? 2 * tUpperTail(t, df) : Number(value === 0),
    };
  };
  const ofColumns = means.slice(1);
  const share = sum(ofColumns.flatMap((a, i) => ofColumns.map((b, j) => a * b * fit.inverse[i]![j]!)));
  const total = sum(centredY!.map((value) => value * value));
  return finite({
    n,
    df,
    residualSd: Math.sqrt(variance),
    rSquared: total > 0 ? 1 - fit.residualSum / total : 0,
    intercept: coefficient(means[0]! - sum(ofColumns.map((m, j) => m * fit.slopes[j]!)), 1 / n + share),
    slopes: fit.slopes.map((value, j) => coefficient(value, fit.inverse[j]![j]!)),
  });
}
