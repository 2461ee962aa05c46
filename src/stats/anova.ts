import { mean, sum } from "simple-statistics";
import { type Outcome, unavailable } from "../outcome/problem.ts";
import { fUpperTail } from "./f-upper-tail.ts";
import { finite } from "./finite.ts";
import { type Numbers, present } from "./present.ts";
import { sumOfSquares } from "./sum-of-squares.ts";

/** One-way analysis of variance: how far groups differ, against how far values differ within them. */
export interface Anova {
  readonly f: number;
  readonly dfBetween: number;
  readonly dfWithin: number;
  readonly sumBetween: number;
  readonly sumWithin: number;
  /** The square root of the mean square within: the spread all groups share. */
  readonly pooledSd: number;
  readonly p: number;
}

/**
 * One-way analysis of variance (Fisher 1925), which supposes that the groups spread alike. Empty groups do not
 * count; at least two others are needed, and one value more than there are groups.
 *
 * Checked against the NIST Statistical Reference Datasets (SiRstv, SmLs01, SmLs04). p is the upper tail itself.
 */
export function anova(groups: readonly Numbers[]): Outcome<Anova> {
  const filled = groups.map(present).filter((group) => group.length > 0);
  const dfBetween = filled.length - 1;
  const dfWithin = sum(filled.map((group) => group.length - 1));
  if (dfBetween < 1 || dfWithin < 1) {
    return unavailable("An analysis of variance needs two groups and at least two values in one of them.");
  }
  const grand = mean(filled.flat());
  const sumBetween = sum(filled.map((group) => group.length * (mean(group) - grand) ** 2));
  const sumWithin = sum(filled.map(sumOfSquares));
  if (sumWithin === 0)
    return unavailable("All values within each group are the same; nothing measures chance.");
  const f = sumBetween / dfBetween / (sumWithin / dfWithin);
  return finite({
    f,
    dfBetween,
    dfWithin,
    sumBetween,
    sumWithin,
    pooledSd: Math.sqrt(sumWithin / dfWithin),
    p: fUpperTail(f, dfBetween, dfWithin),
  });
}
