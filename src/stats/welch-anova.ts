import { mean, sampleVariance, sum } from "simple-statistics";
import { type Outcome, unavailable } from "../outcome/problem.ts";
import { fUpperTail } from "./f-upper-tail.ts";
import { finite } from "./finite.ts";
import { type Numbers, present } from "./present.ts";

/** Whether the means of several groups differ, without supposing that the groups spread alike. */
export interface WelchAnova {
  readonly f: number;
  readonly dfBetween: number;
  readonly dfWithin: number;
  readonly p: number;
}

/**
 * Welch's analysis of variance (Welch 1951, Biometrika 38, 330-336): each group's mean weighs as much as it is
 * sure. For two groups it is Welch's t squared. Every group needs two values and some spread.
 */
export function welchAnova(groups: readonly Numbers[]): Outcome<WelchAnova> {
  const filled = groups.map(present).filter((group) => group.length > 0);
  const k = filled.length;
  if (k < 2 || filled.some((group) => group.length < 2)) {
    return unavailable("Welch's analysis of variance needs two groups, and at least two values in each.");
  }
  const variances = filled.map((group) => sampleVariance(group));
  if (variances.includes(0)) {
    return unavailable("The values of one group are all the same, so it would weigh infinitely much.");
  }
  const weights = filled.map((group, i) => group.length / variances[i]!);
  const total = sum(weights);
  const centre = sum(filled.map((group, i) => (weights[i]! / total) * mean(group)));
  const between = sum(filled.map((group, i) => weights[i]! * (mean(group) - centre) ** 2)) / (k - 1);
  const doubt = sum(filled.map((group, i) => (1 - weights[i]! / total) ** 2 / (group.length - 1)));
  const f = between / (1 + (2 * (k - 2) * doubt) / (k * k - 1));
  const dfWithin = (k * k - 1) / (3 * doubt);
  return finite({ f, dfBetween: k - 1, dfWithin, p: fUpperTail(f, k - 1, dfWithin) });
}
