import { expect, test } from "vitest";
import { confidenceProblem } from "../../src/stats/confidence-problem.ts";

test("a probability lies between 0 and 1 and is neither", () => {
  for (const one of [5e-324, 0.5, 1 - 2 ** -53]) expect(confidenceProblem(one)).toBeUndefined();
  for (const one of [-0.1, 0, 1, 95, Number.NaN]) {
    expect(confidenceProblem(one, "share")).toMatchObject({
      kind: "invalid",
      message: expect.stringContaining(`share is ${one};`),
    });
  }
});
