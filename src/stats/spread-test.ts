import { median } from "simple-statistics";
import type { Outcome } from "../outcome/problem.ts";
import { type Anova, anova } from "./anova.ts";
import { type Numbers, present } from "./present.ts";

/**
 * Whether groups spread alike, for groups of a few shots: the test of Brown and Forsythe with its structural zeros
 * taken out (Hines and O'Hara Hines 2000, Biometrics 56, 451-454). In a group of odd size the middle value lies at
 * distance 0 from the median whatever the spread; in one of even size the two middle values lie at the same
 * distance. Both swell the variation within groups and leave `brownForsythe` blind: with three values a group it
 * never finds a difference. Here the zero is left out, and the twin distances d, d become the one distance
 * sqrt(2) d.
 */
export function spreadTest(groups: readonly Numbers[]): Outcome<Anova> {
  return anova(groups.map((group) => distances(present(group))));
}

function distances(values: readonly number[]): readonly number[] {
  if (values.length === 0) return values;
  const centre = median([...values]);
  const sorted = values.map((value) => Math.abs(value - centre)).sort((a, b) => a - b);
  if (values.length % 2 === 1) return sorted.slice(1);
  // The two middle values are also the two nearest to the median.
  return [Math.SQRT2 * sorted[0]!, ...sorted.slice(2)];
}
