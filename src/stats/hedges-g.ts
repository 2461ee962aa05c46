import { mean } from "simple-statistics";
import { type Outcome, unavailable } from "../outcome/problem.ts";
import { finite } from "./finite.ts";
import { hedgesCorrection } from "./hedges-correction.ts";
import { type Numbers, present } from "./present.ts";
import { sumOfSquares } from "./sum-of-squares.ts";

/**
 * The difference of two means (first minus second) counted in their shared spread, with the exact correction for
 * small samples (Hedges 1981, Journal of Educational Statistics 6, 107-128). About 0.2 is small, 0.5 medium, 0.8 large (Cohen 1988).
 *
 * Needs one value in each group and four in all. Student's sleep data: -0.7969352391911207.
 */
export function hedgesG(first: Numbers, second: Numbers): Outcome<number> {
  const a = present(first);
  const b = present(second);
  const df = a.length + b.length - 2;
  if (a.length < 1 || b.length < 1 || df < 2) {
    return unavailable("An effect size needs a value in each group and at least four values in all.");
  }
  const pooledSd = Math.sqrt((sumOfSquares(a) + sumOfSquares(b)) / df);
  if (pooledSd === 0)
    return unavailable("All values within each group are the same, so there is no spread to count in.");
  return finite(((mean(a) - mean(b)) / pooledSd) * hedgesCorrection(df));
}
