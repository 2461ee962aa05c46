import { median } from "simple-statistics";
import type { Outcome } from "../outcome/problem.ts";
import { type Anova, anova } from "./anova.ts";
import { type Numbers, present } from "./present.ts";

/**
 * Whether groups spread alike: an analysis of variance of the distances from each group's median (Brown and
 * Forsythe 1974, JASA 69, 364-367; Levene's test in its robust form). A small p says that spreads differ. With
 * three to five values a group it seldom sees a difference, so a large p is no proof that there is none.
 */
export function brownForsythe(groups: readonly Numbers[]): Outcome<Anova> {
  return anova(
    groups.map((group) => {
      const values = present(group);
      if (values.length === 0) return values;
      const centre = median(values);
      return values.map((value) => Math.abs(value - centre));
    }),
  );
}
