import { describe, expect, test } from "vitest";
import { emptyDraft } from "../../src/pane/draft.ts";
import { plannedTest } from "../../src/pane/planned-test.ts";
import { answer } from "../club/answer.ts";

const choice = { ...emptyDraft("1").plan, builds: "A\n B \n\nC\nA" };

describe("a planned test", () => {
  test("has each build once a round, in as many rounds as shots were asked for", () => {
    const plan = answer(plannedTest({ ...choice, shots: 6 }));
    expect(plan.rounds).toHaveLength(6);
    for (const round of plan.rounds) expect([...round].sort()).toEqual(["A", "B", "C"]);
  });

  test("takes the shots that the difference that matters asks for", () => {
    // n = 2 (1.960 + 0.842)^2 (7 / 5)^2 = 30.8 a build by the normal approximation (Lehr 1992, Statistics in Medicine
    // 11, 1099-1102, the rule 16 / (d / s)^2 = 31.4); with t in place of z a little more.
    const { each } = answer(plannedTest({ ...choice, shots: null, difference: 5, spread: 7 }));
    expect(each).toBeGreaterThanOrEqual(31);
    expect(each).toBeLessThanOrEqual(33);
  });

  test("says what to do when there is but one build, or when it would take too many shots", () => {
    expect(plannedTest({ ...choice, builds: "A" })).toMatchObject({ kind: "invalid" });
    expect(plannedTest({ ...choice, shots: null, difference: 1, spread: 7 })).toMatchObject({
      message: expect.stringMatching(/^That would take \d+ shots with each build/),
    });
  });
});
