import { isProblem, type Outcome } from "../../src/outcome/problem.ts";

/** The answer of an outcome that should have one; a test fails with the problem's sentence where it has none. */
export function answer<T>(outcome: Outcome<T>): T {
  if (isProblem(outcome)) throw new Error(outcome.message);
  return outcome;
}

/** The sentence of an outcome that should be a problem. */
export function refusal(outcome: unknown): string {
  if (isProblem(outcome)) return outcome.message;
  throw new Error(`expected a problem, got ${JSON.stringify(outcome)}`);
}
