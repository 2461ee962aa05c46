import { shotsForDifference, type TestPlan, testPlan } from "../fitting/test-plan.ts";
import { invalid, isProblem, type Outcome } from "../outcome/problem.ts";
import type { PlanChoice } from "./draft.ts";

/** A test as it will be hit, and how many shots that are with each build. */
export interface PlannedTest extends TestPlan {
  readonly each: number;
}

/** More than these would tire anyone (common practice, no source). */
const MOST_EACH = 40;

/** The order of a test from what was typed: names of builds, and shots each or the difference that matters. */
export function plannedTest({ builds, shots, difference, spread }: PlanChoice): Outcome<PlannedTest> {
  const names = [
    ...new Set(
      builds
        .split(/\r?\n/)
        .map((name) => name.trim())
        .filter((name) => name !== ""),
    ),
  ];
  if (names.length < 2) return invalid("Type the names of at least two builds, one a line.");
  const each = shots ?? shotsForDifference(spread, difference);
  if (isProblem(each)) return each;
  if (each > MOST_EACH) {
    return invalid(
      `That would take ${each} shots with each build, and more than ${MOST_EACH} tire anyone: ask for a larger difference, or hit on two days.`,
    );
  }
  const plan = testPlan(names, each);
  return isProblem(plan) ? plan : { ...plan, each };
}
