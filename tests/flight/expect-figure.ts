import { expect } from "vitest";
import { isProblem, type Outcome } from "../../src/outcome/problem.ts";

/** The answer itself, failing with the problem's own sentence when there is none. */
export function figure<T>(outcome: Outcome<T>): T {
  if (isProblem(outcome)) expect.fail(outcome.message);
  return outcome as T;
}
